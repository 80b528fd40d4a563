// A form whose page shows what is typed as one types; without this module, after Enter. The address keeps what was
// typed, so that a way back leads to the same list.

import { refresh } from "./live.js";

const REST = 200; // ms without a key; somebody who types fast asks once
const form = document.querySelector("main form[data-as-typed]") ?? document.querySelector("form[data-as-typed]");
let timer = 0;

function show() {
  const address = new URL(form.action); // that of the page, with what was typed before, where the form names none
  address.search = new URLSearchParams([...new FormData(form), ...new URLSearchParams(form.dataset.asTyped)]);
  document.body.dataset.here = address.pathname + address.search;
  history.replaceState(history.state, "", address);
  for (const field of form.querySelectorAll("input")) field.defaultValue = field.value; // nothing that could be lost
  return refresh();
}

form?.addEventListener("input", () => {
  clearTimeout(timer);
  timer = setTimeout(show, REST);
});
