// Lets the browser keep the counter's page and the files for when the server is away. Browsers
// allow that over https and on this very machine; elsewhere an open page works on by itself.
if ('serviceWorker' in navigator) {
  navigator.serviceWorker.register('/sw.js', { updateViaCache: 'none' }).catch(() => {});
  navigator.serviceWorker.ready.then(() => {
    document.body.dataset.worker = 'ready';
  });
}
