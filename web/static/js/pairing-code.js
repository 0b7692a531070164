// Counts down how long a pairing code is good, and takes it away when it no longer is.
const left = document.getElementById('seconds-left');
const endsAt = performance.now() + Number(left.dataset.seconds) * 1000;

const timer = setInterval(() => {
  const seconds = Math.max(0, Math.ceil((endsAt - performance.now()) / 1000));
  if (seconds > 0) {
    left.textContent = left.dataset.text.replace('%', seconds);
    return;
  }
  clearInterval(timer);
  document.getElementById('code').remove();
  left.textContent = left.dataset.over;
}, 500);
