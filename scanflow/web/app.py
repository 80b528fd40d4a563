"""The application factory."""

from __future__ import annotations

from flask import Flask

from scanflow.shop import Shop
from scanflow.web import api, packed, pages, problem, visitors
from scanflow.web.addresses import Listening
from scanflow.web.api.changes import Streams
from scanflow.web.certificates import Home

LARGEST_BODY = 32 * 1024 * 1024
"""Bytes; a 48-megapixel photograph fits."""


def create_app(shop: Shop, listening: Listening | None = None, home: Home | None = None) -> Flask:
    """The service of one shop, as a WSGI application. It tells phones where it is `listening` and, where it has a
    certificate of its own authority (`home`), how to trust it.
    """
    app = Flask(__name__)
    app.config["MAX_CONTENT_LENGTH"] = LARGEST_BODY
    app.extensions["scanflow"] = shop
    app.extensions["listening"] = listening or Listening()
    app.extensions["home"] = home
    app.extensions["streams"] = Streams()
    app.json.sort_keys = False  # type: ignore[attr-defined]
    problem.register(app)
    visitors.register(app)
    packed.register(app)
    for blueprint in (*api.BLUEPRINTS, *pages.BLUEPRINTS):
        app.register_blueprint(blueprint)
    return app
