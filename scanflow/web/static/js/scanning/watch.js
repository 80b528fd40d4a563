// The picture of a camera at a station, what is read in it, and the verdicts; `scanflow watch` has the camera and
// scans.

import { wait } from "./frame.js";
import * as sheet from "./sheet.js";
import * as sound from "./sound.js";

const PACE = 200; // ms from one picture to the next
const DEAD = 5000; // ms
const WORDS = { scanned: "scanned", seen: "", other: "not of this room" };
const SVG = "http://www.w3.org/2000/svg";

const { station } = document.querySelector("[data-station]").dataset;
const [hint, last, figure] = ["hint", "last", "picture"].map((id) => document.getElementById(id));
const svg = figure.querySelector("svg");
const image = svg.querySelector("image");

let answers = null; // how many have been shown; none of those that came before this page
let stopped = false;

function say(element, sentence) {
  if (element.textContent !== sentence) element.textContent = sentence;
}

function make(tag, attributes, text = "") {
  const element = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.textContent = text;
  return element;
}

/** An outline, and its words on paper below it or, where there is no room, above. */
function drawn({ text, corners, kind }, size, height) {
  const points = corners.map((corner) => corner.join(",")).join(" ");
  const words = `${text} ${WORDS[kind]}`.trim();
  const [ys, left] = [corners.map(([, y]) => y), Math.min(...corners.map(([x]) => x))];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const y = bottom + 2 * size < height ? bottom + 1.4 * size : top - 0.7 * size;
  const group = make("g", { "data-kind": kind, "stroke-width": size / 5, "font-size": size });
  group.append(
    make("polygon", { points, class: "under", "stroke-width": size / 2.5 }),
    make("polygon", { points }),
    make("text", { x: left, y, "stroke-width": size / 2 }, words),
  );
  return group;
}

function draw({ picture, width, height, outlines }) {
  figure.hidden = !picture;
  if (!picture) return;
  svg.setAttribute("viewBox", `0 0 ${width} ${height}`);
  for (const [name, value] of Object.entries({ width, height, href: `data:image/jpeg;base64,${picture}` })) {
    image.setAttribute(name, value);
  }
  svg.querySelectorAll("g").forEach((each) => each.remove());
  svg.append(...outlines.map((each) => drawn(each, width / 22, height)));
}

/** The last verdict stays in words; a new one is shown on its sheet, as at every station. */
function tell(now) {
  const { answer } = now;
  const accepted = answer?.verdict === "accepted";
  if (answer)
    say(last, accepted ? `${answer.code ?? ""} Yes. ${answer.advice}`.trim() : sheet.words(answer, station, false));
  if (answers !== null && now.answers > answers) {
    sheet.show(answer, station, false, () => {});
    if (accepted) sound.yes();
    else sound.no();
  }
  answers = now.answers;
}

async function refresh() {
  const response = await fetch("/now", { signal: AbortSignal.timeout(DEAD) });
  const now = await response.json();
  draw(now);
  say(hint, now.hint);
  wait(now.waits);
  tell(now);
}

/** Nobody looks at a page that is hidden: it asks for nothing. */
async function watch() {
  while (true) {
    if (!document.hidden) {
      await refresh().then(
        () => (stopped = false),
        () => (stopped = true),
      );
      if (stopped) {
        figure.hidden = true;
        wait("");
        say(hint, "The camera was stopped. Start scanflow watch again.");
      }
    }
    await new Promise((go) => setTimeout(go, stopped ? 10 * PACE : PACE));
  }
}

watch();
