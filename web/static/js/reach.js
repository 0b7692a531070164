// Finds out when the server can be reached again, by small questions that overlap: one that hangs
// in a connection whose other end is gone holds the next one up hardly any longer. The pauses grow,
// to two seconds at most. A socket would be the wrong thing to ask with: browsers open one at a
// time, and put off a page whose sockets failed often.
const PAUSE_MIN_MS = 300;
const PAUSE_MAX_MS = 1600;
const LONGER = 1.4;
const HANGS_MS = 2000;
const SPREAD_MS = 250;

async function isThere(signal) {
  const answer = await fetch('/healthz', { cache: 'no-store', signal });
  return answer.ok && (await answer.json()).seq >= 0;
}

// Calls back once, when the server has answered. What is returned ends the looking.
export function whenReached(then) {
  const underWay = new Set();
  let timer = 0;
  let over = false;
  let pause = PAUSE_MIN_MS;

  function end() {
    over = true;
    clearTimeout(timer);
    underWay.forEach((question) => question.abort());
  }

  async function ask() {
    const question = new AbortController();
    const hangs = setTimeout(() => question.abort(), HANGS_MS);
    underWay.add(question);
    try {
      if (await isThere(question.signal) && !over) {
        end();
        then();
      }
    } catch {
      // Not there yet; the next question is on its way.
    } finally {
      clearTimeout(hangs);
      underWay.delete(question);
    }
  }

  function askOften() {
    ask();
    timer = setTimeout(askOften, pause * (0.75 + Math.random() / 2));
    pause = Math.min(PAUSE_MAX_MS, pause * LONGER);
  }

  timer = setTimeout(askOften, Math.random() * SPREAD_MS);
  return end;
}
