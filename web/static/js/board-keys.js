// A cheap number pad works the board: digit = the row's main key, "." and a digit = start,
// 0 = bring back what went up last.
const ARMED_MS = 4000;

const board = document.querySelector('[data-board]');
const armedNote = document.getElementById('armed');
let armed = 0;

function arm() {
  clearTimeout(armed);
  armed = setTimeout(disarm, ARMED_MS);
  if (armedNote) {
    armedNote.hidden = false;
  }
}

function disarm() {
  clearTimeout(armed);
  armed = 0;
  if (armedNote) {
    armedNote.hidden = true;
  }
}

function press(digit) {
  const row = board.querySelector(`[data-digit="${digit}"]:not([hidden])`);
  const act = armed ? 'start' : 'main';
  disarm();
  row?.querySelector(`[data-act="${act}"]`)?.click();
}

document.addEventListener('keydown', (event) => {
  if (event.repeat || event.ctrlKey || event.altKey || event.metaKey
      || event.target.closest('input, textarea, select')) {
    return;
  }
  if (event.key === '.' || event.key === ',' || event.code === 'NumpadDecimal') {
    arm();
  } else if (event.key === '0') {
    disarm();
    board.querySelector('.back-last')?.click();
  } else if (/^[1-9]$/.test(event.key)) {
    press(event.key);
  } else if (event.key === 'Escape') {
    disarm();
  } else {
    return;
  }
  event.preventDefault();
});
