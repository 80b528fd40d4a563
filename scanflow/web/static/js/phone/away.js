// The page that stands in for others while there is no network: leads to the open round, and goes on by itself.

import { make } from "../page/elements.js";

document.querySelector("[data-again]").addEventListener("click", () => location.reload());
addEventListener("online", async () => {
  // a network that flickers must not take the page away from under a press
  const reply = await fetch("/api/health", { cache: "no-store" }).catch(() => null);
  if (reply?.ok) location.reload();
});

const list = document.querySelector("[data-rounds]");
const cache = await caches.open("round");
for (const { url } of await cache.keys()) {
  const path = new URL(url).pathname;
  if (!path.startsWith("/rounds/")) continue;
  const link = make("a", "next", "Go on with the round");
  link.href = path;
  list.replaceChildren(link);
}
