// The browser's own keys of the pages work while their list is closed too: not every browser looks into a closed list.

document.addEventListener("keydown", (event) => {
  if (!event.altKey || event.ctrlKey || event.metaKey || event.getModifierState("AltGraph")) return;
  const link = [...document.querySelectorAll(".go a")].find(({ accessKey }) => accessKey === event.key.toLowerCase());
  if (!link) return;
  event.preventDefault();
  link.click();
});
