// A red line on every page when the stand found its log damaged.
const LOOK_MILLIS = 10_000;

const line = document.createElement('p');
line.className = 'trouble';
line.setAttribute('role', 'alert');
line.textContent = document.body.dataset.damaged;

const look = async () => {
  try {
    const answer = await fetch('/healthz', { cache: 'no-store' });
    const health = answer.ok ? await answer.json() : {};
    if (health.status === 'damaged') {
      document.body.prepend(line);
    } else if (health.status === 'ok') {
      line.remove();
    }
  } catch {
    // The server is away; the page says so by its own means.
  }
};

setInterval(look, LOOK_MILLIS);
