// Reads and prices the call in the page at every key, with the server's own reader. The wait alone
// must be asked for, and comes in when it is there.
import { current, heardOf, say } from './kit.js';
import { element } from './dom.js';
import { now } from './server-clock.js';

const WAIT_PAUSE_MS = 150;
const WAIT_MILLIS_MAX = 4000;

const form = document.getElementById('call-form');
const call = document.getElementById('call');
let asking = 0;
let shown = '';
let shownOuts = '';
let wait = '';

function fixes(fault) {
  const list = element('p', { class: 'fixes' });
  if (fault.quiet) {
    list.append(element('span', {}, say('counter.try')));
  }
  for (const fix of fault.fixes) {
    list.append(element('button', { type: 'button', 'data-fix': fix.text }, fix.label));
  }
  return list;
}

function mirror(pieces) {
  const line = element('p', { class: 'mirror', 'aria-hidden': 'true' });
  for (const piece of pieces) {
    line.append(element('span', piece.marked ? { class: 'mark' } : {}, piece.text));
  }
  return line;
}

function drawHints(view) {
  const fault = view.fault;
  const hints = [];
  if (fault && !fault.quiet) {
    if (fault.mirror.some((piece) => piece.marked)) {
      hints.push(mirror(fault.mirror));
    }
    hints.push(element('p', { class: 'sentence', role: 'alert' }, fault.sentence));
  }
  if (fault && fault.fixes.length > 0) {
    hints.push(fixes(fault));
  } else if (!fault && view.lines.length === 0) {
    hints.push(element('p', { class: 'nothing' }, say('counter.nothing')));
  }
  document.getElementById('hints').replaceChildren(...hints);
}

function row(line) {
  return element('li', {},
    element('span', { class: 'said' }, line.text),
    element('span', { class: 'each' }, line.each),
    element('span', { class: 'price' }, line.price));
}

function sum(key, value, name) {
  return element('div', name ? { class: name } : {},
    element('dt', {}, say(key)), element('dd', {}, value));
}

function drawReading(view) {
  const reading = document.getElementById('reading');
  reading.dataset.live = view.live.join(' ');
  if (view.hasItem) {
    reading.dataset.hasItem = 'true';
  } else {
    delete reading.dataset.hasItem;
  }
  if (view.lines.length === 0) {
    reading.replaceChildren();
    return;
  }
  reading.replaceChildren(
    element('ul', { class: 'read-back' }, ...view.lines.map(row)),
    element('dl', { class: 'sums' },
      sum('counter.wait', wait), sum('counter.tax', view.tax),
      sum('counter.total', view.total, 'sum')));
}

export function draw(view) {
  drawHints(view);
  drawReading(view);
  document.body.dispatchEvent(new CustomEvent('reading:drawn'));
}

function showWait(text) {
  wait = text;
  const place = document.querySelector('#reading .sums dd');
  if (place && place.textContent !== text) {
    place.textContent = text;
  }
}

// The wait depends on what the kitchen has to do; with the server away nobody knows it.
async function askWait(text) {
  try {
    const answer = await fetch('/api/calls', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify({ call: text }),
      signal: AbortSignal.timeout(WAIT_MILLIS_MAX),
    });
    const read = answer.ok ? await answer.json() : null;
    if (read) {
      heardOf(read.menuRevision);
    }
    if (call.value === text) {
      const { fromSeconds, toSeconds } = read?.quote || {};
      showWait(read ? current().quote(fromSeconds, toSeconds) : '');
    }
  } catch {
    showWait('–');
  }
}

// What is out, as the server told last.
function outs() {
  return Array.from(document.querySelectorAll('#part-outs [data-known]'),
    (out) => out.dataset.known).join(';');
}

// The view of the call as it stands; pressed, what is unfinished is a fault.
export function readNow(pressed) {
  return JSON.parse(current().read(call.value, pressed, outs(), String(Math.round(now()))));
}

// An order that is edited keeps what it had, out or not, which only the server knows: it reads.
function readsHere() {
  return Boolean(current()) && form.dataset.edit === 'false';
}

export function read() {
  if (!readsHere()) {
    return;
  }
  const view = readNow(false);
  if (view.lines.length === 0) {
    wait = '';
  }
  draw(view);
  clearTimeout(asking);
  if (view.placeable && call.value !== shown) {
    const text = call.value;
    asking = setTimeout(() => askWait(text), WAIT_PAUSE_MS);
  }
  shown = call.value;
  shownOuts = outs();
}

call.addEventListener('input', read);
call.addEventListener('read', read);
document.body.addEventListener('kit:ready', () => {
  form.dataset.reader = current().revision();
  if (call.value) {
    read();
  }
});
document.getElementById('board').addEventListener('board:shown', () => {
  if (call.value && outs() !== shownOuts) {
    read();
  }
});

// Without a reader the server reads, as it does for a browser without modules.
document.body.addEventListener('htmx:beforeRequest', (event) => {
  if (event.target === call && readsHere()) {
    event.preventDefault();
  }
});
