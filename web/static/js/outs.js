// What is out: its words on the word board say so, and its sheet opens over the counter without
// touching what is being typed.
const words = document.getElementById('words');
const board = document.getElementById('board');
const sheet = document.getElementById('outs-sheet');
const open = document.getElementById('outs-open');

function mark() {
  for (const word of words.querySelectorAll('[data-out]')) {
    word.removeAttribute('data-out');
    word.removeAttribute('data-note');
  }
  for (const out of document.querySelectorAll('#part-outs [data-word]')) {
    const word = words.querySelector(`[data-word="${CSS.escape(out.dataset.word)}"]`);
    if (word) {
      word.dataset.out = out.dataset.gone;
      word.dataset.note = out.dataset.note;
    }
  }
}

open.addEventListener('click', () => {
  htmx.ajax('GET', '/outs', { target: '#outs', swap: 'outerHTML' }).then(() => sheet.showModal());
});
sheet.addEventListener('click', (event) => {
  if (event.target === sheet || event.target.closest('[data-close]')) {
    sheet.close();
  }
});
// Esc closes the sheet; it must not clear the call as well.
sheet.addEventListener('keydown', (event) => event.stopPropagation());
sheet.addEventListener('close', () => {
  document.getElementById('call').dispatchEvent(new Event('read'));
  document.getElementById('call').focus();
});
board.addEventListener('board:shown', mark);
mark();
