// As many rows as fit stand on the board; the rest is counted. Nothing scrolls under greasy hands.
// Letters are as large as the screen's distance and size ask for. Columns are as wide as the widest
// word that the menu can put there; if all together are too wide for the window, every word shrinks
// alike, and at what can just be read two columns share a place, one word over the other. What
// comes of it is said when it is too small to be read from there.
import { LEAST_ARCMIN, WANTED_ARCMIN, fontPixels, seen, setting } from './letters.js';

const SMALLEST = 0.3;

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

function isPhone() {
  return matchMedia('(max-width: 900px)').matches;
}

// Widths of columns, where those that share a place have that of the wider one.
function shared(widths, folded) {
  const places = widths.slice();
  for (const at of folded) {
    places[at + 1] = Math.max(widths[at], widths[at + 1]);
    places[at] = 0;
  }
  return places;
}

// The share of its size in which a word stands over another one.
const FOLDED = 0.86;

// The size at which the columns fit, 1 for all that was asked for; they are set to it.
function scaleToFit(heads, folded) {
  heads.forEach((head, at) => table.classList.toggle('fold-' + at, folded.includes(at)));
  for (let tries = 0, scale = 1; ; tries++) {
    table.style.setProperty('--fit', scale.toFixed(3));
    const room = sum(heads.map((head) => head.getBoundingClientRect().width));
    const widths = shared(heads.map(
      (head) => widest(head) + parseFloat(getComputedStyle(head).paddingRight || 0)),
    folded);
    const needed = sum(widths);
    widths.forEach((width, at) => table.style.setProperty('--k' + at, width.toFixed(1)));
    if (needed <= room || scale <= SMALLEST || tries === 5) {
      return scale;
    }
    scale = Math.max(SMALLEST, scale * Math.min(0.995, room / needed));
  }
}

// The next two neighbours that save the most room when they share a place.
function nextFold(heads, folded) {
  const taken = new Set(folded.flatMap((at) => [at, at + 1]));
  let best = -1;
  let saved = 0;
  for (let at = 0; at + 1 < heads.length; at++) {
    const saves = Math.min(widest(heads[at]), widest(heads[at + 1]));
    if (!taken.has(at) && !taken.has(at + 1) && saves > saved) {
      best = at;
      saved = saves;
    }
  }
  return best;
}

function fitColumns() {
  const heads = table ? Array.from(table.querySelectorAll('[data-column]')) : [];
  if (heads.length === 0 || isPhone()) {
    return 1;
  }
  const least = LEAST_ARCMIN / WANTED_ARCMIN;
  const folded = [];
  let scale = scaleToFit(heads, folded);
  while (scale < least) {
    const next = nextFold(heads, folded);
    if (next < 0) {
      break;
    }
    folded.push(next);
    scale = scaleToFit(heads, folded) * FOLDED;
  }
  return scale;
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

function keep(arcmin) {
  try {
    localStorage.setItem('sopwell-letters', arcmin.toFixed(1));
  } catch {
    // A browser that keeps nothing shows this on the board alone.
  }
}

function fit() {
  const set = setting();
  const wanted = fontPixels(WANTED_ARCMIN, set);
  if (isPhone()) {
    document.documentElement.style.removeProperty('--size');
  } else {
    document.documentElement.style.setProperty('--size', `${wanted.toFixed(1)}px`);
  }
  const arcmin = seen(wanted * fitColumns(), set);
  board.dataset.arcmin = arcmin.toFixed(2);
  const small = document.getElementById('small-letters');
  if (small && !isPhone()) {
    small.hidden = arcmin >= LEAST_ARCMIN;
    small.textContent = small.dataset.text.replace('%', Math.floor(arcmin));
    keep(arcmin);
  }
  lists.forEach(fitRows);
}

board.addEventListener('board:shown', () => lists.forEach(fitRows));
addEventListener('resize', fit);
fit();
