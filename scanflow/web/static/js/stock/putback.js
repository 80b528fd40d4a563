// What the service did not take of scans that were noted without network: shown until a person has done it.

import { lasting } from "../phone/unsent.js";
import { plate } from "../scanning/sheet.js";

const IN_PLACE = ["already_picked", "already_packed", "unreadable", "many_codes", "bad_check"];

function make(tag, name, ...parts) {
  const element = document.createElement(tag);
  element.className = name;
  element.append(...parts);
  return element;
}

function duty(record) {
  const { scan, answer } = record;
  const name = answer.code ?? scan.text;
  const what = IN_PLACE.includes(answer.reason) ? `Look at ${name}` : `Put back ${name}`;
  const done = make("button", "plain", IN_PLACE.includes(answer.reason) ? "Done" : "It is back");
  done.type = "button";
  done.setAttribute("aria-label", `${done.textContent}: ${name}`);
  done.addEventListener("click", () => lasting.remove(record).then(list));
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

/** Writes the list anew, above the page; gives how many duties are on it. */
export async function list() {
  const duties = (await lasting.all().catch(() => [])).filter((each) => each.answer);
  document.querySelector(".putback")?.remove();
  if (!duties.length) return 0;
  const items = make("ul", "lines", ...duties.map(duty));
  for (const each of items.querySelectorAll(".plate")) each.classList.add("small");
  const section = make("section", "putback", make("h2", "", "Not taken by the service"), items);
  section.setAttribute("role", "alert");
  document.querySelector("main").before(section);
  return duties.length;
}
