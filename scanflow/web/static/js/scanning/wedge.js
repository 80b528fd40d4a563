// A scanner that types: its keys are taken wherever the focus is, and out of the field again that they went into.

import { isWhole, textsOf } from "./card_text.js";
import { Keys } from "./keys.js";

const TYPING = 'input:not([type="checkbox"]):not([type="radio"]):not([type="file"]), textarea, select';
const MARKED = 'textarea, input[type="text"], input[type="search"], input:not([type])'; // these have a caret
const AFTER = 100; // ms in which a second Enter, a Tab or a line feed still belongs to the scan
const LATE = 50; // ms; a timer this late says that the page was busy, and keys may be waiting behind it

function stateOf(field) {
  const caret = field?.matches(MARKED) ? [field.selectionStart, field.selectionEnd] : null;
  return { field, value: field?.value, caret };
}

function restore({ field, value, caret }) {
  if (!field?.isConnected || field.value === value) return;
  field.value = value;
  if (caret) field.setSelectionRange(...caret);
  field.dispatchEvent(new Event("input", { bubbles: true }));
}

/**
 * Scans anywhere on the page go to `scanned(text, via)`; keys that belong to no field go to the box that `box()` gives,
 * if any, and an Enter there calls `entered()`. Two whole texts that one scan can be go to `unclear(texts)`.
 * `shut()` says that nothing may be taken now; it is asked at each key and told of a whole scan by `refused()`.
 */
export function listen(
  box,
  { scanned, entered = () => {}, unclear = () => {}, shut = () => false, refused = () => {} },
) {
  const check = document.body.dataset.check;
  const keys = new Keys(check);
  let timer = 0;
  let ours = -Infinity; // until then Enter, Tab and line feed belong to the last scan

  const inBox = () => document.activeElement === box();
  const inField = () => !inBox() && document.activeElement.matches(TYPING);

  /** The texts that a scan can be. What stood in the box may be its begin, from before this module was here. */
  function read(scan) {
    const texts = textsOf(scan, check);
    const { field, value } = scan[0].state;
    if (!field || field !== box()) return texts;
    field.value = "";
    const all = value + texts[0];
    if (!value) return texts;
    if (!texts.every(isWhole)) return [all];
    return isWhole(all) ? [...texts, all] : texts;
  }

  function finish(scan, at) {
    clearTimeout(timer);
    keys.clear();
    ours = at + AFTER;
    if (scan.some(({ composed }) => composed)) document.activeElement.blur(); // ends what an input method composes
    restore(scan[0].state);
    if (shut()) return refused();
    const texts = read(scan);
    keys.before = texts[0];
    if (texts.length > 1) unclear(texts);
    else scanned(texts[0], "wedge");
  }

  /** A text without an Enter is complete after a while of silence. */
  function waitForSilence() {
    const rest = keys.silence();
    const due = performance.now() + rest;
    clearTimeout(timer);
    timer = setTimeout(() => {
      if (performance.now() - due > LATE) return waitForSilence();
      const scan = keys.scan();
      if (scan) finish(scan, scan.at(-1).at);
    }, rest);
  }

  function character(event) {
    const { key, code, shiftKey: shift, repeat: held, timeStamp: at } = event;
    if (key === " " && !inField() && !inBox() && !keys.running(at)) return; // presses a button
    ours = -Infinity;
    const before = keys.completeBefore(at);
    if (before) finish(before, before.at(-1).at);
    const field = inField();
    const composed = key === "Process" || event.isComposing;
    const state = stateOf(field ? document.activeElement : box());
    keys.press({ key, code, shift, third: event.getModifierState("AltGraph"), at, held, field, composed, state });
    waitForSilence();
    if (shut()) return event.preventDefault();
    if (field || inBox() || !box()) return;
    event.preventDefault();
    box().focus();
    if (key.length === 1) box().value += key;
  }

  function terminator(event) {
    const at = event.timeStamp;
    const late = at < ours;
    const scan = late ? null : keys.endedBy(at);
    const running = keys.running(at);
    const typed = event.key === "Enter" && box() && !inField() && (inBox() || running);
    if (!scan && !late && !typed && !(shut() && running)) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    if (scan) return finish(scan, at);
    if (late) return;
    ours = at + AFTER;
    keys.clear();
    clearTimeout(timer);
    if (shut()) refused();
    else entered();
  }

  function pressed(event) {
    const { key, code } = event;
    const typesSign = event.getModifierState("AltGraph");
    if (event.metaKey || ((event.ctrlKey || event.altKey) && !typesSign)) {
      if (event.ctrlKey && event.timeStamp < ours) event.preventDefault(); // a line feed comes as Ctrl+J
    } else if (key.length === 1 || key === "Dead" || (key === "Process" && code)) character(event);
    else if ((key === "Enter" || key === "Tab") && !event.isComposing) terminator(event);
    else if (key === "Backspace" || key.startsWith("Arrow")) keys.clear();
  }

  /** A text that comes as a whole: from the clipboard, or from a scanner that is an on-screen keyboard. */
  function whole(event, text, via) {
    if (!isWhole(text)) return false;
    event.preventDefault();
    if (shut()) refused();
    else scanned(text.trim(), via);
    return true;
  }

  document.addEventListener("keydown", pressed, true);
  document.addEventListener("paste", (event) => {
    const text = event.clipboardData.getData("text/plain").trim();
    if (inField() || whole(event, text, "typed") || inBox() || !box() || shut()) return;
    event.preventDefault();
    box().focus();
    box().value = text.slice(0, 64);
  });
  document.addEventListener("beforeinput", (event) => {
    if (event.inputType === "insertText" && event.cancelable && event.data?.length > 1)
      whole(event, event.data, "wedge");
  });
}
