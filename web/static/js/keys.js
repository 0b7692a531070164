// A key that nobody has used or can guess; randomUUID needs a secure context, which a stand's plain
// http is not. In letters, because a long row of digits could be taken for a card's number.
function letter(half) {
  return String.fromCharCode(97 + half);
}

export function newKey() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => letter(byte >> 4) + letter(byte & 15)).join('');
}
