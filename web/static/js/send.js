// Every change carries a key of its own, so that it is done once however often it arrives; and a
// press that got no answer says so.
import { newKey } from './keys.js';
import './register.js';

const body = document.body;

function say(target, text) {
  target.textContent = text;
}

body.addEventListener('htmx:configRequest', (event) => {
  if (event.detail.verb === 'post') {
    event.detail.headers['Idempotency-Key'] = newKey();
  }
});

for (const failed of ['htmx:sendError', 'htmx:timeout']) {
  body.addEventListener(failed, (event) => {
    const target = event.detail.target;
    const quiet = event.detail.pathInfo?.requestPath === '/counter/reading';
    if (target && !quiet && (target.id === 'said' || target.id === 'answer'
        || target.id === 'void-said')) {
      say(target, body.dataset.sendLost);
    }
  });
}

// A sentence on a board's message line goes by itself; what it was about stands in the rows.
let fading = 0;
body.addEventListener('htmx:afterSwap', (event) => {
  if (event.detail.target?.id === 'void-said') {
    event.detail.target.scrollIntoView({ block: 'nearest' });
  }
  if (event.detail.target?.id === 'said') {
    clearTimeout(fading);
    fading = setTimeout(() => say(event.detail.target, ''), 8000);
  }
});
