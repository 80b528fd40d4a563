// On every page: work without network is made ready, and what a round left without answer goes out.

import { clock } from "../page/api.js";
import { lasting } from "./unsent.js";
import { refresh } from "../page/live.js";
import * as putback from "../stock/putback.js";
import { Queue } from "../scanning/queue.js";

const ROUND = "round"; // the cache of the open round: `worker.js` gives from it while there is no network
const onRound = () => document.querySelector("[data-stops]"); // of an open one

/** Keeps the page of the open round as it is now, and what it needs; nothing of a round that is over. `come`: an answer
 *  that has just come for it. */
async function keep(come) {
  const path = location.pathname;
  if (!onRound()) {
    if (path.startsWith("/rounds/")) await caches.delete(ROUND);
    return;
  }
  const same = come && new URL(come.url).pathname + new URL(come.url).search === path;
  const page = same ? come : await fetch(path, { credentials: "same-origin" });
  if (!page.ok || page.redirected) return;
  const cache = await caches.open(ROUND);
  for (const { url } of await cache.keys()) {
    if (new URL(url).pathname.startsWith("/rounds/") && new URL(url).pathname !== path) await cache.delete(url);
  }
  await cache.put(path, page);
  await cache.add("/edges.css");
}

/** A round's scans that its page could not send any more. */
function drain() {
  const now = clock();
  const all = async () => (await lasting.all()).map((each) => ({ noted: now, ...each }));
  const settled = async () => {
    await putback.list();
    if (document.body.dataset.here && !queue.scans.length) await refresh();
  };
  const queue = new Queue({ ...lasting, all }, { answered: settled, failed: settled, waiting: () => {} });
}

if (window.isSecureContext && navigator.serviceWorker) {
  navigator.serviceWorker.register("/worker.js").catch(() => {}); // without network the one that is there stays
  keep().catch(() => {});
  document.addEventListener("refreshed", ({ detail }) => keep(detail).catch(() => {}));
}
if (window.indexedDB) {
  putback.list();
  if (!onRound()) drain();
}
