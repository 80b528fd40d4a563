"""One visitor's pictures never hold up the scans of others."""

from __future__ import annotations

import threading
import time
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from io import BytesIO
from typing import Any

import numpy as np
import pytest
from calls import photo
from clients import SQLITE_ONLY, client_of
from flask import Flask
from flask.testing import FlaskClient
from PIL import Image

from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.vision.workers import Readers
from scanflow.web.door.picture_limits import IN_WORK, WAITING

pytestmark = SQLITE_ONLY

MANY = 12


@pytest.fixture
def readers() -> Iterator[Readers]:
    with Readers() as readers:
        readers.warm()
        yield readers


@pytest.fixture
def noise() -> bytes:
    """A picture in which there is much to look at, and nothing to read."""
    levels = np.random.default_rng(7).integers(0, 256, (1500, 2000), np.uint8)
    out = BytesIO()
    Image.fromarray(levels).save(out, "JPEG", quality=70)
    return out.getvalue()


def sent(client: FlaskClient, key: str, image: bytes) -> Any:
    form = {"station": "tray", "key": key, "image": (BytesIO(image), "photo.jpg")}
    return client.post("/api/scans", data=form)


def test_photos_of_one_do_not_hold_up_another(app: Flask, shop: Shop, noise: bytes) -> None:
    """Of many photos of noise at once a few are read and the others are told to come again; meanwhile another's photo
    waits for no more of them than there are workers, and a text for none.
    """
    helper, owner = (client_of(app, shop, role) for role in (Role.HELPER, Role.OWNER))
    begun = time.perf_counter()
    assert 200 == sent(owner, "alone", noise).status_code
    alone = time.perf_counter() - begun
    refused = threading.Event()

    def flood(number: int) -> Any:
        answer = sent(helper, f"noise-{number}", noise)
        if answer.status_code == 429:
            refused.set()
        return answer

    with ThreadPoolExecutor(MANY) as threads:
        flooding = [threads.submit(flood, number) for number in range(MANY)]
        assert refused.wait(30)
        begun = time.perf_counter()
        assert 200 == owner.post("/api/scans", json={"station": "tray", "key": "t", "text": "lamp"}).status_code
        text = time.perf_counter() - begun
        assert 200 == sent(owner, "photo", photo("D001")).status_code
        waited = time.perf_counter() - begun
        answers = [each.result() for each in flooding]

    statuses = [each.status_code for each in answers]
    assert {200, 429} == set(statuses)
    assert IN_WORK + WAITING <= statuses.count(200)
    assert text < max(1.0, alone)
    assert waited < max(3.0, 6 * alone)
    late = next(each for each in answers if each.status_code == 429)
    assert ("too_many_requests", "10") == (late.json["code"], late.headers["Retry-After"])
    assert 200 == sent(helper, "later", photo("D001")).status_code
