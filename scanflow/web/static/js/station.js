// A station: cards and slips come in by scanner, keyboard or photo; each gets a verdict.

import { post } from "./api.js";
import * as camera from "./camera.js";
import { wait } from "./frame.js";
import { refresh } from "./live.js";
import { Queue } from "./queue.js";
import * as sheet from "./sheet.js";
import * as sound from "./sound.js";
import * as voice from "./voice.js";
import { listen } from "./wedge.js";

const form = () => document.querySelector("form.scan");
const box = () => form()?.elements.text;

function focus() {
  (box() ?? document.querySelector("main .next"))?.focus();
}

function tell(...sentence) {
  const face = document.querySelector('[data-live="face"]');
  face.querySelector(":scope > .said")?.remove();
  const words = document.createElement("p");
  words.className = "said";
  words.setAttribute("role", "alert");
  words.append(...sentence);
  face.prepend(words);
}

/** Where these scans happen: the station and its round, table or bin. */
function spot() {
  const { station, round, table, bin } = form().dataset;
  const fields = { station, round, table, bin };
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value));
}

async function answered(scan, answer) {
  const accepted = answer.verdict === "accepted";
  const pressed = new Promise((go) => sheet.show(answer, scan.station, scan.take_out, go));
  if (accepted) sound.yes();
  else sound.no();
  voice.say(sheet.words(answer, scan.station, scan.take_out));
  const shown = refresh();
  if (accepted) pressed.then(focus);
  else await pressed;
  await shown;
  if (accepted) voice.next();
  focus();
}

function failed(scan, status, problem) {
  sound.no();
  wait("");
  if (status === 401) {
    tell("You are signed out. Sign in again; the scan is kept and sent then.");
    location.assign(`/login?next=${encodeURIComponent(document.body.dataset.here)}`);
    return;
  }
  tell(`Not recorded. ${problem?.detail ?? "The scan could not be judged."}`);
  focus();
}

function waiting(scans, why) {
  const text = scans[0]?.scan.text ?? "a photo";
  const more = scans.length > 1 ? ` and ${scans.length - 1} more` : "";
  wait(scans.length ? `Not recorded yet: ${text}${more}. ${why}` : "");
}

function take(via, text, image = null) {
  const fields = { ...spot(), via };
  if (!image) fields.text = text;
  const out = form().elements.take_out;
  if (out?.checked) fields.take_out = true;
  queue.add(fields, image);
  if (out) out.checked = false;
}

function scanned(text, via) {
  sheet.close();
  take(via, text);
}

function entered() {
  const text = box().value.trim();
  box().value = "";
  if (text) scanned(text, "typed");
  else document.querySelector('[data-live="face"] button.next, [data-next]')?.click();
}

/** A scanner whose keyboard is not this computer's, and a text that is whole either way. */
function unclear(texts) {
  sound.no();
  const help = document.createElement("a");
  help.href = "/scanner";
  help.textContent = "set the scanner's keyboard";
  tell(`Not taken: this scan can be ${texts.join(" or ")}. First `, help, ".");
}

document.addEventListener("submit", (event) => {
  if (!event.target.matches("form.scan")) return;
  event.preventDefault();
  entered();
});

document.addEventListener("change", (event) => {
  if (!event.target.matches('.scan input[type="file"]') || !event.target.files.length) return;
  take("camera", "", event.target.files[0]);
  event.target.value = "";
});

document.addEventListener("click", async (event) => {
  const key = event.target.closest("[data-undo]")?.dataset.undo;
  if (!key) return;
  const reply = await post(`/api/scans/${key}/undo`).catch(() => null);
  await refresh();
  if (!reply) tell("No answer came. Look whether it was undone, then try again.");
  else if (reply.status !== 200) tell(reply.json?.detail ?? "It can't be undone.");
  focus();
});

const queue = new Queue(document.body.dataset.here, { answered, failed, waiting });
listen(box, { scanned, entered, unclear, shut: sheet.stands, refused: sound.no });
document.addEventListener("keydown", sound.ready, { once: true });
document.addEventListener("pointerdown", sound.ready, { once: true });
camera.offer({ scanned, shut: sheet.stands });
voice.offer();
focus();
