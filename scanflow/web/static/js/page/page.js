// Any other page: a scan finds what was scanned, and texts can be copied.

import { box, found, lookUp } from "../scanning/lookup.js";
import { listen } from "../scanning/wedge.js";

const entered = () => box().value.trim() && box().form.requestSubmit();
listen(box, { scanned: lookUp, entered, unclear: found });

async function copy(text) {
  try {
    await navigator.clipboard.writeText(text);
  } catch {
    getSelection().selectAllChildren(document.querySelector("output")); // plain http has no clipboard
    document.execCommand("copy");
  }
}

/** A fold that asks for a card has its field ready. */
function unfolded({ target }) {
  if (target.open) target.querySelector("input[data-takes]")?.focus();
}

document.addEventListener("toggle", unfolded, true);
document.addEventListener("change", ({ target }) => "atOnce" in target.dataset && target.form.requestSubmit());

document.addEventListener("click", async ({ target }) => {
  const button = target.closest("[data-copy]");
  if (!button) return;
  await copy(document.getElementById(button.dataset.copy).textContent);
  button.textContent = "Copied";
});
