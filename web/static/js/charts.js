// Draws every figure of the page that holds a chart: at the start, when its width changes, and when
// htmx has put another one in its place. What the reader has opened stays open.
import { read } from './charts-table.js';
import { draw } from './charts-draw.js';

const drawnAt = new WeakMap();
const opened = new Set();

function figures() {
  return [...document.querySelectorAll('figure.chart')];
}

function key(figure) {
  return figures().indexOf(figure);
}

function show(figure) {
  const place = figure.querySelector('.drawing');
  const width = Math.floor(place.clientWidth);
  if (width === 0 || drawnAt.get(place) === width) {
    return;
  }
  const height = Number(place.firstElementChild.getAttribute('height'));
  drawnAt.set(place, width);
  place.replaceChildren(draw(read(figure), width, height));
}

const watcher = new ResizeObserver((changes) => {
  for (const change of changes) {
    show(change.target.closest('figure'));
  }
});

function showAll() {
  for (const figure of figures()) {
    show(figure);
    watcher.observe(figure.querySelector('.drawing'));
  }
}

document.addEventListener('toggle', (event) => {
  const figure = event.target.closest && event.target.closest('figure.chart');
  if (figure && figure.isConnected) {
    opened[event.target.open ? 'add' : 'delete'](key(figure));
  }
}, true);

document.addEventListener('htmx:afterSwap', () => {
  for (const figure of figures()) {
    figure.querySelector('details').open = opened.has(key(figure));
  }
  showAll();
});

showAll();
