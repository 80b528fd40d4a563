// The page to try a scanner: what arrives, key by key, and what to change in the scanner's set-up.

import { make } from "../page/elements.js";
import { advise } from "./scanner_advice.js";
import * as voice from "./voice.js";

const SILENCE = 600; // ms after which a scan is over, however slow
const test = document.body.dataset.test;
let strokes = [];
let timer = 0;

const running = (at) => strokes.length > 0 && at - strokes.at(-1).at < SILENCE;

function showVerdict(word, under, sentence) {
  const plate = document.querySelector("#verdict .plate");
  plate.className = "plate words";
  plate.querySelector(".no").textContent = word;
  plate.querySelector(".under").textContent = under;
  document.querySelector("#what").textContent = sentence;
}

function showAdvice(found) {
  const lines = found.map(({ change, words }) => {
    return make("li", "line told", make("strong", "", change ? "Change" : "Right"), make("span", "", words));
  });
  document.querySelector("#advice").replaceChildren(...lines);
}

function showKeys() {
  const table = document.createElement("table");
  const head = table.createTHead().insertRow();
  for (const name of ["Key", "Its place", "After"]) {
    const cell = make("th", "", name);
    cell.scope = "col";
    head.append(cell);
  }
  const body = table.createTBody();
  strokes.forEach(({ key, code, at, ctrl }, i) => {
    const row = body.insertRow();
    const after = i ? `${Math.round(at - strokes[i - 1].at)} ms` : "";
    for (const text of [(ctrl ? "Ctrl " : "") + (key === " " ? "Space" : key), code || "not told", after])
      row.insertCell().textContent = text;
  });
  document.querySelector("#keys").replaceChildren(table);
}

function report() {
  const { found, word, text } = advise(strokes, test);
  showVerdict(word, text ? `read as ${text}` : "", text === test ? "The test bars." : "");
  showAdvice(found);
  showKeys();
  strokes = [];
}

document.addEventListener(
  "keydown",
  (event) => {
    const { key, code, shiftKey: shift, ctrlKey: ctrl, altKey: alt, repeat: held, timeStamp: at } = event;
    if (["Shift", "Control", "Alt", "AltGraph", "Meta", "CapsLock", "NumLock"].includes(key) || event.metaKey) return;
    const begun = running(at);
    if (!begun && key.length > 1 && key !== "Dead" && key !== "Process") return; // Tab and Enter walk and press
    if (!begun && (ctrl || key === " ")) return;
    event.preventDefault();
    strokes.push({
      key,
      code,
      shift,
      ctrl,
      alt,
      held,
      at,
      third: event.getModifierState("AltGraph"),
      caps: event.getModifierState("CapsLock"),
    });
    clearTimeout(timer);
    timer = setTimeout(report, SILENCE);
  },
  true,
);

if (window.speechSynthesis) document.querySelector("[data-mute]").hidden = true;
voice.offer();
