// One soft sound for what must be read, a change or an answer on a board or a question at the
// counter, and a lower one for new rows, never two at once. A page may sound only after somebody
// has touched it; until then, and on a screen that was set to be silent, it is silent.
const CHANGE_HERTZ = 660;
const ROW_HERTZ = 440;

const board = document.querySelector('[data-board]');
let context = null;
let known = marks();
let shown = rows();

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

// New rows sound at the stations that make them; elsewhere they come all day.
function rows() {
  const found = board.classList.contains('station') ? board.querySelectorAll('.row[data-row]') : [];
  return new Set(Array.from(found, (row) => row.dataset.row));
}

function isNew(now, before) {
  return Array.from(now).some((mark) => !before.has(mark));
}

function chime(hertz) {
  if (document.body.dataset.sound === 'off' || !context || context.state !== 'running') {
    return;
  }
  const at = context.currentTime;
  const tone = context.createOscillator();
  const loud = context.createGain();
  tone.frequency.value = hertz;
  loud.gain.setValueAtTime(0.0001, at);
  loud.gain.exponentialRampToValueAtTime(0.12, at + 0.02);
  loud.gain.exponentialRampToValueAtTime(0.0001, at + 0.5);
  tone.connect(loud).connect(context.destination);
  tone.start(at);
  tone.stop(at + 0.5);
}

function sound(hertz, counted) {
  chime(hertz);
  board.dataset[counted] = String(Number(board.dataset[counted] || 0) + 1);
}

board.addEventListener('board:shown', () => {
  const now = marks();
  const here = rows();
  if (isNew(now, known)) {
    sound(CHANGE_HERTZ, 'sounded');
  } else if (isNew(here, shown)) {
    sound(ROW_HERTZ, 'rang');
  }
  known = now;
  shown = here;
});
