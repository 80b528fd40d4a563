// Elements as scripts make them, and how numbers are said.

/** An element with its class and its parts, those left out that are empty. */
export function make(tag, name = "", ...parts) {
  const element = document.createElement(tag);
  if (name) element.className = name;
  element.append(...parts.filter(Boolean));
  return element;
}

/** A button that says this. */
export function press(words, onclick, name = "plain") {
  return Object.assign(make("button", name, words), { type: "button", onclick });
}

/** Words that are read out at once. */
export function alert(name, ...words) {
  const element = make("p", name, ...words);
  element.setAttribute("role", "alert");
  return element;
}

export const units = (number, one) => `${number} ${one}${number === 1 ? "" : "s"}`;
