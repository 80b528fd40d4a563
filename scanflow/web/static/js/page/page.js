// Any other page: a scan finds what was scanned, and texts can be copied.

import "./copy.js";
import { box, found, lookUp } from "../scanning/lookup.js";
import { listen } from "../scanning/wedge.js";

const entered = () => box().value.trim() && box().form.requestSubmit();
listen(box, { scanned: lookUp, entered, unclear: found });

/** A fold that asks for a card has its field ready. */
function unfolded({ target }) {
  if (target.open) target.querySelector("input[data-takes]")?.focus();
}

document.addEventListener("toggle", unfolded, true);
document.addEventListener("change", ({ target }) => "atOnce" in target.dataset && target.form.requestSubmit());
