// The page of backups follows while one is made; the sheet of a recovery key is printed by a button.

import { refresh } from "../page/live.js";
import { written } from "../scanning/lookup.js";

const LOOK = 1500; // ms

const doing = () => document.querySelector("[data-doing]");
const busy = () => [...document.querySelectorAll("main :is(input, select)")].some(written);

function follow() {
  if (!doing()) return;
  setTimeout(async () => {
    if (!document.hidden && !busy()) await refresh(() => !busy());
    follow();
  }, LOOK);
}

const print = document.querySelector("[data-print]");
if (print) print.hidden = false;
print?.addEventListener("click", () => window.print());
follow();
