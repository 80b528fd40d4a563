// Calls of the service with this page's session.

const csrf = document.querySelector('meta[name="csrf"]')?.content ?? "";

/** A key for one scan, unique in the shop. `randomUUID` is missing outside a secure context. */
export function newKey() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

const FRESH = 1000; // ms; what is sent within them has not waited
const OLDEST = 31 * 24 * 3600 * 1000; // ms; the service takes none greater

/** `{age_ms}`: how long ago, by this device's clock, something was read that goes out only now; `{}` of the fresh. */
export function aged(since) {
  const age = Math.min(Date.now() - since, OLDEST);
  return age >= FRESH ? { age_ms: age } : {};
}

const [FIRST, LAST] = [Date.UTC(2000, 0), Date.UTC(2200, 0) - 1]; // the service takes no other years

/** This device's clock. It is only recorded: one that is far off says the nearest time that the service takes. */
export const clock = () => new Date(Math.min(Math.max(Date.now(), FIRST), LAST)).toISOString();

/** The answer to a POST: its status and its JSON. Rejects where there is no answer, or `signal` ends it first. */
export async function post(path, body, signal) {
  const headers = { "X-CSRF-Token": csrf, Accept: "application/json" };
  if (!(body instanceof FormData)) {
    headers["Content-Type"] = "application/json";
    body = JSON.stringify(body ?? {});
  }
  const response = await fetch(path, { method: "POST", headers, body, signal, credentials: "same-origin" });
  return { status: response.status, json: await response.json().catch(() => null) };
}

/** Whether a call was not looked at: nobody is signed in, or somebody anew, since when this page's token is too old. */
export const isOut = ({ status, json }) => status === 401 || (status === 403 && json?.code === "csrf");

const YOUNG = 10000; // ms; a page is not loaded anew sooner, for one that the phone kept comes with the token of before

/** Leads to where one signs in and back here, or only loads this page anew: false where that is still to come. */
export function comeIn(status) {
  if (status === 401) location.assign(`/login?next=${encodeURIComponent(document.body.dataset.here)}`);
  else setTimeout(() => location.reload(), YOUNG - performance.now());
  return status === 401 || performance.now() > YOUNG;
}

/** After so many ms, or as soon as the network is back. */
export function networkOr(ms) {
  return new Promise((go) => {
    const timer = setTimeout(end, ms);
    function end() {
      clearTimeout(timer);
      removeEventListener("online", end);
      go();
    }
    addEventListener("online", end);
  });
}
