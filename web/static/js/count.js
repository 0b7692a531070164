// Counting a till: each row's worth and the sum run along while the counts are typed; Enter goes to
// the next row. The stand counts again when it is sent.
function money(cents, pattern) {
  const whole = Math.floor(cents / 100).toLocaleString('en-US');
  return pattern.replace(/\d.*/, whole + '.' + String(cents % 100).padStart(2, '0'));
}

for (const form of document.querySelectorAll('[data-count]')) {
  const sum = form.querySelector('[data-sum]');
  const inputs = [...form.querySelectorAll('[data-cents]')];

  const add = () => {
    let all = 0;
    for (const input of inputs) {
      const pieces = /^\d+$/.test(input.value) ? Number(input.value) : 0;
      const cents = pieces * Number(input.dataset.cents);
      input.parentElement.querySelector('output').value =
        cents ? money(cents, sum.dataset.money) : '';
      all += cents;
    }
    sum.textContent = money(all, sum.dataset.money);
  };

  form.addEventListener('input', add);
  form.addEventListener('keydown', (event) => {
    const at = inputs.indexOf(event.target);
    if (event.key === 'Enter' && at >= 0) {
      event.preventDefault();
      (inputs[at + 1] ?? form.querySelector('button')).focus();
    }
  });
  add();
}

document.querySelector('[data-print]')?.addEventListener('click', () => print());
