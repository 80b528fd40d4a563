"""Readers survive what decoders do to their processes: real workers, really killed."""

import sys
import tempfile
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from io import BytesIO
from pathlib import Path

import pillow_heif
import psutil
import pytest
from flat_scene import Flat, flat
from pictures import TEXT, as_file, card, png_header, texts
from PIL import Image
from print_faults import picture, symbol
from scenes import book_of

from scanflow.vision import Book, ImageError, PictureReadings, decoders, read
from scanflow.vision.print_check.check import check
from scanflow.vision.stored_pictures import kept
from scanflow.vision.workers import Readers, ReadFailed

BROKEN = (sys.executable, str(Path(__file__).with_name("broken_worker.py")))
GOOD = as_file(card())


def children() -> set[int]:
    return {child.pid for child in psutil.Process().children()}


@pytest.fixture
def started() -> Callable[[], set[int]]:
    """Tells the processes started since the test began."""
    before = children()
    return lambda: children() - before


@pytest.fixture
def readers(started: Callable[[], set[int]]) -> Iterator[Readers]:
    """One worker that aborts, hangs or eats memory when the image says so."""
    with Readers(1, seconds=3.0, megabytes=1024, command=BROKEN) as readers:
        yield readers


def test_a_worker_reads_what_read_reads(tmp_path: Path) -> None:
    """Bytes and paths give the same picture as in this process."""
    path = tmp_path / "card.png"
    path.write_bytes(GOOD)
    with Readers(1) as readers:
        seen = [readers.read(GOOD), readers.read(path)]

    here = read(GOOD)
    assert [(here.width, here.height, here.readings)] * 2 == [(one.width, one.height, one.readings) for one in seen]


def test_a_worker_makes_ready_what_is_kept() -> None:
    """The same bytes as in this process, of a HEIC file too; and an error for what is no picture."""
    heic = BytesIO()
    pillow_heif.from_pillow(Image.open(BytesIO(GOOD)).convert("RGB")).save(heic)
    with Readers(1) as readers:
        assert [kept(GOOD), kept(heic.getvalue())] == [readers.kept(GOOD), readers.kept(heic.getvalue())]
        with pytest.raises(ImageError, match="not a picture"):
            readers.kept(b"nothing")


def test_a_picture_that_hangs_while_it_is_made_ready_costs_only_itself(readers: Readers) -> None:
    """Its pixels are opened in the worker, under the worker's limits of time and memory; the next one is kept."""
    with pytest.raises(ReadFailed, match="took more than 3 s"):
        readers.kept(b"HANG")
    with pytest.raises(ImageError, match="more memory than allowed"):
        readers.kept(b"EAT")
    assert kept(GOOD) == readers.kept(GOOD)


@pytest.mark.parametrize(
    ("image", "words"),
    [(b"ABORT", "crashed"), (b"EXIT", "crashed"), (b"CRASH", "crashed"), (b"HANG", "took more than 3 s")],
)
def test_a_broken_decoder_costs_one_image(readers: Readers, image: bytes, words: str) -> None:
    """The image that breaks the worker is an error, and the next one is read by a new worker."""
    before = readers.read(GOOD)
    with pytest.raises(ReadFailed, match=words):
        readers.read(image)

    assert before.readings == readers.read(GOOD).readings


@pytest.mark.skipif(sys.platform == "win32", reason="Windows has no process groups that end as one")
def test_what_a_worker_started_ends_with_it(readers: Readers, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A worker over its time is killed with the program that it started, and its temporary files are removed."""
    told = tmp_path / "told"
    monkeypatch.setenv("TELL", str(told))
    with pytest.raises(ReadFailed, match="took more than 3 s"):
        readers.read(b"CHILD")
    number, file = told.read_text().split()
    gone = not psutil.pid_exists(int(number)) or psutil.Process(int(number)).wait(timeout=10) is None

    assert (True, False) == (gone, Path(file).parent.exists())
    assert Path(file).parent != tmp_path.parent
    assert [TEXT] == texts(readers.read(GOOD))


@pytest.mark.skipif(sys.platform == "win32", reason="Windows has no such limit")
def test_a_worker_fills_no_disk(readers: Readers) -> None:
    """A worker that writes a file of more than 64 MB ends."""
    with pytest.raises(ReadFailed, match="crashed"):
        readers.read(b"FILE")


def test_nothing_is_left_of_workers_that_were_closed(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The folder for temporary files that each worker has goes when it is ended."""
    monkeypatch.setattr(tempfile, "tempdir", str(tmp_path))
    with Readers(2) as readers:
        readers.warm()
        during = len(list(tmp_path.iterdir()))

    assert (2, []) == (during, list(tmp_path.iterdir()))


def test_a_worker_reads_without_room_for_temporary_files(monkeypatch: pytest.MonkeyPatch) -> None:
    """Where no folder can be made, as on a full disk, pictures are read all the same."""
    monkeypatch.setattr(tempfile, "tempdir", "/nowhere/at/all")
    with Readers(1) as readers:
        assert [TEXT] == texts(readers.read(GOOD))


def test_a_worker_judges_the_print() -> None:
    """The same of each card as in this process, with its drawing; of what is no picture the error."""
    scan = as_file(picture(symbol(dark=0.55)), dpi=(300, 300))
    (expected,) = check(scan, read(scan).decoded, 0.72)
    with Readers(1) as readers:
        seen, (told,) = readers.check(scan, 0.72)
        with pytest.raises(ImageError, match="not a picture"):
            readers.check(b"nothing")

    assert ([TEXT], expected) == (texts(seen), told)
    assert expected.drawing and "its poorest line F" in expected.drawing


def test_memory_is_limited(readers: Readers) -> None:
    """An image that takes more memory than allowed is an error of that image."""
    with pytest.raises(ImageError, match="more memory than allowed"):
        readers.read(b"EAT")

    assert [TEXT] == texts(readers.read(GOOD))


def told(picture: PictureReadings) -> tuple[str | None, str]:
    """The digest of the book that a picture was read with, and how many books its process had been sent."""
    (one,) = picture.readings
    return one.text, one.engine


def test_a_book_is_sent_once(readers: Readers) -> None:
    """The same texts again, even as another object, don't travel; other texts do; without a book none is used."""
    one, same, other, empty = Book(["D0145"]), Book(["D0145", "D0145"]), Book(["D0153"]), Book([])
    books = [one, same, None, one, other, other, one, empty, empty]
    expected = ["1 sent"] * 4 + ["2 sent"] * 2 + ["3 sent"] + ["4 sent"] * 2
    seen = [told(readers.read(b"BOOK", book)) for book in books]

    assert [
        (None if book is None else book.digest, number) for book, number in zip(books, expected, strict=True)
    ] == seen


@pytest.mark.parametrize("image", [b"ABORT", b"HANG"])
def test_a_new_worker_gets_the_book_again(readers: Readers, image: bytes) -> None:
    """What replaces a worker that crashed or hung reads with the same book."""
    book = Book(f"card {number}" for number in range(20_000))
    assert (book.digest, "1 sent") == told(readers.read(b"BOOK", book))
    with pytest.raises(ReadFailed):
        readers.read(image, book)

    assert (book.digest, "1 sent") == told(readers.read(b"BOOK", book))


def test_a_bad_picture_keeps_the_book(readers: Readers) -> None:
    """A file that is no picture, sent together with a new book, costs neither the worker nor the book."""
    book = Book(["D0145"])
    with pytest.raises(ImageError, match="not a picture"):
        readers.read(b"no picture", book)

    assert (book.digest, "1 sent") == told(readers.read(b"BOOK", book))


def test_errors_of_images_leave_the_worker(readers: Readers, started: Callable[[], set[int]]) -> None:
    """A file that is no picture doesn't cost the process."""
    readers.warm()
    process = started()
    for image in (b"", b"no picture", png_header(60_000, 60_000)):
        with pytest.raises(ImageError):
            readers.read(image)

    assert process == started()


def test_a_worker_killed_while_idle_is_replaced(readers: Readers, started: Callable[[], set[int]]) -> None:
    """Whoever ends an idle worker, the next image is read."""
    readers.warm()
    (pid,) = started()
    victim = psutil.Process(pid)
    victim.kill()
    psutil.wait_procs([victim], timeout=10)

    assert [TEXT] == texts(readers.read(GOOD))


def test_many_callers_share_the_workers(started: Callable[[], set[int]]) -> None:
    """Threads in any number are each answered with their own image's reading."""
    images = {name: as_file(card().resize((480 + n, 300))) for n, name in enumerate("abcdefgh")}
    with Readers(2) as readers, ThreadPoolExecutor(8) as threads:
        widths = list(threads.map(lambda name: readers.read(images[name]).width, list(images) * 3))
        workers = len(started())

    assert [480 + n for n in range(8)] * 3 == widths
    assert 2 == workers


def test_a_hang_does_not_hold_up_the_other_worker() -> None:
    """While one worker hangs, the other serves."""
    with Readers(2, seconds=5.0, command=BROKEN) as readers, ThreadPoolExecutor(1) as threads:
        readers.warm()
        hanging = threads.submit(readers.read, b"HANG")
        seen = [texts(readers.read(GOOD)) for _ in range(3)]
        hangs_still = not hanging.done()
        with pytest.raises(ReadFailed):
            hanging.result()

    assert [[TEXT]] * 3 == seen
    assert hangs_still


def test_close_ends_the_workers_and_refuses(started: Callable[[], set[int]]) -> None:
    """After close no process is left, and reading is refused at once, from every thread."""
    readers = Readers(2)
    readers.warm()
    readers.close()
    readers.close()

    assert set() == started()
    for _ in range(2):
        with pytest.raises(RuntimeError, match="closed"):
            readers.read(GOOD)


def test_workers_start_when_needed(started: Callable[[], set[int]]) -> None:
    """Making readers costs no process."""
    with Readers(2):
        assert set() == started()


def test_a_worker_that_can_not_start_is_said() -> None:
    """Where the worker ends at once, reading is an error in words."""
    with Readers(1, command=(sys.executable, "-c", "raise SystemExit(3)")) as readers:
        with pytest.raises(ReadFailed, match="does not start"):
            readers.read(GOOD)
        with pytest.raises(ReadFailed, match="does not start"):
            readers.warm()


def test_a_worker_outlives_its_parent_no_longer_than_its_image() -> None:
    """When the parent is killed in the midst of a hang, the hanging worker ends by itself."""
    code = (
        "import sys, threading; from scanflow.vision.workers import Readers\n"
        f"readers = Readers(1, seconds=1.5, command={BROKEN!r}); readers.warm()\n"
        "print(readers._all[0]._process.pid, flush=True)\n"
        "threading.Thread(target=readers.read, args=(b'HANG',)).start()\n"
        "sys.stdin.read()\n"
    )
    parent = psutil.Popen([sys.executable, "-c", code], stdin=-1, stdout=-1, cwd=Path(__file__).parents[2])
    worker = psutil.Process(int(parent.stdout.readline()))
    parent.kill()
    parent.communicate()
    gone, _ = psutil.wait_procs([worker], timeout=15)

    assert [worker] == gone


def test_the_service_process_says_what_its_workers_lack(caplog: pytest.LogCaptureFixture) -> None:
    """Workers tell which engines they have, and the missing one is said once, not once a worker."""
    command = (*BROKEN, "--without-zbar")
    decoders.say_if_alone.cache_clear()
    with Readers(2, command=command) as readers:
        readers.warm()
        engines = [one.engine for one in readers.read(GOOD).decoded]

    assert ["zxing-cpp"] == engines
    assert 1 == len([message for message in caplog.messages if "libzbar is missing" in message])


def test_a_huge_file_is_said_before_it_is_loaded(tmp_path: Path) -> None:
    """A file of more megabytes than any photo has is refused by its size."""
    path = tmp_path / "film.mp4"
    with path.open("wb") as file:
        file.truncate((200 << 20) + 1)
    with Readers(1) as readers, pytest.raises(ImageError, match="larger than 200 MB"):
        readers.read(path)


def test_a_glance_leaves_the_second_look_out() -> None:
    """What the decoders read at once is told, and a label that they can't read is not looked for."""
    small = flat(3, Flat(px=0.8, labels=6, foreign=0, size=(800, 600)), book_of(50)).jpeg
    with Readers(1) as readers:
        assert [TEXT] == texts(readers.glance(GOOD))
        assert () == readers.glance(small).readings
        assert readers.read(small).readings
