// A button that copies a text of the page; `copied` tells the page of it.

async function copy(place) {
  try {
    await navigator.clipboard.writeText(place.textContent);
  } catch {
    getSelection().selectAllChildren(place); // plain http has no clipboard
    document.execCommand("copy");
    getSelection().removeAllRanges();
  }
}

document.addEventListener("click", async ({ target }) => {
  const button = target.closest("[data-copy]");
  if (!button) return;
  await copy(document.getElementById(button.dataset.copy));
  button.textContent = "Copied";
  document.dispatchEvent(new Event("copied"));
});
