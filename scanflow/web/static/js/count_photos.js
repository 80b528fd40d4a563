// What a count was shown goes out one after another: photos, and lists of cards that were held up. Each keeps its key
// until it is answered; where nobody can tell which bin it shows, a person says so.

import { newKey, post } from "./api.js";

const RETRY = 2000; // ms
const ASKS = ["other_bin", "many_bins", "required", "not_in_area", "unknown_look"];

function make(tag, name = "", ...parts) {
  const element = document.createElement(tag);
  element.className = name;
  element.append(...parts);
  return element;
}

const units = (number, one) => `${number} ${one}${number === 1 ? "" : "s"}`;

/** What the service saw. */
function seen({ place, reads, unread, via }) {
  const read = reads.length - unread;
  const odd = reads.filter(({ unexpected, certainty }) => unexpected && certainty !== "unread").length;
  const more = [odd && `${odd} unexpected`, unread && `${units(unread, "label")} for someone to look at`].filter(Boolean);
  return `${place}: ${units(read, "card")} ${via === "photo" ? "read" : "by hand"}${more.length ? `; ${more.join(", ")}` : ""}`;
}

/**
 * `path` takes looks. `list` is the section they are listed in, `names()` gives the places to choose from. `done(look)`
 * is told of each that was taken, `refused(record, problem)` of a list of cards that was not.
 */
export class Sending {
  constructor(path, list, { names, done, refused, out }) {
    Object.assign(this, { path, list, names, done, refused, out, waiting: [], busy: false, count: 0 });
  }

  /** How many are not answered yet. */
  get open() {
    return this.waiting.length;
  }

  photo(file, fields) {
    this.count += 1;
    return this.add({ key: newKey(), file, fields, name: `Photo ${this.count}` });
  }

  cards(texts, fields, key = newKey()) {
    return this.add({ key, texts, fields, name: `${fields.place}, ${units(texts.length, "card")} by hand` });
  }

  add(record) {
    record.words = make("span", "meta", "waits");
    record.acts = make("div", "acts");
    record.line = make("li", "line", make("span", "strip"), make("span"), make("div", "", make("span", "title", record.name), record.words), record.acts);
    this.list.hidden = false;
    this.list.querySelector("ol").prepend(record.line);
    this.waiting.push(record);
    this.run();
    return record;
  }

  async run() {
    if (this.busy) return;
    this.busy = true;
    while (this.waiting.length) {
      const record = this.waiting[0];
      record.words.textContent = record.file ? "is being read" : "is being noted";
      const reply = await this.ask(record);
      if (!reply) {
        record.words.textContent = "No answer: it is sent again until there is one. Stay on this page.";
        await pause();
        continue;
      }
      this.waiting.shift();
      await this.settle(record, reply);
    }
    this.busy = false;
  }

  /** The answer to a look; null where there is none, or the service is in trouble. */
  async ask({ key, file, texts, fields }) {
    let body = { key, texts, ...fields };
    if (file) {
      body = new FormData();
      for (const [name, value] of Object.entries({ key, ...fields })) body.append(name, value);
      body.append("image", file, "photo.jpg");
    }
    const reply = await post(this.path, body).catch(() => null);
    return !reply || reply.status >= 500 || reply.status === 429 ? null : reply;
  }

  async settle(record, { status, json }) {
    if (status === 401) return this.out();
    if (status === 200) {
      record.words.textContent = seen(json);
      return this.done(json, record);
    }
    record.words.textContent = json?.detail ?? "This could not be used.";
    record.words.className = "told";
    if (record.texts) this.refused(record, json);
    else this.offer(record, ASKS.includes(json?.code));
  }

  /** What a person can do with a photo that was not taken: say which bin it shows, or leave it out. */
  offer(record, asks) {
    const leave = make("button", "plain", "Leave it out");
    Object.assign(leave, { type: "button", onclick: () => this.drop(record) });
    record.acts.replaceChildren(leave);
    if (!asks) return;
    const shot = make("img", "sent");
    shot.src = URL.createObjectURL(record.file);
    shot.alt = record.name;
    const select = make("select", "", new Option("Which bin is it?", ""), ...this.names().map((name) => new Option(name)));
    select.setAttribute("aria-label", `Which bin does ${record.name} show?`);
    select.onchange = () => {
      URL.revokeObjectURL(shot.src);
      record.acts.replaceChildren();
      record.fields = { place: select.value };
      record.words.className = "meta";
      record.words.textContent = "waits";
      this.waiting.push(record);
      this.run();
    };
    record.acts.prepend(shot, select);
  }

  drop(record) {
    record.line.remove();
    this.list.hidden = !this.list.querySelector("li");
  }
}

/** After a while, or as soon as the network is back. */
function pause() {
  return new Promise((go) => {
    const timer = setTimeout(go, RETRY);
    addEventListener("online", () => (clearTimeout(timer), go()), { once: true });
  });
}
