// One soft sound for what must be read: a change or an answer on a board, a question at the
// counter. A page may sound only after somebody has touched it; until then it is silent.
const board = document.querySelector('[data-board]');
let context = null;
let known = marks();

for (const touch of ['pointerdown', 'keydown']) {
  addEventListener(touch, () => {
    context ||= new AudioContext();
  }, { once: true });
}

function marks() {
  const rows = board.querySelectorAll('.row.unseen[data-row]');
  const query = document.querySelector('[data-query]');
  const found = Array.from(
    rows, (row) => row.dataset.row + (row.querySelector('.note') ? '?' : ''));
  return new Set(query ? [...found, query.dataset.query] : found);
}

function chime() {
  if (!context || context.state !== 'running') {
    return;
  }
  const at = context.currentTime;
  const tone = context.createOscillator();
  const loud = context.createGain();
  tone.frequency.value = 660;
  loud.gain.setValueAtTime(0.0001, at);
  loud.gain.exponentialRampToValueAtTime(0.12, at + 0.02);
  loud.gain.exponentialRampToValueAtTime(0.0001, at + 0.5);
  tone.connect(loud).connect(context.destination);
  tone.start(at);
  tone.stop(at + 0.5);
}

board.addEventListener('board:shown', () => {
  const now = marks();
  if (Array.from(now).some((mark) => !known.has(mark))) {
    chime();
    board.dataset.sounded = String(Number(board.dataset.sounded || 0) + 1);
  }
  known = now;
});
