"""A new way in for an owner who forgot the password."""

from pathlib import Path

import click

from scanflow.cli.opening import PORT, in_shop, open_shop


@click.command()
@click.option("--host", default="127.0.0.1", show_default=True, help="Address of the service.")
@click.option("--port", default=PORT, show_default=True, type=click.IntRange(1, 65535), help="Its port.")
@click.option("--https", is_flag=True, help="The service speaks HTTPS.")
@in_shop
def password(host: str, port: int, https: bool, data: Path | None, database: str | None) -> None:
    """Print a link that sets a new password for the owner. It works once, within 24 hours.

    The old password works until the link is used; then all browsers are signed out. The service may run meanwhile, or
    be started later.
    """
    from scanflow.domain.access.names import FAMILY
    from scanflow.web.door.addresses import Listening
    from scanflow.workflow import access

    shop = open_shop(data, database)
    try:
        click.echo(Listening(host, port, https).set_up(shop.act(FAMILY, access.setup_link)))
    finally:
        shop.close()
