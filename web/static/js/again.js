// "Again", "again 214", "same but dry": Enter turns it into the call that says so, to be looked at
// and placed with the next Enter. F8 has the last order again.
import { setText } from './call-line.js';
import { refuse, wordsOf } from './dom.js';

const form = document.getElementById('call-form');
const call = document.getElementById('call');
const answer = document.getElementById('answer');
const words = form.dataset.again.split(',');

function asksAgain(text) {
  const said = text.trim().toLowerCase().replace(/\s+/g, ' ');
  return words.some((word) => said === word || said.startsWith(word + ' '));
}

async function expand(text) {
  try {
    const reply = await fetch('/counter/again', {
      method: 'POST',
      headers: { 'HX-Request': 'true' },
      body: new URLSearchParams({ call: text }),
    });
    const html = await reply.text();
    const page = new DOMParser().parseFromString(html, 'text/html');
    const found = page.getElementById('again-call');
    if (found) {
      setText(found.dataset.call + ' ');
      call.focus();
    } else {
      refuse(answer, wordsOf(html));
    }
  } catch {
    refuse(answer, document.body.dataset.sendLost);
  }
}

// Before anything else hears of it: the text is not a call yet.
document.addEventListener('submit', (event) => {
  if (event.target === form && asksAgain(call.value)) {
    event.preventDefault();
    event.stopPropagation();
    expand(call.value);
  }
}, { capture: true });

document.addEventListener('keydown', (event) => {
  if (event.key === 'F8') {
    event.preventDefault();
    expand(words[0]);
  }
});

const asked = new URLSearchParams(location.search).get('again');
if (asked && !call.value) {
  expand(words[0] + ' ' + asked);
  history.replaceState(null, '', '/counter');
}
