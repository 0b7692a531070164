// Questions from the stations: answered by one key or tap whatever else is being typed. The caret
// stays where it is, and a key pressed while the question changes answers nothing.
const KEYS = ['F2', 'F3', 'F4', 'F7'];
const FRESH_MS = 500;
const SAID_MS = 2500;
const KEPT_MS = 20000;

const board = document.querySelector('[data-board]');
const strip = document.querySelector('.queries');
const said = document.getElementById('query-said');
const words = document.getElementById('query-words');
const call = document.getElementById('call');
let shown = shownQuery();
let shownAt = 0;
let telling = 0;
let fading = 0;
let before = null;

function shownQuery() {
  return document.querySelector('[data-query]')?.dataset.query || '';
}

function look() {
  const now = shownQuery();
  if (now !== shown) {
    shown = now;
    shownAt = performance.now();
  }
  if (!words.hidden && words.elements.query.value !== now && !words.elements.text.value) {
    closeWords();
  }
}

function closeWords() {
  const here = words.contains(document.activeElement);
  words.hidden = true;
  words.elements.text.value = '';
  if (here) {
    (before?.isConnected ? before : call).focus();
  }
}

document.addEventListener('keydown', (event) => {
  const at = KEYS.indexOf(event.key);
  if (at < 0 || event.ctrlKey || event.altKey || event.metaKey || event.shiftKey) {
    return;
  }
  event.preventDefault();
  const busy = strip.classList.contains('telling') || performance.now() - shownAt < FRESH_MS;
  if (!event.repeat && !busy) {
    strip.querySelectorAll('[data-answer]')[at]?.click();
  }
});

strip.addEventListener('mousedown', (event) => {
  if (event.target.closest('button')) {
    event.preventDefault();
  }
});

strip.addEventListener('click', (event) => {
  if (event.target.closest('[data-words]')) {
    words.elements.query.value = shown;
    before = document.activeElement;
    words.hidden = false;
    words.elements.text.focus();
  } else if (event.target.closest('[data-words-not]')) {
    closeWords();
  }
});
words.addEventListener('keydown', (event) => {
  if (event.key === 'Escape') {
    closeWords();
    event.stopPropagation();
  }
});
words.addEventListener('htmx:afterRequest', (event) => {
  if (event.detail.successful) {
    closeWords();
  }
});

said.addEventListener('htmx:afterSwap', () => {
  clearTimeout(telling);
  clearTimeout(fading);
  strip.classList.add('telling');
  telling = setTimeout(() => strip.classList.remove('telling'), SAID_MS);
  fading = setTimeout(() => said.replaceChildren(), KEPT_MS);
});
board.addEventListener('board:shown', look);
