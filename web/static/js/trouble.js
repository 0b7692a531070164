// A line on every page while the stand's log is damaged or its disk is not well.
const LOOK_MILLIS = 10_000;

const texts = document.body.dataset;
const lines = {
  damaged: line(texts.damaged),
  'reading-only': line(texts.diskReadingOnly),
  'no-room': line(texts.diskNoRoom),
  low: line(texts.diskLow, 'calm'),
};

function line(text, mood) {
  const element = document.createElement('p');
  element.classList.add('trouble', ...(mood ? [mood] : []));
  element.setAttribute('role', mood ? 'status' : 'alert');
  element.textContent = text;
  return element;
}

function show(element, wanted) {
  if (!wanted) {
    element.remove();
  } else if (!element.isConnected) {
    document.body.prepend(element);
  }
}

const look = async () => {
  try {
    const answer = await fetch('/healthz', { cache: 'no-store' });
    if (!answer.ok) {
      return;
    }
    const health = await answer.json();
    show(lines.damaged, health.damage !== undefined);
    ['reading-only', 'no-room', 'low'].forEach((state) => {
      show(lines[state], health.disk?.state === state);
    });
  } catch {
    // The server is away; the page says so by its own means.
  }
};

look();
setInterval(look, LOOK_MILLIS);
