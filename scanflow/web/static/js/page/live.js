// Brings what the server shows now into the page, without leaving it: the scan box keeps its focus and its sounds.

let asked = 0;
let shown = 0;

const here = () => document.body.dataset.here ?? location.pathname + location.search;

/** What is exchanged: the parts marked `data-live`, else those of a page that marks none. */
function partsOf(page) {
  const marked = [...page.querySelectorAll("[data-live]")];
  return marked.length ? marked : [...page.querySelectorAll("main > *")];
}

/**
 * Replaces what is another by what the page's address gives now, the edge and the scan box's label too, unless `may()`
 * says no by then. Gives whether the page is as it was at the asking, or newer.
 */
export async function refresh(may = () => true) {
  const mine = ++asked;
  const response = await fetch(here(), { credentials: "same-origin", headers: { "X-By-Itself": "yes" } }).catch(
    () => null,
  );
  if (!response?.ok) return false;
  const whole = response.clone();
  const fresh = new DOMParser().parseFromString(await response.text(), "text/html");
  if (mine < shown) return true;
  if (!may()) return false;
  if (response.redirected) location.reload();
  else replace(fresh, whole);
  shown = mine;
  return true;
}

function replace(fresh, whole) {
  const [left, top, focused] = [scrollX, scrollY, document.activeElement];
  const [old, now] = [partsOf(document), partsOf(fresh)];
  if (old.length !== now.length || !document.querySelector(".scan") !== !fresh.querySelector(".scan")) {
    exchange(document.querySelector("main"), fresh.querySelector("main"));
  } else {
    old.forEach((part, i) => exchange(part, now[i]));
    swap(".scan label[for]", fresh);
    swap(".scan .tick", fresh);
  }
  document.title = fresh.title;
  document.querySelector(".side").className = fresh.querySelector(".side").className;
  document.body.classList.remove("away");
  if (fresh.body.dataset.seq) document.body.dataset.seq = fresh.body.dataset.seq;
  if (focused && !focused.isConnected) focusLike(focused);
  if (scrollX !== left || scrollY !== top) scrollTo({ left, top, behavior: "instant" });
  document.dispatchEvent(new CustomEvent("refreshed", { detail: whole }));
}

/** A part without the keys of its forms, which are others at each asking. */
function bare(part) {
  const copy = part.cloneNode(true);
  for (const each of copy.querySelectorAll('input[name="key"]')) each.remove();
  return copy;
}

/** One part for another; what a person opened stays open. A part that is the same stays. */
function exchange(old, now) {
  const [before, after] = [old, now].map((part) => [...part.querySelectorAll("details")]);
  const titleOf = (each) => each.querySelector("summary")?.textContent;
  after.forEach((each, i) => {
    const same = before.length === after.length ? before[i] : before.find((other) => titleOf(other) === titleOf(each));
    if (same) each.open = same.open;
  });
  if (!bare(old).isEqualNode(bare(now))) old.replaceWith(now);
}

/** A part of the scan box that comes and goes. */
function swap(selector, fresh) {
  const [old, now] = [document.querySelector(selector), fresh.querySelector(selector)];
  if (old && now) old.replaceWith(now);
  else if (old) old.remove();
  else if (now) document.querySelector(".scan .label").after(now);
}

/** What a control does, by which it is found again: another one in its place must not get its focus. */
function nameOf(control) {
  const { tagName, id, name, type, form, textContent } = control;
  const href = control.getAttribute("href");
  const sent = [...(form?.querySelectorAll('[type="hidden"]:not([name="key"])') ?? [])].map(({ value }) => value);
  const value = ["submit", "radio", "checkbox"].includes(type) ? control.value : "";
  return JSON.stringify([tagName, id, name, value, href, form?.action, sent, href || form ? "" : textContent]);
}

function focusLike(gone) {
  const name = nameOf(gone);
  const main = document.querySelector("main");
  const all = [...main.querySelectorAll("a, button, input, select, textarea, summary, [tabindex]")];
  const alike = all.filter((each) => nameOf(each) === name);
  const same = alike.find(({ textContent }) => textContent === gone.textContent) ?? alike[0];
  const box = document.querySelector(".scan input[name=text]");
  if (!same && !box) main.tabIndex = -1;
  (same ?? box ?? main).focus({ preventScroll: true });
}
