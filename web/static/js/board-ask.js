// Asking the counter about a row, and having it made again: what can be chosen stands over the row,
// one key or tap each. The row stays where it is; the same key, or Esc, takes it away again.
const board = document.querySelector('[data-board]');
const said = document.getElementById('said');

export function isAsking() {
  return board.querySelector('.asking') !== null;
}

export function stopAsking() {
  for (const open of board.querySelectorAll('.ask-holder')) {
    open.remove();
  }
}

function choose(place, address) {
  stopAsking();
  const holder = document.createElement('div');
  holder.className = 'ask-holder';
  if (place.matches('[data-row]')) {
    holder.setAttribute('role', 'cell');
  }
  place.append(holder);
  htmx.ajax('GET', address, { target: holder, swap: 'innerHTML' });
}

export function startAsking(row) {
  const button = row.querySelector('[data-act="ask"]');
  if (button) {
    choose(row, button.dataset.question);
  }
}

export function startRemake(row) {
  const button = row.querySelector('[data-act="ask"]');
  if (button) {
    choose(row, button.dataset.remake);
  }
}

export function remakeLast() {
  const button = board.querySelector('[data-remake-last]');
  choose(document.getElementById('over-foot'), `/boards/${button.dataset.remakeLast}/remake-last`);
}

export function isRemaking() {
  return board.querySelector('.remaking') !== null;
}

// One more of them; after the last, none: the panel goes.
export function oneMoreRemade() {
  const quantity = board.querySelector('.remaking [name="quantity"]');
  const next = Number(quantity.value) + 1;
  if (next > Number(quantity.dataset.most)) {
    stopAsking();
    return;
  }
  quantity.value = String(next);
  board.querySelector('.remaking output').value = String(next);
}

export function ask(digit) {
  board.querySelector(`.asking [data-ask="${digit}"]`)?.click();
}

board.addEventListener('click', (event) => {
  const open = event.target.closest('[data-act="ask"]');
  if (open) {
    startAsking(open.closest('[data-row]'));
  } else if (event.target.closest('[data-ask-remake]')) {
    startRemake(event.target.closest('[data-row]'));
  } else if (event.target.closest('[data-remake-last]')) {
    remakeLast();
  } else if (event.target.closest('[data-more-remade]')) {
    oneMoreRemade();
  } else if (event.target.closest('[data-ask-not]')) {
    stopAsking();
  }
});
board.addEventListener('keydown', (event) => {
  if (event.key === 'Escape' && event.target.closest('.asking')) {
    stopAsking();
  }
});
// A refusal is no choice: it is said where refusals are said.
board.addEventListener('htmx:afterSwap', (event) => {
  const holder = event.target.closest('.ask-holder');
  if (holder && !holder.querySelector('.asking')) {
    said.textContent = holder.textContent.trim();
    holder.remove();
  }
});
// Asked or refused, there is nothing more to choose.
board.addEventListener('htmx:afterRequest', (event) => {
  if (event.target.closest('.asking')) {
    stopAsking();
  }
});
