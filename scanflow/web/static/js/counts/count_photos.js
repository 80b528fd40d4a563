// What a count was shown goes out one after another: photos, and lists of cards that were held up. Each keeps its key
// until it is answered; where nobody can tell which bin it shows, a person says so. A photo is kept until then.

import { aged, isOut, networkOr, newKey, post } from "../page/api.js";
import { make, press, units } from "../page/elements.js";
import { photos } from "../phone/unsent.js";

const RETRY = 2000; // ms
const SHOWN = 4; // of those that were taken and were as they should be
const ASKS = ["other_bin", "many_bins", "required", "not_in_area", "unknown_look"];

const BLANK = "nothing could be read. Unless it is empty, go nearer, with more light";

/** What the service saw: all that a photo shows, and what of it hangs in the place itself. */
function seen({ place, reads, unread, via }) {
  const read = reads.filter(({ certainty }) => certainty !== "unread");
  const inside = read.filter(({ bins }) => !bins.length || bins.includes(place)).length;
  const odd = read.filter(({ unexpected }) => unexpected).length;
  const all = `${units(read.length, "card")} ${via === "photo" ? "read" : "by hand"}`;
  const what =
    read.length || via !== "photo" ? `${all}${inside < read.length ? `, ${inside} of them in it` : ""}` : BLANK;
  const more = [odd && `${odd} unexpected`, unread && `${units(unread, "label")} not read`].filter(Boolean);
  return `${place === "tray" ? "The tray" : place}: ${what}${more.length ? `; ${more.join(", ")}` : ""}`;
}

/** Whether a person should hear of this look again: something in it is unexpected or could not be read. */
const isOdd = ({ reads, unread }) => !reads.length || unread > 0 || reads.some(({ unexpected }) => unexpected);

/**
 * `path` takes looks. `list` is the section they are listed in, `names()` gives the places to choose from. `done(look,
 * record)` is told of each that was taken, `changed(record)` of a list of which a text was left out, `dropped(record)`
 * of what a person gave up, `troubled(record)` of what asks for one, `out(status)` that nobody is signed in. Frames of
 * a film are in no list: `missed(reply)` is told of one that was not taken.
 */
export class Sending {
  constructor(path, list, { names, done, missed, changed, dropped, troubled, out }) {
    Object.assign(this, { path, list, names, done, missed, changed, dropped, troubled, out });
    Object.assign(this, { waiting: [], busy: false, silent: false, count: 0 });
    this.resume().catch(() => {});
  }

  /** Photos that the page could not send any more when it was left; those of a count that is over are of no use. */
  async resume() {
    for (const record of await photos.all()) {
      if (record.count === this.path) this.add(this.named(record));
      else if (await over(record.count)) await photos.remove(record);
    }
  }

  /** Whether something would be lost if the page was left now. */
  get loose() {
    return this.waiting.some(({ file, n }) => file && n === undefined);
  }

  /** How many are not answered yet. */
  get open() {
    return this.waiting.length;
  }

  /** How many frames of a film are not. */
  get frames() {
    return this.waiting.filter(({ film }) => film).length;
  }

  /** The places of which photos are not answered yet. */
  get places() {
    return new Set(this.waiting.filter(({ file }) => file).map(({ fields }) => fields.place));
  }

  photo(file, fields) {
    const record = this.named({ count: this.path, key: newKey(), file, fields, taken: Date.now() });
    record.stored = photos.add(record).catch(() => {});
    return this.add(record);
  }

  named(record) {
    this.count += 1;
    return Object.assign(record, { name: `Photo ${this.count}` });
  }

  /** Of a film: its labels tell what it shows. */
  frame(file) {
    return this.add({ key: newKey(), file, film: true, fields: {}, name: "", taken: Date.now() });
  }

  cards(texts, fields, key = newKey(), taken = Date.now()) {
    const number = texts.filter((text) => !text.startsWith("BIN")).length;
    return this.add({ key, texts, fields, taken, name: `${fields.place}, ${units(number, "card")} by hand` });
  }

  add(record) {
    record.words = make("span", "meta", "waits");
    record.acts = make("div", "acts");
    const words = make("div", "", make("span", "title", record.name), record.words);
    record.line = make("li", "line", make("span", "strip"), make("span"), words, record.acts);
    this.waiting.push(record);
    this.tell();
    this.run();
    return record;
  }

  /** What waits for a person, else how much is on its way; of what was taken the latest, and what one should see. */
  tell() {
    const photos = this.waiting.filter(({ file, film }) => file && !film).length;
    const asked = this.list.querySelectorAll('[data-asks="bin"]').length;
    const way = photos ? `${units(photos, "photo")} on the way` : "Results";
    this.list.querySelector("h2").textContent = asked ? `${units(asked, "photo")}: which bin?` : way;
    const taken = [...this.list.querySelectorAll("[data-taken]:not([data-odd])")];
    for (const line of taken.slice(SHOWN)) line.remove();
    this.list.hidden = this.open === this.frames && !this.list.querySelector("li");
  }

  /** The newest on top, but for what waits for a person. */
  enlist(line) {
    const asking = [...this.list.querySelectorAll("[data-asks]")].at(-1);
    if (asking) asking.after(line);
    else this.list.querySelector("ol").prepend(line);
  }

  async run() {
    if (this.busy) return;
    this.busy = true;
    while (this.waiting.length) {
      const record = this.waiting[0];
      if (!record.film) this.enlist(record.line);
      record.words.textContent = record.file ? "is being read" : "is being noted";
      const reply = await this.ask(record);
      this.silent = !reply;
      if (!reply) {
        const stay = this.loose ? "Stay on this page." : "It is kept, on this page or another.";
        record.words.textContent = `No answer: it is sent again until there is one. ${stay}`;
        await networkOr(RETRY);
        continue;
      }
      this.waiting.shift();
      await this.settle(record, reply);
      this.tell();
    }
    this.busy = false;
  }

  /** The answer to a look; null where there is none, or the service is in trouble. */
  async ask({ key, file, texts, fields, taken }) {
    const said = { key, ...fields, ...aged(taken) };
    let body = { texts, ...said };
    if (file) {
      body = new FormData();
      for (const [name, value] of Object.entries(said)) body.append(name, value);
      body.append("image", file, "photo.jpg");
    }
    const reply = await post(this.path, body).catch(() => null);
    return !reply || reply.status >= 500 || reply.status === 429 ? null : reply;
  }

  async settle(record, { status, json }) {
    if (isOut({ status, json })) return this.out(status);
    if (status === 200) {
      await this.forget(record);
      record.words.textContent = seen(json);
      record.line.dataset.taken = "";
      if (isOdd(json)) record.line.dataset.odd = "";
      return this.done(json, record);
    }
    if (record.film) return this.missed({ status, json });
    record.words.textContent = json?.detail ?? "This could not be used.";
    record.words.className = "told";
    if (record.texts) this.offerRest(record, /^\/texts\/(\d+)$/.exec(json?.errors?.[0]?.pointer ?? "")?.[1]);
    else this.offer(record, ASKS.includes(json?.code));
    this.troubled(record);
  }

  /** Sent once more, changed by a person. */
  again(record) {
    record.acts.replaceChildren();
    delete record.line.dataset.asks;
    record.words.className = "meta";
    record.words.textContent = "waits";
    this.waiting.push(record);
    this.tell();
    this.run();
  }

  /** What a person can do with a list that was not taken: leave out the text that is no card's, or all of it. */
  offerRest(record, bad) {
    const leave = press("Discard this list", () => this.drop(record));
    leave.setAttribute("aria-label", `Discard this list: ${record.name}`);
    record.acts.replaceChildren(leave);
    this.front(record, "list");
    if (bad === undefined) return;
    const rest = press(`Note it without ${record.texts[bad]}`, () => {
      record.texts = record.texts.filter((_, n) => n !== Number(bad));
      this.changed(record);
      this.again(record);
    });
    record.acts.prepend(rest);
  }

  /** What a person can do with a photo that was not taken: say which bin it shows, or leave it out. */
  offer(record, asks) {
    const leave = press("Leave it out", () => this.drop(record));
    leave.setAttribute("aria-label", `Leave it out: ${record.name}`);
    record.acts.replaceChildren(leave);
    if (!asks) return;
    this.front(record, "bin");
    const shot = make("img");
    shot.src = URL.createObjectURL(record.file);
    shot.alt = record.name;
    const larger = press(shot, () =>
      larger.setAttribute("aria-pressed", String(larger.getAttribute("aria-pressed") !== "true")),
    );
    larger.classList.add("sent");
    larger.setAttribute("aria-pressed", "false");
    larger.setAttribute("aria-label", `${record.name}, larger`);
    const select = make(
      "select",
      "",
      new Option("Which bin is it?", ""),
      ...this.names().map((name) => new Option(name)),
    );
    select.setAttribute("aria-label", `Which bin does ${record.name} show?`);
    select.onchange = () => {
      URL.revokeObjectURL(shot.src);
      record.fields = { place: select.value };
      if (record.n !== undefined) photos.change(record).catch(() => {});
      this.again(record);
    };
    record.acts.prepend(larger, select);
  }

  /** What waits for a person stands before all others. */
  front(record, what) {
    record.line.dataset.asks = what;
    this.list.querySelector("ol").prepend(record.line);
  }

  /** A photo that has its answer, or none any more, is kept no longer. */
  async forget(record) {
    await record.stored;
    if (record.n !== undefined) await photos.remove(record).catch(() => {});
  }

  drop(record) {
    this.forget(record);
    record.line.remove();
    this.dropped(record);
    this.tell();
  }
}

/** Whether the count that takes these looks has ended, or was never there. */
async function over(looks) {
  const reply = await fetch(looks.replace(/\/looks$/, "")).catch(() => null);
  if (reply?.status === 404) return true;
  return reply?.status === 200 && (await reply.json()).state !== "open";
}
