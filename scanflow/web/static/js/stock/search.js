// What is found changes as one types. Enter goes where the words lead, as on every page.

import { refresh } from "../page/live.js";
import { box } from "../scanning/lookup.js";

const REST = 200; // ms without a key; somebody who types fast asks once
let timer = 0;

box().addEventListener("input", () => {
  clearTimeout(timer);
  timer = setTimeout(() => {
    document.body.dataset.here = `/search?list=yes&q=${encodeURIComponent(box().value)}`;
    refresh();
  }, REST);
});
