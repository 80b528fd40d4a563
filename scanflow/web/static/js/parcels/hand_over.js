// A shipping label that is bound to its parcel: scanned anywhere on the page, it goes into its field and is sent.
// And what "all of these went" says beside the scans of the page: who takes them along, and what had to stay.

import * as sheet from "../scanning/sheet.js";
import * as sound from "../scanning/sound.js";
import { listen } from "../scanning/wedge.js";

const label = () => document.querySelector("#label");

function scanned(text) {
  label().value = text;
  label().form.requestSubmit();
}

const entered = () => label().value.trim() && label().form.requestSubmit();
const shut = () => sheet.stands();
if (label()) listen(label, { scanned, entered, shut, refused: sound.no, unclear: ([first]) => scanned(first) });

document.addEventListener("submit", ({ target }) => {
  const typed = document.querySelector("form.scan")?.elements.carrier;
  if (target.matches("[data-all]") && typed) target.elements.carrier.value = typed.value.trim();
});

const no = document.querySelector("[data-no]");
if (no) {
  sheet.show({ verdict: "refused", heading: no.dataset.no, advice: no.textContent }, "hand_over", false, () =>
    label()?.focus(),
  );
  sound.no();
}
