// One window sends at a time. Browsers have locks for that, but only where the page came over https
// or from this very machine; elsewhere a note in the database says whose turn it is.
import { change } from './outbox-store.js';

const TURN = 'outbox';
const TURN_MS = 20000;

const me = Array.from(crypto.getRandomValues(new Uint8Array(8))).join('.');

function take(untilMs) {
  return change(['turns'], (turns, done) => {
    const asked = turns.get(TURN);
    asked.onsuccess = () => {
      const held = asked.result;
      const free = !held || held.by === me || held.untilMs < Date.now()
        || held.untilMs > Date.now() + 2 * TURN_MS;
      if (free) {
        turns.put({ id: TURN, by: me, untilMs });
      }
      done(free);
    };
  });
}

// Whether it is still this window's turn; asked before every request, which takes less than a turn.
function keep() {
  return take(Date.now() + TURN_MS);
}

async function withNote(work) {
  if (!await keep()) {
    return false;
  }
  try {
    await work(keep);
  } finally {
    await take(0);
  }
  return true;
}

// Does the work if no other window is at it, and says whether it did. What it is given says before
// each request whether the turn still holds.
export function inTurn(work) {
  if (!navigator.locks) {
    return withNote(work);
  }
  return navigator.locks.request('sopwell-' + TURN, { ifAvailable: true },
    async (lock) => {
      if (lock) {
        await work(async () => true);
      }
      return lock !== null;
    });
}
