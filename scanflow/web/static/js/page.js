// Any other page: a scan finds what was scanned, and texts can be copied.

import { listen } from "./wedge.js";

const find = document.querySelector(".find input[name='q']");
if (find) listen(() => find, () => find.value.trim() && find.form.requestSubmit());

async function copy(text) {
  try {
    await navigator.clipboard.writeText(text);
  } catch {
    getSelection().selectAllChildren(document.querySelector("output")); // plain http has no clipboard
    document.execCommand("copy");
  }
}

for (const button of document.querySelectorAll("[data-copy]")) {
  button.addEventListener("click", async () => {
    await copy(document.getElementById(button.dataset.copy).textContent);
    button.textContent = "Copied";
  });
}
