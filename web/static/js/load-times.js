// What to begin and what comes up, counted down to a moment. Pans say when their time has come.
export function showLoads(atMs) {
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
