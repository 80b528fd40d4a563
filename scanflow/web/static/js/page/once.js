// What was sent already is not done again: who comes back to a page finds its forms with the keys that they had.

// The second click of a double one does nothing: it may hit the next page, and another button at the same place.
document.addEventListener(
  "click",
  (event) => event.detail > 1 && event.target.closest('form[method="post"] button') && event.preventDefault(),
  true,
);

const fields = () => [...document.querySelectorAll('form input[name="key"]')];

/** What a form does, by which it is known again. */
function nameOf({ form }) {
  const hidden = [...form.querySelectorAll('[type="hidden"]:not([name="csrf"], [name="key"])')];
  return JSON.stringify([form.action, ...hidden.map(({ name, value }) => [name, value])]);
}

function remember() {
  const keys = Object.fromEntries(fields().map((field) => [nameOf(field), field.value]));
  history.replaceState({ ...history.state, keys }, "");
}

const [visit] = performance.getEntriesByType("navigation");
const before = visit?.type === "back_forward" ? history.state?.keys : undefined;
for (const field of fields()) field.value = before?.[nameOf(field)] ?? field.value;
remember();
document.addEventListener("refreshed", remember);
