// What to begin and what comes up, counted down with the stand's clock; Enter begins the first load
// that is not begun, "/" puts up the first that is under way. Pans say when their time has come.
import { now } from './server-clock.js';

const board = document.querySelector('[data-board]');

function clock(ms) {
  const seconds = Math.max(0, Math.round(ms / 1000));
  return Math.floor(seconds / 60) + ':' + String(seconds % 60).padStart(2, '0');
}

function say(element, text) {
  if (element && element.textContent !== text) {
    element.textContent = text;
  }
}

function start(load, words, atMs) {
  const ms = Number(load.dataset.startAt) - atMs;
  load.classList.toggle('due', ms < 1000);
  say(load.querySelector('.when'), ms < 1000 ? words.now : words.in.replace('%', clock(ms)));
}

function up(load, words, atMs) {
  const ms = Number(load.dataset.upAt) - atMs;
  load.classList.toggle('due', ms < 1000);
  const late = ms > -10000 ? words.upNow : words.over.replace('%', clock(-ms));
  say(load.querySelector('.when'), ms < 1000 ? late : words.upIn.replace('%', clock(ms)));
}

function tick() {
  const atMs = now();
  const words = document.getElementById('part-loads')?.dataset;
  for (const load of document.querySelectorAll('[data-start-at]')) {
    start(load, words, atMs);
  }
  for (const load of document.querySelectorAll('[data-up-at]')) {
    up(load, words, atMs);
  }
  for (const pan of document.querySelectorAll('[data-due-at]')) {
    const dueMs = Number(pan.dataset.dueAt);
    pan.classList.toggle('due', dueMs > 0 ? dueMs <= atMs : pan.dataset.empty === 'true');
  }
}

// A key in passing begins nothing before its time; a tap on the load itself does.
function press(what) {
  const button = board.querySelector(`[data-load="${what}"]`);
  const load = button?.closest('.load');
  if (what === 'start' && load && !load.classList.contains('due')) {
    const words = document.getElementById('part-loads').dataset;
    say(document.getElementById('said'),
      words.early.replace('%', load.querySelector('.when').textContent.trim()));
  } else {
    button?.click();
  }
}

document.addEventListener('keydown', (event) => {
  if (event.repeat || event.ctrlKey || event.altKey || event.metaKey
      || event.target.closest('input, textarea, select, a, summary')) {
    return;
  }
  if (event.key === 'Enter' && !event.target.closest('.asking, .load')) {
    press('start');
  } else if (event.key === '/') {
    press('up');
  } else {
    return;
  }
  event.preventDefault();
});

board.addEventListener('board:shown', tick);
setInterval(tick, 1000);
tick();
