// Sends what waits, in order, each under its key until the server has answered for it. An order is
// never sent in another order than it was taken, and what is refused waits for a person.
import * as store from './outbox-store.js';
import { inTurn } from './outbox-turn.js';
import { now } from './server-clock.js';

const ANSWER_MILLIS_MAX = 8000;
const HANGS_MS = 1000;
const AGAIN_MIN_MS = 1000;
const AGAIN_MAX_MS = 5000;
const REFUSED = [400, 404, 409, 413, 422];
const OLD_MS = 4 * 3600 * 1000;

const windows = 'BroadcastChannel' in window ? new BroadcastChannel('sopwell-outbox') : null;
const watchers = [];
let again = AGAIN_MIN_MS;
let timer = 0;
let sending = false;
let asked = false;
let underWay = null;

export function watch(watcher) {
  watchers.push(watcher);
}

function tellHere(news) {
  watchers.forEach((watcher) => watcher(news));
}

// Orders stay here while nobody is signed in who may send them; the news then says signIn.
function tell(news = {}) {
  tellHere(news);
  const { id, kind, signIn } = news;
  windows?.postMessage({ news: id ? { id, kind, signIn } : {} });
}

windows?.addEventListener('message', (event) => tellHere(event.data.news));

// Whether an order is so old that somebody should look at it before a kitchen makes it.
export function isOld(entry) {
  return !entry.wanted && now() - entry.takenAtMs > OLD_MS;
}

function sentence(html) {
  const said = new DOMParser().parseFromString(html, 'text/html');
  return said.querySelector('[role="alert"], .message')?.textContent.trim() || '';
}

// A request that hung in the network when the board came back is asked again at once, under its
// key.
function giveUpHanging() {
  if (underWay && performance.now() - underWay.atMs > HANGS_MS) {
    underWay.stop.abort();
  }
}

// One request. Only an answer that names itself counts: a network's own sign-in page does not.
async function post(request, order, signal) {
  const answer = await fetch(request.path.replace('{order}', order), {
    method: 'POST',
    headers: {
      'Content-Type': 'application/x-www-form-urlencoded',
      'HX-Request': 'true',
      'Idempotency-Key': request.key,
    },
    body: request.body,
    signal,
  });
  const html = await answer.text();
  if (answer.status === 200 && answer.headers.has('Sopwell-Order')) {
    return { kind: 'done', html, order: answer.headers.get('Sopwell-Order'),
      number: Number(answer.headers.get('Sopwell-Number')),
      triggers: answer.headers.get('HX-Trigger') || '' };
  }
  if (answer.headers.get('HX-Redirect')?.startsWith('/sign-in?')) {
    return { kind: 'away', signIn: true };
  }
  const refused = REFUSED.includes(answer.status) && answer.headers.has('Sopwell-Version');
  return refused ? { kind: 'refused', html, sentence: sentence(html) } : { kind: 'away' };
}

async function send(entry) {
  const stop = new AbortController();
  const late = setTimeout(() => stop.abort(), ANSWER_MILLIS_MAX);
  underWay = { stop, atMs: performance.now() };
  try {
    return await post(entry.requests[0], entry.order, stop.signal);
  } catch {
    return { kind: 'away' };
  } finally {
    clearTimeout(late);
    underWay = null;
  }
}

// A request that was answered leaves its entry, and the last one takes the entry along.
async function settle(entry, outcome) {
  const alter = (how) => store.alter(entry.id, (kept) => ({ ...kept, ...how(kept) }));
  if (outcome.kind === 'refused') {
    await alter(() => ({ state: 'refused', sentence: outcome.sentence }));
  } else {
    const left = await alter((kept) => ({
      order: outcome.order, number: outcome.number || kept.number,
      requests: kept.requests.slice(1),
    }));
    if (left?.requests.length === 0) {
      await store.settle(left);
    }
  }
  tell({ id: entry.id, ...outcome });
}

async function next() {
  const entries = await store.waiting();
  return entries.find((entry) => entry.state === 'waiting');
}

async function sendAll(stillMine) {
  for (let entry = await next(); entry && !isOld(entry); entry = await next()) {
    if (!await stillMine()) {
      return;
    }
    const outcome = await send(entry);
    if (outcome.kind === 'away') {
      tell({ id: entry.id, kind: 'away', signIn: outcome.signIn });
      later();
      return;
    }
    if (again > AGAIN_MIN_MS || outcome.kind === 'refused') {
      document.body.dispatchEvent(new CustomEvent('stand:heard'));
    }
    again = AGAIN_MIN_MS;
    await settle(entry, outcome);
  }
}

function later() {
  clearTimeout(timer);
  timer = setTimeout(drain, again);
  again = Math.min(AGAIN_MAX_MS, again * 2);
}

// Sends what waits, now. While it is at it, another call has it look once more at the end.
export async function drain() {
  if (sending) {
    asked = true;
    return;
  }
  sending = true;
  clearTimeout(timer);
  try {
    do {
      asked = false;
      if (!await inTurn(sendAll)) {
        later();
      }
    } while (asked);
  } catch {
    later();
  } finally {
    sending = false;
  }
}

export async function put(entry, instead) {
  const kept = await store.add({ ...entry, state: 'waiting', label: 0 }, instead);
  tell({});
  drain();
  return kept;
}

// Has a further request of an order sent right after it, such as the money that was taken for it;
// {order} in its path stands for the order's id. False when the order is no longer here: then the
// server has it, and can be asked at once.
export async function andThen(id, request, more = {}) {
  const entry = await store.follow(id, request, more);
  tell({});
  drain();
  return Boolean(entry);
}

// Somebody looked at an old or refused order and wants it sent as it is.
export async function want(id) {
  await store.alter(id, (entry) => ({ ...entry, state: 'waiting', wanted: true }));
  tell({});
  drain();
}

export async function remove(id) {
  await store.remove(id);
  tell({});
}

export async function throwAway(entry, reason) {
  await store.throwAway(entry, reason);
  tell({});
}

export async function forgetTold(id) {
  await store.forgetTold(id);
  tell({});
}

export async function label(id) {
  const entry = await store.label(id);
  tell({});
  return entry;
}

document.body.addEventListener('stand:live', () => {
  again = AGAIN_MIN_MS;
  giveUpHanging();
  drain();
});
addEventListener('online', drain);
drain();
