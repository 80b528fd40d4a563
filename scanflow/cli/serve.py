"""Run the service, in plain or with HTTPS before it."""

import contextlib
import logging
import os
import signal
import socket
import sys
from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any, TypeVar

import click

from scanflow.cli.opening import PORT, data_folder, in_shop, open_shop

if TYPE_CHECKING:
    from flask import Flask

    from scanflow.shop import Shop
    from scanflow.web.door.certificates import Home, OwnCertificate

THREADS = 8
"""For all calls but the streams, which have as many besides as there may be."""

UNSAFE = (
    "Without HTTPS everybody in the network of {host} can read the password. Add --https. "
    "If you trust that network, add --insecure instead."
)

T = TypeVar("T")
PEM = click.Path(exists=True, dir_okay=False, path_type=Path)


@click.command()
@click.option("--host", help="Address to listen at; 0.0.0.0 for the network.  [default: 127.0.0.1; with HTTPS 0.0.0.0]")
@click.option("--port", default=PORT, show_default=True, type=click.IntRange(0, 65535), help="Port to listen at.")
@click.option(
    "--https", is_flag=True, help="Let phones in the home network in by HTTPS, with a certificate that is made here."
)
@click.option("--cert", type=PEM, help="Speak HTTPS with a certificate of your own: PEM, with its chain.")
@click.option("--key", type=PEM, help="The key of --cert, if it is in another file.")
@click.option(
    "--insecure", is_flag=True, help="Let the network in without HTTPS: everybody there can read the password."
)
@click.option("--name", "names", multiple=True, help="A further name of the service, besides this machine's own.")
@in_shop
def serve(
    host: str | None,
    port: int,
    https: bool,
    cert: Path | None,
    key: Path | None,
    insecure: bool,
    names: tuple[str, ...],
    data: Path | None,
    database: str | None,
) -> None:
    """Run the service. The first start prints a one-time link that sets the owner's password."""
    from scanflow.storage.engine import make_private
    from scanflow.web.door import addresses, certificates

    if key and not cert:
        raise click.UsageError("--key goes with --cert.")
    host = host or ("0.0.0.0" if https or cert else "127.0.0.1")
    if not (https or cert or insecure or addresses.is_loopback(f"[{host}]")):
        raise click.UsageError(UNSAFE.format(host=host))
    logging.basicConfig(level=logging.WARNING, format="%(levelname)s %(name)s: %(message)s")
    logging.getLogger("waitress.queue").setLevel(logging.ERROR)  # it warns of every call that waits for a thread
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(0))
    os.umask(0o077)  # what the service writes is for its own account
    with contextlib.closing(open_shop(data, database, brief=True)) as shop:
        if (trouble := shop.database.probe()) is not None:
            raise trouble
        if caution := shop.database.caution():
            click.echo(caution, err=True)
        identity: Home | OwnCertificate | None = None
        if cert:
            identity = certificates.OwnCertificate(cert, key)
        elif https:
            folder = data_folder(data)
            make_private(folder)
            identity = certificates.Home(folder / "https", lambda: [*addresses.own_names(), *names])
        _run(shop, host, port, identity, names)


def _run(shop: "Shop", host: str, port: int, identity: "Home | OwnCertificate | None", names: tuple[str, ...]) -> None:
    """Until Ctrl+C or SIGTERM. `identity` is what HTTPS shows, None for none; `names` what it is called besides."""
    from scanflow.house import JOBS, House
    from scanflow.web import create_app
    from scanflow.web.door.addresses import Listening
    from scanflow.web.door.certificates import Home, OwnCertificate

    with listening_at(host, port) as listener:
        listening = Listening(host, listener.getsockname()[1], https=identity is not None)
        if isinstance(identity, OwnCertificate):
            names = (*names, *identity.names())
        app = create_app(shop, listening, identity if isinstance(identity, Home) else None, names)
        with _server(shop, app, listener, identity) as server:
            _tell(shop, listening, trust=isinstance(identity, Home))
            for number in (signal.SIGINT, signal.SIGTERM):
                signal.signal(number, lambda *_: _end(shop))
            refused = app.extensions["refused"]
            with contextlib.closing(House(shop, (*JOBS, refused.job()))) as house:
                house.start()
                try:
                    server.run()
                finally:
                    refused.tell(shop)


def _end(shop: "Shop") -> None:
    """Streams end first: the server waits for the threads that they hold."""
    shop.database.changes.close()
    sys.exit(0)


@contextlib.contextmanager
def listening_at(host: str, port: int, option: str = "--port") -> Iterator[socket.socket]:
    """A socket that listens there; an error in one line, which names the option, where it can't."""
    family = socket.AF_INET6 if ":" in host else socket.AF_INET
    try:
        listener = socket.create_server((host, port), family=family, backlog=1024)
    except OSError as error:
        why = str(error.strerror).partition(" (while")[0]
        raise click.ClickException(f"Can't listen at {host}:{port}: {why}. Try another {option}.") from error
    with contextlib.closing(listener):
        yield listener


@contextlib.contextmanager
def _server(
    shop: "Shop", app: "Flask", listener: socket.socket, identity: "Home | OwnCertificate | None"
) -> Iterator[Any]:
    """The server, ready to run behind the front, which takes the connections."""
    from scanflow.web.api.changes import MOST
    from scanflow.web.door import bodies
    from scanflow.web.door.connections import Callers, Front, inner_doors
    from scanflow.web.door.server import Doors, create_server

    callers: Callers = {}
    sockets = inner_doors()
    inner = {door: each.getsockname() for door, each in sockets.items()}
    ports = {door: port for door, (_, port) in inner.items()}
    doors = Doors(app, ports, callers, app.extensions["hosts"].known, partial(bodies.worth_reading, app))
    with contextlib.closing(create_server(doors, list(sockets.values()), THREADS + MOST)) as server:
        context = (lambda: _told(lambda: identity.context(shop.clock()))) if identity is not None else None
        with contextlib.closing(Front(listener, inner, context, callers)):
            yield server


def _told(work: Callable[[], T]) -> T:
    """What a certificate gives; an error in one line where it is none."""
    from scanflow.web.door.certificates import BadCertificate

    try:
        return work()
    except BadCertificate as error:
        raise click.ClickException(str(error)) from error


def _tell(shop: "Shop", listening: Any, *, trust: bool) -> None:
    """Where it is, for this machine and for others; and the first link, for somebody at this machine."""
    from scanflow.domain.access.names import FAMILY
    from scanflow.storage.database import trouble_of
    from scanflow.web.door.addresses import EXPOSED
    from scanflow.workflow import access

    click.echo(f"Serving at {listening.here()}, stop with Ctrl+C.")
    if listening.exposed:
        click.echo(EXPOSED)
    for url in listening.urls():
        click.echo(f"For phones and others in the network: {url}")
        if trust:
            click.echo(f"  which trust it by way of {url.replace('https', 'http', 1)}/trust")
    with shop.looking() as unit:
        known = unit.access.has_password()
    trouble = trouble_of(shop.database)
    if trouble is not None:
        click.echo(f"Pages can be seen. {trouble.detail}")
    elif not known:
        click.echo(f"Set the owner's password here, once: {listening.set_up(shop.act(FAMILY, access.setup_link))}")
    _tell_backups(shop)
    sys.stdout.flush()


def _tell_backups(shop: "Shop") -> None:
    from scanflow.web.backup_words import where_to

    with shop.looking() as unit:
        click.echo(where_to(unit.settings.backups, shop.keeper.own))
