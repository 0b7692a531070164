// Keeps a board live: connects, shows frames, notices silence, and comes back by itself after any
// loss. The last rows stay in sight meanwhile, marked as old. A silent connection may still come
// to life, so it is kept while another is tried: the first of them to speak is the one.
import { show } from './frames.js';
import { whenReached } from './reach.js';
import { guess, hear, now } from './server-clock.js';

const LOOK_MS = 2500;
const SILENT_MS = 4000;
const LATE_MS = 3000;
const OPENS_MS = 3000;
const FIRST_FRAME_MS = 8000;
const REST_MS = 1000;
const SLEPT_MS = 2000;
const TICK_MS = 250;

// The server ends a socket so when whoever looks may no longer; the page then asks to sign in.
const NO_LONGER = 1008;

const board = document.querySelector('[data-board]');
const live = document.getElementById('live');
let socket = null;
let next = null;
let nextAt = 0;
let restUntil = 0;
let stopLooking = null;
let heardAt = performance.now();
let freshAtMs = Number(board.dataset.now);
let isLive = false;
let clocksApart = Date.now() - performance.now();

function address() {
  const scheme = location.protocol === 'https:' ? 'wss:' : 'ws:';
  const { board: name, epoch, seq, lang } = board.dataset;
  return `${scheme}//${location.host}/ws/boards/${encodeURIComponent(name)}`
    + `?after=${encodeURIComponent(epoch)}:${seq}&lang=${lang}&form=html`;
}

function alive(atMs) {
  keepOnly(socket);
  heardAt = performance.now();
  freshAtMs = atMs;
  hear(atMs);
}

// What hung in the network and comes in a heap afterwards is no sign that the server is there now.
function isLate(atMs) {
  return isLive && now() - atMs > LATE_MS;
}

function askForAll() {
  if (socket?.readyState === WebSocket.OPEN) {
    socket.send('whole');
  }
}

function onFrame(text) {
  const frame = new DOMParser().parseFromString(text, 'text/html').querySelector('.frame');
  if (!frame || frame.dataset.board !== board.dataset.board) {
    return;
  }
  if (frame.dataset.columns !== board.dataset.columns) {
    location.reload();
    return;
  }
  const whole = frame.dataset.prev === '0';
  const follows = frame.dataset.epoch === board.dataset.epoch
    && frame.dataset.prev === board.dataset.seq;
  const late = isLate(Number(frame.dataset.now));
  if (!late) {
    alive(Number(frame.dataset.now));
  }
  if ((!whole && !follows) || !show(board, frame)) {
    askForAll();
    return;
  }
  const back = !isLive;
  isLive = true;
  tell();
  if (back) {
    document.body.dispatchEvent(new CustomEvent('stand:live'));
  }
}

function onMessage(event) {
  wake();
  const beat = /^beat \d+ (\d+)$/.exec(event.data);
  if (!beat) {
    onFrame(event.data);
  } else if (!isLate(Number(beat[1]))) {
    alive(Number(beat[1]));
    tell();
  }
}

function look() {
  if (!stopLooking && !next && performance.now() > restUntil) {
    stopLooking = whenReached(connect);
  }
}

function keepOnly(mine) {
  stopLooking?.();
  stopLooking = null;
  const others = [socket, next].filter((other) => other && other !== mine);
  socket = mine;
  next = null;
  others.forEach((other) => other.close());
}

function connect() {
  const mine = new WebSocket(address());
  stopLooking = null;
  next = mine;
  nextAt = performance.now();
  mine.addEventListener('message', (event) => {
    if (next === mine) {
      isLive = false;
      keepOnly(mine);
    }
    if (socket === mine) {
      onMessage(event);
    }
  });
  mine.addEventListener('close', (event) => {
    if (event.code === NO_LONGER) {
      location.reload();
    } else {
      gone(mine);
    }
  });
}

function gone(mine) {
  if (next === mine) {
    next = null;
    restUntil = performance.now() + REST_MS * (0.75 + Math.random() / 2);
  } else if (socket === mine) {
    socket = null;
    isLive = false;
    tell();
    look();
  }
}

function tell() {
  const silent = performance.now() - heardAt > SILENT_MS;
  const stale = silent || !isLive;
  const seconds = Math.max(0, Math.round((now() - freshAtMs) / 1000));
  const late = stale && (silent || seconds >= 2);
  document.body.classList.toggle('stale', late);
  const old = board.dataset.away === 'true'
    ? live.dataset.lost : live.dataset.stale.replace('%', seconds);
  const text = late ? old : live.dataset.live;
  if (live.textContent !== text && (isLive || late)) {
    live.textContent = text;
  }
}

// A clock that stood still while the other went on: the tablet slept, and what it shows is old, as
// is what came before it slept and is read only now.
function wake() {
  const apart = Date.now() - performance.now();
  const slept = apart - clocksApart;
  clocksApart = apart;
  if (slept > SLEPT_MS) {
    hear(now() + slept);
    heardAt -= slept;
    askForAll();
  }
}

function giveUpNext() {
  const patience = next?.readyState === WebSocket.CONNECTING ? OPENS_MS : FIRST_FRAME_MS;
  if (next && performance.now() - nextAt > patience) {
    const hanging = next;
    next = null;
    hanging.close();
  }
}

function tick() {
  wake();
  giveUpNext();
  if (!socket || performance.now() - heardAt > LOOK_MS) {
    look();
  }
  tell();
}

setInterval(tick, TICK_MS);
document.addEventListener('visibilitychange', tick);
document.addEventListener('resume', tick);
addEventListener('pageshow', tick);
addEventListener('online', tick);

if (board.dataset.away === 'true') {
  guess();
  freshAtMs = now();
} else {
  hear(freshAtMs);
}
connect();
