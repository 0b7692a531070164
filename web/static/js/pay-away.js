// Money for an order that waits here: cash or card, for the whole of it. It goes in right behind
// its order, with what was handed over, so that the till adds up as if the server had been there.
import { current, say } from './kit.js';
import { element } from './dom.js';
import { newKey } from './keys.js';
import * as outbox from './outbox.js';

const place = document.getElementById('pay-place');
const call = document.getElementById('call');
const touch = matchMedia('(pointer: coarse)').matches;

function money(cents) {
  return current().money(String(cents));
}

function close() {
  place.replaceChildren();
  call.focus();
}

function head(entry, ...more) {
  return element('div', { class: 'pay-head' },
    element('p', { class: 'pay-who' }, element('b', {}, say('outbox.waiting', entry.label))),
    ...more);
}

function show(entry, ...parts) {
  place.replaceChildren(element('section', { class: 'pay', 'data-pay': entry.totalCents,
    'data-seen': 'yes', 'aria-label': say('outbox.waiting', entry.label) }, ...parts));
}

function next() {
  const button = element('button', { type: 'button', 'data-pay-close': '' }, say('pay.next'), ' ',
    element('kbd', {}, say('counter.clear.key')));
  button.addEventListener('click', close);
  return button;
}

// What is big is what the hand does next: the change to give.
function showTaken(entry, what, amount, pieces) {
  const list = element('ul', { class: 'pieces' },
    ...pieces.map((piece) => element('li', {}, piece)));
  show(entry, head(entry),
    element('div', { class: 'change', role: 'status' },
      element('p', { class: 'change-due' }, element('span', {}, say(what)), ' ',
        element('b', {}, amount)),
      element('div', { class: 'change-more' }, list)),
    element('p', { class: 'pay-next' }, next()));
}

async function take(entry, fields, shown) {
  const key = newKey();
  const body = new URLSearchParams({ key, tip: '', ...fields }).toString();
  const path = '/counter/orders/{order}/payments';
  if (await outbox.andThen(entry.id, { path, key, body }, { paid: true })) {
    shown();
  } else {
    complain(say('outbox.pay-gone'));
  }
}

function complain(sentence) {
  const said = place.querySelector('[role="alert"]');
  said.textContent = sentence;
  said.hidden = false;
}

function takeCash(entry, cents) {
  const due = String(entry.totalCents);
  const exact = Number(current().tenders(due).split(' ')[0]);
  if (!(cents >= exact)) {
    complain(say('outbox.pay-short', money(exact)));
    return;
  }
  const pieces = current().change(due, String(cents)).split(';').filter(Boolean);
  take(entry, { way: 'cash', tendered: '', note: cents },
    () => showTaken(entry, 'pay.change', money(cents - exact), pieces));
}

function takeCard(entry) {
  take(entry, { way: 'card', tendered: '' },
    () => showTaken(entry, 'pay.by-card', entry.total, []));
}

function tap(text, does, attributes = {}) {
  const button = element('button', { type: 'button', ...attributes }, text);
  button.addEventListener('click', does);
  return button;
}

// Offers to take the money of an order that waits here.
export function offer(entry) {
  const [exact, ...notes] = current().tenders(String(entry.totalCents)).split(' ').map(Number);
  const given = element('input', { id: 'tendered', type: 'text', inputmode: 'decimal',
    maxlength: '12', placeholder: current().typed(String(exact)),
    'data-tenders': notes.map((cents) => current().typed(String(cents))).join(' ') });
  const form = element('form', { class: 'pay-form', autocomplete: 'off' },
    element('div', { class: 'pay-typed' },
      element('label', { class: 'pay-given' }, element('span', {}, say('pay.given')), given),
      element('button', { type: 'submit', class: 'place' }, say('pay.cash'), ' ',
        element('kbd', {}, say('counter.place.enter'))),
      tap(say('pay.later'), close, { 'data-pay-close': '' })),
    element('div', { class: 'tenders', role: 'group', 'aria-label': say('pay.notes') },
      tap(say('pay.exact') + ' ' + money(exact), () => takeCash(entry, exact)),
      ...notes.map((cents) => tap(money(cents), () => takeCash(entry, cents))),
      tap(say('pay.card') + ' ' + entry.total, () => takeCard(entry),
        { class: 'card', 'data-card': '' })));
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const cents = given.value.trim() ? current().cents(given.value) : String(exact);
    if (cents) {
      takeCash(entry, Number(cents));
    } else {
      complain(say('pay.no-amount', given.value));
    }
  });
  show(entry, head(entry, element('p', { class: 'pay-due' },
    element('span', {}, say('counter.placed.total')), ' ', element('b', {}, entry.total))),
  element('p', { class: 'refused-order', role: 'alert', hidden: '' }), form);
  if (!touch && !call.value) {
    given.focus();
  }
}
