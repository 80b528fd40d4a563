// The verdict sheet: covers the page. Yes goes by itself, no stays until pressed.

import { make, press } from "../page/elements.js";

const YES_MS = 1000;
const RELEASED_MS = 2000; // the cards that are free now are read too
const READ_MS = 500; // nobody reads a no in less; a scanner's Enter that comes late must not press it away
const HEARD_MS = 50; // a live region must stand before its words come, or they are not read out

const DONE = {
  bin: "Picked",
  table: "Packed",
  label: "Label bound",
  tray: "In the tray",
  shelf: "In its place",
  hand_over: "Handed over",
};
const TO_ORDER = new Set(["bin", "table", "label", "hand_over"]); // where a yes is about the order that wants it
const headings = JSON.parse(document.body.dataset.headings ?? "{}");
const papers = JSON.parse(document.body.dataset.sections ?? "{}");
let open = null;
let timer = 0;

/** The same plate as on the pages and cards. */
export function plate(code) {
  const letters = /^[A-Z]*/.exec(code)[0];
  const figures = make("span", "figures", code.slice(letters.length));
  const number = make("span", "no", letters && make("span", "letters", letters), figures);
  return make("span", "plate", number, papers[letters] && make("span", "under", papers[letters][1]));
}

function picture(answer) {
  const image = make("img", "shot");
  image.src = `${answer.photo}&size=small`;
  image.alt = `Picture of ${answer.title}`;
  return image;
}

function word(answer, station, takeOut) {
  if (station === "table" && !answer.code && answer.parcel_state === "open") return "Open";
  if (!answer.changed) return "Done before";
  if (answer.released.length) return "Released";
  if (station === "table" && !answer.code) return "Closed";
  return takeOut ? "Taken out" : DONE[station];
}

const why = ({ reason, heading }) => heading ?? headings[reason] ?? reason.replaceAll("_", " ");

/** The verdict in words, for the ear: a yes is short, a no says why and what to do. */
export function words(answer, station, takeOut) {
  if (answer.verdict === "accepted") return `${word(answer, station, takeOut)}.`;
  return `No. ${why(answer)}. ${answer.advice}`;
}

export function close() {
  clearTimeout(timer);
  open?.close();
  open?.remove();
  open = null;
}

/** Whether a no stands on the page and waits to be pressed. */
export const stands = () => open !== null && open.classList.contains("no");

/** Shows the answer of a scan at a station; `then()` is called when the sheet is gone. */
export function show(answer, station, takeOut, then) {
  close();
  const accepted = answer.verdict === "accepted";
  const sheet = make("dialog", accepted ? "sheet yes" : "sheet no");
  sheet.setAttribute("role", "alertdialog");
  const title = make("h2", accepted ? "word" : "why", accepted ? word(answer, station, takeOut) : why(answer));
  title.id = "verdict";
  sheet.setAttribute("aria-labelledby", title.id);
  const advice = make("p", "advice", answer.advice);
  const heard = make("p", "heard");
  heard.setAttribute("aria-live", "assertive");
  const things = answer.code ? [plate(answer.code)] : [];
  if (accepted) {
    sheet.append(make("div", "ring", title, ...things));
    if (answer.order_number && TO_ORDER.has(station)) sheet.append(make("p", "thing", `Order ${answer.order_number}`));
  } else {
    sheet.append(make("div", "band", make("span", "word", "No")), title, ...things);
  }
  if (answer.title) sheet.append(make("p", "thing", answer.title));
  if (answer.photo) sheet.append(picture(answer));
  sheet.append(advice, heard);
  const gone = () => {
    if (open === sheet) close();
    then();
  };
  if (accepted) {
    sheet.tabIndex = -1;
    timer = setTimeout(gone, answer.released.length ? RELEASED_MS : YES_MS);
    sheet.addEventListener("click", gone);
  } else {
    const button = press("Go on", () => button.ariaDisabled || gone(), "next");
    button.setAttribute("aria-disabled", "true");
    timer = setTimeout(() => button.removeAttribute("aria-disabled"), READ_MS);
    sheet.append(button);
  }
  sheet.addEventListener("cancel", (event) => {
    event.preventDefault();
    if (!sheet.querySelector("[aria-disabled]")) gone();
  });
  document.body.append(sheet);
  open = sheet;
  sheet.showModal();
  (sheet.querySelector("button") ?? sheet).focus();
  const said = [words(answer, station, takeOut), answer.code, answer.title, accepted && answer.advice];
  setTimeout(() => heard.append(said.filter(Boolean).join(" ")), HEARD_MS);
}
