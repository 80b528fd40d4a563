// A live camera: the page shows its picture, and a card held into the middle of it is scanned.

import { make, press } from "../page/elements.js";
import { makeDecoder } from "./decoder.js";
import { Glances, ours } from "./glances.js";

const PACE = 125; // ms from one glance to the next, at least
const SHOWN = 0.6; // of the picture's height; the band within it is what is looked at
const PLACE = "camera";
const WANTED = { facingMode: { ideal: "environment" }, width: { ideal: 1280 }, height: { ideal: 720 } };

const READY = "Hold a card into the band.";
const NO_NETWORK = "The network is gone, and pictures are read by the service. Scan with a scanner or type.";
const MANY = "More than one card is in view. Show one at a time.";
const INSECURE = "The live camera needs HTTPS: browsers give one to secure pages only.";
const REFUSALS = {
  NotAllowedError: "The camera is not allowed here. Allow it in the browser's settings of this page.",
  NotFoundError: "There is no camera on this device.",
  NotReadableError: "The camera is in use elsewhere. Close what uses it, then try again.",
};

let panel = null;

/** Why the camera does not start, and what to do. */
export const refusal = ({ name }) => REFUSALS[name] ?? "The camera does not start. Close this, then try again.";

const button = () => document.querySelector("[data-camera]");

/** The panel stands in the form of the scan box, which may have been exchanged or be gone. */
function place() {
  const form = button()?.form;
  if (form && panel.parentElement !== form) form.prepend(panel);
  button()?.setAttribute("aria-expanded", String(Boolean(form)));
  return Boolean(form);
}

function show(...parts) {
  panel?.remove();
  const words = make("p", "hint");
  words.setAttribute("role", "status");
  panel = make("div", "camera", ...parts, words);
  place();
}

/** Says this in the panel; nothing is read out twice. */
function tell(sentence) {
  const words = panel?.querySelector(".hint");
  if (words && words.textContent !== sentence) words.textContent = sentence;
}

function shut() {
  panel
    ?.querySelector("video")
    ?.srcObject?.getTracks()
    .forEach((track) => track.stop());
  panel?.remove();
  panel = null;
  button()?.setAttribute("aria-expanded", "false");
}

function light(track) {
  const switch_ = press("Light", async () => {
    const on = switch_.getAttribute("aria-pressed") !== "true";
    await track.applyConstraints({ advanced: [{ torch: on }] }).catch(() => tell("The light can't be switched."));
    switch_.setAttribute("aria-pressed", String(on));
  });
  switch_.setAttribute("aria-pressed", "false");
  return switch_;
}

function zoom(track, { min, max, step }) {
  const range = make("input");
  const now = track.getSettings().zoom ?? min;
  Object.assign(range, { type: "range", min, max, step: step || "any", value: now });
  range.addEventListener("input", () => {
    track.applyConstraints({ advanced: [{ zoom: Number(range.value) }] }).catch(() => {});
  });
  return make("label", "zoom", "Zoom", range);
}

/** What this camera lets be set. */
function controls(track) {
  const can = track.getCapabilities?.() ?? {};
  const row = make("div", "row");
  if (can.torch) row.append(light(track));
  if (can.zoom && can.zoom.max > can.zoom.min) row.append(zoom(track, can.zoom));
  return row;
}

/** What a page without a camera says; `instead` is what can be done meanwhile. */
export function missing(instead) {
  const link = make("a", "", "How to get it");
  link.href = "/trust";
  return make("p", "", `${INSECURE} ${instead} `, link, ".");
}

async function open(scan) {
  if (!navigator.mediaDevices?.getUserMedia) return show(missing("Until then scan by photo."));
  const video = make("video");
  Object.assign(video, { muted: true, playsInline: true });
  video.setAttribute("aria-label", "What the camera sees");
  const picture = make("div", "picture", video, make("span", "band"));
  show(picture);
  panel.scrollIntoView({ block: "nearest" });
  const mine = panel;
  tell("Starting the camera.");
  try {
    const stream = await navigator.mediaDevices.getUserMedia({ video: WANTED });
    if (panel !== mine) return stream.getTracks().forEach((track) => track.stop());
    video.srcObject = stream;
    await video.play();
    picture.style.aspectRatio = video.videoWidth / video.videoHeight / SHOWN;
    mine.insertBefore(controls(stream.getVideoTracks()[0]), mine.lastChild);
  } catch (error) {
    if (panel === mine) show();
    return tell(refusal(error));
  }
  tell(READY);
  watch(mine, video, scan);
}

/** Glances at the picture for as long as it stands; one glance at a time. */
async function watch(mine, video, scan) {
  const [decode, glances] = [await makeDecoder(), new Glances()];
  const ended = () => video.srcObject.getVideoTracks()[0].readyState === "ended";
  while (panel === mine && place()) {
    const begun = performance.now();
    if (ended()) {
      show();
      return tell("The camera has gone. Connect it, then press Camera twice.");
    }
    const texts = await decode(video).then(ours, () => null);
    if (panel !== mine) return;
    if (!texts) tell(NO_NETWORK);
    else if (texts.length !== 1) {
      glances.present(texts, performance.now());
      tell(texts.length ? MANY : READY);
    } else {
      tell(READY);
      const text = glances.take(texts[0], performance.now(), scan.shut());
      if (text) scan.scanned(text, "camera");
    }
    const rest = (texts ? PACE : 8 * PACE) - (performance.now() - begun);
    await new Promise((go) => setTimeout(go, Math.max(0, rest)));
  }
  if (panel === mine) shut();
}

/**
 * Gives the page's Camera button its work: what is seen goes to `scanned(text, "camera")`; `shut()` says that nothing
 * may be taken now. A page that is not looked at has no camera; one that was left with it open begins with it.
 */
export function offer({ scanned, shut: closed = () => false }) {
  const scan = { scanned, shut: closed };
  const wanted = () => sessionStorage.getItem(PLACE) === "on" && button();
  document.addEventListener("click", (event) => {
    if (!event.target.closest("[data-camera]")) return;
    sessionStorage.setItem(PLACE, panel ? "off" : "on");
    if (panel) shut();
    else open(scan);
  });
  document.addEventListener("visibilitychange", () => {
    if (document.hidden) shut();
    else if (wanted() && !panel) open(scan);
  });
  if (wanted() && navigator.mediaDevices) open(scan);
}
