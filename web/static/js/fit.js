// As many rows as fit stand on the board; the rest is counted. Nothing scrolls under greasy hands.
// Columns are as wide as the widest word that the menu can put there; if all together are too wide
// for the window, every word shrinks alike.
const SMALLEST = 0.5;

const board = document.querySelector('[data-board]');
const table = board.querySelector('.table');
const lists = board.querySelectorAll('[data-rows="open"], [data-rows="whole"]');

function widest(cell) {
  let width = 0;
  for (const probe of cell.querySelectorAll('.probes .word')) {
    width = Math.max(width, probe.getBoundingClientRect().width);
  }
  return width;
}

function sum(numbers) {
  return numbers.reduce((total, number) => total + number, 0);
}

function fitColumns() {
  const heads = table ? Array.from(table.querySelectorAll('[data-column]')) : [];
  if (heads.length === 0 || matchMedia('(max-width: 900px)').matches) {
    return;
  }
  for (let tries = 0, scale = 1; tries < 4; tries++) {
    table.style.setProperty('--fit', scale.toFixed(3));
    const room = sum(heads.map((head) => head.getBoundingClientRect().width));
    const widths = heads.map(
      (head) => widest(head) + parseFloat(getComputedStyle(head).paddingRight));
    const needed = sum(widths);
    widths.forEach((width, at) => table.style.setProperty('--k' + at, width.toFixed(1)));
    if (needed <= room || scale <= SMALLEST) {
      return;
    }
    scale = Math.max(SMALLEST, scale * Math.min(0.99, room / needed));
  }
}

function fitRows(list) {
  const all = Array.from(list.children);
  for (const row of all) {
    row.hidden = false;
  }
  let below = 0;
  if (getComputedStyle(list).overflowY === 'hidden') {
    const bottom = list.getBoundingClientRect().bottom + 1;
    for (const row of all) {
      if (below > 0 || row.getBoundingClientRect().bottom > bottom) {
        row.hidden = true;
        below++;
      }
    }
  }
  const more = board.querySelector(`[data-more-of="${list.dataset.rows}"]`);
  const count = below + Number(more.dataset.below);
  const text = count > 0 ? more.dataset.more.replace('%', count) : '';
  if (more.textContent !== text) {
    more.textContent = text;
  }
}

function fit() {
  fitColumns();
  lists.forEach(fitRows);
}

board.addEventListener('board:shown', () => lists.forEach(fitRows));
addEventListener('resize', fit);
fit();
