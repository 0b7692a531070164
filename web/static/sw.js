// Keeps what a counter needs while the server is away: the files of this version, the counter's
// page without what only the server knows, and its kit. Boards are never kept, so that nobody cooks
// from an old one. VERSION and FILES stand above, written by the server.
const FILES_CACHE = 'sopwell-files-' + VERSION;
const PAGES_CACHE = 'sopwell-pages';
const PAGE_MILLIS_MAX = 4000;
const COUNTER = '/counter/away';
const AWAY = '/away';

async function keepFiles() {
  const files = await caches.open(FILES_CACHE);
  await files.addAll(FILES.map((name) => `/static/${VERSION}/${name}`));
}

// With the screen's cookies, so that language and theme are those of the screen.
async function keepPage(path) {
  const answer = await fetch(path, { cache: 'no-store' });
  if (answer.ok) {
    const pages = await caches.open(PAGES_CACHE);
    await pages.put(path, answer);
  }
}

function keepPages() {
  return Promise.all([keepPage(COUNTER), keepPage(AWAY), keepPage('/counter/kits/en'),
    keepPage('/counter/kits/es')]);
}

async function forgetOthers() {
  const names = await caches.keys();
  await Promise.all(names
    .filter((name) => name.startsWith('sopwell-files-') && name !== FILES_CACHE)
    .map((name) => caches.delete(name)));
}

self.addEventListener('install', (event) => {
  event.waitUntil(keepFiles().then(keepPages).then(() => self.skipWaiting()));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(forgetOthers().then(() => self.clients.claim()));
});

async function kept(path) {
  const pages = await caches.open(PAGES_CACHE);
  return await pages.match(path) || Response.error();
}

async function file(request) {
  const known = await caches.match(request);
  return known || fetch(request);
}

// The server first; what is kept only when it does not answer.
async function page(event, path) {
  try {
    const answer = await fetch(event.request, { signal: AbortSignal.timeout(PAGE_MILLIS_MAX) });
    if (path === COUNTER) {
      event.waitUntil(keepPages().catch(() => {}));
    }
    return answer;
  } catch {
    return kept(path);
  }
}

async function kit(event) {
  const path = new URL(event.request.url).pathname;
  try {
    const answer = await fetch(event.request, { signal: AbortSignal.timeout(PAGE_MILLIS_MAX) });
    if (answer.ok) {
      const copy = answer.clone();
      const pages = await caches.open(PAGES_CACHE);
      event.waitUntil(pages.put(path, copy));
    }
    return answer;
  } catch {
    return kept(path);
  }
}

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const path = new URL(request.url).pathname;
  if (request.method !== 'GET') {
    return;
  }
  if (path.startsWith('/static/')) {
    event.respondWith(file(request));
  } else if (path.startsWith('/counter/kits/')) {
    event.respondWith(kit(event));
  } else if (request.mode === 'navigate') {
    event.respondWith(page(event, path === '/counter' ? COUNTER : AWAY));
  }
});
