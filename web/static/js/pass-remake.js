// Having something of an order made again from the pass: its lines and the reasons stand over the
// board until one is tapped, Cancel, or Esc.
const board = document.querySelector('[data-board]');
const place = document.getElementById('over-pass');
const said = document.getElementById('said');

function close() {
  place.replaceChildren();
}

board.addEventListener('click', (event) => {
  const open = event.target.closest('[data-act="remake"]');
  if (open) {
    htmx.ajax('GET', open.dataset.remake, { target: place, swap: 'innerHTML' });
  } else if (event.target.closest('[data-ask-not]')) {
    close();
  }
});
document.addEventListener('keydown', (event) => {
  if (event.key === 'Escape') {
    close();
  }
});
place.addEventListener('htmx:afterSwap', (event) => {
  if (event.target === place && !place.querySelector('.asking')) {
    said.textContent = place.textContent.trim();
    close();
  }
});
place.addEventListener('htmx:afterRequest', (event) => {
  if (event.target.closest('.remake-line')) {
    close();
  }
});
