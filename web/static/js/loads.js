// Counted down with the stand's clock; Enter begins the first load that is not begun, "/" puts up
// the first that is under way.
import { showLoads } from './load-times.js';
import { now } from './server-clock.js';

const board = document.querySelector('[data-board]');

function say(element, text) {
  if (element && element.textContent !== text) {
    element.textContent = text;
  }
}

function tick() {
  showLoads(now());
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
