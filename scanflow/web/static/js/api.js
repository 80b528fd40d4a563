// Calls of the service with this page's session.

const csrf = document.querySelector('meta[name="csrf"]')?.content ?? "";

/** A key for one scan, unique in the shop. `randomUUID` is missing outside a secure context. */
export function newKey() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** The answer to a POST: its status and its JSON. Rejects where there is no answer at all, or `signal` ends it first. */
export async function post(path, body, signal) {
  const headers = { "X-CSRF-Token": csrf, Accept: "application/json" };
  if (!(body instanceof FormData)) {
    headers["Content-Type"] = "application/json";
    body = JSON.stringify(body ?? {});
  }
  const response = await fetch(path, { method: "POST", headers, body, signal, credentials: "same-origin" });
  return { status: response.status, json: await response.json().catch(() => null) };
}
