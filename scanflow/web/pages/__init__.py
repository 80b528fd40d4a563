"""Pages for a person at a phone or a desktop. Each module of these folders is served with the pages it declares."""

from importlib import import_module
from pkgutil import walk_packages

from flask import Flask

from scanflow.web.pages import declare, forms, rendering

for _found in walk_packages(__path__, f"{__name__}."):
    import_module(_found.name)


def register(app: Flask) -> None:
    for blueprint in declare.BLUEPRINTS.values():
        app.register_blueprint(blueprint)
    forms.register(app)
    rendering.register(app)
