// A button that copies a text of the page.

async function copy(place) {
  try {
    await navigator.clipboard.writeText(place.textContent);
  } catch {
    getSelection().selectAllChildren(place); // plain http has no clipboard
    document.execCommand("copy");
  }
}

document.addEventListener("click", async ({ target }) => {
  const button = target.closest("[data-copy]");
  if (!button) return;
  await copy(document.getElementById(button.dataset.copy));
  button.textContent = "Copied";
});
