// Keeps a board live: connects, shows frames, notices silence, and comes back by itself after any
// loss. The last rows stay in sight meanwhile, marked as old.
import { show } from './frames.js';
import { guess, hear, now } from './server-clock.js';

const SILENT_MS = 5000;
const DEAD_MS = 8000;
const WAIT_MIN_MS = 250;
const WAIT_MAX_MS = 2000;

// The server ends a socket so when whoever looks may no longer; the page then asks to sign in.
const NO_LONGER = 1008;

const board = document.querySelector('[data-board]');
const live = document.getElementById('live');
let socket = null;
let wait = WAIT_MIN_MS;
let heardAt = performance.now();
let freshAtMs = Number(board.dataset.now);
let isLive = false;

function address() {
  const scheme = location.protocol === 'https:' ? 'wss:' : 'ws:';
  const { board: name, epoch, seq, lang } = board.dataset;
  return `${scheme}//${location.host}/ws/boards/${encodeURIComponent(name)}`
    + `?after=${encodeURIComponent(epoch)}:${seq}&lang=${lang}&form=html`;
}

function alive(atMs) {
  heardAt = performance.now();
  freshAtMs = atMs;
  hear(atMs);
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
  alive(Number(frame.dataset.now));
  if ((!whole && !follows) || !show(board, frame)) {
    socket.send('whole');
    return;
  }
  const back = !isLive;
  isLive = true;
  wait = WAIT_MIN_MS;
  tell();
  if (back) {
    document.body.dispatchEvent(new CustomEvent('stand:live'));
  }
}

function onMessage(event) {
  const beat = /^beat \d+ (\d+)$/.exec(event.data);
  if (beat) {
    alive(Number(beat[1]));
    tell();
  } else {
    onFrame(event.data);
  }
}

function connect() {
  const mine = new WebSocket(address());
  socket = mine;
  mine.addEventListener('message', (event) => {
    if (socket === mine) {
      onMessage(event);
    }
  });
  mine.addEventListener('close', (event) => {
    if (socket === mine && event.code === NO_LONGER) {
      location.reload();
    } else if (socket === mine) {
      lost();
    }
  });
}

function lost() {
  socket = null;
  isLive = false;
  tell();
  setTimeout(connect, wait * (0.75 + Math.random() / 2));
  wait = Math.min(WAIT_MAX_MS, wait * 2);
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

setInterval(() => {
  tell();
  if (socket && performance.now() - heardAt > DEAD_MS) {
    const dead = socket;
    heardAt = performance.now() - SILENT_MS;
    lost();
    dead.close();
  }
}, 500);

if (board.dataset.away === 'true') {
  guess();
  freshAtMs = now();
} else {
  hear(freshAtMs);
}
connect();
