// The word board: a tap writes its word into the call, with a comma where a new line begins. Only
// words that can follow are live; which ones, comes with each reading.
import { setText, whenSet } from './call-line.js';

const call = document.getElementById('call');
const words = document.getElementById('words');
const undo = document.getElementById('undo-word');
let tapped = [];
let hasItem = false;
let takesNumber = false;

function lastLine() {
  return call.value.slice(call.value.lastIndexOf(',') + 1).trim();
}

function joined(text) {
  const before = call.value.trimEnd();
  if (!before) {
    return text;
  }
  return before + ' ' + text;
}

function newLine(text) {
  const before = call.value.trimEnd();
  return before && !before.endsWith(',') ? before + ', ' + text : joined(text);
}

function textAfter(word) {
  const { word: id, text } = word.dataset;
  if (id.startsWith('i.')) {
    return hasItem && lastLine() ? newLine(text) : joined(text);
  }
  if (id !== 'n') {
    return joined(text);
  }
  if (!hasItem || !lastLine()) {
    return joined(text);
  }
  return takesNumber ? joined('x' + text) : newLine(text);
}

function isLive(word) {
  return word.getAttribute('aria-disabled') !== 'true';
}

words.addEventListener('click', (event) => {
  const word = event.target.closest('[data-word]');
  const begins = word && (word.dataset.word.startsWith('i.') || word.dataset.word === 'n');
  if (!word || !(isLive(word) || begins)) {
    return;
  }
  const before = call.value;
  const text = textAfter(word);
  const startsLine = text.length - word.dataset.text.length > before.length
    && text.includes(',', before.length - 1);
  hasItem = word.dataset.word.startsWith('i.') || (hasItem && !startsLine);
  setText(text + ' ');
  tapped.push([call.value, before]);
});

undo.addEventListener('click', () => {
  const last = tapped.pop();
  if (last && last[0].trimEnd() === call.value.trimEnd()) {
    setText(last[1]);
  } else {
    tapped = [];
    setText(call.value.trimEnd().replace(/[\s,]*[^\s,]+$/, ''));
  }
});

document.body.addEventListener('click', (event) => {
  const fix = event.target.closest('[data-fix]');
  if (fix) {
    setText(fix.dataset.fix + ' ');
    call.focus();
  }
});

function mark() {
  const reading = document.getElementById('reading');
  const live = new Set(reading.dataset.live.split(' '));
  hasItem = reading.dataset.hasItem === 'true';
  takesNumber = live.has('n');
  for (const word of words.querySelectorAll('[data-word]')) {
    const id = word.dataset.word;
    const begins = id.startsWith('i.') || id === 'n';
    const can = live.has(id) || (live.has('comma') && begins);
    word.setAttribute('aria-disabled', String(!can));
  }
}

whenSet(() => {
  if (!call.value) {
    hasItem = false;
    tapped = [];
  }
});
document.body.addEventListener('htmx:afterSwap', mark);
document.body.addEventListener('htmx:oobAfterSwap', mark);
document.body.addEventListener('reading:drawn', mark);
mark();
