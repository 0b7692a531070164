// Placing an order: it goes into the outbox first and to the server from there. With the server
// there, that is one step; with it away, the order waits here and the guest is told a label.
import { element, refuse } from './dom.js';
import * as draft from './draft.js';
import { current, isOutdated, renew, say } from './kit.js';
import { draw, readNow } from './reading.js';
import { now } from './server-clock.js';
import * as outbox from './outbox.js';
import { offer } from './pay-away.js';
import { newKey } from './keys.js';
import { setText } from './call-line.js';

const PATIENCE_MS = 900;

const form = document.getElementById('call-form');
const call = document.getElementById('call');
const name = document.getElementById('name');
const answer = document.getElementById('answer');
let underWay = null;
let keptId = 0;
let direct = false;
let opened = 0;

function entryOf(view) {
  const takenAtMs = Math.round(now());
  const key = newKey();
  const service = form.querySelector('[name="service"]:checked').value;
  const body = new URLSearchParams({
    key, call: call.value, name: name.value, service,
    'told-menu': current().revision(), 'told-cents': view.totalCents, 'taken-at': takenAtMs,
  });
  return {
    requests: [{ path: '/counter/orders', key, body: body.toString() }], order: '', number: 0,
    paid: false, takenAtMs, call: call.value, name: name.value.trim(), service, total: view.total,
    totalCents: view.totalCents,
    lines: view.lines.map((line) => line.text),
  };
}

function showKept(entry) {
  answer.replaceChildren(element('div', { class: 'placed kept' },
    element('p', { class: 'placed-number' }, say('outbox.kept', entry.label)),
    element('p', { class: 'placed-total' }, element('span', {}, say('outbox.pay')), ' ',
      element('b', {}, entry.total)),
    element('p', { class: 'kept-why' }, say('outbox.kept.why'))));
}

function showAnswer(html) {
  window.htmx.swap('#answer', html, { swapStyle: 'innerHTML' });
}

function emptied(entry) {
  document.body.dispatchEvent(new CustomEvent('placed', { detail: { call: entry.call } }));
}

// No answer in time: the order waits here, and the next guest is served.
async function keepHere(id) {
  if (underWay?.id !== id) {
    return;
  }
  underWay = null;
  const entry = await outbox.label(id);
  if (entry) {
    keptId = id;
    showKept(entry);
    emptied(entry);
    offer(entry);
  }
}

// The answer to an order that had to wait: its number and its paying take the label's place, unless
// the next guest's call has taken it already.
function heardLate(news) {
  keptId = 0;
  if (news.html && !call.value && answer.querySelector('.kept')) {
    showAnswer(news.html);
  }
}

async function heard(news) {
  if (news.id && news.id === keptId && news.kind === 'done') {
    heardLate(news);
    return;
  }
  if (!news.id || news.id !== underWay?.id) {
    return;
  }
  if (news.kind === 'away') {
    await keepHere(news.id);
    return;
  }
  const entry = underWay;
  underWay = null;
  if (news.kind === 'refused') {
    refuse(answer, news.sentence || '');
    // What was typed stands in the line still, so it need not wait in the outbox too.
    if (call.value === entry.call) {
      await outbox.remove(entry.id);
      keepDraft();
    }
    call.focus();
    return;
  }
  if (news.html) {
    showAnswer(news.html);
    news.triggers.split(',').map((name) => name.trim()).filter((name) => name && name !== 'placed')
      .forEach((name) => document.body.dispatchEvent(new CustomEvent(name)));
  }
  emptied(entry);
}

async function place() {
  const view = readNow(true);
  draw(view);
  // A card's number must not even wait in the browser.
  if (current().holdsCard(name.value)) {
    refuse(answer, say('refusal.CARD_NUMBER', say('field.name')));
    name.focus();
    return;
  }
  if (!view.placeable) {
    refuse(answer, view.fault?.sentence || '');
    return;
  }
  const entry = entryOf(view);
  underWay = { id: -1, call: entry.call };
  try {
    const kept = await outbox.put(entry, opened);
    draft.forget();
    opened = 0;
    underWay = kept;
    setTimeout(() => keepHere(kept.id), PATIENCE_MS);
  } catch {
    // This browser keeps nothing: the server is asked directly, as without scripts.
    underWay = null;
    direct = true;
    form.requestSubmit();
  }
}

function fill(taken) {
  name.value = taken.name;
  form.querySelector(`[name="service"][value="${taken.service}"]`).checked = true;
  setText(taken.call);
}

// An order from the outbox comes back into the line, and is replaced when it is placed.
export function reopen(entry) {
  opened = entry.id;
  fill(entry);
  call.focus();
}

// Without a reader nobody could tell a card's number, so nothing is kept then.
function keepDraft() {
  if (!current() || form.dataset.edit === 'true' || underWay?.call === call.value) {
    return;
  }
  const safe = (text) => (current().holdsCard(text) ? '' : text);
  const service = form.querySelector('[name="service"]:checked').value;
  draft.keep({ call: safe(call.value), name: safe(name.value), service, opened });
}

// What was being typed when the page went away; never over what is typed by now.
function restoreDraft() {
  const taken = draft.kept();
  if (taken && !call.value && !name.value && form.dataset.edit === 'false') {
    opened = taken.opened;
    fill(taken);
  }
}

form.addEventListener('submit', (event) => {
  if (direct || !current() || form.dataset.edit === 'true') {
    direct = false;
    return;
  }
  event.preventDefault();
  event.stopImmediatePropagation();
  if (!underWay) {
    place();
  }
}, { capture: true });

for (const emptied of ['input', 'read']) {
  call.addEventListener(emptied, () => {
    opened = call.value ? opened : 0;
  });
}

form.addEventListener('input', keepDraft);
call.addEventListener('read', keepDraft);
document.body.addEventListener('placed', keepDraft);
document.body.addEventListener('kit:ready', restoreDraft, { once: true });

outbox.watch(heard);

// A page that is older than its server makes way, but never under somebody's hands.
function makeWay() {
  if (isOutdated() && !call.value && !name.value && !underWay
      && form.dataset.edit === 'false') {
    renew();
  }
}

document.body.addEventListener('kit:ready', makeWay);
document.body.addEventListener('placed', () => setTimeout(makeWay, 60000));
