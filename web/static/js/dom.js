// Elements made by hand, for what the page draws itself.
export function element(name, attributes = {}, ...children) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    made.setAttribute(key, value);
  }
  made.append(...children.filter(Boolean));
  return made;
}

// A refusal in a sentence.
export function refusal(sentence) {
  return element('p', { class: 'refused-order', role: 'alert' }, sentence);
}

// A refusal in place of what the panel showed.
export function refuse(panel, sentence) {
  panel.replaceChildren(refusal(sentence));
}

// What an answer of the server says in words.
export function wordsOf(html) {
  return new DOMParser().parseFromString(html, 'text/html').body.textContent.trim();
}
