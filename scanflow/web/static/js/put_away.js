// Put away: a scanned card goes into its field, then the title is asked for.

import { listen } from "./wedge.js";

const card = document.querySelector("#text");
const title = document.querySelector("#title");
if (card) listen(() => card, () => (title.value.trim() ? card.form.requestSubmit() : title.focus()));
