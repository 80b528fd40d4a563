"""A file is what it was, or all of the new one: on a full disk, and where the writer is killed."""

import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from labels.whole import write_whole

ROOT = Path(__file__).parents[2]
WRITE = "import sys; from labels.whole import write_whole; write_whole(sys.argv[1], bytes(2 << 20))"
FULL = "import resource; resource.setrlimit(resource.RLIMIT_FSIZE, (1 << 20, 1 << 20)); "
KILLED = "import os; os.fsync = lambda file: os.kill(os.getpid(), 9); "


def test_the_content_stands_there_for_all(tmp_path: Path) -> None:
    """A new file may be read as the process lets its files be, one with a mode of its own by nobody else."""
    os.umask(before := os.umask(0o022))
    write_whole(tmp_path / "cards.pdf", b"old")
    write_whole(tmp_path / "cards.pdf", b"new")
    write_whole(tmp_path / "key.pem", b"key", 0o600)

    assert {"cards.pdf": b"new", "key.pem": b"key"} == {each.name: each.read_bytes() for each in tmp_path.iterdir()}
    if sys.platform != "win32":
        modes = [(tmp_path / name).stat().st_mode & 0o777 for name in ("cards.pdf", "key.pem")]
        assert [0o666 & ~before, 0o600] == modes


@pytest.mark.skipif(sys.platform == "win32", reason="no limits of a process's files, and no signal 9")
@pytest.mark.parametrize(("trouble", "status"), [(FULL, 1), (KILLED, -signal.SIGKILL)])
def test_what_was_there_stays(tmp_path: Path, trouble: str, status: int) -> None:
    """Where there is no room for the new file, or the process is killed on the way, the old one is whole."""
    file = tmp_path / "cards.pdf"
    file.write_bytes(b"good")
    done = subprocess.run([sys.executable, "-c", trouble + WRITE, str(file)], cwd=ROOT, capture_output=True)

    assert (status, b"good") == (done.returncode, file.read_bytes())
    assert (trouble == KILLED) + 1 == len(list(tmp_path.iterdir()))  # nobody is left to tidy up after a kill


def test_a_link_stays_one(tmp_path: Path) -> None:
    """What a link points to is written."""
    link, file = tmp_path / "link.pdf", tmp_path / "cards.pdf"
    file.write_bytes(b"old")
    try:
        link.symlink_to(file)
    except OSError:
        pytest.skip("no links here")
    write_whole(link, b"new")

    assert (True, b"new") == (link.is_symlink(), file.read_bytes())


def test_where_nothing_can_be_written_it_is_said(tmp_path: Path) -> None:
    """A folder that is not there is an error, and is not made."""
    with pytest.raises(OSError):
        write_whole(tmp_path / "none" / "cards.pdf", b"new")
    assert [] == list(tmp_path.iterdir())
