"""Where backups go, how often and how many; one at a press; their encryption; one as a file."""

from __future__ import annotations

import os
import threading
from collections.abc import Iterator
from pathlib import Path

from flask import Blueprint, Response, redirect, request, url_for
from flask.typing import ResponseReturnValue

from scanflow.domain.backups import BackupPlace
from scanflow.keeper import make_folder
from scanflow.storage import backups as copies
from scanflow.storage.backups import Backup, BackupError
from scanflow.web.backup_words import age, newest, sentences
from scanflow.web.door.visitors import shop, visitor
from scanflow.web.pages.access.pairing import qr
from scanflow.web.pages.declare import page
from scanflow.web.pages.forms import sent, write
from scanflow.web.pages.rendering import Refusal, act, do, render
from scanflow.web.pages.room_view import let_go, room
from scanflow.web.problem import Problem, of
from scanflow.workflow import backups
from scanflow.workflow.ports import Invalid, Missing, Refused, Unit

blueprint = Blueprint("backup_page", __name__)
CHUNK = 64 * 1024


@page(blueprint, "GET", "/backups")
def show(said: str = "", status: int = 200) -> ResponseReturnValue:
    keeper = shop().keeper
    unit = room()
    known, seq, now = unit.settings.backups, unit.seq, unit.at
    last, used = newest(known, keeper), known.used(keeper.own)
    own = [place for place in used if place.path == keeper.own]
    shown = {
        "standings": [keeper.standing(place) for place in (*known.places, *own)],
        "own": keeper.own,
        "known": known,
        "age": age(now - last.at) if last else "",
        "last": last,
        "sentences": sentences(known, keeper, seq, now),
        "doing": keeper.doing,
        "limits": backups.LIMITS,
        "longest": backups.LONGEST_PATH,
        "given": request.form,
    }
    return render("shop/backups.html", **shown, said=said), status


def _back() -> ResponseReturnValue:
    return redirect(url_for("backup_page.show"), 303)


@page(blueprint, "POST", "/backups/now")
def now() -> ResponseReturnValue:
    shop().keeper.now()
    return _back()


@page(blueprint, "POST", "/backups/places")
def add() -> ResponseReturnValue:
    """The first backup there is begun at once; where it is to be encrypted, once the recovery key was typed back."""
    try:
        said = sent(backups.NamePlace)
        found = backups.free(room(), said, _own())
        let_go()
        make_folder(found, _own())
        if request.form.get("encrypt") == "yes":
            return _new_key(found)
        write(lambda unit: backups.add(unit, said, _own()))
    except (Invalid, Refused) as error:
        refusal = of(error)
        return show(refusal.detail, refusal.status)
    shop().keeper.check()
    return _back()


def _own() -> str | None:
    folder = shop().keeper.folder
    return str(folder) if folder else None


@page(blueprint, "POST", "/backups/remove")
def remove() -> ResponseReturnValue:
    path = request.form.get("path", "")
    return do(show, lambda unit: backups.remove(unit, path))


@page(blueprint, "POST", "/backups/plan")
def plan() -> ResponseReturnValue:
    return do(show, lambda unit: backups.plan(unit, sent(backups.Plan)))


@page(blueprint, "POST", "/backups/plain")
def plain() -> ResponseReturnValue:
    path = request.form.get("path", "")
    return do(show, lambda unit: backups.encrypt(unit, path, ""))


@page(blueprint, "POST", "/backups/encrypt")
def encrypt() -> ResponseReturnValue:
    path = request.form.get("path", "")
    unit = room()
    named = unit.settings.backups.place(path) is not None
    return _new_key(path if named else backups.free(unit, sent(backups.NamePlace), _own()))


def _new_key(path: str) -> ResponseReturnValue:
    """A new recovery key, shown here and never again. Nothing changes until it was typed back, so nothing is kept."""
    recipient, key = copies.new_key()
    return _key_page(path, recipient, key=key)


@page(blueprint, "GET", "/backups/key")
def key() -> ResponseReturnValue:
    """For a key that was shown before, and not tried to the end."""
    place = _place(request.args.get("path", ""))
    return _key_page(place.path, place.recipient) if place.recipient else _back()


def _key_page(path: str, recipient: str, said: str = "", key: str = "", status: int = 200) -> ResponseReturnValue:
    shown = {"path": path, "recipient": recipient, "recovery_key": key, "code": qr(key) if key else "", "said": said}
    return render("shop/backup_key.html", **shown), status


@page(blueprint, "POST", "/backups/key")
def try_key() -> ResponseReturnValue:
    """The key was typed back: from now on backups there are encrypted, and one is made and read back with it."""
    path, recipient, typed = (request.form.get(name, "") for name in ("path", "recipient", "typed"))
    try:
        if copies.recipient_of(typed) != recipient:
            raise BackupError("wrong_key", "This is another recovery key. Type the one of this place.")
    except BackupError as error:
        return _key_page(path, recipient, f"{error} Nothing has changed.", status=422)
    done = act(lambda unit: _encrypt(unit, path, recipient))
    if isinstance(done, Refusal):
        return show(*done)
    shop().keeper.try_key(_place(path), typed, visitor().name)
    return _back()


def _encrypt(unit: Unit, path: str, recipient: str) -> None:
    """A new place for this recipient, or the one of this path."""
    if unit.settings.backups.place(path) is None:
        backups.add(unit, sent(backups.NamePlace), _own(), recipient)
    else:
        backups.encrypt(unit, path, recipient)


def _place(path: str) -> BackupPlace:
    place = room().settings.backups.place(path)
    if place is None:
        raise Missing("Backups do not go to this folder any more. Load the page of backups again.")
    return place


@page(blueprint, "GET", "/backups/download")
def download() -> ResponseReturnValue:
    """The newest backup as one file, a plain one if there is any."""
    found = shop().keeper.packing()
    if found is None:
        raise Problem(404, "not_found", "There is no backup yet. Make one, then download it.")
    place, backup = found
    if request.method == "GET":
        write(lambda unit: backups.downloaded(unit, backup.name))
    name = f"scanflow-{backup.name.partition('.')[0]}{'-encrypted' if backup.encrypted else ''}.zip"
    headers = {"Content-Disposition": f'attachment; filename="{name}"'}
    return Response(_packed(place, backup), mimetype="application/zip", headers=headers)


def _packed(place: BackupPlace, backup: Backup) -> Iterator[bytes]:
    """The file while it is packed, piece by piece. Where packing fails the download breaks off: it is not whole."""
    reader, writer = os.pipe()
    failed: list[Exception] = []

    def pack() -> None:
        try:
            with os.fdopen(writer, "wb") as out:
                copies.pack(Path(place.path), backup, out)
        except Exception as error:
            failed.append(error)

    packing = threading.Thread(target=pack, name="download", daemon=True)
    packing.start()
    with os.fdopen(reader, "rb") as packed:  # closed too where the browser is gone: the packing ends then
        while piece := packed.read(CHUNK):
            yield piece
    packing.join()
    if failed:
        raise failed[0]
