"""The application factory."""

from __future__ import annotations

from collections.abc import Iterable

from flask import Flask

from scanflow.shop import Shop
from scanflow.vision.upright import accepted
from scanflow.web import api, pages, problem
from scanflow.web.api.changes import Streams
from scanflow.web.door import bodies, compression, hosts, request_forms, visitors
from scanflow.web.door.addresses import Listening
from scanflow.web.door.certificates import Home
from scanflow.web.door.hosts import Hosts
from scanflow.web.door.picture_limits import Turns
from scanflow.web.door.request_forms import Received
from scanflow.web.pages import errors


def create_app(
    shop: Shop, listening: Listening | None = None, home: Home | None = None, names: Iterable[str] = ()
) -> Flask:
    """The service of one shop, as a WSGI application. It tells phones where it is `listening` and, where it has a
    certificate of its own authority (`home`), how to trust it. It is called by this machine's names and addresses, as
    far as they can be heard there, and by `names`.
    """
    app = Flask(__name__)
    app.request_class = Received
    app.extensions["scanflow"] = shop
    app.extensions["listening"] = listening = listening or Listening()
    app.extensions["home"] = home
    app.extensions["streams"] = Streams()
    app.extensions["hosts"] = Hosts(lambda: [*names, *listening.names()])
    shop.readers.turn = Turns().turn
    app.jinja_env.globals["picture_types"] = accepted
    app.json.sort_keys = False  # type: ignore[attr-defined]
    problem.register(app, errors.render)
    hosts.register(app)
    request_forms.register(app)
    bodies.register(app)
    visitors.register(app)
    compression.register(app)
    for blueprint in api.BLUEPRINTS:
        app.register_blueprint(blueprint)
    pages.register(app)
    return app
