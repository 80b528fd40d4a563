// The service worker. It gives what the service gives; only while there is no answer, the open round from its cache.
// VERSION, a hash of all static files, and FILES, their addresses, stand before this text: see `installed.py`.

const STATIC = `static ${VERSION}`;
const ROUND = "round";
const NO_PAGE = "/offline";
const PATIENCE = 5000; // ms, where there is something to give instead

const after = (ms) => new Promise((_, fail) => setTimeout(fail, ms));

async function install() {
  const cache = await caches.open(STATIC);
  await cache.addAll([...FILES, NO_PAGE]);
  await self.skipWaiting();
}

async function activate() {
  for (const name of await caches.keys()) if (name !== STATIC && name !== ROUND) await caches.delete(name);
  await self.clients.claim();
}

async function file(request) {
  try {
    return await fetch(request);
  } catch (error) {
    const kept = await caches.match(request, { ignoreVary: true });
    if (kept) return kept;
    throw error;
  }
}

async function page(request, path) {
  const kept = request.method === "GET" ? await caches.match(path, { cacheName: ROUND, ignoreVary: true }) : null;
  try {
    const reply = await (kept ? Promise.race([fetch(request), after(PATIENCE)]) : fetch(request));
    if (path === "/login") await caches.delete(ROUND); // nobody is signed in any more
    return reply;
  } catch {
    return kept ?? (await caches.match(NO_PAGE)) ?? Response.error();
  }
}

self.addEventListener("install", (event) => event.waitUntil(install()));
self.addEventListener("activate", (event) => event.waitUntil(activate()));
self.addEventListener("fetch", (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (origin !== self.location.origin) return;
  if (request.mode === "navigate") event.respondWith(page(request, pathname));
  else if (request.method === "GET" && (pathname.startsWith("/static/") || pathname === "/edges.css")) {
    event.respondWith(file(request));
  }
});
