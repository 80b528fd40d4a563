// Put away: a scanned card goes into its field, then the title is asked for.

import * as camera from "./camera.js";
import { found } from "./lookup.js";
import { listen } from "./wedge.js";

const card = document.querySelector("#text");
const title = document.querySelector("#title");

function enter() {
  if (title.value.trim()) card.form.requestSubmit();
  else title.focus();
}

function scanned(text) {
  if (!card) return found(text); // the slot is chosen already
  card.value = text;
  enter();
}

listen(() => card, { scanned, entered: enter, unclear: found });
camera.offer({ scanned });
