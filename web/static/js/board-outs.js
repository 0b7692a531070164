// What has run out is said where it is noticed: a sheet over the board, with what this station
// works with. The board goes on behind it, and its keys are not heard while the sheet is open.
const open = document.querySelector('[data-outs]');
const sheet = document.getElementById('outs-sheet');

open.addEventListener('click', (event) => {
  event.preventDefault();
  htmx.ajax('GET', open.dataset.outs, { target: '#outs', swap: 'outerHTML' })
    .then(() => sheet.showModal());
});
sheet.addEventListener('click', (event) => {
  if (event.target === sheet || event.target.closest('[data-close]')) {
    sheet.close();
  }
});
sheet.addEventListener('keydown', (event) => event.stopPropagation());
