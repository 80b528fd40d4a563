// Put away: a scanned card goes into its field, then the title is asked for. A card without a check is scanned twice.

import { alert } from "../page/elements.js";
import * as camera from "../scanning/camera.js";
import { isWhole } from "../scanning/card_text.js";
import { found } from "../scanning/lookup.js";
import { listen } from "../scanning/wedge.js";

const card = document.querySelector("#text");
const title = document.querySelector("#title");
const looked = card?.form.elements.looked;
const checked = document.body.dataset.check !== "none";

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
  const sure = checked || isWhole(text) || looked.value === text;
  if (!sure) looked.value = text;
  card.value = sure ? text : "";
  tell(sure ? "" : card.form.dataset.again);
  if (sure) enter();
  else card.focus();
}

/** An Enter in the card's field. */
function entered() {
  if (card.value.trim()) scanned(card.value.trim());
  else enter();
}

listen(() => card, { scanned, entered, unclear: found });
camera.offer({ scanned });
