// A round without network: its own list answers for the service, provisionally, and says what is next.

import { make, press, units } from "../page/elements.js";
import { forms, slotOf } from "../scanning/card_text.js";
import { plate } from "../scanning/sheet.js";

const NOTED_MS = 1500;

const papers = JSON.parse(document.body.dataset.sections ?? "{}");
let open = null;
let from = 0;

if (matchMedia("(min-width: 60rem)").matches) document.getElementById("stops")?.setAttribute("open", ""); // a desk

const stops = () => JSON.parse(document.querySelector("[data-stops]")?.dataset.stops ?? "[]");

/** The stop whose card has this text: which texts a card may have is the service's to say. */
function stopOf(text) {
  const read = forms(text);
  return stops().find((each) => read.some((form) => each.texts.includes(form)));
}

const codesOf = (records) => new Set(records.filter((each) => each.noted).map((each) => stopOf(each.scan.text)?.code));

/** What the list says of a text: `{good, fresh, word, advice, stop}`; `fresh`: it is to be noted. */
export function judge(text, records) {
  const stop = stopOf(text);
  const code = stop?.code ?? slotOf(text);
  if (!code && document.body.dataset.check !== "none")
    return { word: "Not read whole", advice: document.body.dataset.misread };
  if (!stop)
    return { word: "Not on this list", advice: "Leave the thing in its bin. Scan it again with the network.", code };
  if (codesOf(records).has(code))
    return { good: true, word: "Noted before", advice: `Basket ${stop.basket}.`, code, stop };
  if (stop.waits)
    return { good: true, fresh: true, word: "Noted", advice: `Put it in basket ${stop.basket}.`, code, stop };
  return {
    word: `It is ${stop.state}`,
    advice: "Leave the thing where it is. Scan it again with the network.",
    code,
    stop,
  };
}

export function close() {
  open?.remove();
  open = null;
}

/** Whether an answer of the list stays on the page and waits to be pressed. */
export const stands = () => open !== null && !open.classList.contains("good");

/** Shows what the list says, in neither the look of a yes nor of a no; `then()` is called when it is gone. */
export function show({ good, word, advice, code, stop }, then) {
  close();
  const dialog = make("dialog", `sheet noted${good ? " good" : ""}`);
  const title = make("h2", "word", word);
  title.id = "noted";
  dialog.setAttribute("aria-labelledby", title.id);
  const truth = good ? "The service has not said yes. It is asked when the network is back." : "Nothing was recorded.";
  dialog.append(make("p", "kind", "Provisional"), title);
  if (code) dialog.append(plate(code));
  dialog.append(
    make("p", "thing", stop?.title ?? ""),
    make("p", "advice", [advice, stop?.says, good && stop?.packing].filter(Boolean).join(" ")),
    make("p", "", truth),
  );
  const gone = () => {
    if (open !== dialog) return;
    close();
    then();
  };
  if (good) {
    setTimeout(gone, NOTED_MS);
    dialog.addEventListener("click", gone);
  } else {
    dialog.append(press("Go on", gone, "next"));
  }
  dialog.addEventListener("cancel", (event) => {
    event.preventDefault();
    gone();
  });
  document.body.append(dialog);
  open = dialog;
  dialog.showModal();
}

function later(left, stop, records) {
  return press("Leave it for later", () => {
    from = stop.position < left.at(-1).position ? stop.position + 1 : 0;
    draw(records);
  });
}

/** The page's face as the list has it, with what was noted counted as done. */
export function draw(records) {
  const [face, list, codes] = [document.querySelector('[data-live="face"]'), stops(), codesOf(records)];
  const left = list.filter((each) => each.waits && !codes.has(each.code));
  const stop = left.find((each) => each.position >= from) ?? left[0];
  const done = list.filter((each) => each.done || codes.has(each.code)).length;
  const provisional = codes.size ? `, ${codes.size} of them provisional` : "";
  const said = left.length ? `${done} of ${units(list.length, "stop")} done${provisional}` : "All stops are noted";
  const head = make("h1", "", said);
  head.dataset.say = stop ? `Bin ${stop.bin}. ${stop.where} ${stop.title}. Basket ${stop.basket}.` : head.textContent;
  const parts = [head];
  if (!stop) {
    parts.push(
      make("p", "say", "Nothing of it is recorded yet. Go where the network is: the scans go out by themselves."),
    );
  } else {
    parts.push(make("p", "work", make("small", "", "Bin"), stop.bin));
    if (stop.where) parts.push(make("p", "say", stop.where));
    parts.push(make("div", "beside", plate(stop.code)));
    parts.push(make("p", stop.title.length > 60 ? "work much" : "work", stop.title));
    parts.push(make("p", "work", make("small", "", `for order ${stop.number}, into`), `Basket ${stop.basket}`));
    if (stop.says) parts.push(make("p", "say", stop.says));
    if (stop.packing) parts.push(make("p", "mind", stop.packing));
    if (stop.notes) parts.push(make("p", "", stop.notes));
    if (left.length > 1) parts.push(later(left, stop, records));
  }
  face.replaceChildren(...parts);
  document.querySelector(".side").className = stop ? `side edge-${papers[stop.section][0]}` : "side";
  document.body.classList.add("away");
}
