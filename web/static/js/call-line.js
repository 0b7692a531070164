// The call line: Esc clears it and brings it back, a placed order empties it, and the caret is
// never moved while somebody types.
const form = document.getElementById('call-form');
const call = document.getElementById('call');
const name = document.getElementById('name');
const clear = document.getElementById('clear');
const answer = document.getElementById('answer');
const label = clear.querySelector('span');
let cleared = '';
let sent = null;

export function setText(text) {
  call.value = text;
  call.setSelectionRange(text.length, text.length);
  call.dispatchEvent(new Event('read'));
  remember('');
  if (text) {
    answer.replaceChildren();
  }
  onChange();
}

let onChange = () => {};
export function whenSet(then) {
  onChange = then;
}

function remember(text) {
  cleared = text;
  label.textContent = text ? clear.dataset.restore : clear.dataset.clear;
}

function clearOrRestore() {
  const back = cleared;
  if (call.value) {
    const old = call.value;
    setText('');
    remember(old);
  } else if (back) {
    setText(back);
  }
  call.focus();
}

clear.addEventListener('click', clearOrRestore);
document.addEventListener('keydown', (event) => {
  if (event.key === 'Escape' && !event.target.closest('details')) {
    clearOrRestore();
    event.preventDefault();
  }
});
call.addEventListener('input', () => {
  remember('');
  answer.replaceChildren();
});

form.addEventListener('htmx:configRequest', (event) => {
  if (event.target === form) {
    sent = call.value;
  }
});

document.body.addEventListener('placed', (event) => {
  if (call.value === (event.detail?.call ?? sent)) {
    call.value = '';
    call.dispatchEvent(new Event('read'));
  }
  name.value = '';
  form.querySelector('[name="service"][value="to-go"]').checked = true;
  remember('');
  onChange();
  call.focus();
});

// A letter typed anywhere else belongs to the call; tapped words leave the focus on themselves.
document.addEventListener('keydown', (event) => {
  const elsewhere = !event.target.closest('input, textarea, select, summary, a');
  if (elsewhere && event.key.length === 1 && event.key !== ' '
      && !event.ctrlKey && !event.metaKey && !event.altKey) {
    call.focus();
  }
});
document.addEventListener('keydown', (event) => {
  if (event.key === 'Enter' && event.target.matches('[data-word]')) {
    event.preventDefault();
    form.requestSubmit();
  }
});
