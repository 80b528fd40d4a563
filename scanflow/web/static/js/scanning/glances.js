// What a live camera's glances come to: two that agree scan a card, once while it is in the picture.

import { isWhole } from "./card_text.js";

const AGREE = 1000; // ms from one glance to the other that agrees with it
const GONE = 1500; // ms without a glance at a card: it has left the picture, and no blur of a moving hand is that long,
const MISSED = 4; // if it was looked for so often meanwhile: where glances are slow, time alone says nothing

/** The texts of a glance that are for the shop: its cards and slips, or where there is none whatever was read. */
export function ours(texts) {
  const whole = texts.filter(isWhole);
  return [...new Set(whole.length ? whole : texts)];
}

/** Knows no camera and no clock: `at` is in ms. */
export class Glances {
  constructor() {
    this.scanned = new Map(); // text → when it was seen last, and how many glances missed it since
    this.first = null;
  }

  /** The text that is scanned by a glance at one code, or null. `shut`: nothing may be scanned now. */
  take(text, at, shut = false) {
    this.present([text], at);
    if (this.scanned.has(text)) return null;
    const agrees = this.first?.text === text && at - this.first.at <= AGREE;
    this.first = { text, at };
    if (!agrees || shut) return null;
    this.first = null;
    this.scanned.set(text, { at, missed: 0 });
    return text;
  }

  /** These are in the picture: what of them was scanned has not left it. */
  present(texts, at) {
    for (const [each, seen] of this.scanned) {
      if (at - seen.at > GONE && seen.missed >= MISSED) this.scanned.delete(each);
      else if (texts.includes(each)) this.scanned.set(each, { at, missed: 0 });
      else seen.missed += 1;
    }
  }
}
