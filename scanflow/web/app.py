"""The application factory."""

from __future__ import annotations

from flask import Flask

from scanflow.shop import Shop
from scanflow.web import api, pages, problem, visitors

LARGEST_BODY = 32 * 1024 * 1024
"""Bytes; a 48-megapixel photograph fits."""


def create_app(shop: Shop) -> Flask:
    """The service of one shop, as a WSGI application."""
    app = Flask(__name__)
    app.config["MAX_CONTENT_LENGTH"] = LARGEST_BODY
    app.extensions["scanflow"] = shop
    app.json.sort_keys = False  # type: ignore[attr-defined]
    problem.register(app)
    visitors.register(app)
    for blueprint in (*api.BLUEPRINTS, *pages.BLUEPRINTS):
        app.register_blueprint(blueprint)
    return app
