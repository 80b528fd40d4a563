"""The page of backups: where to, how often, one now, encrypted or not, one as a file."""

from __future__ import annotations

import html
import re
import shutil
from collections.abc import Iterator
from contextlib import closing
from http.client import HTTPConnection, IncompleteRead
from pathlib import Path

import pytest
from clients import SQLITE_ONLY, client_of, new_token
from flask import Flask
from flask.testing import FlaskClient
from listening import listening

from scanflow.domain.access import Role
from scanflow.domain.backups import BackupPlace, Backups
from scanflow.shop import Shop
from scanflow.storage import backups as copies
from scanflow.storage.database import Database
from scanflow.storage.tables import answers
from scanflow.vision.workers import Readers
from scanflow.workflow import backups

pytestmark = SQLITE_ONLY


@pytest.fixture
def shop(database_url: str, readers: Readers, tmp_path: Path) -> Iterator[Shop]:
    """A shop with a folder of its own on this machine."""
    shop = Shop(Database(database_url), readers, folder=tmp_path)
    yield shop
    shop.keeper.close()
    shop.database.close()


@pytest.fixture
def stick(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return tmp_path_factory.mktemp("stick")


def known(shop: Shop) -> Backups:
    with shop.looking() as unit:
        return unit.settings.backups


def words(client: FlaskClient, address: str = "/backups") -> str:
    text = re.sub(r"<[^>]+>", " ", html.unescape(client.get(address).text))
    return " ".join(text.split())


def send(client: FlaskClient, shop: Shop, address: str, **fields: str) -> int:
    """Send a form, and wait until what it began is done."""
    status = client.post(address, data=fields).status_code
    assert shop.keeper.wait(30)
    return status


def test_from_the_first_start_on(shop: Shop, client: FlaskClient) -> None:
    """Before the first backup, with one in the shop's own folder, and with more at a press."""
    said = [words(client)]
    shop.keeper.check()
    assert shop.keeper.wait(30)
    said.append(words(client))
    assert 303 == send(client, shop, "/backups/now")
    said.append(words(client))
    assert [True, False, False] == ["no backup yet" in each for each in said]
    assert [False, True, True] == ["since the newest backup" in each for each in said]
    assert ["Backups are on this disk only. Name a place on another one." in each for each in said] == [True] * 3
    assert "Newest today" in said[1] and "in the shop's own folder" in said[1]
    assert '<a class="next" href="#new">Name a place</a>' in client.get("/backups").text


def test_a_place_is_named_and_removed(shop: Shop, client: FlaskClient, stick: Path) -> None:
    """The first backup there is made at once; what lies there stays when the place is removed."""
    folder = stick / "backups"
    assert 303 == send(client, shop, "/backups/places", path=str(folder))
    assert (BackupPlace(str(folder), begun=True),) == known(shop).places
    assert "disk only" not in words(client)
    assert '<button class="next">Back up now</button>' in client.get("/backups").text
    assert 303 == send(client, shop, "/backups/remove", path=str(folder))
    assert ((), 1) == (known(shop).places, len(copies.listed(folder)))
    assert 404 == send(client, shop, "/backups/remove", path=str(folder))


@pytest.mark.parametrize(
    ("path", "why"),
    [
        ("backups", "Write the whole path"),
        ("{data}/more", "the shop's own folder"),
        ("{stick}/a/b", "There is no folder"),
        ("{stick}/file", "can't be a folder"),
        ("{stick}/link", "the shop's own folder"),
        ("{stick}/link/more", "the shop's own folder"),
        ("/proc", "Nothing can be written into /proc"),
    ],
)
def test_what_can_be_no_place(
    shop: Shop, client: FlaskClient, stick: Path, tmp_path: Path, path: str, why: str
) -> None:
    """The page says why, what was typed stays in its field, and nothing is made."""
    (stick / "file").touch()
    (stick / "link").symlink_to(tmp_path)
    answer = client.post("/backups/places", data={"path": path.format(data=tmp_path, stick=stick)})
    assert (422, True) == (answer.status_code, why in html.unescape(answer.text))
    assert path.partition("}")[2] in answer.text
    assert ({"file", "link"}, ()) == ({each.name for each in stick.iterdir()}, known(shop).places)


def test_a_place_that_is_gone(shop: Shop, client: FlaskClient, stick: Path) -> None:
    """This page and Today say which, a helper is told without the way to this page; the rest is as it was."""
    send(client, shop, "/backups/places", path=str(stick))
    shutil.rmtree(stick)
    send(client, shop, "/backups/now")
    helper = client_of(client.application, shop, Role.HELPER)
    told = f"{stick} is not there."
    assert [True] * 3 == [told in each for each in (words(client), words(client, "/"), words(helper, "/"))]
    assert [True, False] == ["/backups" in each.get("/").text for each in (client, helper)]
    assert 303 == send(client, shop, "/backups/remove", path=str(stick))
    assert "Backups are on this disk only. Name a place on another one." in words(client, "/")


def test_how_often_and_how_many(shop: Shop, client: FlaskClient) -> None:
    """Whole numbers within their limits stand in the form from then on."""
    numbers = {"every_hours": "12", "days": "3", "weeks": "2", "months": "0"}
    assert 303 == send(client, shop, "/backups/plan", **numbers)
    assert Backups((), 12, 3, 2, 0) == known(shop)
    assert 422 == send(client, shop, "/backups/plan", **numbers | {"days": "x"})
    assert 'name="days" type="number" min="1" max="366" value="3"' in client.get("/backups").text


def shown_key(page: str) -> tuple[str, str]:
    """Recipient and recovery key of the page that shows them."""
    recipient = re.search(r'name="recipient" value="(age1[a-z0-9]+)"', page)
    key = re.search(r"AGE-SECRET-KEY-1[A-Z0-9]{58}", page)
    assert recipient is not None and key is not None
    return recipient[1], key[0]


def test_encryption(shop: Shop, client: FlaskClient, stick: Path) -> None:
    """The key is shown once; a wrong one changes nothing; typed back, a backup is made and read with it, and only
    then the place counts. The key is kept nowhere.
    """
    path = str(stick)
    send(client, shop, "/backups/places", path=path)
    page = client.post("/backups/encrypt", data={"path": path, "key": "form-1"}).text
    recipient, key = shown_key(page)
    assert "<svg" in page
    before = known(shop)
    for wrong in (copies.new_key()[1], "saddle", ""):
        answer = client.post(
            "/backups/key", data={"path": path, "recipient": recipient, "typed": wrong, "key": "form-2"}
        )
        assert (422, True) == (answer.status_code, "Nothing has changed." in answer.text)
        assert (recipient in answer.text, key in answer.text) == (True, False)
    assert before == known(shop)
    assert 303 == send(
        client, shop, "/backups/key", path=path, recipient=recipient, typed=f" {key.lower()} ", key="form-3"
    )
    assert (BackupPlace(path, recipient, tried=True, begun=True),) == known(shop).places
    made = copies.listed(stick)
    assert [True, False] == [each.encrypted for each in made]
    copies.check(stick, made[0], key)
    assert "Encrypted." in words(client)
    with shop.looking() as unit:
        kept = [str(row) for row in unit.connection.execute(answers.select())]
    secret = key.removeprefix("AGE-SECRET-KEY-1")
    assert [] == [each for each in kept if secret in each]
    assert secret not in client.get("/ledger").text


def test_a_new_place_is_encrypted_from_its_first_backup_on(shop: Shop, client: FlaskClient, stick: Path) -> None:
    """It is named once its key was typed back: nothing readable comes there before."""
    fields = {"path": str(stick), "encrypt": "yes"}
    recipient, key = shown_key(client.post("/backups/places", data=fields).text)
    assert () == known(shop).places
    assert 303 == send(client, shop, "/backups/key", path=str(stick), recipient=recipient, typed=key)
    assert (BackupPlace(str(stick), recipient, tried=True, begun=True),) == known(shop).places
    assert [True] == [each.encrypted for each in copies.listed(stick)]
    assert 409 == send(client, shop, "/backups/places", **fields)


def test_a_key_that_was_not_tried_to_the_end(shop: Shop, client: FlaskClient, stick: Path) -> None:
    """The page says so and asks for the key again; backups go to the shop's own folder meanwhile."""
    path = str(stick)
    shop.act("owner", lambda unit: backups.add(unit, backups.NamePlace(path=path)))
    recipient, key = copies.new_key()
    shop.act("owner", lambda unit: backups.encrypt(unit, path, recipient))
    shop.keeper.check()
    assert shop.keeper.wait(30)
    assert "Type its recovery key" in words(client, "/")
    assert [] == copies.listed(stick)
    form = client.get("/backups/key", query_string={"path": path}).text
    assert (True, False) == (recipient in form, "AGE-SECRET-KEY-1Q" in form)
    send(client, shop, "/backups/key", path=path, recipient=recipient, typed=key)
    assert known(shop).places[0].counts
    assert 303 == send(client, shop, "/backups/plain", path=path)
    assert (BackupPlace(path, begun=True),) == known(shop).places


@pytest.mark.parametrize("encrypted", [False, True])
def test_download(shop: Shop, client: FlaskClient, stick: Path, tmp_path: Path, encrypted: bool) -> None:
    """The newest backup as one file, which is read back as a place is; the ledger says that it was taken out."""
    assert 404 == client.get("/backups/download").status_code
    path, key = str(stick), ""
    send(client, shop, "/backups/places", path=path)
    if encrypted:
        recipient, key = shown_key(client.post("/backups/encrypt", data={"path": path}).text)
        send(client, shop, "/backups/key", path=path, recipient=recipient, typed=key)
    answer = client.get("/backups/download")
    assert ("application/zip", 200) == (answer.mimetype, answer.status_code)
    assert encrypted is ("encrypted.zip" in answer.headers["Content-Disposition"])
    (tmp_path / "shop.zip").write_bytes(answer.data)
    (found,) = copies.listed(tmp_path / "shop.zip")
    assert copies.listed(stick)[0] == found
    copies.check(tmp_path / "shop.zip", found, key)
    assert "backup downloaded" in client.get("/ledger").text


def test_a_download_of_a_damaged_backup_breaks_off(app: Flask, shop: Shop, stick: Path) -> None:
    """It never looks whole: the connection ends before the file does (RFC 9112, 8)."""
    shop.act("owner", lambda unit: backups.add(unit, backups.NamePlace(path=str(stick))))
    shop.keeper.check()
    assert shop.keeper.wait(30)
    (list_,) = stick.glob("*.list")
    with list_.open("ab") as file:
        file.write(b"pictures/ab/none.jpg 1\n")
    head = {"Authorization": f"Bearer {new_token(shop, 'browser', Role.OWNER)}"}
    with listening(app, shop) as server:
        connection = HTTPConnection("127.0.0.1", server.effective_port, timeout=20)
        connection.request("GET", "/backups/download", headers=head)
        with closing(connection), pytest.raises(IncompleteRead):
            connection.getresponse().read()


def test_a_helper_has_none_of_it(app: Flask, shop: Shop, stick: Path) -> None:
    """Neither the page nor the file nor a key."""
    helper = client_of(app, shop, Role.HELPER)
    gets = [helper.get(each).status_code for each in ("/backups", "/backups/download", f"/backups/key?path={stick}")]
    posts = [helper.post(f"/backups/{each}").status_code for each in ("now", "places", "encrypt", "key", "plan")]
    assert {403} == {*gets, *posts}


def test_an_unknown_place_is_none(client: FlaskClient) -> None:
    """Forms about a place that was removed say so."""
    told = [client.post(f"/backups/{each}", data={"path": "/gone"}).status_code for each in ("remove", "plain")]
    told.append(client.get("/backups/key?path=/gone").status_code)
    assert ([404] * 3, 422) == (told, client.post("/backups/encrypt", data={"path": "gone"}).status_code)
