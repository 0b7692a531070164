// The stand's time on this screen: the server's clock carried on by a clock that never jumps, so
// that a tablet that was set wrong still shows right ages.
let serverMs = 0;
let heardAt = 0;

export function hear(nowMs) {
  serverMs = nowMs;
  heardAt = performance.now();
}

export function now() {
  return serverMs + performance.now() - heardAt;
}
