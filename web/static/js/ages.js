// Minutes and bars grow with the stand's clock. Late is heavier, not another colour.
import { now } from './server-clock.js';

const board = document.querySelector('[data-board]');
const clock = document.getElementById('clock');
const targetMs = Number(board.dataset.targetMs || 0);
const time = clock && new Intl.DateTimeFormat('en-GB', {
  hour: 'numeric', minute: '2-digit', timeZone: clock.dataset.zone,
});

function age(row, atMs) {
  const ms = Math.max(0, atMs - Number(row.dataset.since));
  const minutes = row.querySelector('.minutes');
  const text = String(Math.floor(ms / 60000));
  if (minutes && minutes.textContent !== text) {
    minutes.textContent = text;
  }
  if (targetMs > 0) {
    row.style.setProperty('--age', Math.min(1, ms / targetMs).toFixed(3));
    row.classList.toggle('late', ms > targetMs);
  }
}

function tick() {
  const atMs = now();
  for (const row of board.querySelectorAll('[data-since]')) {
    age(row, atMs);
  }
  for (const count of document.querySelectorAll('[data-minutes]')) {
    const text = String(Math.max(0, Math.floor((atMs - Number(count.dataset.minutes)) / 60000)));
    if (count.textContent !== text) {
      count.textContent = text;
    }
  }
  for (const count of document.querySelectorAll('[data-count]')) {
    const seconds = Math.max(0, Math.floor((atMs - Number(count.dataset.count)) / 1000));
    const text = Math.floor(seconds / 60) + ':' + String(seconds % 60).padStart(2, '0');
    if (count.textContent !== text) {
      count.textContent = text;
    }
  }
  for (const count of document.querySelectorAll('[data-until]')) {
    const seconds = Math.max(0, Math.ceil((Number(count.dataset.until) - atMs) / 1000));
    const text = Math.floor(seconds / 60) + ':' + String(seconds % 60).padStart(2, '0');
    if (count.textContent !== text) {
      count.textContent = text;
    }
  }
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
