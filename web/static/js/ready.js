// The guests' screen: as many numbers as fit, the rest counted; what came up or was called a moment
// ago stands out.
import { now } from './server-clock.js';

const board = document.getElementById('board');
const list = board.querySelector('[data-rows]');
const freshMs = Number(board.dataset.freshMs);

function freshen() {
  const atMs = now();
  for (const row of list.children) {
    row.classList.toggle('fresh', atMs - Number(row.dataset.fresh) < freshMs);
  }
}

function fit() {
  const rows = Array.from(list.children);
  for (const row of rows) {
    row.hidden = false;
  }
  const bottom = list.getBoundingClientRect().bottom + 1;
  const over = rows.filter((row) => row.getBoundingClientRect().bottom > bottom);
  for (const row of over) {
    row.hidden = true;
  }
  const below = over.length + Number(document.getElementById('part-below').dataset.below);
  for (const more of board.querySelectorAll('[data-more]')) {
    const text = below > 0 ? more.dataset.more.replace('%', below) : '';
    if (more.textContent !== text) {
      more.textContent = text;
    }
  }
}

function shown() {
  freshen();
  fit();
}

board.addEventListener('board:shown', shown);
addEventListener('resize', fit);
setInterval(freshen, 1000);
shown();
