"""How the commands are typed on this machine, so that what is printed can be copied as it stands."""

import shlex
import shutil
import subprocess
import sys
from pathlib import Path


def typed(*words: str) -> str:
    """One command line, quoted as this system's own shell wants it."""
    return subprocess.list2cmdline(words) if sys.platform == "win32" else shlex.join(words)


def _program() -> str:
    """`scanflow` where the shell finds this very one; else the whole path of what pip put beside this Python."""
    suffix = ".exe" if sys.platform == "win32" else ""
    script = Path(sys.executable).with_name(f"scanflow{suffix}")
    if not script.exists():
        return typed(sys.executable, "-m", "scanflow")
    found = shutil.which("scanflow")
    return "scanflow" if found and Path(found).resolve() == script.resolve() else typed(str(script))


PROGRAM = _program()
