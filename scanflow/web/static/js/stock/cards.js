// The card designer: what is typed shows at once; without this module, after “Show it”.

import { refresh } from "../page/live.js";

const form = document.querySelector("#design");
let waiting = 0;
let before = Promise.resolve(); // one after the other, so that the last thing typed is the last thing shown

function show() {
  const typed = new URLSearchParams(new FormData(form));
  document.body.dataset.here = `${form.action}?${typed}`;
  history.replaceState(history.state, "", document.body.dataset.here);
  return refresh();
}

form?.addEventListener("input", () => {
  clearTimeout(waiting);
  waiting = setTimeout(() => (before = before.then(show)), 250);
});
