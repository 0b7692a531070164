// Setting a screen: hands of the station that was chosen; a bar as wide as a bank card says how
// large the screen's pixels are; and what the letters come to, here and on the board last.
import { CARD_MM, LEAST_ARCMIN, WANTED_ARCMIN, fontPixels, pixelsPerMm } from './letters.js';

const form = document.querySelector('form[action="/screens"]');
const card = document.getElementById('card');
const width = document.getElementById('card-width');
const perMetre = form.elements['pixels-per-metre'];
const { inches } = form.elements;
const reached = document.getElementById('reached');

function lastReached() {
  try {
    return Number(localStorage.getItem('sopwell-letters')) || 0;
  } catch {
    return 0;
  }
}

function perMm() {
  return pixelsPerMm(Number(perMetre.value), Number(inches.value.replace(',', '.')));
}

function show() {
  const metres = Number(form.elements.distance.value);
  const mm = perMm();
  card.style.width = `${Math.round(CARD_MM * mm)}px`;
  width.value = String(Math.round(CARD_MM * mm));
  const pixels = Math.round(fontPixels(WANTED_ARCMIN, { metres, perMm: mm }));
  const last = lastReached();
  const { text, small, last: said } = reached.dataset;
  reached.textContent = [
    text.replace('%', pixels),
    last > 0 ? (last < LEAST_ARCMIN ? small : said).replace('%', Math.round(last)) : '',
  ].join(' ');
}

function showHands() {
  for (const line of form.querySelectorAll('[data-hands]')) {
    const mine = line.dataset.hands === form.elements.board.value;
    line.hidden = !mine;
    line.querySelector('input').disabled = !mine;
  }
}

width.addEventListener('input', () => {
  perMetre.value = String(Math.round((Number(width.value) / CARD_MM) * 1000));
  show();
});
inches.addEventListener('input', () => {
  perMetre.value = '0';
  show();
});
form.addEventListener('change', (event) => {
  if (event.target !== width) {
    show();
    showHands();
  }
});
show();
showHands();
