// What the service did not take of scans that were noted without network: shown until a person has done it.

import { make, press } from "../page/elements.js";
import { lasting } from "../phone/unsent.js";
import { plate } from "../scanning/sheet.js";

const IN_PLACE = ["already_picked", "already_packed", "unreadable", "many_codes", "bad_check"];

function duty(record) {
  const { scan, answer } = record;
  const name = answer.code ?? scan.text;
  const what = IN_PLACE.includes(answer.reason) ? `Look at ${name}` : `Put back ${name}`;
  const done = press(IN_PLACE.includes(answer.reason) ? "Done" : "It is back", () => lasting.remove(record).then(list));
  done.setAttribute("aria-label", `${done.textContent}: ${name}`);
  const words = make("div", "", make("span", "title", what), make("span", "meta", answer.title ?? ""));
  words.append(make("span", "told", answer.advice ?? answer.detail ?? "The scan could not be judged."));
  return make(
    "li",
    "line",
    make("span", "strip"),
    answer.code ? plate(answer.code) : "",
    words,
    make("div", "acts", done),
  );
}

/** Writes the list anew, above the page. */
export async function list() {
  const duties = (await lasting.all().catch(() => [])).filter((each) => each.answer);
  document.querySelector(".putback")?.remove();
  if (!duties.length) return;
  const items = make("ul", "lines", ...duties.map(duty));
  for (const each of items.querySelectorAll(".plate")) each.classList.add("small");
  const section = make("section", "putback", make("h2", "", "Not taken by the service"), items);
  section.setAttribute("role", "alert");
  document.querySelector("main").before(section);
}
