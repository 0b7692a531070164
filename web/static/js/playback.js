// A day that is over, again: the board of any moment is asked for and put in the place of the one
// that is shown. Time here is the day's own, carried on as fast as was chosen.
import { showAges } from './age-rows.js';
import { showLoads } from './load-times.js';

const LOOK_MS = 100;
const ASK_MS = { 1: 1000, 5: 500, 15: 400, 60: 300 };
const SPEEDS = [1, 5, 15, 60];

const board = document.getElementById('board');
const scrub = document.getElementById('scrub');
const play = document.getElementById('play');
const speed = document.getElementById('speed');
const clock = document.getElementById('past-clock');
const said = document.getElementById('said');
const fromMs = Number(board.dataset.from);
const end = Number(scrub.max);
const time = new Intl.DateTimeFormat('en-GB', {
  hour: 'numeric', minute: '2-digit', second: '2-digit', timeZone: clock.dataset.zone,
});

let at = Number(scrub.value);
let playing = false;
let lookedAt = performance.now();
let asking = false;
let askedAt = 0;
let shown = -1;

function show(second) {
  const text = time.format(new Date(fromMs + second * 1000));
  clock.textContent = text;
  scrub.value = String(second);
  scrub.setAttribute('aria-valuetext', text);
  const atMs = fromMs + second * 1000;
  showAges(board, atMs);
  showLoads(atMs);
}

// The lists stay, and what is in them changes: what measures the board holds on to them.
function put(fresh) {
  for (const list of fresh.querySelectorAll('[data-rows]')) {
    board.querySelector(`[data-rows="${list.dataset.rows}"]`).replaceChildren(...list.children);
  }
  for (const part of fresh.querySelectorAll('[data-part]')) {
    document.getElementById(part.id)?.replaceWith(part);
  }
}

function address(path, second) {
  return `/playback/${board.dataset.date}${path}at=${second}`;
}

async function ask() {
  const second = Math.floor(at);
  if (asking || second === shown) {
    return;
  }
  asking = true;
  askedAt = performance.now();
  try {
    const answer = await fetch(address(`/boards/${board.dataset.board}?`, second));
    const text = await answer.text();
    const page = new DOMParser().parseFromString(text, 'text/html');
    const fresh = page.getElementById('past-board');
    if (fresh && fresh.dataset.columns !== board.dataset.columns) {
      location.href = address(`?board=${board.dataset.board}&`, second);
      return;
    }
    if (fresh) {
      put(fresh);
      board.dispatchEvent(new CustomEvent('board:shown'));
      said.textContent = '';
    } else {
      pause();
      said.textContent = page.body.textContent.trim();
    }
    shown = second;
  } catch {
    pause();
    said.textContent = board.dataset.lost;
  } finally {
    asking = false;
  }
  show(Math.floor(at));
}

function to(second) {
  at = Math.max(0, Math.min(end, second));
  show(Math.floor(at));
  ask();
}

function pause() {
  playing = false;
  play.textContent = play.dataset.play;
  history.replaceState(null, '', address(`?board=${board.dataset.board}&`, Math.floor(at)));
  for (const tab of document.querySelectorAll('[data-tab]')) {
    tab.href = address(`?board=${tab.dataset.tab}&`, Math.floor(at));
  }
}

function press() {
  if (playing) {
    pause();
    return;
  }
  if (at >= end) {
    to(0);
  }
  playing = true;
  lookedAt = performance.now();
  play.textContent = play.dataset.pause;
}

function look() {
  const now = performance.now();
  if (playing) {
    at = Math.min(end, at + (now - lookedAt) / 1000 * Number(speed.value));
    show(Math.floor(at));
    if (at >= end) {
      pause();
    }
  }
  lookedAt = now;
  if (now - askedAt >= ASK_MS[speed.value]) {
    ask();
  }
}

function faster(by) {
  const next = SPEEDS[SPEEDS.indexOf(Number(speed.value)) + by];
  if (next) {
    speed.value = String(next);
  }
}

function jumped(second) {
  to(second);
  if (!playing) {
    pause();
  }
}

const KEYS = {
  ' ': press,
  ArrowLeft: () => jumped(at - 60),
  ArrowRight: () => jumped(at + 60),
  Home: () => jumped(0),
  End: () => jumped(end),
  '+': () => faster(1),
  '-': () => faster(-1),
  p: () => document.querySelector('[data-key="p"]')?.click(),
  s: () => document.querySelector('[data-key="s"]')?.click(),
};

document.addEventListener('keydown', (event) => {
  const doing = KEYS[event.key];
  if (!doing || event.ctrlKey || event.altKey || event.metaKey
      || event.target.closest('select, summary, input:not([type="range"])')
      || (event.key === ' ' && event.target.closest('button, a'))) {
    return;
  }
  event.preventDefault();
  doing();
});

document.addEventListener('click', (event) => {
  const to = event.target.closest('[data-to]');
  const by = event.target.closest('[data-by]');
  if (to) {
    event.preventDefault();
    jumped(Number(to.dataset.to));
  } else if (by) {
    jumped(at + Number(by.dataset.by));
  } else if (event.target.closest('#play')) {
    press();
  }
});

// While it is dragged only the board follows: some browsers refuse a hundred addresses in a row.
scrub.addEventListener('input', () => to(Number(scrub.value)));
scrub.addEventListener('change', () => jumped(Number(scrub.value)));
setInterval(look, LOOK_MS);
show(at);
