// Which text a run of keys spells: as keyed, or as a scanner set to a US keyboard means it at a French or German one.
// Only a whole card text or slip decides, by its form and check digit; `labels/slot_code.py` has the grammar.

const CARD = /^[A-Z]{1,2}[0-9]{3,7}$/;
const LABEL = /^BIN([0-9A-Z]{1,16}-[0-9]{1,3}-[0-9]{1,3})[0-9A-Z]$/;
const SLIP = /^ORD[0-9]{6,}$/;
const IDENTIFIER = /^\](?:C0|A0|I0)/; // ISO/IEC 15424: Code 128, Code 39, ITF
const IN_THE_WAY = "?";
const AROUND = /^[^A-Z0-9\]?]{0,3}|[^A-Z0-9?]{0,3}$/g; // what scanners are set to send before and after a text
const US_SHIFTED = ")!@#$%^&*(";
const US_CODES = { Minus: "-", BracketRight: "]", Space: " ", NumpadMultiply: "*", NumpadSubtract: "-" };

/** In upper case, without identifier, spaces and hyphens. */
export function compact(text) {
  const upper = text.replace(/[a-z]/g, (letter) => letter.toUpperCase()).replace(/[ \t\r\n]/g, "");
  return upper.replace(IDENTIFIER, "").replace(/-/g, "");
}

/** ISO/IEC 7064 hybrid systems MOD modulus+1,modulus: whether the last of these values is the check of the others. */
function closes(values, modulus) {
  let product = modulus;
  for (const value of values.slice(0, -1)) product = (((product + value) % modulus || modulus) * 2) % (modulus + 1);
  return (product + values.at(-1)) % modulus === 1;
}

const valueOf = (char) => parseInt(char, 36);

/** MOD 11,10, each letter counting as the two digits 10 … 35. */
const checks = (text) => closes([...[...text].map(valueOf).join("")].map(Number), 10);

/** Figures of each section's numbers, as the page says them: {"C": 3}; nothing where the page says none. */
const digits = JSON.parse(globalThis.document?.body?.dataset.digits ?? "{}");

/** Whether a text is as long as the cards of its section: begins of such a text may have the right check too. */
function isLong(text) {
  const letters = /^[A-Z]*/.exec(text)[0];
  return !(letters in digits) || text.length === letters.length + digits[letters] + 1;
}

/** Whether a text is all of a card's or slip's, its check right. Stricter than the service: no O for 0, no I for 1. */
export function isWhole(text) {
  const bare = compact(text);
  return ((CARD.test(bare) && isLong(bare)) || SLIP.test(bare)) && checks(bare);
}

/** What a text can be, read as forgivingly as the service does: O is 0 and I is 1 among the figures. */
export function forms(text) {
  const bare = compact(text);
  const figures = (from) => bare.slice(0, from) + bare.slice(from).replaceAll("O", "0").replaceAll("I", "1");
  return [bare, figures(1), figures(2)];
}

/** The slot that a card's text names; "" where the check is wrong, or it is no card's text. */
export const slotOf = (text) =>
  forms(text)
    .find((each) => CARD.test(each) && checks(each))
    ?.slice(0, -1) ?? "";

/** The bin that a label names: "" where its check (MOD 37,36) is wrong, null for what is no label. */
export function binOf(text) {
  const bare = text.toUpperCase().replace(/\s/g, "").replace(IDENTIFIER, "");
  const name = LABEL.exec(bare)?.[1] ?? null;
  return name && (closes([...bare.replaceAll("-", "")].map(valueOf), 36) ? name : "");
}

/** The whole text within what a scanner may send around it, or null. */
function whole(text) {
  const bare = compact(text.toUpperCase().trim().replace(AROUND, ""));
  return isWhole(bare) ? bare : null;
}

/** What the key at this place types on a US keyboard, "~" for a sign of no use here. */
function us({ code, shift }) {
  if (/^Key[A-Z]$/.test(code)) return code[3];
  if (/^Digit\d$/.test(code)) return shift ? US_SHIFTED[code[5]] : code[5];
  if (/^Numpad\d$/.test(code)) return code[6];
  return US_CODES[code] ?? "~";
}

/** Both spellings of a run of keys `{key, code, shift, third}`, `third` with AltGr; a dead key keys nothing. */
export function spellings(keys) {
  return {
    keyed: keys.map(({ key }) => (key.length === 1 ? key : "")).join(""),
    asUs: keys.map(us).join(""),
  };
}

/** Both spellings; a letter of one that is no letter in the other is in the way there, and not taken off as a sign. */
function readings(keys) {
  const isLetter = (char) => /^[A-Z]$/i.test(char);
  const pairs = keys.map((each) => [
    each.key.length === 1 ? each.key : "~",
    each.third || !each.code ? IN_THE_WAY : us(each),
  ]);
  const first = pairs.map(([keyed, asUs]) => (isLetter(asUs) && !isLetter(keyed) ? IN_THE_WAY : keyed));
  const second = pairs.map(([keyed, asUs]) => (isLetter(keyed) && !isLetter(asUs) ? IN_THE_WAY : asUs));
  return [first.join(""), second.join("")];
}

/** Keys of the figures' row as figures: Caps Lock turns that row on some keyboards. */
const figures = (keys) =>
  keys.map((each) =>
    /^Digit\d$/.test(each.code) && !each.third ? { ...each, key: each.code[5], shift: false } : each,
  );

/**
 * The texts that a run of keys can be: one, or two whole ones between which nobody can choose. `check` is the room's:
 * where cards have none, nothing proves a spelling and only what was keyed counts.
 */
export function textsOf(keys, check) {
  const { keyed, asUs } = spellings(keys);
  if (check === "none") return [keyed.trim()];
  const found = [...new Set([...readings(keys), ...readings(figures(keys))].map(whole))].filter(Boolean);
  return found.length ? found : [keyed.trim() || asUs];
}
