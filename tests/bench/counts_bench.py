"""What a count by photographs makes of a room of 600 slots whose errors are known: `python tests/bench counts`.

    OMP_NUM_THREADS=1 python tests/bench/counts_bench.py [--rooms N] [--tuning] [--first SEED] [--no-labels]
        [--alone] [--keep DIR]
    python tests/bench/counts_bench.py --photos FOLDER...   photographs, in a count of a shop that owns none of them

Two photographs of each of 30 bins, the things leafed through between them; the tray card by card; then the bins that
the count asks to look at again are gone through by hand. *In view*: at least 12 % of a card's bar height showed in one
full-width strip of a photograph of its bin, of a twin both did; what is gone is in view where its bin, or the tray, was
looked at. An error of an unreadable card is found when its bin is asked for again. False is every finding but that
was not planted; a bin that is asked for again though all its cards were in view is told apart.
The plain decoders' photographs go through the same count, each of the bin that it was taken of.
"""

from __future__ import annotations

import argparse
import hashlib
import os
import resource
from collections import Counter
from collections.abc import Callable, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field, replace
from multiprocessing import get_context
from pathlib import Path
from tempfile import TemporaryDirectory
from time import perf_counter

import cv2
from filed_scene import LEAST_VISIBLE
from memory_bench import peak
from planted import WHO, Plant, Room, furnish
from read_bench import KINDS, bare_zbar, bare_zxing
from room_scene import DAMAGED, photograph
from scenes import Truth

from labels import slot_code
from scanflow.domain.counts.findings import Finding, FindingKind
from scanflow.domain.counts.stocktake import TRAY, Certainty, How
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.storage.engine import sqlite_url
from scanflow.vision import ImageError, photographs
from scanflow.vision.workers import Readers
from scanflow.workflow import stock
from scanflow.workflow.counts import looks, stocktakes
from scanflow.workflow.counts import report as stocktake_report
from scanflow.workflow.counts.looks import IncomingLook, LabelReading
from scanflow.workflow.ports import Invalid

TUNING = 10_000  # seeds from here on are for tuning, those below for the figures
PASSES = 2
GOALS = "Goals: all planted errors in view found, none false, no absent code present; 90 s on two cores, 1000 MB"


@dataclass(frozen=True)
class Taken:
    """A photograph's file, the bin it was taken of, and what is in it."""

    file: Path
    bin: str
    truths: tuple[Truth, ...]


@dataclass
class Tally:
    """Of all rooms, by one reader: what was planted, seen and found."""

    planted: Counter[str] = field(default_factory=Counter)
    in_view: Counter[str] = field(default_factory=Counter)
    found: Counter[str] = field(default_factory=Counter)
    told: Counter[str] = field(default_factory=Counter)
    false: list[str] = field(default_factory=list)
    missed: list[str] = field(default_factory=list)


def take(seed: int, room: Room, folder: Path) -> list[Taken]:
    """Photographs of all bins, by another process: rendering leaves no memory behind."""
    folder.mkdir(parents=True, exist_ok=True)
    jobs = [(seed, room, name, turn, folder) for turn in range(PASSES) for name in room.bins]
    with get_context("spawn").Pool(1) as pool:
        return pool.map(_take, jobs, chunksize=1)


def _take(job: tuple[int, Room, str, int, Path]) -> Taken:
    seed, room, name, turn, folder = job
    file, kept = folder / f"{name} {turn + 1}.jpg", folder / f"{name} {turn + 1}.truth"
    if not kept.exists():
        cv2.setNumThreads(1)
        scene = photograph(seed, room.bins, name, turn)
        file.write_bytes(scene.jpeg)
        kept.write_text(repr(scene.truths), encoding="utf-8")
    # what this bench wrote itself
    return Taken(file, name, eval(kept.read_text(encoding="utf-8"), {"Truth": Truth}))


def count(shop: Shop, taken: Sequence[Taken], shown: Callable[[Taken, str], IncomingLook]) -> str:
    """A count of the room into which all photographs are shown, by as many threads as there are readers."""
    opened = shop.act(WHO, lambda unit: stocktakes.open_count(unit, stocktakes.OpenCount(area="room")))

    def look(one: Taken) -> None:
        seen = shown(one, f"{opened.id}-{one.file.stem.replace(' ', '_')}")
        try:
            shop.act(WHO, lambda unit: looks.look(unit, opened.id, seen))
        except Invalid:  # no label tells which bin it is
            said = replace(seen, place=one.bin)
            shop.act(WHO, lambda unit: looks.look(unit, opened.id, said))

    with ThreadPoolExecutor(shop.readers.count) as threads:
        list(threads.map(look, taken))
    return opened.id


def by_hand(shop: Shop, count_id: str, place: str, texts: Sequence[str]) -> None:
    """Someone goes through a place card by card, and types what can't be scanned."""
    key = f"{count_id}-hand-{place}"
    shown = IncomingLook(key, key[:64], tuple(LabelReading(text) for text in texts), place=place)
    shop.act(WHO, lambda unit: looks.look(unit, count_id, shown))


def findings(shop: Shop, count_id: str) -> list[Finding]:
    with shop.looking() as unit:
        return [each.finding for each in stocktakes.state(unit, count_id).found]


def judged(tally: Tally, shop: Shop, count_id: str, room: Room, taken: Sequence[Taken], where: str) -> None:
    """The rest of a count whose photographs are in, and what it found."""
    by_hand(shop, count_id, TRAY, room.tray)
    first = findings(shop, count_id)
    again = [each.subject for each in first if each.kind is FindingKind.UNREADABLE]
    seen = _seen(taken)
    for name in again:
        tally.told["by hand"] += 1
        tally.told["needlessly"] += all(
            (card.text, name) in seen and card.kind != DAMAGED for card in room.bins[name]
        ) and not _short_of(room, shop, name)
        by_hand(shop, count_id, name, [card.text for card in room.bins[name]])
    last = findings(shop, count_id)
    planted = {each.id: each for each in room.planted}
    got = {each.id for each in last} | {f"{FindingKind.UNREADABLE}-{name}" for name in again}
    for each in planted.values():
        viewed = _in_view(each, seen)
        tally.planted[each.kind] += 1
        tally.in_view[each.kind] += viewed
        tally.found[each.kind] += each.id in got
        tally.told["found in view"] += viewed and each.id in got
        if viewed and each.id not in got:
            tally.missed.append(f"{where} {each.id} {each.cards}")
    early = [each for each in first if each.kind is not FindingKind.UNREADABLE and each.id not in planted]
    late = [each for each in last if each.id not in planted and each.kind is not FindingKind.UNREADABLE]
    hidden = {f"{FindingKind.MISSING}-{slot}" for slot in _gone(room)}
    for each in {each.id: each for each in (*early, *late)}.values():
        if each.id in hidden:  # what lies elsewhere unseen, or in the tray, is truly missing in its bin
            tally.told["missed where it belongs"] += 1
        else:
            tally.false.append(f"{where} {each.id} {each.places}")


def _seen(taken: Sequence[Taken]) -> set[tuple[str, str]]:
    """(text, bin) of the cards that are in view in a photograph of their bin."""
    return {(truth.text, one.bin) for one in taken for truth in one.truths if truth.visible >= LEAST_VISIBLE}


def _in_view(plant: Plant, seen: set[tuple[str, str]]) -> bool:
    return all(card in seen for card in plant.cards)


def _gone(room: Room) -> set[str]:
    return {each.subject for each in room.planted if each.kind in (FindingKind.ELSEWHERE, FindingKind.MISSING)}


def _short_of(room: Room, shop: Shop, name: str) -> bool:
    """Whether something is missed in this bin by right."""
    there = {card.text for card in room.bins[name]}
    with shop.looking() as unit:
        standing = [each for each in stocktakes.standings(unit).values() if each.place == name]
    return any(slot_code.card_text(each.code) not in there for each in standing)


def reads(tally: Tally, shop: Shop, count_id: str, taken: Sequence[Taken]) -> None:
    """Cards in view that were read, and texts that are not in their picture."""
    with shop.looking() as unit:
        looks = {look.key: look for look in stocktakes.state(unit, count_id).looks}
    for one in taken:
        look = looks[f"{count_id}-{one.file.stem.replace(' ', '_')}"]
        tally.told["other bin"] += look.place != one.bin
        texts = {read.text for read in look.reads if read.certainty is not Certainty.UNREAD}
        there = {truth.text for truth in one.truths}
        cards = {t.text for t in one.truths if t.visible >= LEAST_VISIBLE and t.kind == "card"}
        tally.told["cards in view"] += len(cards)
        tally.told["cards read"] += len(cards & texts)
        tally.told["absent present"] += len(texts - there)


def plainly(read: Callable[[Path], list[str]]) -> Callable[[Taken, str], IncomingLook]:
    def shown(one: Taken, key: str) -> IncomingLook:
        cards = tuple(LabelReading(text) for text in read(one.file) if not slot_code.is_bin_like(text))
        return IncomingLook(key, key, cards, How.PHOTO, one.bin, image=True)

    return shown


def ours(shop: Shop, labels: bool) -> Callable[[Taken, str], IncomingLook]:
    """As the shop reads it; without `labels` those on the bins' fronts tell nothing, and a person says the bin."""

    def shown(one: Taken, key: str) -> IncomingLook:
        content = one.file.read_bytes()
        seen = photographs.shown(shop.looking, shop.readers, content, key=key, body=hashlib.sha256(content).hexdigest())
        cards = tuple(text for text in seen.texts if not slot_code.is_bin_like(text.text or ""))
        return seen if labels else replace(seen, texts=cards, place=one.bin)

    return shown


PLAIN = {"zxing-cpp": plainly(bare_zxing), "pyzbar": plainly(bare_zbar)}


def one_room(seed: int, folder: Path, tallies: dict[str, Tally], labels: bool) -> str:
    """One room counted by each reader; a line of what it took to count it here."""
    data = TemporaryDirectory()
    shop = Shop(Database(sqlite_url(Path(data.name))), Readers(seconds=600))  # whatever else the machine does
    try:
        room = furnish(shop, seed)
        taken = take(seed, room, folder / f"photos-{seed}")
        shop.readers.warm()
        begun, before = perf_counter(), _spent(shop)
        count_id = count(shop, taken, ours(shop, labels))
        shop.act(WHO, lambda unit: stocktake_report.report(unit, stocktakes.state(unit, count_id)))
        took, cpu = perf_counter() - begun, _spent(shop) - before
        most = peak(os.getpid()) + sum(peak(pid) for pid in _workers(shop))
        reads(tallies["scanflow"], shop, count_id, taken)
        judged(tallies["scanflow"], shop, count_id, room, taken, f"room {seed}")
        for name, shown in PLAIN.items():
            if name not in tallies:
                continue
            plain = count(shop, taken, shown)
            reads(tallies[name], shop, plain, taken)
            judged(tallies[name], shop, plain, room, taken, f"room {seed}")
    finally:
        shop.close()
        data.cleanup()
    return (
        f"room {seed}: {len(taken)} photographs in {took:.0f} s, {cpu:.0f} s of processor "
        f"({cpu / 2:.0f} s on two cores that do nothing else), {most:.0f} MB at the peak"
    )


def _workers(shop: Shop) -> list[int]:
    return [worker._process.pid for worker in shop.readers._all if worker._process is not None]


def _spent(shop: Shop) -> float:
    """Seconds of processor of this process and its workers."""
    own = resource.getrusage(resource.RUSAGE_SELF)
    ticks = 0
    for pid in _workers(shop):
        fields = Path(f"/proc/{pid}/stat").read_text(encoding="ascii").rpartition(")")[2].split()
        ticks += int(fields[11]) + int(fields[12])  # utime and stime of proc(5)
    return own.ru_utime + own.ru_stime + ticks / os.sysconf("SC_CLK_TCK")


def table(tallies: dict[str, Tally]) -> None:
    kinds = [kind for kind in FindingKind if any(tally.planted[kind] for tally in tallies.values())]
    print(f"{'found / in view / planted':26} " + " ".join(f"{kind:>12}" for kind in kinds))
    for name, tally in tallies.items():
        cells = (f"{tally.found[kind]}/{tally.in_view[kind]}/{tally.planted[kind]}" for kind in kinds)
        print(f"{name:26} " + " ".join(f"{cell:>12}" for cell in cells))
    for name, tally in tallies.items():
        told, total, viewed = tally.told, sum(tally.planted.values()), sum(tally.in_view.values())
        print(
            f"{name}: {told['found in view']} of {viewed} errors in view found, {sum(tally.found.values())} of {total} "
            f"of all; {len(tally.false)} false; {told['absent present']} absent codes present; "
            f"{100 * told['cards read'] / max(1, told['cards in view']):.1f} % of cards in view read; "
            f"{told['by hand']} bins gone through by hand, {told['needlessly']} of them needlessly; "
            f"{told['other bin']} photographs taken for another bin's"
        )
        for what, each in (("missed", tally.missed), ("false", tally.false)):
            for line in each[:12]:
                print(f"    {what}: {line}")


def photos(folders: Sequence[Path]) -> None:
    """Photographs in a count of a shop that owns nothing in them: only whole codes of its grammar are unknown."""
    with TemporaryDirectory() as folder:
        shop = Shop(Database(sqlite_url(Path(folder))))
        shop.act(
            WHO,
            lambda unit: stock.add_section(
                unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=20, colour="blue")
            ),
        )
        shop.act(WHO, lambda unit: stock.add_slots(unit, "D", stock.AddSlots(count=600)))
        for each in folders:
            files = sorted(path for path in each.iterdir() if path.suffix.lower() in KINDS)
            opened = shop.act(WHO, lambda unit: stocktakes.open_count(unit, stocktakes.OpenCount(area="room")))
            unfit = sum(not _shown(shop, opened.id, number, file) for number, file in enumerate(files))
            found = findings(shop, opened.id)
            kinds = Counter(f.kind.value for f in found if f.kind is not FindingKind.UNKNOWN)
            unknown = [f.subject for f in found if f.kind is FindingKind.UNKNOWN]
            wrong = [text for text in unknown if not _written(text, each)]
            print(
                f"{each.name:20} {len(files):4} photographs, {unfit} unfit: {len(unknown)} unknown {unknown[:4]}, "
                f"{len(wrong)} of them not in their texts, other findings: {dict(kinds) or 'none'}",
                flush=True,
            )
        shop.close()


def _shown(shop: Shop, count_id: str, number: int, file: Path) -> bool:
    try:
        shown = photographs.shown(
            shop.looking, shop.readers, file.read_bytes(), key=f"{count_id}-{number}", body=str(number), place="A-1-1"
        )
    except ImageError:
        return False
    shop.act(WHO, lambda unit: looks.look(unit, count_id, shown))
    return True


def _written(text: str, folder: Path) -> bool:
    """Whether a text stands beside one of the photographs of a folder."""
    return any(text in slot_code.compact(path.read_text("utf-8", "replace")) for path in folder.glob("*.txt"))


def main(options: Sequence[str] = ("--rooms", "1")) -> None:
    parser = argparse.ArgumentParser(prog="counts_bench")
    parser.add_argument("--rooms", type=int, default=1)
    parser.add_argument("--first", type=int, default=0, help="the first room's seed")
    parser.add_argument("--tuning", action="store_true", help="other seeds than those of the figures")
    parser.add_argument("--keep", type=Path, metavar="DIR", help="where rendered photographs stay for the next time")
    parser.add_argument("--no-labels", action="store_true", help="as if no label on a bin's front could be read")
    parser.add_argument("--alone", action="store_true", help="without the plain decoders beside")
    parser.add_argument("--photos", type=Path, nargs="+", metavar="FOLDER")
    chosen = parser.parse_args(options)
    if chosen.photos:
        photos(chosen.photos)
        return
    first = chosen.first + (TUNING if chosen.tuning else 0)
    tallies = {name: Tally() for name in ("scanflow", *([] if chosen.alone else PLAIN))}
    print(GOALS)
    with TemporaryDirectory() as folder:
        for seed in range(first, first + chosen.rooms):
            print(one_room(seed, chosen.keep or Path(folder), tallies, not chosen.no_labels), flush=True)
    table(tallies)


if __name__ == "__main__":
    import sys

    main(sys.argv[1:])
