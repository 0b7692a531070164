// Puts a frame on the board: rows that changed are replaced where they stand, new ones come in,
// gone ones leave, and nothing else moves.
import { hear } from './server-clock.js';

function containers(board) {
  const found = {};
  for (const list of board.querySelectorAll('[data-rows]')) {
    found[list.dataset.rows] = list;
  }
  return found;
}

function focusedPlace(board) {
  const at = document.activeElement;
  const row = at && board.contains(at) ? at.closest('[data-row]') : null;
  return row ? { row: row.dataset.row, act: at.dataset.act } : null;
}

function giveFocusBack(board, place, before) {
  if (!place || board.contains(document.activeElement)) {
    return;
  }
  const same = document.getElementById('row-' + place.row);
  const next = same || document.getElementById('row-' + before);
  const button = next && (next.querySelector(`[data-act="${place.act}"]`)
    || next.querySelector('[data-act]'));
  (button || board).focus({ preventScroll: true });
}

function rowAfter(place, board) {
  const row = place && document.getElementById('row-' + place.row);
  const next = row && (row.nextElementSibling || row.previousElementSibling);
  return next && board.contains(next) ? next.dataset.row : '';
}

function place(list, wanted) {
  let at = list.firstElementChild;
  for (const row of wanted) {
    if (row === at) {
      at = at.nextElementSibling;
    } else {
      list.insertBefore(row, at);
    }
  }
}

function rowsInOrder(board, frame) {
  const lists = containers(board);
  const fresh = new Map();
  for (const row of frame.querySelectorAll('[data-row]')) {
    fresh.set(row.dataset.row, document.importNode(row, true));
  }
  const wanted = {};
  const missing = [];
  for (const id of frame.dataset.order.split(' ').filter(Boolean)) {
    const shown = document.getElementById('row-' + id);
    const row = fresh.get(id) || shown;
    if (!row) {
      missing.push(id);
      continue;
    }
    if (fresh.has(id) && shown) {
      shown.replaceWith(row);
    }
    (wanted[row.dataset.zone || 'open'] ||= []).push(row);
  }
  return { lists, wanted, missing, fresh };
}

function replaceParts(frame) {
  for (const part of frame.querySelectorAll('[data-part]')) {
    const old = document.getElementById(part.id);
    const same = old && part.dataset.same && part.dataset.same === old.dataset.same;
    if (old && !same) {
      const fresh = document.importNode(part, true);
      old.replaceWith(fresh);
      htmx.process(fresh);
    }
  }
}

// Answers whether the board is whole now; if not, the whole of it must be asked for.
export function show(board, frame) {
  const focus = focusedPlace(board);
  const before = rowAfter(focus, board);
  const { lists, wanted, missing, fresh } = rowsInOrder(board, frame);
  for (const [zone, list] of Object.entries(lists)) {
    const keep = new Set(wanted[zone] || []);
    for (const row of Array.from(list.children)) {
      if (!keep.has(row)) {
        row.remove();
      }
    }
    place(list, wanted[zone] || []);
  }
  for (const row of fresh.values()) {
    htmx.process(row);
  }
  replaceParts(frame);
  board.dataset.epoch = frame.dataset.epoch;
  board.dataset.seq = frame.dataset.seq;
  board.dataset.menu = frame.dataset.menu || '';
  board.dataset.away = 'false';
  hear(Number(frame.dataset.now));
  giveFocusBack(board, focus, before);
  board.dispatchEvent(new CustomEvent('board:shown'));
  return missing.length === 0;
}
