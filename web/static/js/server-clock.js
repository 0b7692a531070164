// The stand's time on this screen: the server's clock carried on by a clock that never jumps, so
// that a tablet that was set wrong still shows right ages. How far the tablet is off is remembered,
// for a page that opens while the server is away.
const KEPT = 'sopwell-clock';
const WORTH_KEEPING_MS = 500;

let serverMs = 0;
let heardAt = 0;

function kept() {
  try {
    return Number(localStorage.getItem(KEPT)) || 0;
  } catch {
    return 0;
  }
}

function keep(offMs) {
  try {
    if (Math.abs(offMs - kept()) > WORTH_KEEPING_MS) {
      localStorage.setItem(KEPT, String(Math.round(offMs)));
    }
  } catch {
    // A browser that keeps nothing shows its own time when the server is away.
  }
}

export function hear(nowMs) {
  serverMs = nowMs;
  heardAt = performance.now();
  keep(nowMs - Date.now());
}

// Nobody has told the time yet: the tablet's, put right by what was known last.
export function guess() {
  serverMs = Date.now() + kept();
  heardAt = performance.now();
}

export function now() {
  return serverMs + performance.now() - heardAt;
}
