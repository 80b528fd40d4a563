"""The house rules that tools hold: style, types, and which way imports run."""

from __future__ import annotations

import ast
import re
import shutil
import subprocess
import sys
import tomllib
from collections import defaultdict
from collections.abc import Iterable, Iterator
from graphlib import CycleError, TopologicalSorter
from itertools import accumulate, chain
from pathlib import Path

import pytest

from scanflow.domain import events

HOUSE = Path(__file__).parents[1]


@pytest.mark.parametrize(
    "command",
    [
        pytest.param(("ruff", "check"), id="style"),
        pytest.param(("ruff", "format", "--check"), id="format"),
        pytest.param(("mypy",), id="types"),
        pytest.param(("lint-imports",), id="imports"),
        pytest.param(("djlint", "--lint", "--quiet", "scanflow/web/templates"), id="templates"),
        pytest.param(("oxlint", "--deny-warnings", "--import-plugin", "scanflow/web/static"), id="scripts"),
        pytest.param(("oxfmt", "--check", "scanflow/web/static/js"), id="format of scripts"),
        pytest.param(("codespell",), id="spelling"),
    ],
)
def test_a_tool_finds_nothing_amiss(command: tuple[str, ...]) -> None:
    """Each tool, with its settings in pyproject.toml, passes the whole tree."""
    program = shutil.which(command[0], path=str(Path(sys.executable).parent))
    assert program is not None, f"{command[0]} is not installed beside {sys.executable}"
    done = subprocess.run([program, *command[1:]], cwd=HOUSE, capture_output=True, text=True, timeout=300)
    assert 0 == done.returncode, done.stdout + done.stderr


def test_no_package_has_a_name_of_its_own_modules() -> None:
    """A module that is imported becomes an attribute of its package, in the place of what had its name there."""
    clashes = []
    for home in (HOUSE / "scanflow").rglob("__init__.py"):
        modules = {each.stem for each in (*home.parent.glob("*.py"), *home.parent.glob("*/__init__.py"))}
        modules |= {each.parent.name for each in home.parent.glob("*/__init__.py")}
        for node in ast.parse(home.read_text(encoding="utf-8")).body:
            clashes += [f"{home.relative_to(HOUSE)}: {name}" for name in _names(node) if name in modules]
    assert [] == [each for each in clashes if not each.startswith("scanflow/cli/")]  # whose commands are so named


def _names(node: ast.stmt) -> Iterator[str]:
    """What a statement names in its module, modules of the same name apart."""
    match node:
        case ast.FunctionDef() | ast.ClassDef():
            yield node.name
        case ast.Assign():
            yield from (each.id for each in node.targets if isinstance(each, ast.Name))
        case ast.ImportFrom():
            yield from (
                each.asname or each.name for each in node.names if (HOUSE / _path(node, each)).exists() is False
            )


def _path(node: ast.ImportFrom, name: ast.alias) -> str:
    """Where the module stands that this imports, if it is one."""
    home = f"{node.module}.{name.name}".replace(".", "/")
    return home if (HOUSE / home).is_dir() else f"{home}.py"


def test_modules_import_each_other_in_no_circle() -> None:
    """Each module can be the first that is imported: none needs, even through others, one that needs it."""
    needs = {name: set(_needs(name, path)) for name, path in MODULES.items()}
    try:
        TopologicalSorter(needs).prepare()
    except CycleError as circle:
        pytest.fail(" needs ".join(circle.args[1][::-1]))


MODULES = {
    ".".join(path.relative_to(HOUSE).with_suffix("").parts).removesuffix(".__init__"): path
    for home in ("labels", "scanflow")
    for path in (HOUSE / home).rglob("*.py")
}


def _needs(name: str, path: Path) -> Iterator[str]:
    """The modules that a module has imported before it is ready, and their packages, but for those it is in."""
    for target in _imported(ast.parse(path.read_text(encoding="utf-8")).body):
        packages = accumulate(target.split("."), "{}.{}".format)
        outside = (each for each in packages if each == target or not f"{name}.".startswith(f"{each}."))
        yield from (each for each in outside if each in MODULES and each != name)


def _imported(body: Iterable[ast.stmt]) -> Iterator[str]:
    """What these statements import when they run: not what functions in them import when they are called."""
    for node in body:
        match node:
            case ast.Import():
                yield from (each.name for each in node.names)
            case ast.ImportFrom():
                modules = (f"{node.module}.{each.name}" for each in node.names)
                yield from (each if each in MODULES else str(node.module) for each in modules)
            case ast.If(test=ast.Name("TYPE_CHECKING")):
                yield from _imported(node.orelse)
            case ast.ClassDef() | ast.If() | ast.With() | ast.Try():
                inner = (getattr(node, part, ()) for part in ("body", "orelse", "finalbody"))
                yield from _imported(chain(*inner))


def test_no_class_has_the_name_of_another() -> None:
    """A class has one name, which says what it is; only `given.py` names again what the API gives of it."""
    homes: defaultdict[str, list[str]] = defaultdict(list)
    for path in (each for room in ("labels", "scanflow") for each in sorted((HOUSE / room).rglob("*.py"))):
        if path.name != "given.py":
            for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
                if isinstance(node, ast.ClassDef):
                    homes[node.name].append(f"{path.relative_to(HOUSE)}:{node.lineno}")
    assert {} == {name: where for name, where in homes.items() if len(where) > 1}


def test_no_line_of_a_template_or_script_is_too_long() -> None:
    """As in the modules, a line ends at 120 characters: comments and texts too, which no formatter breaks."""
    web = HOUSE / "scanflow" / "web"
    files = chain((web / "templates").rglob("*.html"), (web / "static").rglob("*.js"))
    lines = {
        f"{each.relative_to(HOUSE)}:{number}": len(line)
        for each in files
        for number, line in enumerate(each.read_text(encoding="utf-8").splitlines(), start=1)
    }
    assert {} == {where: length for where, length in lines.items() if length > 120}


def test_every_package_is_built() -> None:
    """setuptools finds none by itself: pyproject.toml names all, or an installed service would lack what runs here."""
    settings = tomllib.loads((HOUSE / "pyproject.toml").read_text(encoding="utf-8"))

    inside = [
        each.parent.relative_to(HOUSE)
        for room in ("labels", "scanflow")
        for each in (HOUSE / room).rglob("__init__.py")
    ]
    assert sorted(".".join(each.parts) for each in inside) == sorted(settings["tool"]["setuptools"]["packages"])


def test_kinds_of_the_ledger_stand_with_their_types_alone() -> None:
    """Nothing else in the house spells a kind: neither one of several words, nor any where a `kind` is asked for."""
    own = HOUSE / "scanflow" / "domain" / "events"
    found = []
    for path in sorted((HOUSE / "scanflow").rglob("*.py")):
        if not path.is_relative_to(own):
            tree = ast.parse(path.read_text(encoding="utf-8"))
            found += [f"{path.relative_to(HOUSE)}:{line} {kind}" for line, kind in sorted(_spelt(tree))]
    for path in sorted((HOUSE / "scanflow").rglob("*.html")):
        asked = re.findall(r"""kind\b[^%}]*?["']([^"']+)["']""", path.read_text(encoding="utf-8"))
        found += [f"{path.relative_to(HOUSE)} {kind}" for kind in asked if kind in events.KINDS]
    assert [] == found


def _spelt(tree: ast.AST) -> Iterator[tuple[int, str]]:
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and node.value in events.KINDS and not str(node.value).isalpha():
            yield node.lineno, node.value
        if isinstance(node, ast.Compare | ast.Match | ast.Call) and _asks_for_a_kind(node):
            consts = (each for each in ast.walk(node) if isinstance(each, ast.Constant))
            yield from ((each.lineno, each.value) for each in consts if each.value in events.KINDS)


def _asks_for_a_kind(node: ast.Compare | ast.Match | ast.Call) -> bool:
    """Whether it compares a `kind`, or calls something of one: `kind == …`, `match kind`, `ledger.c.kind.in_(…)`."""
    match node:
        case ast.Compare():
            asked = [node.left, *node.comparators]
        case ast.Match():
            asked = [node.subject]
        case ast.Call(func=ast.Attribute(value=value)):
            asked = [value]
        case _:
            asked = []
    return any(getattr(each, "attr", getattr(each, "id", "")) == "kind" for each in asked)
