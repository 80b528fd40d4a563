// The browser's own keys of the pages work while their list is closed too: not every browser looks into a closed list.
// A ? on its own shows all keys of the page.

import { make, press } from "./elements.js";

const ALONE = 300; // ms; a ? that more keys follow belongs to a scan, or to what a person writes
let timer = 0;
let shown = null;

const nameOf = (each) => (each.labels?.[0] ?? each).textContent.trim() || each.getAttribute("aria-label");

function hide() {
  shown?.remove();
  shown = null;
}

function show() {
  const box = document.activeElement;
  if (box.value === "?") box.value = "";
  const lines = [...document.querySelectorAll("[accesskey]")].map((each) =>
    make("li", "", make("strong", "", each.accessKey.toUpperCase()), ` ${nameOf(each)}`),
  );
  const mac = /Mac/.test(navigator.platform);
  shown = make("section", "keys", make("p", "", `Keys of this page, with ${mac ? "Ctrl and Option" : "Alt"}:`));
  shown.append(make("ul", "", ...lines), press("Close", hide));
  shown.setAttribute("role", "status");
  document.body.append(shown);
}

/** Whether a person writes in this field; the boxes for scans and for searching stand empty until something comes. */
const writesIn = (field) =>
  field.matches("input, textarea, select") && !(field.closest(".scan, .find") && field.value.length < 2);

document.addEventListener(
  "keydown",
  (event) => {
    clearTimeout(timer);
    hide();
    const other = event.ctrlKey || event.metaKey || event.getModifierState("AltGraph");
    if (event.key === "?" && !event.altKey && !other && !writesIn(event.target)) timer = setTimeout(show, ALONE);
    if (!event.altKey || other) return;
    const link = [...document.querySelectorAll(".go a")].find(({ accessKey }) => accessKey === event.key.toLowerCase());
    if (!link) return;
    event.preventDefault();
    link.click();
  },
  true,
);
