// What changes at another station shows here within a second: the service says that something did, and the page asks
// for itself again, unless a person is in the middle of something; then it waits.

import { wait } from "../scanning/frame.js";
import { refresh } from "./live.js";
import { written } from "../scanning/lookup.js";

const GAP = 500; // ms from one refresh to the next, at least: bursts are joined
const LOOK = 200; // ms; so often it is seen whether the person is done
const AGAIN = 3000; // ms until a refresh that failed is tried again
const FULL = 10000; // ms until a stream that was refused is asked for again
const PULSE = 5000; // ms
const ASLEEP = 15000; // ms; a clock that jumped so far was asleep, and its stream may be dead without a word

let stream = null;
let told = null; // the last seq that the service named
let unsure = false; // the page may be old, whatever its seq
let pressed = false;
let timer = 0;
let last = -Infinity;

const seq = () => Number(document.body.dataset.seq);
const stale = () => unsure || told > seq();

/** Whether the page must stay as it is: a verdict stands, a scan waits, something is written, chosen or pressed. */
function busy() {
  if (pressed || document.querySelector("dialog[open], .frame, body.away, main video:not(.camera *, dialog *)"))
    return true;
  if (document.activeElement?.matches("main select")) return true;
  return [...document.querySelectorAll("main :is(input, select, textarea):not(.camera *)")].some(written);
}

function soon(rest = 0) {
  timer ||= setTimeout(show, Math.max(rest, last + GAP - performance.now()));
}

async function show() {
  timer = 0;
  if (!stale() || !stream) return;
  if (busy()) return soon(LOOK);
  last = performance.now();
  let said = null; // words that came while the page was asked for stay too
  const may = () => {
    said = document.querySelector("main .said");
    return !busy();
  };
  const now = told;
  if (await refresh(may)) {
    unsure = false;
    if (said && !document.querySelector("main .said")) document.querySelector("main .face")?.prepend(said);
    if (told !== now) soon();
  } else soon(busy() ? LOOK : AGAIN);
}

function close() {
  stream?.close();
  stream = null;
}

function open() {
  if (stream || document.hidden || !navigator.onLine) return;
  let first = true;
  const mine = (stream = new EventSource("/api/changes"));
  mine.onopen = () => (first = true);
  mine.onmessage = ({ lastEventId }) => {
    told = Number(lastEventId);
    unsure ||= first && told !== seq(); // also a room that was put back to what it was before
    first = false;
    if (stale()) soon();
  };
  mine.onerror = () => {
    if (mine.readyState !== EventSource.CLOSED || stream !== mine) return;
    unsure = true; // too many look on, or nobody is signed in any more: without a stream the page asks now and then
    soon();
    setTimeout(() => stream === mine && anew(), FULL);
  };
}

function anew() {
  close();
  open();
}

for (const [down, up] of [
  ["pointerdown", "pointerup"],
  ["pointerdown", "pointercancel"],
  ["keydown", "keyup"],
]) {
  addEventListener(down, () => (pressed = true), true);
  addEventListener(up, () => setTimeout(() => (pressed = false)), true); // after the click that it makes
}
addEventListener("blur", () => (pressed = false));
addEventListener("pagehide", close);
addEventListener("pageshow", open);
addEventListener("offline", close);
addEventListener("online", open);
if (!document.body.matches(".station")) {
  const network = () => wait(navigator.onLine ? "" : "No network. What stands here may be old.");
  for (const name of ["offline", "online", "pageshow"]) addEventListener(name, network);
}
document.addEventListener("visibilitychange", () => (document.hidden ? close() : open()));

let awake = Date.now();
setInterval(() => {
  if (Date.now() - awake > ASLEEP) anew();
  awake = Date.now();
}, PULSE);
open();
