// Minutes, counts and bars of a board as they are at a moment. Late is heavier, not another colour.
export function showAges(board, atMs) {
  const targetMs = Number(board.dataset.targetMs || 0);
  for (const row of board.querySelectorAll('[data-since]')) {
    age(row, atMs, targetMs);
  }
  for (const count of document.querySelectorAll('[data-minutes]')) {
    say(count, String(Math.max(0, Math.floor((atMs - Number(count.dataset.minutes)) / 60000))));
  }
  for (const count of document.querySelectorAll('[data-count]')) {
    say(count, clock(Math.max(0, Math.floor((atMs - Number(count.dataset.count)) / 1000))));
  }
  for (const count of document.querySelectorAll('[data-until]')) {
    say(count, clock(Math.max(0, Math.ceil((Number(count.dataset.until) - atMs) / 1000))));
  }
}

function age(row, atMs, targetMs) {
  const ms = Math.max(0, atMs - Number(row.dataset.since));
  const minutes = row.querySelector('.minutes');
  if (minutes) {
    say(minutes, String(Math.floor(ms / 60000)));
  }
  if (targetMs > 0) {
    row.style.setProperty('--age', Math.min(1, ms / targetMs).toFixed(3));
    row.classList.toggle('late', ms > targetMs);
  }
}

function clock(seconds) {
  return Math.floor(seconds / 60) + ':' + String(seconds % 60).padStart(2, '0');
}

function say(element, text) {
  if (element.textContent !== text) {
    element.textContent = text;
  }
}
