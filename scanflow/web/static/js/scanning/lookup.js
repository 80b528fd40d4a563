// A scan where no station is: it goes where the page asks for this card, else it finds what was scanned, unless
// something was written that would be lost.

import { make, press } from "../page/elements.js";

const find = document.querySelector(".find input[name='q']");

/** Whether a person has written, chosen or ticked something in this field. */
export function written(field) {
  if (field.type === "checkbox" || field.type === "radio") return field.checked !== field.defaultChecked;
  if (field.options)
    return [...field.options].some((each) => each.defaultSelected) && !field.selectedOptions[0]?.defaultSelected;
  return "defaultValue" in field && field.type !== "hidden" && field.value !== field.defaultValue;
}

/** Says what was scanned and lets it be looked up. `texts`: one, or those that one scan can be. */
export function found(texts) {
  document.querySelector(".scanned")?.remove();
  const words = make("p", "scanned", "Scanned: ");
  words.setAttribute("role", "status");
  document.body.append(words);
  for (const text of [texts].flat()) {
    const link = make("a", "", text);
    link.href = `/search?q=${encodeURIComponent(text)}`;
    words.append(link, " ");
  }
  words.append(press("Close", () => words.remove()));
}

/**
 * The field that waits for this scan: the one that is in use, or that of the card's slot, `data-takes`, or the one that
 * takes any card and does not lie folded away.
 */
function waiting(text) {
  const fields = [...document.querySelectorAll("input[data-takes]")];
  const used = fields.find((each) => each === document.activeElement);
  const any = fields.filter((each) => !each.dataset.takes && !each.closest("details:not([open])"));
  return (
    used ??
    fields.find(({ dataset }) => dataset.takes && dataset.takes === text.slice(0, -1)) ??
    (any.length === 1 ? any[0] : undefined)
  );
}

export function lookUp(text) {
  const field = waiting(text);
  if (field) {
    field.value = text;
    field.form.requestSubmit();
    return;
  }
  const fields = [...document.querySelectorAll("main input, main select, main textarea")];
  if (!find || fields.some(written)) return found(text);
  find.value = text;
  find.form.requestSubmit();
}

export const box = () => find;
