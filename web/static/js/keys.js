// A key that nobody has used or can guess; randomUUID needs a secure context, which a stand's plain
// http is not.
export function newKey() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
