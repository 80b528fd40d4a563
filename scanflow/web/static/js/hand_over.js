// Hand-over: a slip or a shipping label, scanned anywhere on the page, goes into its field and is sent.

import { listen } from "./wedge.js";

const label = () => document.querySelector("#label");

function scanned(text) {
  label().value = text;
  label().form.requestSubmit();
}

const entered = () => label().value.trim() && label().form.requestSubmit();
if (label()) listen(label, { scanned, entered, unclear: ([first]) => scanned(first) });
