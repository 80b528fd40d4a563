// Scans without an answer, kept: those of a round for as long as it takes, others while their page is open.
// A record is `{scan, noted, answer}`: `noted` is when the round's list answered for the service, `answer` what the
// service said in the end where that was no yes.

const DATABASE = "scanflow";
const SCANS = "scans";

let opened = null;

function database() {
  opened ??= new Promise((go, fail) => {
    const asked = indexedDB.open(DATABASE, 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore(SCANS, { keyPath: "n", autoIncrement: true });
    asked.onsuccess = () => go(asked.result);
    asked.onerror = () => fail(asked.error);
  });
  return opened;
}

/** What one request gives once its transaction is durable. */
async function transact(mode, ask) {
  const transaction = (await database()).transaction(SCANS, mode, { durability: "strict" });
  const asked = ask(transaction.objectStore(SCANS));
  return new Promise((go, fail) => {
    transaction.oncomplete = () => go(asked.result);
    transaction.onabort = () => fail(transaction.error);
  });
}

const plain = ({ n, scan, noted, answer }) => JSON.parse(JSON.stringify({ n, scan, noted, answer }));

/** Outlives page and browser; in the order of the scans. */
export const lasting = {
  all: () => transact("readonly", (scans) => scans.getAll()),
  add: async (record) => (record.n = await transact("readwrite", (scans) => scans.add(plain(record)))),
  change: (record) => transact("readwrite", (scans) => scans.put(plain(record))),
  remove: ({ n }) => transact("readwrite", (scans) => scans.delete(n)),
};

/** Outlives a reload of the page at `here`. */
export function passing(here) {
  const place = `scans ${here}`;
  const all = () => JSON.parse(sessionStorage.getItem(place) ?? "[]");
  const keep = (records) => sessionStorage.setItem(place, JSON.stringify(records));
  const others = ({ scan }) => all().filter((each) => each.scan.key !== scan.key);
  return {
    all: async () => all(),
    add: async ({ scan }) => keep([...all(), { scan }]),
    remove: async (record) => keep(others(record)),
  };
}
