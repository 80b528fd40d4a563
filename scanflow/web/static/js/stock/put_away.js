// Put away: a scanned card goes into its field, then the title is asked for. A card without a check is scanned twice.
// Once both are there the next card's scan stores this thing and begins the next one.

import "../page/copy.js";
import { alert } from "../page/elements.js";
import * as camera from "../scanning/camera.js";
import { isWhole } from "../scanning/card_text.js";
import { found } from "../scanning/lookup.js";
import { listen } from "../scanning/wedge.js";

const card = document.querySelector("#text");
const title = document.querySelector("#title");
const looked = card?.form.elements.looked;
const checked = document.body.dataset.check !== "none";
let once = ""; // the next thing's card, without a check and read once

function enter() {
  if (title.value.trim()) card.form.requestSubmit();
  else title.focus();
}

function tell(sentence) {
  document.querySelector(".face > .said")?.remove();
  if (sentence) document.querySelector(".face h1").after(alert("said", sentence));
}

function scanned(text) {
  if (!card) return found(text); // there is no section yet
  const next = card.value && card.value !== text && title.value.trim();
  const sure = checked || isWhole(text) || (next ? once : looked.value) === text;
  tell(sure ? "" : card.form.dataset.again);
  if (next && sure) {
    card.form.elements.next.value = text;
    card.form.requestSubmit();
  } else if (next) once = text;
  else {
    if (!sure) looked.value = text;
    card.value = sure ? text : "";
    if (sure) enter();
    else card.focus();
  }
}

/** An Enter in the card's field. */
function entered() {
  if (card.value.trim()) scanned(card.value.trim());
  else enter();
}

/** A card that stands there is not written over: the next scan is the next thing's. */
const box = () => (card?.value && document.activeElement !== card ? null : card);

listen(box, { scanned, entered, unclear: found });
camera.offer({ scanned });

/** The reference of the thing before is copied in the middle of this one. */
document.addEventListener("copied", () => title.focus());
