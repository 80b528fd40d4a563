// Shelves are filmed for a count: of the live picture the frames that are worth reading go out as photos, one after
// another, and what came of them stands beside it.

import { make, units } from "../page/elements.js";
import { missing, refusal } from "../scanning/camera.js";
import { plate } from "../scanning/sheet.js";
import * as sound from "../scanning/sound.js";
import { FINE, isDark, Sweep } from "./sweep.js";

const PACE = 100; // ms from one glance to the next, at least
const RESTS = 1000; // ms in one stretch, after which its sharpest frame is read if nothing else waits
const SHARPER = 1.3; // times as sharp as the one that was taken: this stretch is looked at once more
const MANY = 3; // frames that wait, of which one is being read: the shelves go by too fast
const MOST = 5; // no more of them are kept
const QUALITY = 0.9;
const LISTED = 40; // cards
const WANTED = { facingMode: { ideal: "environment" }, width: { ideal: 4096 }, height: { ideal: 2160 } };

const READY = "Walk along the shelf, the bins' labels in view.";
const SILENT = "No answer: frames wait until there is one. Stay on this page.";
const LOST = "Too fast: a part was left out. Go back a little, and slower.";
const SLOWER = "Slower: frames wait to be read.";
const DARK = "It is too dark to read.";
const GONE = "The camera has gone. Connect it, then go on.";
const PAUSED = "Paused.";
const INSTEAD = "Until then photograph bin after bin.";
const MISSES = { required: "No bin's label in view.", many_bins: "Labels of several shelves in view. Go nearer." };

const panel = document.querySelector("dialog.film");
const video = panel?.querySelector("video");
const waiting = make("p", "mind");
const [small, large] = [document.createElement("canvas"), document.createElement("canvas")];

let sending = null;
let count = ""; // the address of its page
let refresh = null;
let run = null; // what is filmed now; null while nothing is
let lock = null;
let miss = ""; // what was wrong with the frame that was answered last
let lost = false;
const cards = new Map(); // text → its line
const places = new Set();

/** Whether the panel is open. */
export const runs = () => Boolean(panel?.open);

/** Nothing is read out twice. */
function tell(sentence) {
  const words = panel.querySelector(".hint");
  if (words.textContent !== sentence) words.textContent = sentence;
}

/** A frame was read: its outlines, and its cards before all others. */
export function answered({ key, place, reads }) {
  miss = "";
  if (!places.has(place)) sound.yes();
  places.add(place);
  for (const { text, code, certainty, bins, unexpected } of reads.filter((each) => each.text)) {
    cards.get(text)?.remove();
    const words = make(
      "small",
      "",
      certainty === "decoded" ? "" : certainty,
      unexpected && certainty !== "decoded" ? ", " : "",
    );
    if (unexpected) words.append(make("b", "", "unexpected"));
    const shown = plate(code ?? text);
    shown.classList.add("small", ...(code ? [] : ["words"]));
    const line = make("li", "", shown, make("span", "", bins.join(" or ") || place, words));
    cards.set(text, line);
    panel.querySelector("ol").prepend(line);
  }
  for (const line of [...panel.querySelectorAll("ol li")].slice(LISTED)) line.remove();
  const bins = units(Number(panel.dataset.bins), "bin");
  panel.querySelector("h2").textContent = `${units(cards.size, "card")} read in ${places.size} of ${bins}`;
  const still = panel.querySelector(".still");
  Object.assign(still, { src: `${count}/looks/${key}.jpg`, hidden: false });
  wait();
}

/** Once the panel is closed the page says how many frames are not answered yet. */
function wait() {
  const many = panel.open ? 0 : sending.frames;
  const stays = many === 1 ? "waits" : "wait";
  waiting.textContent = many ? `${units(many, "frame")} ${stays} to be read. Stay on this page.` : "";
  waiting.hidden = !many;
}

/** A frame was not taken: one without a label is nobody's fault. */
export function missed({ json }) {
  miss = MISSES[json?.code] ?? json?.detail ?? "A frame could not be used.";
  if (run) run.missed = true;
  if (json?.code === "closed") stop();
  wait();
}

/** A stretch of the way: its sharpest frame so far, whether that was taken, where and how sharp. */
function begin(mine) {
  return Object.assign(mine, { sweep: new Sweep(), best: null, taken: null, missed: false, begun: performance.now() });
}

/** Opens the camera and looks, until it is paused. */
async function film() {
  const mine = (run = begin({}));
  tell("Starting the camera.");
  show();
  try {
    const stream = await navigator.mediaDevices.getUserMedia({ video: WANTED });
    if (run !== mine) return stream.getTracks().forEach((track) => track.stop());
    video.srcObject = stream;
    await video.play();
  } catch (error) {
    if (run === mine) blind(refusal(error), error.name !== "NotFoundError");
    return;
  }
  const held = await navigator.wakeLock?.request("screen").catch(() => null);
  if (run !== mine) return held?.release();
  lock = held;
  while (run === mine) {
    const begun = performance.now();
    if (video.srcObject.getVideoTracks()[0].readyState === "ended") return pause(GONE);
    await glance(mine);
    await new Promise((go) => setTimeout(go, Math.max(0, PACE - (performance.now() - begun))));
  }
}

async function glance(mine) {
  const frame = await createImageBitmap(video).catch(() => null);
  if (run !== mine || !frame) return frame?.close();
  const [wide, high] = [FINE, Math.round((frame.height * FINE) / frame.width)];
  const levels = grey(frame, wide, high);
  const dark = isDark(levels);
  if (again(mine)) begin(mine);
  if (mine.high && mine.high !== high) turned(mine);
  mine.high = high;
  const { ended, best } = dark ? {} : mine.sweep.see(levels, wide, high);
  if (ended) take(mine);
  const sharper = best && mine.sweep.sharp > SHARPER * mine.taken?.sharp;
  if (ended || sharper) Object.assign(mine, { taken: null, begun: performance.now() });
  if (best && !mine.taken) {
    mine.best?.close();
    mine.best = frame;
  } else frame.close();
  if (!sending.open && performance.now() - mine.begun > RESTS) take(mine);
  tell(sending.silent ? SILENT : lost ? LOST : sending.frames >= MANY ? SLOWER : dark ? DARK : miss || READY);
}

/** The phone was turned: what is seen now can't be held against what was. */
function turned(mine) {
  take(mine);
  begin(mine);
}

/** What was taken here showed no label, and the view has moved a little since. */
const again = ({ missed: none, taken, sweep }) => none && taken && sweep.gone !== taken.gone;

/** The sharpest frame of this stretch goes out; where too many wait already it is left out, and that is told. */
function take(mine) {
  const frame = mine.best;
  if (!frame) return;
  Object.assign(mine, { best: null, taken: { sharp: mine.sweep.sharp, gone: mine.sweep.gone }, missed: false });
  const before = lost;
  lost = sending.frames >= MOST;
  if (lost && !before) sound.no();
  if (!lost) {
    Object.assign(large, { width: frame.width, height: frame.height });
    large.getContext("2d").drawImage(frame, 0, 0);
    large.toBlob((file) => file && sending.frame(file), "image/jpeg", QUALITY);
  }
  frame.close();
}

function grey(frame, wide, high) {
  Object.assign(small, { width: wide, height: high });
  const context = small.getContext("2d", { willReadFrequently: true });
  context.imageSmoothingQuality = "high";
  context.drawImage(frame, 0, 0, wide, high);
  const { data } = context.getImageData(0, 0, wide, high);
  const levels = new Uint8Array(wide * high);
  for (let i = 0, at = 0; i < levels.length; i += 1, at += 4) {
    levels[i] = 0.299 * data[at] + 0.587 * data[at + 1] + 0.114 * data[at + 2];
  }
  return levels;
}

function show() {
  const press = panel.querySelector("[data-pause]");
  press.textContent = run ? "Pause filming" : "Go on filming";
  press.hidden = video.hidden = false;
  panel.querySelector("[data-photos]").hidden = true;
}

/** There is no picture: why, and what can be done instead; `again` where that may pass. */
function blind(words, again) {
  pause();
  panel.querySelector(".hint").replaceChildren(words);
  const press = panel.querySelector("[data-pause]");
  Object.assign(press, { hidden: !again, textContent: "Try again" });
  video.hidden = true;
  panel.querySelector("[data-photos]").hidden = again;
}

function pause(words = PAUSED) {
  if (run) take(run);
  run = null;
  video.srcObject?.getTracks().forEach((track) => track.stop());
  lock?.release().catch(() => {});
  lock = null;
  tell(lost ? `${LOST} ${words}` : words);
  show();
}

function stop() {
  pause();
  panel.close();
}

function open() {
  panel.showModal();
  wait();
  if (navigator.mediaDevices?.getUserMedia) return film();
  blind(missing(INSTEAD), false);
}

/** Gives the button on the page of this address its work; `fresh()` shows the page anew once the panel is closed. */
export function offer(through, address, fresh) {
  [sending, count, refresh] = [through, address, fresh];
  document.addEventListener("click", ({ target }) => {
    if (target.closest("[data-film]")) open();
    else if (target.closest("[data-pause]")) (run ? pause : film)();
    else if (target.closest("[data-stop]")) stop();
    else if (target.closest("[data-photos]")) {
      stop();
      document.querySelector(".shoot input").click();
    }
  });
  document.addEventListener("visibilitychange", () => document.hidden && run && pause());
  waiting.setAttribute("role", "status");
  waiting.hidden = true;
  document.querySelector(".shoot")?.prepend(waiting);
  panel?.addEventListener("close", () => {
    if (run) pause();
    wait();
    refresh();
  });
}
