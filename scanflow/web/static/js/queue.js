// Scans go out one after another; each keeps its key until it is answered, however long the network is gone.

import { newKey, post } from "./api.js";

const FIRST_RETRY = 1000; // ms
const LAST_RETRY = 10000;

/**
 * `place` names what is kept over a reload. `answered(scan, json)` is told of a verdict, `failed(scan, status, json)`
 * of a scan that can have none, `waiting(scans)` of scans not recorded yet: after a failed try, and [] when all went.
 */
export class Queue {
  constructor(place, { answered, failed, waiting }) {
    Object.assign(this, { place: `scans ${place}`, answered, failed, waiting, busy: false });
    this.scans = JSON.parse(sessionStorage.getItem(this.place) ?? "[]");
    if (this.scans.length) {
      this.waiting(this.scans);
      this.run();
    }
  }

  /** Adds a scan with these fields; `image` is a file in place of `text`. */
  add(fields, image = null) {
    const scan = { ...fields, key: newKey() };
    if (!navigator.onLine) scan.at = new Date().toISOString();
    this.scans.push(image ? { scan, image } : { scan });
    this.keep();
    if (!this.busy) this.run();
    else if (this.troubled) this.waiting(this.scans);
  }

  keep() {
    sessionStorage.setItem(this.place, JSON.stringify(this.scans.filter((each) => !each.image)));
  }

  async run() {
    this.busy = true;
    let pause = FIRST_RETRY;
    while (this.scans.length) {
      const first = this.scans[0];
      const reply = await send(first).catch(() => null);
      if (!reply || reply.status >= 500 || reply.status === 429 || (reply.status === 200 && !reply.json)) {
        this.troubled = true;
        this.waiting(this.scans);
        await new Promise((go) => setTimeout(go, pause));
        pause = Math.min(2 * pause, LAST_RETRY);
        continue;
      }
      if (reply.status === 401) {
        this.failed(first.scan, 401, reply.json);
        break;
      }
      this.scans.shift();
      this.keep();
      if (this.troubled && !this.scans.length) this.waiting([]);
      this.troubled = this.troubled && this.scans.length > 0;
      pause = FIRST_RETRY;
      if (reply.status === 200) await this.answered(first.scan, reply.json);
      else this.failed(first.scan, reply.status, reply.json);
    }
    this.busy = false;
  }
}

function send({ scan, image }) {
  if (!image) return post("/api/scans", scan);
  const form = new FormData();
  for (const [name, value] of Object.entries(scan)) form.append(name, value);
  form.append("image", image, "scan.jpg");
  return post("/api/scans", form);
}
