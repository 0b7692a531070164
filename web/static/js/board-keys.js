// A cheap number pad works the board: digit = the row's main key, "." and a digit = start,
// "+" and a digit = ask the counter, "-" and a digit = make again, "-" and 0 = make again what went
// up last, 0 = bring back what went up last.
import {
  ask, isAsking, isRemaking, oneMoreRemade, remakeLast, startAsking, startRemake, stopAsking,
} from './board-ask.js';

const ARMED_MS = 4000;
const SAID_MS = 4000;

const board = document.querySelector('[data-board]');
const note = document.getElementById('armed');
let armed = '';
let timer = 0;

function say(text, ms) {
  clearTimeout(timer);
  note.textContent = text;
  note.hidden = text === '';
  timer = text ? setTimeout(disarm, ms) : 0;
}

function arm(what) {
  armed = what;
  say(note.dataset[what], ARMED_MS);
}

function disarm() {
  armed = '';
  say('', 0);
}

function begin(row) {
  const start = row.querySelector('[data-act="start"]');
  const number = row.querySelector('.number').textContent;
  if (start) {
    start.click();
  } else {
    const why = row.classList.contains('unseen') ? 'unseen' : 'begun';
    say(note.dataset[why].replace('%', number), SAID_MS);
  }
}

function press(digit) {
  if (isAsking()) {
    ask(digit);
    return;
  }
  const row = board.querySelector(`[data-digit="${digit}"]:not([hidden])`);
  const wanted = armed;
  disarm();
  if (!row) {
    say(wanted ? note.dataset.absent.replace('%', digit) : '', SAID_MS);
  } else if (wanted === 'start') {
    begin(row);
  } else if (wanted === 'ask') {
    startAsking(row);
  } else if (wanted === 'remake') {
    startRemake(row);
  } else {
    row.querySelector('[data-act="main"]')?.click();
  }
}

function askOrNot() {
  if (isAsking() || armed === 'ask') {
    stopAsking();
    disarm();
  } else {
    arm('ask');
  }
}

function remakeOrMore() {
  if (isRemaking()) {
    oneMoreRemade();
  } else if (armed === 'remake') {
    disarm();
  } else {
    stopAsking();
    arm('remake');
  }
}

function zero() {
  if (armed === 'remake') {
    disarm();
    remakeLast();
  } else {
    disarm();
    board.querySelector('.back-last')?.click();
  }
}

document.addEventListener('keydown', (event) => {
  if (event.repeat || event.ctrlKey || event.altKey || event.metaKey
      || event.target.closest('input, textarea, select')) {
    return;
  }
  if (event.key === '.' || event.key === ',' || event.code === 'NumpadDecimal') {
    arm('start');
  } else if (event.key === '+' && board.classList.contains('station')) {
    askOrNot();
  } else if (event.key === '-' && board.classList.contains('station')) {
    remakeOrMore();
  } else if (event.key === '0') {
    zero();
  } else if (/^[1-9]$/.test(event.key)) {
    press(event.key);
  } else if (event.key === 'Escape') {
    disarm();
    stopAsking();
  } else {
    return;
  }
  event.preventDefault();
});
