// What has no answer yet, kept: scans of a round and photos of a count for as long as it takes, other scans while their
// page is open.

const opened = {};

function database(name) {
  opened[name] ??= new Promise((go, fail) => {
    const asked = indexedDB.open(name, 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore(STORES[name], { keyPath: "n", autoIncrement: true });
    asked.onsuccess = () => go(asked.result);
    asked.onerror = () => fail(asked.error);
  });
  return opened[name];
}

const STORES = { scanflow: "scans", "scanflow photos": "photos" };

/** What one request gives once its transaction is durable. */
async function transact(name, mode, ask) {
  const transaction = (await database(name)).transaction(STORES[name], mode, { durability: "strict" });
  const asked = ask(transaction.objectStore(STORES[name]));
  return new Promise((go, fail) => {
    transaction.oncomplete = () => go(asked.result);
    transaction.onabort = () => fail(transaction.error);
  });
}

/** Outlives page and browser; in the order in which it came. `plain` gives of a record what is kept of it. */
const keeping = (name, plain) => ({
  all: () => transact(name, "readonly", (kept) => kept.getAll()),
  add: async (record) => (record.n = await transact(name, "readwrite", (kept) => kept.add(plain(record)))),
  change: (record) => transact(name, "readwrite", (kept) => kept.put({ ...plain(record), n: record.n })),
  remove: ({ n }) => transact(name, "readwrite", (kept) => kept.delete(n)),
});

/** `{scan, read, noted, answer}`: `read` is when, in ms of this device's clock, `noted` when the round's list answered
 *  for the service, `answer` what the service said in the end where that was no yes. */
export const lasting = keeping("scanflow", ({ scan, read, noted, answer }) =>
  JSON.parse(JSON.stringify({ scan, read, noted, answer })),
);

/** `{count, key, file, fields, taken}`: a photo, the looks of which count it goes to, and when it was taken, in ms. */
export const photos = keeping("scanflow photos", ({ count, key, file, fields, taken }) => ({
  count,
  key,
  file,
  fields,
  taken,
}));

/** Outlives a reload of the page at `here`. */
export function passing(here) {
  const place = `scans ${here}`;
  const all = () => JSON.parse(sessionStorage.getItem(place) ?? "[]");
  const keep = (records) => sessionStorage.setItem(place, JSON.stringify(records));
  const others = ({ scan }) => all().filter((each) => each.scan.key !== scan.key);
  return {
    all: async () => all(),
    add: async ({ scan, read }) => keep([...all(), { scan, read }]),
    remove: async (record) => keep(others(record)),
  };
}
