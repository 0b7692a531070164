// Every change carries a key of its own, so that it is done once however often it arrives. A press
// that waits for its answer says so, and so does one that got none; pressed again, it goes under
// its key again, because it may have arrived.
import { newKey } from './keys.js';
import './register.js';

const body = document.body;

function say(target, text) {
  target.textContent = text;
}

const WAITS_MS = 1000;
const UNKNOWN_MS = 60000;
const SAID_IN = ['said', 'answer', 'void-said'];

// What was asked and not answered: its key, and since when.
const open = new Map();

function forgetOld() {
  for (const [what, { atMs }] of open) {
    if (performance.now() - atMs > UNKNOWN_MS) {
      open.delete(what);
    }
  }
}

function keyFor(what) {
  forgetOld();
  const before = open.get(what);
  const age = before ? performance.now() - before.atMs : 0;
  if (before && age > WAITS_MS) {
    return before.key;
  }
  const key = newKey();
  open.set(what, { key, atMs: performance.now() });
  return key;
}

body.addEventListener('htmx:configRequest', (event) => {
  const { verb, path, formData, headers } = event.detail;
  if (verb === 'post') {
    headers['Idempotency-Key'] = keyFor(`${path}?${new URLSearchParams(formData)}`);
  }
});

function settle(key) {
  for (const [what, { key: asked }] of open) {
    if (asked === key) {
      open.delete(what);
    }
  }
}

function follow(xhr, said) {
  const waits = setTimeout(() => say(said, body.dataset.sendWaits), WAITS_MS);
  for (const failed of ['error', 'timeout']) {
    xhr.addEventListener(failed, () => say(said, body.dataset.sendLost));
  }
  xhr.addEventListener('loadend', () => {
    clearTimeout(waits);
    if (xhr.status > 0 && said.textContent === body.dataset.sendWaits) {
      say(said, '');
    }
  });
}

// A press that is not answered at once says that it waits. The request itself is listened to: the
// button that sent it may be gone from the board by then.
body.addEventListener('htmx:beforeSend', (event) => {
  const { target, xhr, requestConfig } = event.detail;
  const key = requestConfig.headers['Idempotency-Key'];
  if (key) {
    xhr.addEventListener('load', () => {
      if (xhr.status < 500) {
        settle(key);
      }
    });
  }
  if (requestConfig.path !== '/counter/reading' && SAID_IN.includes(target?.id)) {
    follow(xhr, target);
  }
});

// A sentence on a board's message line goes by itself; what it was about stands in the rows.
let fading = 0;
body.addEventListener('htmx:afterSwap', (event) => {
  if (event.detail.target?.id === 'void-said') {
    event.detail.target.scrollIntoView({ block: 'nearest' });
  }
  if (event.detail.target?.id === 'said') {
    clearTimeout(fading);
    fading = setTimeout(() => say(event.detail.target, ''), 8000);
  }
});
