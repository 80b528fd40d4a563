// A running count: photos of bins, or the cards of a bin held up one after another. The bin comes first, by a tap, its
// label or its name; nothing of it is lost by leaving.

import { comeIn, post } from "../page/api.js";
import { alert, make, press } from "../page/elements.js";
import * as camera from "../scanning/camera.js";
import { binOf, slotOf } from "../scanning/card_text.js";
import { Sending } from "./count_photos.js";
import * as film from "./film.js";
import { refresh } from "../page/live.js";
import { plate } from "../scanning/sheet.js";
import * as sound from "../scanning/sound.js";
import { listen } from "../scanning/wedge.js";

const CHECKED = document.body.dataset.check !== "none"; // whether a card's text tells that it was read right

const form = document.querySelector("form.shoot");
const typed = () => document.getElementById("typed");
const face = () => document.querySelector('[data-live="face"]');
const links = () => [...document.querySelectorAll("#places .bins a")];
const nameOf = (address) => new URL(address, location.href).searchParams.get("place") ?? "";
const names = () => links().map(({ href }) => nameOf(href));
const called = (name) => (name === "tray" ? "the tray" : name);

let at = face().dataset.place; // what is looked into, though its page may not be here yet; "" while labels say it
let refused = ""; // what was typed, could not be taken, and stands in the field again

/** Says a refusal: beside what asked for it, else above all. */
function tell(sentence, beside = null) {
  quiet();
  const words = alert("said", sentence);
  words.dataset.told = "";
  if (beside?.isConnected) beside.after(words);
  else face().prepend(words);
  words.scrollIntoView({ block: "nearest" });
  sound.no();
}

function quiet() {
  for (const words of document.querySelectorAll("[data-told]")) words.remove();
  if (refused && typed().value === refused) typed().value = "";
  refused = "";
}

/** Puts words into an element; no line ends within a bin's name. */
function put(element, sentence) {
  const parts = sentence.split(/(\w+(?:-\d+)+)/).map((part, n) => (n % 2 ? make("span", "unbroken", part) : part));
  element.replaceChildren(make("span", "", ...parts)); // one, within a button that lays out its children
}

/** The page of another place, without leaving this one: what is on its way goes on. */
async function choose(address) {
  document.body.dataset.here = address;
  history.replaceState(history.state, "", address);
  if (links().length) at = nameOf(address);
  draw();
  if (await refresh()) return;
  face().querySelector(".plate .no").textContent = called(at); // no network: the rest of the page is older
  face().querySelector(".say")?.replaceChildren();
}

const page = () => `/counts/${form.dataset.count}`;

/** The page of a place, on the same round. */
function pageOf(name) {
  const { round } = face().dataset;
  return `${page()}?place=${encodeURIComponent(name)}${round ? `&round=${encodeURIComponent(round)}` : ""}`;
}

/** The cards held up at one place, and the lists that have no answer yet: kept when the page is left. */
const kept = {
  name: `count ${form.dataset.count}`,
  read() {
    return JSON.parse(localStorage.getItem(this.name) ?? '{"place":"","texts":[],"sent":[]}');
  },
  write(state) {
    localStorage.setItem(this.name, JSON.stringify(state));
  },
};
let hand = kept.read();

const sending = new Sending(`/api/stocktakes/${form.dataset.count}/looks`, document.querySelector("[data-sending]"), {
  names,
  out: comeIn,
  done: async (look, record) => {
    if (record.texts) sound.yes(); // a photo is read long after it was taken
    forget(record);
    if (record.film) film.answered(look);
    if (!film.runs()) await refresh();
  },
  missed: film.missed,
  changed: ({ key, texts, fields }) => {
    keep({ sent: hand.sent.map((each) => (each.key === key ? { ...each, texts, fields } : each)) });
  },
  dropped: forget,
  troubled: (record) => {
    sound.no();
    if (record.texts) record.line.scrollIntoView({ block: "nearest" });
  },
});

/** A list that has its answer, or none any more, is kept no longer. */
function forget({ key }) {
  keep({ sent: hand.sent.filter((each) => each.key !== key) });
}

function keep(changed) {
  hand = { ...hand, ...changed };
  kept.write(hand);
  draw();
}

/** What the next photo shows: as the page says, or, while one of that is on its way, the next that nobody looked at. */
function target() {
  const { place, target: said, closer, round } = face().dataset;
  const now = place === at ? said : at;
  const sent = sending.places;
  if (!now || closer || round || !sent.has(now)) return now;
  const all = links();
  const here = all.findIndex(({ href }) => nameOf(href) === now);
  const left = [...all.slice(here + 1), ...all.slice(0, here)].filter((each) => !("looked" in each.dataset));
  return left.map(({ href }) => nameOf(href)).find((name) => !sent.has(name)) ?? now;
}

/** A card of the list in the hand, as it is elsewhere: by its slot. */
function badge(text) {
  const slot = CHECKED ? slotOf(text) : "";
  const shown = plate(slot || text);
  shown.classList.add("small", ...(slot ? [] : ["words"]));
  return shown;
}

/** The list of what is in the hand, and the one thing to do next. */
function draw() {
  const section = document.querySelector("[data-hand]");
  section.hidden = !hand.texts.length;
  put(section.querySelector("h2"), `In ${called(hand.place)}, by hand`);
  section.querySelector("ul").replaceChildren(
    ...hand.texts.map((text, n) => {
      const out = press("Take it out", () => keep({ texts: hand.texts.filter((_, other) => other !== n) }));
      out.setAttribute("aria-label", `Take ${text} out of the list`);
      return make("li", "", badge(text), out);
    }),
  );
  const [done, shoot, back] = ["[data-all]", "label", "[data-back]"].map((each) => form.querySelector(each));
  const { closer, part, back: looked } = face().dataset;
  const next = target();
  done.hidden = !hand.texts.length;
  put(done, `That is all in ${called(hand.place)}`);
  if (back) back.hidden = !looked || hand.texts.length > 0;
  shoot.hidden = hand.texts.length > 0 || Boolean(back && looked);
  const what = closer
    ? `Take a closer photo of ${called(part)}`
    : `Photograph ${next ? called(next) : "bins with labels"}`;
  put(form.querySelector("[data-words]"), what);
  const again = face().querySelector("[data-again]");
  if (again) again.hidden = next === at && !looked;
  put(document.querySelector("[data-typing]"), at ? `Card in ${called(at)}, or the next bin` : "Bin, then its cards");
  const nothing = document.querySelector("[data-nothing]");
  nothing.hidden = !at || hand.texts.length > 0;
  put(nothing, `Nothing stands in ${called(at)}`);
}

/** All cards of the place were held up: these, or those in the list. The label that was scanned goes with them. */
function all(cards = hand.texts, name = hand.place) {
  const fields = { place: name, via: "wedge" };
  const texts = hand.label?.place === name ? [hand.label.text, ...cards] : cards;
  const record = sending.cards(texts, fields);
  keep({ texts: [], sent: [...hand.sent, { key: record.key, texts, fields, taken: record.taken }] });
}

/** A look that is no good is taken out. */
async function drop(key) {
  const reply = await post(`/api/stocktakes/${form.dataset.count}/looks/${key}/drop`).catch(() => null);
  await refresh();
  const button = document.querySelector(`[data-drop="${CSS.escape(key)}"]`);
  if (!reply) tell("No answer came. Look whether it was dropped, then try again.", button);
  else if (reply.status !== 200) tell(reply.json?.detail ?? "It can't be dropped.", button);
}

/** Why the service would not take a text that is no place of this count; empty where it would. */
function against(name, bin) {
  if (bin) return `Bin ${bin} is not in this count.`;
  if (bin === null && !at) return "First the bin: scan its label, type its name, or choose it below.";
  if (bin === "" || (CHECKED && !slotOf(name))) return `“${name}” is no card's text. Read it again.`;
  return "";
}

async function scanned(text, via) {
  quiet();
  const name = text.trim().toUpperCase();
  const bin = binOf(name);
  const known = [...names(), at].find((each) => each && each.toUpperCase() === (bin ?? name));
  if (known) {
    if (hand.texts.length && hand.place !== known) all();
    if (bin) keep({ label: { place: known, text: name } });
    sound.noted();
    if (at !== known) await choose(pageOf(known));
    return;
  }
  const no = against(name, bin);
  if (no) return refuse(text, no, via);
  if (hand.texts.length && hand.place !== at) all();
  if (!hand.texts.includes(name)) keep({ place: at, texts: [...hand.texts, name] });
  sound.noted();
}

/** Says why beside the field; what was typed stands there again, to be mended or typed over. */
function refuse(text, sentence, via) {
  const field = typed()?.offsetParent ? typed() : null;
  tell(sentence, field?.form);
  if (!field || via !== "typed") return;
  field.value = refused = text;
  field.select();
}

document.addEventListener("submit", (event) => {
  if (!event.target.matches("[data-typed]")) return;
  const text = typed().value;
  typed().value = "";
  if (text.trim()) scanned(text, "typed");
});

/** Photos that were taken go out. */
function take(input) {
  const { closer } = face().dataset;
  const place = target();
  const fields = { ...(place && { place }), ...(closer && { closer }) };
  for (const file of input.files) sending.photo(file, fields);
  input.value = "";
  const to = pageOf(place);
  if (place && !closer && document.body.dataset.here !== to) choose(to);
  else draw();
}

form.addEventListener("change", (event) => take(event.target));

document.addEventListener("click", (event) => {
  if (event.target.closest("[data-all]")) return all();
  if (event.target.closest("[data-none]")) return keep({ texts: [] });
  if (event.target.closest("[data-nothing]")) return all([], at);
  const bad = event.target.closest("[data-drop]");
  if (bad) return drop(bad.dataset.drop);
  const link = event.target.closest("main a[href]");
  const address = link && new URL(link.getAttribute("href"), location.href);
  if (address?.pathname !== page() || address.hash || event.ctrlKey || event.metaKey) return;
  event.preventDefault();
  if (hand.texts.length && address.searchParams.get("place") !== hand.place) all();
  choose(address.pathname + address.search).then(() => scrollTo({ top: 0 }));
});

addEventListener("beforeunload", (event) => sending.loose && event.preventDefault());
// A face without a target is another page: the count is over.
document.addEventListener("refreshed", () => ("target" in face().dataset ? draw() : location.reload()));
// A scanner's keys do not belong to a text that was refused, as they would to one that is being typed.
const box = () => (typed()?.offsetParent && !(refused && typed().value === refused) ? typed() : null);
listen(box, { scanned, entered: () => typed().form.requestSubmit() });
camera.offer({ scanned, shut: film.runs }); // what is filmed is not held up
film.offer(sending, page(), refresh);
for (const { key, texts, fields, taken } of hand.sent) sending.cards(texts, fields, key, taken);
draw();
if (form.querySelector("input").files.length) take(form.querySelector("input")); // while this script was on its way
if (new URL(location.href).searchParams.has("hand")) {
  document.getElementById("by-hand").scrollIntoView();
  typed().focus({ preventScroll: true });
}
