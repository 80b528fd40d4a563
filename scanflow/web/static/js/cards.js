// The card designer: what is typed shows at once; without this module, after “Show it”.

import { refresh } from "./live.js";

const form = document.querySelector("#design");
let waiting = 0;

function show() {
  const typed = new URLSearchParams(new FormData(form));
  document.body.dataset.here = `${form.action}?${typed}`;
  history.replaceState(null, "", document.body.dataset.here);
  refresh();
}

form?.addEventListener("input", () => {
  clearTimeout(waiting);
  waiting = setTimeout(show, 250);
});
