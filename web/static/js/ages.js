// Minutes and bars grow with the stand's clock.
import { showAges } from './age-rows.js';
import { now } from './server-clock.js';

const board = document.querySelector('[data-board]');
const clock = document.getElementById('clock');
const time = clock && new Intl.DateTimeFormat('en-GB', {
  hour: 'numeric', minute: '2-digit', timeZone: clock.dataset.zone,
});

function tick() {
  const atMs = now();
  showAges(board, atMs);
  if (clock) {
    const text = time.format(new Date(atMs));
    if (clock.textContent !== text) {
      clock.textContent = text;
    }
  }
}

board.addEventListener('board:shown', tick);
setInterval(tick, 1000);
tick();
