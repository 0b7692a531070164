// Shows what waits: one calm line beside the title, and the orders above the open ones. A refused
// order can be opened in the call line or thrown away with a reason; nothing goes by itself.
import { element } from './dom.js';
import { current, say } from './kit.js';
import { reopen } from './place.js';
import { setText } from './call-line.js';
import { told, waiting } from './outbox-store.js';
import * as outbox from './outbox.js';

const REASONS = ['mind', 'gone', 'wrong', 'out'];
const LOOK_MS = 15000;

const note = document.getElementById('outbox-note');
const list = document.getElementById('outbox');
const form = document.getElementById('call-form');
const time = new Intl.DateTimeFormat('en-GB', {
  hour: 'numeric', minute: '2-digit', timeZone: form.dataset.zone,
});
let asking = 0;
let drawn = 0;
let signIn = false;

function button(text, does, act) {
  const made = element('button', {}, text);
  made.type = 'button';
  made.dataset.act = act;
  made.addEventListener('click', does);
  return made;
}

function at(entry) {
  return time.format(new Date(entry.takenAtMs));
}

function reasons(entry) {
  const taps = REASONS.map((why) => {
    const reason = say('reason.' + why);
    return button(reason, () => outbox.throwAway(entry, reason), why);
  });
  const keep = button(say('outbox.throw.keep'), () => {
    asking = 0;
    draw();
  }, 'keep');
  return element('p', { class: 'acts reasons' },
    element('span', {}, say('outbox.throw.why')), ...taps, keep);
}

function throwButton(entry) {
  return button(say('outbox.throw'), () => {
    asking = entry.id;
    draw();
  }, 'throw');
}

function acts(entry, old) {
  if (asking === entry.id) {
    return reasons(entry);
  }
  if (entry.number > 0) {
    const there = element('a', { class: 'button' }, say('outbox.look', entry.number));
    there.href = `/counter/orders/${entry.order}/money`;
    return element('p', { class: 'acts' }, there, throwButton(entry));
  }
  return element('p', { class: 'acts' },
    old && button(say('outbox.send'), () => outbox.want(entry.id), 'send'),
    button(say('outbox.open'), () => reopen(entry), 'open'),
    throwButton(entry));
}

function row(entry) {
  const refused = entry.state === 'refused';
  const old = !refused && outbox.isOld(entry);
  const what = [entry.label ? say('outbox.waiting', entry.label) : '', entry.name]
    .filter(Boolean).join(' · ');
  const why = refused ? say('outbox.refused', entry.sentence) : old && say('outbox.old');
  const made = element('li', refused || old ? { class: 'needs-you' } : {},
    what && element('b', {}, what),
    element('p', {}, entry.lines.join(' · ')),
    element('p', { class: 'state' }, [say('outbox.taken', at(entry)), entry.total,
      entry.paid && say('pay.paid')].filter(Boolean).join(' · ')),
    why && element('p', { class: 'why' }, why),
    (refused || old) && acts(entry, old));
  made.dataset.entry = entry.id;
  return made;
}

function known(one) {
  const made = element('li', { class: 'became' },
    element('b', {}, say('outbox.became', one.label, one.number)),
    one.name && element('p', {}, one.name),
    element('p', { class: 'acts' }, button(say('outbox.became.known'),
      () => outbox.forgetTold(one.id), 'known')));
  made.dataset.told = one.id;
  return made;
}

function counted(key, count, ...rest) {
  return count === 1 ? say(key[0], ...rest) : say(key[1], count, ...rest);
}

function tellSignIn(count) {
  const text = counted(['outbox.sign-in-one', 'outbox.sign-in-many'], count);
  if (note.textContent !== text) {
    const there = element('a', {}, text);
    there.href = `/sign-in?back=${encodeURIComponent(location.pathname)}`;
    note.replaceChildren(there);
  }
}

function tellHead(entries, looked) {
  if (signIn && entries.length > looked.length) {
    tellSignIn(entries.length - looked.length);
    return;
  }
  const waits = entries.filter((entry) => entry.label && !looked.includes(entry));
  const parts = [];
  if (waits.length > 0) {
    parts.push(counted(['outbox.one', 'outbox.many'], waits.length, at(waits[0])));
  }
  if (looked.length > 0) {
    parts.push(counted(['outbox.refused-one', 'outbox.refused-many'], looked.length));
  }
  const text = parts.join(' · ');
  if (note.textContent !== text) {
    note.textContent = text;
  }
}

async function draw() {
  if (!current()) {
    return;
  }
  drawn++;
  const mine = drawn;
  const [entries, numbers] = await Promise.all([waiting(), told()]);
  if (mine !== drawn) {
    return;
  }
  const looked = entries.filter((entry) => entry.state === 'refused' || outbox.isOld(entry));
  const shown = entries.filter((entry) => entry.label || looked.includes(entry));
  tellHead(entries, looked);
  list.hidden = shown.length + numbers.length === 0;
  list.replaceChildren(...(list.hidden ? [] : [
    element('h2', {}, say('outbox.title')),
    element('ol', {}, ...shown.map(row), ...numbers.map(known)),
  ]));
}

function look(news) {
  if (news?.id) {
    signIn = Boolean(news.signIn);
  }
  draw().catch(() => {
    note.textContent = say('outbox.no-store');
  });
}

outbox.watch(look);
document.body.addEventListener('kit:ready', () => look());
setInterval(() => look(), LOOK_MS);
look();
