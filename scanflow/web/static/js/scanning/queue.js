// Scans go out one after another; each keeps its key until it is answered, however long the network is gone.

import { aged, clock, isOut, networkOr, newKey, post } from "../page/api.js";

const PATIENCE = 700; // ms without an answer before the page says so
const FIRST_RETRY = 1000; // ms
const LAST_RETRY = 10000;

const NO_NETWORK = "Waiting for the network.";
const SLOW = "Waiting for an answer.";
const ILL = "The service is in trouble; trying again.";

/**
 * `store` keeps records (`unsent.js`). `answered(record, json)` is told of a verdict, `failed(record, status, json)` of
 * a scan that can have none, `waiting(records, why)` of scans not recorded yet, and [] when all went. A connection that
 * is silent for `dead` ms is dead: the scan is sent again, with the same key.
 */
export class Queue {
  constructor(store, { answered, failed, waiting }, dead = 12000) {
    Object.assign(this, { store, answered, failed, waiting, dead, scans: [], busy: false, why: "", ill: false });
    this.ready = this.load();
    this.run();
  }

  async load() {
    const kept = await this.store.all().catch(() => []);
    this.scans.unshift(...kept.filter((each) => !each.answer));
  }

  /** Whether there is no network, as far as one knows, or no service. */
  get lost() {
    return !navigator.onLine || this.why === NO_NETWORK || this.ill;
  }

  /** Adds a scan with these fields; `image` is a file in place of `text`. Its record's `stored` says when it is. */
  add(fields, image = null) {
    const record = { scan: { ...fields, key: newKey() }, read: Date.now() };
    if (this.lost) record.scan.at = clock();
    if (image) record.image = image;
    else record.stored = this.store.add(record);
    this.scans.push(record);
    if (this.why) this.trouble(this.why, this.ill);
    this.run();
    return record;
  }

  /** Says why scans wait; "" says that none does. `ill`: there is a service, but it can't record. */
  trouble(why, ill = false) {
    const before = this.why;
    Object.assign(this, { why, ill });
    if (why || before) this.waiting(why ? this.scans : [], why);
  }

  /** The answer to a scan; null where there is none, or none that says what became of it. */
  async ask(record) {
    const silent = setTimeout(() => this.why || this.trouble(SLOW), PATIENCE);
    const reply = await send(record, AbortSignal.timeout(this.dead)).catch(() => null);
    clearTimeout(silent);
    if (!reply) this.trouble(NO_NETWORK);
    else if (reply.status >= 500 || reply.status === 429 || (reply.status === 200 && !reply.json))
      this.trouble(told(reply) ?? ILL, true);
    else return reply;
    return null;
  }

  async run() {
    if (this.busy) return;
    this.busy = true;
    await this.ready;
    let pause = FIRST_RETRY;
    while (this.scans.length) {
      const record = this.scans[0];
      const reply = await this.ask(record);
      if (!reply) {
        await networkOr(pause);
        pause = Math.min(2 * pause, LAST_RETRY);
        continue;
      }
      pause = FIRST_RETRY;
      if (isOut(reply)) {
        this.failed(record, reply.status, reply.json);
        break;
      }
      if (comesLate(record, reply)) {
        Object.assign(record.scan, { key: newKey(), at: record.noted });
        await this.store.change(record);
        continue;
      }
      this.scans.shift();
      await this.settle(record, reply);
      if (this.why && this.scans.length) this.trouble(this.why, this.ill);
      else this.trouble("");
      if (reply.status === 200) await this.answered(record, reply.json);
      else this.failed(record, reply.status, reply.json);
    }
    this.busy = false;
  }

  /** Photos are given up: no page after this one has them. Whether there were any. */
  dropPhotos() {
    const scans = this.scans.filter(({ image }) => !image);
    const dropped = scans.length < this.scans.length;
    this.scans = scans;
    return dropped;
  }

  /** What was noted and is no yes is kept until a person has seen it; all else has come to its end. */
  async settle(record, { json }) {
    await record.stored?.catch(() => {});
    if (record.image) return;
    const lasts = record.noted && json?.verdict !== "accepted";
    if (lasts) record.answer = json ?? {};
    await this.store[lasts ? "change" : "remove"](record).catch(() => {});
  }
}

/** The service's own sentence on why nothing is recorded. */
function told({ status, json }) {
  return status === 503 ? json?.detail : undefined;
}

/** The scan at which the network went was sent as live. Refused, it changed nothing: it is asked as a late one. */
function comesLate({ scan, noted }, { json }) {
  return Boolean(noted) && !scan.at && json?.verdict === "refused";
}

function send({ scan, image, read }, signal) {
  if (scan.station === "hand_over") {
    const { key, text, carrier } = scan;
    return post("/api/hand-over", { key, text, carrier }, signal);
  }
  const body = { ...scan, ...aged(read) };
  if (!image) return post("/api/scans", body, signal);
  const form = new FormData();
  for (const [name, value] of Object.entries(body)) form.append(name, value);
  form.append("image", image, "scan.jpg");
  return post("/api/scans", form, signal);
}
