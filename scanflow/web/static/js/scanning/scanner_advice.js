// What is right about a scanner's keys, and what to change, in general words.

import { isWhole, spellings, textsOf } from "./card_text.js";
import { Keys } from "./keys.js";

const right = (words) => ({ change: false, words });
const change = (words) => ({ change: true, words });
const isSign = ({ key, ctrl, alt }) => !ctrl && !alt && (key.length === 1 || key === "Dead" || key === "Process");

function pace(keys, scanned) {
  const gaps = keys.slice(1).map(({ at }, i) => Math.round(at - keys[i].at));
  const usual = gaps.toSorted((a, b) => a - b)[gaps.length >> 1] ?? 0;
  if (scanned) return right(`It presses a key every ${usual} ms. That is told from a person's typing.`);
  if (keys.length < 4) return change(`Only ${keys.length} of its keys arrived. The shortest text has 4.`);
  return change(
    `${usual} ms from key to key: that is a person's pace. Set the delay between keys to none. ` +
      "If you typed this by hand, scan it.",
  );
}

function ending(strokes) {
  const last = strokes.findLastIndex(isSign);
  const ends = strokes.slice(last + 1).map(({ key, ctrl }) => (ctrl ? "a line feed" : key));
  if (!ends.length)
    return change(
      "No key ends the text. It is taken all the same, after a moment of silence. Set the suffix to Enter.",
    );
  if (ends[0] === "Tab") return right("Tab ends the text. That works here; Enter works in more places.");
  if (ends[0] !== "Enter") return change(`The text ends with ${ends[0]}. Set the suffix to Enter.`);
  return right(
    ends.length > 1 ? "Enter ends the text. One is enough; the other is taken off." : "Enter ends the text.",
  );
}

/** What stands around the text: signs and the name of the kind of bar code are taken off, letters are not. */
function around(keyed, text) {
  const place = keyed.toUpperCase().replaceAll("-", "").indexOf(text);
  if (place < 0) return [];
  const [before, after] = [keyed.slice(0, place), keyed.slice(place + text.length)];
  const found = [];
  if (/^\][A-Za-z]\d$/.test(before))
    found.push(right(`${before} before the text names the kind of bar code. It is taken off.`));
  else if (before) found.push(change(`“${before}” stands before the text. Set no prefix.`));
  if (after) found.push(change(`“${after}” stands behind the text. Set the suffix to Enter alone.`));
  return found;
}

function spelling(keyed, asUs, text) {
  if (!text)
    return change(
      "The characters are not those of the bars. Set the scanner's country, or keyboard language, to this computer's.",
    );
  if (keyed.toUpperCase().includes(text)) return right("Every character arrives as it is printed.");
  return change(
    "The scanner types as on a US keyboard, and this computer has another. Cards and slips are read all the same. " +
      "Set the scanner's country to this computer's.",
  );
}

/** `{found, word, text}` of the strokes of one scan: what to say, the word for all of it, and the text or "". */
export function advise(strokes, test) {
  const signs = strokes.filter(isSign);
  const { keyed, asUs } = spellings(signs);
  const text = [keyed, asUs].some((each) => each.toUpperCase().includes(test)) ? test : whole(signs);
  const keys = new Keys("");
  for (const stroke of signs) keys.press({ ...stroke, field: false });
  const scanned = keys.scan()?.length === signs.length;
  const found = [
    pace(signs, scanned),
    spelling(keyed, asUs, text),
    ...(text ? around(keyed, text) : []),
    ending(strokes),
  ];
  if (strokes.some(({ alt }) => alt))
    found.push(change("It types by Alt and numbers. Switch that off: set its keyboard to plain keys."));
  if (signs.some(({ caps }) => caps)) found.push(right("Caps Lock is on. Cards and slips are read all the same."));
  const works = scanned && text;
  return { found, text, word: !works ? "Change it" : found.some((each) => each.change) ? "Works" : "Ready" };
}

function whole(signs) {
  const texts = textsOf(signs);
  return texts.length === 1 && isWhole(texts[0]) ? texts[0] : "";
}
