// A call that is still being typed, kept by the tab through a reload or a crash, and only while it
// can be the same guest's.
import { now } from './server-clock.js';

const KEPT = 'sopwell-draft';
const DRAFT_MS_MAX = 15 * 60 * 1000;

export function keep(draft) {
  if (draft.call || draft.name) {
    sessionStorage.setItem(KEPT, JSON.stringify({ ...draft, keptAtMs: now() }));
  } else {
    forget();
  }
}

export function forget() {
  sessionStorage.removeItem(KEPT);
}

export function kept() {
  const draft = JSON.parse(sessionStorage.getItem(KEPT) || 'null');
  if (draft && now() - draft.keptAtMs <= DRAFT_MS_MAX) {
    return draft;
  }
  forget();
  return null;
}
