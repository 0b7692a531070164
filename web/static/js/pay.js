// Taking money: digits and Enter are cash, + types the next note up, * is the card, / is the tip,
// Esc or the next call leave the order unpaid. All of it is on a numeric keypad.
const place = document.getElementById('pay-place');
const call = document.getElementById('call');
const touch = matchMedia('(pointer: coarse)').matches;

function close() {
  place.replaceChildren();
}

function nextNote(given) {
  const tenders = given.dataset.tenders.split(' ').filter(Boolean);
  const at = tenders.indexOf(given.value);
  given.value = tenders[(at + 1) % tenders.length] ?? given.value;
  given.select();
}

// What was typed into the amount before a letter came was the beginning of the next call.
function toCall(given) {
  call.value = given.value;
  given.value = '';
  call.focus();
}

function onKey(event) {
  const pay = event.target.closest('[data-pay]');
  const given = pay?.querySelector('#tendered');
  if (!pay || event.ctrlKey || event.metaKey || event.altKey) {
    return;
  }
  if (event.key === 'Escape' && place) {
    close();
    call.focus();
  } else if (event.key === '*' && given) {
    pay.querySelector('[data-card]').click();
  } else if (event.key === '+' && given) {
    nextNote(given);
  } else if (event.key === '/' && given) {
    pay.querySelector('#tip').focus();
  } else {
    if (given && call && event.target === given && /^\p{L}$/u.test(event.key)) {
      toCall(given);
    }
    return;
  }
  event.preventDefault();
  event.stopPropagation();
}

// Before the call line hears of them: Esc means something else there.
document.addEventListener('keydown', onKey, true);

// A panel that has come takes the keys, unless somebody types the next call already.
function welcome() {
  const pay = document.querySelector('[data-pay]:not([data-seen])');
  if (!pay) {
    return;
  }
  pay.dataset.seen = 'yes';
  const given = pay.querySelector('#tendered');
  if (given && !touch && !call?.value) {
    given.focus();
    given.select();
  } else if (call && !touch) {
    call.focus();
  }
}

document.body.addEventListener('htmx:afterSwap', welcome);
welcome();

if (place) {
  for (const heard of ['input', 'read']) {
    call.addEventListener(heard, () => {
      if (call.value) {
        close();
      }
    });
  }
  place.addEventListener('click', (event) => {
    if (event.target.closest('[data-pay-close]')) {
      event.preventDefault();
      close();
      call.focus();
    }
  });
}
