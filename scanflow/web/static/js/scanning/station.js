// A station: cards and slips come in by scanner, keyboard or photo; each gets a verdict.

import { clock, comeIn, isOut, post } from "../page/api.js";
import { alert, make } from "../page/elements.js";
import * as camera from "./camera.js";
import { wait } from "./frame.js";
import { lasting, passing } from "../phone/unsent.js";
import { refresh } from "../page/live.js";
import * as putback from "../stock/putback.js";
import { Queue } from "./queue.js";
import * as round from "../picking/round.js";
import * as sheet from "./sheet.js";
import * as sound from "./sound.js";
import * as voice from "./voice.js";
import { listen } from "./wedge.js";

const form = () => document.querySelector("form.scan");
const box = () => form()?.elements.text;
const onRound = Boolean(document.querySelector("[data-stops]"));
const atTable = form()?.dataset.station === "table";

const DEAD = 4000; // ms; a round goes on without an answer sooner than others ask again
const SOON = "This page is from an earlier sign-in. It loads itself again in a few seconds, and sends the scan then.";
const UNTIL = "Pack nothing until it is recorded.";
const NO_TABLE = "The table needs the network: nothing is packed without a look at the order.";

/** To where the next key goes. Chromium takes no key in a field to which a closing dialog gave the focus back. */
function focus() {
  document.activeElement.blur();
  (box() ?? document.querySelector("main .next"))?.focus();
}

function tell(...sentence) {
  const face = document.querySelector('[data-live="face"]');
  face.querySelector(":scope > .said")?.remove();
  face.prepend(alert("said", ...sentence));
}

/** Where these scans happen: the station and its round, table or bin. */
function spot() {
  const { station, round, table, bin } = form().dataset;
  const fields = { station, round, table, bin };
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value));
}

async function answered({ scan, noted, label }, answer) {
  if (noted) return settled(answer);
  const accepted = answer.verdict === "accepted";
  const bound = label && !answer.code && answer.parcel_state === "closed";
  const station = bound ? "label" : scan.station;
  const pressed = new Promise((go) => sheet.show(answer, station, scan.take_out, go));
  if (accepted) sound.yes();
  else sound.no();
  voice.say(sheet.words(answer, station, scan.take_out));
  const shown = refresh();
  if (accepted) pressed.then(focus);
  else await pressed;
  await shown;
  if (accepted) voice.next();
  focus();
}

/** What was noted without network has got its answer: the page shows the room again, and what is to be put back. */
async function settled(answer) {
  if (answer?.verdict !== "accepted") sound.no();
  await putback.list();
  if (queue.scans.length) return;
  await refresh();
  focus();
}

function failed({ noted }, status, problem) {
  const out = isOut({ status, json: problem });
  if (noted && !out) return settled(problem);
  sound.no();
  wait("");
  if (out) return leave(status);
  tell(`Not recorded. ${problem?.detail ?? "The scan could not be judged."}`);
  focus();
}

/** Who was signed out comes in again, and what was scanned is sent then. A photo can't wait so long: it is told of. */
function leave(status) {
  if (queue.dropPhotos())
    return tell("The photo was not recorded: you are signed out. Sign in again, then take it again.");
  const now = comeIn(status);
  tell(now ? "You are signed out. Sign in again; the scan is kept and sent then." : SOON);
}

function waiting(records, why) {
  if (onRound && queue.lost) {
    records.forEach(note);
    if (!document.body.classList.contains("away")) round.draw(records);
  }
  const text = records[0]?.scan.text ?? "a photo";
  const more = records.length > 1 ? ` and ${records.length - 1} more` : "";
  const table = queue.ill ? UNTIL : NO_TABLE;
  wait(records.length ? `Not recorded yet: ${text}${more}. ${why}${atTable ? ` ${table}` : ""}` : "");
  if (!records.length) refresh();
}

/** Without network the round's own list answers, once the scan is kept; the service is asked later. */
async function note(record) {
  if (record.noted || record.told || record.image) return;
  record.told = true;
  const said = round.judge(record.scan.text, queue.scans);
  if (said.fresh) {
    record.noted = record.scan.at ?? clock();
    try {
      await record.stored;
      await lasting.change(record);
    } catch {
      record.noted = undefined;
      return tell("This browser keeps nothing. Write the scan down, and repeat it when the network is back.");
    }
  }
  present(said);
}

function present(said) {
  sound.noted();
  voice.say(`${said.word}. ${said.advice}`);
  round.draw(queue.scans);
  round.show(said, focus);
  if (said.good) voice.next();
}

/** The parcel of a slip that gets its shipping label before it is handed over. */
const bare = (text) =>
  JSON.parse(document.querySelector("[data-bare]")?.dataset.bare ?? "{}")[text.replace(/\s/g, "").toUpperCase()];

function take(via, text, image = null) {
  if (bare(text)) return location.assign(`/hand-over?parcel=${bare(text)}`);
  const fields = { ...spot(), via };
  if (!image) fields.text = text;
  if (queue.lost && atTable) return away();
  if (queue.lost && onRound && !image) {
    const said = round.judge(text, queue.scans);
    if (!said.fresh) return present(said);
  }
  const out = form().elements.take_out;
  if (out?.checked) fields.take_out = true;
  const { carrier } = form().elements;
  if (carrier) fields.carrier = carrier.value.trim();
  const record = queue.add(fields, image);
  record.label = Boolean(document.querySelector("[data-label]")); // what is read now is a shipping label
  if (queue.lost && onRound) note(record);
  if (out) out.checked = false;
}

/** There is no network, as the browser says. */
function away() {
  if (onRound) round.draw(queue.scans);
  if (queue.scans.length) return;
  if (atTable) wait(`No network. ${NO_TABLE}`);
  else
    wait(`No network. ${onRound ? "Scans are noted on this phone, and recorded later." : "Scans wait on this page."}`);
}

function back() {
  if (queue.scans.length) return; // the queue goes on by itself
  wait("");
  refresh();
}

function scanned(text, via) {
  sheet.close();
  round.close();
  take(via, text);
}

function entered() {
  const text = box().value.trim();
  box().value = "";
  if (text) scanned(text, "typed");
  else document.querySelector('[data-live="face"] button.next:not([data-press]), [data-next]')?.click();
}

/** A scanner whose keyboard is not this computer's, and a text that is whole either way. */
function unclear(texts) {
  sound.no();
  const help = make("a", "", "set the scanner's keyboard");
  help.href = "/scanner";
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

document.addEventListener("click", ({ target }) => {
  if (!target.closest("[data-take-out]")) return;
  form().elements.take_out.checked = true;
  focus();
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

const shut = () => sheet.stands() || round.stands();
const store = onRound ? lasting : passing(document.body.dataset.here);
const queue = new Queue(store, { answered, failed, waiting }, onRound ? DEAD : undefined);
listen(box, { scanned, entered, unclear, shut, refused: sound.no });
camera.offer({ scanned, shut });
voice.offer();
focus();
addEventListener("offline", away);
addEventListener("online", back);
queue.ready.then(() => navigator.onLine || away());
