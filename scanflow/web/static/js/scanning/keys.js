// Tells a scanner's keys from a person's, by their times and by what they spell. Knows no page and no clock.

import { isWhole, spellings, textsOf } from "./card_text.js";

const SLOWEST = 62; // ms between two keys, of the slowest scanner's pace; a radio's ticks are uneven
const QUICK = 32; // ms; no person keeps it up over figures
const ROLLED = 25; // ms; nor over four letters
const SHORTEST = 4; // characters of the shortest text
const FOREIGN = 6; // characters of the shortest text that is no card's and still is taken out of a field
const STALLED = 4; // keys before such a stall, at most
const BARE = /^[A-Z]{1,2}\d{2,6}$/i; // a slot code, as cards of another system bear it
const PAUSE = 200; // ms; a run of a person's keys is over
const UNSURE = 500; // ms; a busy computer hands keys on late, and a text that is not whole may be half of one
const MOST = 120; // keys of a run that are remembered

const median = (values) => values.toSorted((a, b) => a - b)[values.length >> 1];
const gapsOf = (keys) => keys.slice(1).map(({ at }, i) => at - keys[i].at);
const isFigure = ({ key, code }) => /^(Digit|Numpad)\d$/.test(code) || /^\d$/.test(key);

/** How long a scanner of this pace may stay silent within one text. */
const patience = (pace) => Math.max(80, 2 * pace + 60);

/** The keys at the end of a run that came at one pace. */
function tail(keys) {
  const gaps = gapsOf(keys);
  if (gaps.length < SHORTEST - 1) return [];
  const most = patience(median(gaps.slice(-SHORTEST)));
  const before = gaps.findLastIndex((gap) => gap > most);
  return keys.slice(before + 1);
}

/** Whether no key was held and the pace is a scanner's. */
function mayBeScanned(keys) {
  const many = keys.length >= SHORTEST && new Set(keys.map(({ code, key }) => code || key)).size > 1;
  return many && !keys.some(({ held }) => held) && median(gapsOf(keys)) <= SLOWEST;
}

/**
 * Whether keys of one pace are a scanner's by their times. `field`: they went into a field of a form, where a person
 * writes. `before`: the text that was scanned last, which comes again where cards have no check.
 */
function isScanner(keys, field, check, before) {
  if (!mayBeScanned(keys)) return false;
  const gaps = gapsOf(keys);
  const [pace, longest] = [median(gaps), Math.max(...gaps)];
  const { keyed } = spellings(keys);
  if (keyed.startsWith("]") && pace <= QUICK) return true;
  if (!keys.some(isFigure)) return !field && longest <= ROLLED;
  const steady = longest - Math.min(...gaps) <= Math.max(10, pace / 2);
  if (pace > QUICK && !steady && (keys.length < FOREIGN || longest > 1.5 * SLOWEST)) return false;
  return !field || keys.length >= FOREIGN || (check === "none" && (BARE.test(keyed.trim()) || keyed.trim() === before));
}

/** The keys pressed one after another. A key is `{key, code, shift, third, at, held, field}`, `at` in ms. */
export class Keys {
  constructor(check) {
    this.check = check;
    this.before = "";
    this.clear();
  }

  clear() {
    this.keys = [];
  }

  /** The scan that was complete before a key at this time, or null. */
  completeBefore(at) {
    return this.over(at) ? this.scan() : null;
  }

  press(key) {
    if (!this.running(key.at)) this.clear();
    this.keys = [...this.keys.slice(-MOST), key];
  }

  /** Whether keys were pressed a moment before. */
  running(at) {
    return this.keys.length > 0 && at - this.keys.at(-1).at <= PAUSE;
  }

  /** ms that may lie within one text: less once it is whole. */
  rest() {
    const last = tail(this.keys);
    const whole = mayBeScanned(last) && textsOf(last, this.check).every(isWhole);
    return whole ? Math.min(PAUSE, patience(median(gapsOf(last)))) : PAUSE;
  }

  /** ms to wait for a key that may be on its way, before a text without an Enter is taken. */
  silence() {
    const rest = this.rest();
    return rest < PAUSE ? rest : UNSURE;
  }

  over(at) {
    return this.keys.length > 0 && at - this.keys.at(-1).at > this.rest();
  }

  /** The scanner's keys at the end of the run, or null where a person typed. */
  scan() {
    const last = tail(this.keys);
    if (this.check !== "none") {
      const whole = this.whole(last.length || SHORTEST);
      if (whole) return whole;
    }
    return isScanner(last, last[0]?.field, this.check, this.before) ? last : null;
  }

  /** The longest whole text at the end of the run, of so many keys or a few more: a radio may stall early. */
  whole(least) {
    const most = Math.min(this.keys.length, least + STALLED);
    for (let count = most; count >= Math.max(least, SHORTEST); count--) {
      const keys = this.keys.slice(-count);
      if (mayBeScanned(keys) && textsOf(keys, this.check).every(isWhole)) return keys;
    }
    return null;
  }

  /** The scan that an Enter or Tab at this time ends, or null. */
  endedBy(at) {
    return this.over(at) ? null : this.scan();
  }
}
