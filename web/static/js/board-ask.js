// Asking the counter about a row: what can be asked stands over the row, one key or tap each. The
// row stays where it is; the same key, or Esc, takes it away again.
const board = document.querySelector('[data-board]');

export function isAsking() {
  return board.querySelector('.asking') !== null;
}

export function stopAsking() {
  for (const open of board.querySelectorAll('.ask-holder')) {
    open.remove();
  }
}

export function startAsking(row) {
  stopAsking();
  const button = row.querySelector('[data-act="ask"]');
  if (!button) {
    return;
  }
  const holder = document.createElement('div');
  holder.className = 'ask-holder';
  holder.setAttribute('role', 'cell');
  row.append(holder);
  htmx.ajax('GET', button.dataset.question, { target: holder, swap: 'innerHTML' });
}

export function ask(digit) {
  board.querySelector(`.asking [data-ask="${digit}"]`)?.click();
}

board.addEventListener('click', (event) => {
  const open = event.target.closest('[data-act="ask"]');
  if (open) {
    startAsking(open.closest('[data-row]'));
  } else if (event.target.closest('[data-ask-not]')) {
    stopAsking();
  }
});
board.addEventListener('keydown', (event) => {
  if (event.key === 'Escape' && event.target.closest('.asking')) {
    stopAsking();
  }
});
// Asked or refused, there is nothing more to choose.
board.addEventListener('htmx:afterRequest', (event) => {
  if (event.target.closest('.asking')) {
    stopAsking();
  }
});
