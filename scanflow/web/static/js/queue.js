// Scans go out one after another; each keeps its key until it is answered, however long the network is gone.

import { newKey, post } from "./api.js";

const PATIENCE = 700; // ms without an answer before the page says so
const GIVEN_UP = 12000; // ms; a connection this long silent is dead: ask again, with the same key
const FIRST_RETRY = 1000; // ms
const LAST_RETRY = 10000;

const NO_NETWORK = "Waiting for the network.";
const SLOW = "Waiting for an answer.";
const ILL = "The service is in trouble; trying again.";

/**
 * `place` names what is kept over a reload. `answered(scan, json)` is told of a verdict, `failed(scan, status, json)`
 * of a scan that can have none, `waiting(scans, why)` of scans not recorded yet, and [] when all went.
 */
export class Queue {
  constructor(place, { answered, failed, waiting }) {
    Object.assign(this, { place: `scans ${place}`, answered, failed, waiting, busy: false, why: "" });
    this.scans = JSON.parse(sessionStorage.getItem(this.place) ?? "[]");
    if (this.scans.length) this.run();
  }

  /** Adds a scan with these fields; `image` is a file in place of `text`. */
  add(fields, image = null) {
    const scan = { ...fields, key: newKey() };
    if (!navigator.onLine) scan.at = new Date().toISOString();
    this.scans.push(image ? { scan, image } : { scan });
    this.keep();
    if (!this.busy) this.run();
    else if (this.why) this.trouble(this.why);
  }

  keep() {
    sessionStorage.setItem(this.place, JSON.stringify(this.scans.filter((each) => !each.image)));
  }

  /** Says why scans wait; "" says that none does. */
  trouble(why) {
    if (why || this.why) this.waiting(why ? this.scans : [], why);
    this.why = why;
  }

  /** The answer to the first scan; null where there is none, or none that says what became of it. */
  async ask() {
    const first = this.scans[0];
    const silent = setTimeout(() => this.why || this.trouble(SLOW), PATIENCE);
    const reply = await send(first, AbortSignal.timeout(GIVEN_UP)).catch(() => null);
    clearTimeout(silent);
    if (!reply) this.trouble(NO_NETWORK);
    else if (reply.status >= 500 || reply.status === 429 || (reply.status === 200 && !reply.json)) this.trouble(ILL);
    else return reply;
    return null;
  }

  async run() {
    this.busy = true;
    let pause = FIRST_RETRY;
    while (this.scans.length) {
      const reply = await this.ask();
      if (!reply) {
        await nextTry(pause);
        pause = Math.min(2 * pause, LAST_RETRY);
        continue;
      }
      const { scan } = this.scans[0];
      if (reply.status === 401) {
        this.failed(scan, 401, reply.json);
        break;
      }
      this.scans.shift();
      this.keep();
      this.trouble(this.why && this.scans.length ? this.why : "");
      pause = FIRST_RETRY;
      if (reply.status === 200) await this.answered(scan, reply.json);
      else this.failed(scan, reply.status, reply.json);
    }
    this.busy = false;
  }
}

/** After a pause in ms, or as soon as the network is back. */
function nextTry(pause) {
  return new Promise((go) => {
    const timer = setTimeout(end, pause);
    function end() {
      clearTimeout(timer);
      removeEventListener("online", end);
      go();
    }
    addEventListener("online", end);
  });
}

function send({ scan, image }, signal) {
  if (!image) return post("/api/scans", scan, signal);
  const form = new FormData();
  for (const [name, value] of Object.entries(scan)) form.append(name, value);
  form.append("image", image, "scan.jpg");
  return post("/api/scans", form, signal);
}
