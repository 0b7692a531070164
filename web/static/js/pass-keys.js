// A number pad works the pass: digit = hand over, "." and a digit = call the number, "*" and a
// digit and how many = count its bags, 0 = bring back what was handed last.
const ARMED_MS = 4000;

const board = document.querySelector('[data-board]');
const note = document.getElementById('armed');
let armed = '';
let bagsOf = '';
let timer = 0;

function say(text) {
  clearTimeout(timer);
  note.textContent = text;
  note.hidden = text === '';
  timer = text ? setTimeout(disarm, ARMED_MS) : 0;
}

function disarm() {
  armed = '';
  bagsOf = '';
  say('');
}

function arm(what) {
  armed = what;
  bagsOf = '';
  say(board.dataset[what]);
}

function count(bags) {
  const address = `/pass/orders/${bagsOf}/bags`;
  disarm();
  htmx.ajax('POST', address, { source: board, target: '#said', values: { bags } });
}

function askHowMany(row) {
  bagsOf = row.dataset.row;
  armed = '';
  say(board.dataset.howMany.replace('%', row.querySelector('.number').textContent));
}

function press(digit) {
  if (bagsOf) {
    count(digit);
    return;
  }
  const row = board.querySelector(`[data-digit="${digit}"]:not([hidden])`);
  const wanted = armed;
  disarm();
  if (!row) {
    say(board.dataset.absent.replace('%', digit));
  } else if (wanted === 'bags') {
    askHowMany(row);
  } else {
    row.querySelector(`[data-act="${wanted || 'main'}"]`).click();
  }
}

document.addEventListener('keydown', (event) => {
  if (event.repeat || event.ctrlKey || event.altKey || event.metaKey
      || event.target.closest('input, textarea, select')) {
    return;
  }
  if (event.key === '.' || event.key === ',' || event.code === 'NumpadDecimal') {
    arm('call');
  } else if (event.key === '*') {
    arm('bags');
  } else if (/^[1-9]$/.test(event.key)) {
    press(event.key);
  } else if (event.key === '0') {
    disarm();
    board.querySelector('[data-act="back"]')?.click();
  } else if (event.key === 'Escape') {
    disarm();
  } else {
    return;
  }
  event.preventDefault();
});
