// A running count: photos of bins, or the cards of a bin held up one after another. The bin comes first, by a tap, its
// label or its name; nothing of it is lost by leaving.

import { post } from "./api.js";
import * as camera from "./camera.js";
import { Sending } from "./count_photos.js";
import * as film from "./film.js";
import { refresh } from "./live.js";
import * as sound from "./sound.js";
import { listen } from "./wedge.js";

const LABEL = /^BIN(.+).$/; // the last sign is a check, which the service holds against the name

const form = document.querySelector("form.shoot");
const typed = () => document.getElementById("typed");
const face = () => document.querySelector('[data-live="face"]');
const place = () => face().dataset.place;
const nameOf = (link) => new URL(link.href).searchParams.get("place");
const names = () => [...document.querySelectorAll("#places .bins a")].map(nameOf);

function tell(sentence) {
  face().querySelector(":scope > .said")?.remove();
  const words = document.createElement("p");
  words.className = "said";
  words.setAttribute("role", "alert");
  words.append(sentence);
  face().prepend(words);
  sound.no();
}

/** The page of another place, without leaving this one: what is on its way goes on. */
async function choose(address) {
  document.body.dataset.here = address;
  history.replaceState(null, "", address);
  await refresh();
}

const page = () => `/counts/${form.dataset.count}`;
const pageOf = (name) => `${page()}?place=${encodeURIComponent(name)}`;

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
  out: () => location.assign(`/login?next=${encodeURIComponent(document.body.dataset.here)}`),
  done: async (look, record) => {
    if (record.texts) sound.yes(); // a photo is read long after it was taken
    forget(record);
    if (record.film) film.answered(look);
    if (!film.runs()) await refresh();
  },
  missed: film.missed,
  changed: ({ key, texts, fields }) => {
    keep({ sent: hand.sent.map((each) => (each.key === key ? { key, texts, fields } : each)) });
  },
  dropped: forget,
  troubled: sound.no,
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

/** The list of what is in the hand, and the one thing to do next. */
function draw() {
  const section = document.querySelector("[data-hand]");
  section.hidden = !hand.texts.length;
  section.querySelector("h2").textContent = `In ${hand.place}, by hand`;
  section.querySelector("ul").replaceChildren(...hand.texts.map((text, n) => {
    const line = document.createElement("li");
    const out = document.createElement("button");
    Object.assign(out, { type: "button", className: "plain", textContent: "Take it out" });
    out.setAttribute("aria-label", `Take ${text} out of the list`);
    out.onclick = () => keep({ texts: hand.texts.filter((_, other) => other !== n) });
    line.append(text, " ", out);
    return line;
  }));
  const done = form.querySelector("[data-all]");
  done.hidden = !hand.texts.length;
  done.textContent = `That is all in ${hand.place}`;
  form.querySelector("label").hidden = hand.texts.length > 0;
  form.querySelector("[data-words]").textContent = face().dataset.shoot;
  const nothing = document.querySelector("[data-nothing]");
  nothing.hidden = !place() || hand.texts.length > 0;
  nothing.textContent = `Nothing stands in ${place()}`;
}

/** All cards of the place were held up: these, or those in the list. The label that was scanned goes with them. */
function all(cards = hand.texts, name = hand.place) {
  const fields = { place: name, via: "wedge" };
  const texts = hand.label?.place === name ? [hand.label.text, ...cards] : cards;
  const record = sending.cards(texts, fields);
  keep({ texts: [], sent: [...hand.sent, { key: record.key, texts, fields }] });
}

/** A look that is no good is taken out. */
async function drop(key) {
  const reply = await post(`/api/stocktakes/${form.dataset.count}/looks/${key}/drop`).catch(() => null);
  await refresh();
  if (!reply) tell("No answer came. Look whether it was dropped, then try again.");
  else if (reply.status !== 200) tell(reply.json?.detail ?? "It can't be dropped.");
}

async function scanned(text) {
  const name = text.trim().toUpperCase();
  const bin = LABEL.exec(name)?.[1] ?? name;
  const known = [...names(), place()].find((each) => each && each.toUpperCase() === bin);
  if (known) {
    if (hand.texts.length && hand.place !== known) all();
    if (place() !== known) await choose(pageOf(known));
    if (bin !== name) keep({ label: { place: known, text: name } });
    sound.noted();
    return;
  }
  if (LABEL.test(name)) return tell(`Bin ${bin} is not in this count.`);
  if (!place()) return tell("First the bin: scan its label, or choose it below.");
  if (hand.texts.includes(name)) return sound.noted();
  keep({ place: place(), texts: [...hand.texts, name] });
  sound.noted();
}

document.addEventListener("submit", (event) => {
  if (!event.target.matches("[data-typed]")) return;
  const text = typed().value;
  typed().value = "";
  if (text.trim()) scanned(text);
});

form.addEventListener("change", ({ target }) => {
  const { place: here, closer } = face().dataset;
  const fields = { ...(here && { place: here }), ...(closer && { closer }) };
  for (const file of target.files) sending.photo(file, fields);
  target.value = "";
});

document.addEventListener("click", (event) => {
  if (event.target.closest("[data-all]")) return all();
  if (event.target.closest("[data-none]")) return keep({ texts: [] });
  if (event.target.closest("[data-nothing]")) return all([], place());
  const bad = event.target.closest("[data-drop]");
  if (bad) return drop(bad.dataset.drop);
  const link = event.target.closest("main a[href]");
  const address = link && new URL(link.getAttribute("href"), location.href);
  if (address?.pathname !== page() || event.ctrlKey || event.metaKey) return;
  event.preventDefault();
  if (hand.texts.length && address.searchParams.get("place") !== hand.place) all();
  choose(address.pathname + address.search).then(() => scrollTo({ top: 0 }));
});

addEventListener("beforeunload", (event) => sending.loose && event.preventDefault());
document.addEventListener("refreshed", () => ("shoot" in face().dataset ? draw() : location.reload())); // or it is over
document.addEventListener("keydown", sound.ready, { once: true });
document.addEventListener("pointerdown", sound.ready, { once: true });
const box = () => (typed()?.offsetParent ? typed() : null);
listen(box, { scanned, entered: () => typed().form.requestSubmit() });
camera.offer({ scanned, shut: film.runs }); // what is filmed is not held up
film.offer(sending, page(), refresh);
for (const { key, texts, fields } of hand.sent) sending.cards(texts, fields, key);
draw();
