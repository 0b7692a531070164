// What the page needs to read and price calls by itself: the stand's own reader, and a kit with the
// menu, the tax and the texts. Both stay in memory, so a server that goes away changes nothing.
import { open } from './reader.js';

const KIT_MILLIS_MAX = 8000;
const RENEWED = 'sopwell-renewed';

const board = document.getElementById('board');
let reader = null;
let version = '';
let loading = null;
let stale = false;

// The reader, or null until there is one: then the server still reads.
export function current() {
  return reader;
}

export function say(key, first = '', second = '') {
  return reader.say(key, String(first), String(second));
}

async function load() {
  const answer = await fetch(`/counter/kits/${document.documentElement.lang}`, {
    signal: AbortSignal.timeout(KIT_MILLIS_MAX),
  });
  if (!answer.ok) {
    throw new Error('no kit: ' + answer.status);
  }
  version = answer.headers.get('Sopwell-Version') || '';
  reader = open(await answer.text());
  document.body.dispatchEvent(new CustomEvent('kit:ready'));
}

export function refresh() {
  loading ||= load()
    .catch(() => {
      stale = true;
    })
    .finally(() => {
      loading = null;
    });
  return loading;
}

// Whether the server has moved on to another version of this page. Said once for each version, so
// that a page which a browser keeps bringing back is not drawn anew for ever.
export function isOutdated() {
  const outdated = version !== '' && !import.meta.url.includes(`/${version}/`);
  const said = sessionStorage.getItem(RENEWED) === version;
  return outdated && !said;
}

export function renew() {
  sessionStorage.setItem(RENEWED, version);
  location.reload();
}

// Told of the menu that the server goes by; another one is fetched.
export function heardOf(revision) {
  if (stale || !reader || (revision && revision !== reader.revision())) {
    stale = false;
    refresh();
  }
}

board?.addEventListener('board:shown', () => heardOf(board.dataset.menu));
// The server is back, or refused something: it may go by another menu now.
for (const heard of ['stand:live', 'stand:heard']) {
  document.body.addEventListener(heard, () => {
    stale = true;
    heardOf('');
  });
}
refresh();
