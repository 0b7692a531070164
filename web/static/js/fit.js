// As many rows as fit stand on the board; the rest is counted. Nothing scrolls under greasy hands.
const board = document.querySelector('[data-board]');
const rows = board.querySelector('[data-rows="open"]');

function fit() {
  const all = Array.from(rows.children);
  for (const row of all) {
    row.hidden = false;
  }
  const scrolls = getComputedStyle(rows).overflowY !== 'hidden';
  const bottom = rows.getBoundingClientRect().bottom + 1;
  let below = 0;
  if (!scrolls) {
    for (const row of all) {
      if (below > 0 || row.getBoundingClientRect().bottom > bottom) {
        row.hidden = true;
        below++;
      }
    }
  }
  const more = board.querySelector('[data-more]');
  if (more) {
    const count = below + Number(more.dataset.below);
    const text = count > 0 ? more.dataset.more.replace('%', count) : '';
    if (more.textContent !== text) {
      more.textContent = text;
    }
  }
}

board.addEventListener('board:shown', fit);
addEventListener('resize', fit);
fit();
