// Prints a paper without leaving the screen: it is fetched, drawn in a frame that nobody sees, and
// handed to the browser's own printing. F9 prints the slip of the order that was placed last.
import { refusal, wordsOf } from './dom.js';
import { newKey } from './keys.js';

const said = document.getElementById('paper-said') || document.getElementById('answer');
let frame = null;

function draw(html) {
  frame?.remove();
  frame = document.createElement('iframe');
  frame.className = 'away';
  frame.setAttribute('aria-hidden', 'true');
  frame.tabIndex = -1;
  frame.addEventListener('load', () => {
    frame.contentWindow.print();
    document.body.dispatchEvent(new CustomEvent('printed'));
  });
  frame.srcdoc = html;
  document.body.append(frame);
}

// Beside what the panel shows, which may still be needed.
function complain(sentence) {
  said.append(refusal(sentence));
}

async function print(address, paper) {
  said.querySelector('.refused-order')?.remove();
  try {
    const answer = await fetch(address, {
      method: 'POST',
      headers: { 'Idempotency-Key': newKey(), 'HX-Request': 'true' },
      body: new URLSearchParams({ paper }),
    });
    const text = await answer.text();
    if (answer.ok) {
      draw(text);
    } else {
      complain(wordsOf(text));
    }
  } catch {
    complain(document.body.dataset.sendLost);
  }
}

document.addEventListener('submit', (event) => {
  if (event.target.matches('[data-print]')) {
    event.preventDefault();
    print(event.target.action, event.submitter?.value || 'slip');
  }
});

document.addEventListener('click', (event) => {
  const button = event.target.closest('[data-papers]');
  if (button) {
    print(button.dataset.papers, 'slip');
  }
});

document.addEventListener('keydown', (event) => {
  const button = event.key === 'F9' && document.querySelector('[data-papers]');
  if (button) {
    event.preventDefault();
    button.click();
  }
});
