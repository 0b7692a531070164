// A number pad for hands that are wet or greasy: it types into the field of its own form, also
// after the form was drawn anew.
document.addEventListener('click', (event) => {
  const pressed = event.target.closest('[data-pad]');
  const input = pressed?.closest('form')?.querySelector('[data-pad-input]');
  if (!input) {
    return;
  }
  const key = pressed.dataset.pad;
  if (key === 'back') {
    input.value = input.value.slice(0, -1);
  } else if (key === '-') {
    input.value = input.value.startsWith('-') ? input.value.slice(1) : `-${input.value}`;
  } else if (key !== '.' || !input.value.includes('.')) {
    input.value += key;
  }
});
