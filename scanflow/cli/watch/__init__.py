"""`scanflow watch`: a camera of this machine that scans what is held up to it, for a station of a running service.

It is a client, not a second writer: its scans go out by HTTP as those of a page do, so that verdict, ledger and pages
are the service's alone, and the camera may hang at another machine. Each scan has a key and is sent with it until it is
answered; meanwhile nothing else is scanned. The key is not written down: whoever ends the program over a scan that has
no answer is told so, and a card that was accepted unheard is accepted again, with nothing changed.
"""

from __future__ import annotations

import os
import sys
from pathlib import Path
from typing import Any

import click

from scanflow.cli.opening import PORT

FILE = click.Path(exists=True, dir_okay=False, path_type=Path)
STATIONS = click.Choice(["bin", "table", "tray", "shelf"])


@click.command()
@click.option("--station", type=STATIONS, required=True, help="Where the camera hangs.")
@click.option("--round", metavar="ID", help="The round that is walked; goes with the bin.")
@click.option("--bin", metavar="NAME", help="The bin that is looked at; goes with the shelf.")
@click.option("--table", metavar="NAME", help="Which table, where there are several.")
@click.option("--camera", type=click.IntRange(0), help="Number of the camera.  [default: 0]")
@click.option("--video", type=click.Path(exists=True, path_type=Path), help="A film in place of a camera.")
@click.option("--fast", is_flag=True, help="Look at every frame of the film, as fast as they are read.")
@click.option("--url", default=f"http://127.0.0.1:{PORT}", show_default=True, help="Address of the service.")
@click.option("--token-file", type=FILE, help="File with an access token; SCANFLOW_TOKEN where it is not given.")
@click.option("--page", default=8766, show_default=True, type=click.IntRange(0, 65535), help="Port of its page.")
@click.option("--json", "as_json", is_flag=True, help="One JSON document per scan, one a line.")
def watch(**given: Any) -> None:
    """Scan what is held up to a camera. Status 1 if a scan was refused or got no answer.

    `scanflow token NAME` prints the access token. The verdict is printed, with one bell for yes and three for no, and
    shown with the picture on a page of this machine. A service with HTTPS of its own is trusted where the variable
    SSL_CERT_FILE names the certificate of its authority.
    """
    spot = _spot(given)
    if given["video"] and given["camera"] is not None:
        raise click.UsageError("Give a camera or a film, not both.")
    if given["fast"] and not given["video"]:
        raise click.UsageError("--fast goes with --video.")
    if not given["url"].startswith(("http://", "https://")):
        raise click.UsageError("--url is an address like http://127.0.0.1:8765.")
    token = _token(given["token_file"])
    from scanflow.cli.watch import watching
    from scanflow.cli.watch.sending import ServiceClient
    from scanflow.vision.camera.live import Camera

    source = given["video"] or given["camera"] or 0
    with Camera(source, every=given["fast"]) as camera:
        service = ServiceClient(given["url"], token)
        sys.exit(watching.run(service, spot, camera, page=given["page"], as_json=given["as_json"]))


def _spot(given: dict[str, Any]) -> dict[str, str]:
    """The station, and the round, bin or table that belongs to it."""
    fields = {name: given[name] for name in ("round", "bin", "table")}
    belongs = {"bin": "round", "shelf": "bin", "table": "table"}.get(given["station"])
    for name, value in fields.items():
        if value is not None and name != belongs:
            raise click.UsageError(f"--{name} does not go with --station {given['station']}.")
    if belongs in ("round", "bin") and fields[belongs] is None:
        raise click.UsageError(f"--station {given['station']} needs --{belongs}.")
    return {"station": given["station"], **{name: value for name, value in fields.items() if value is not None}}


def _token(file: Path | None) -> str:
    token = (file.read_text(encoding="utf-8") if file else os.environ.get("SCANFLOW_TOKEN", "")).strip()
    if not token or not token.isascii():
        raise click.UsageError(
            "Give an access token by --token-file or SCANFLOW_TOKEN; `scanflow token NAME` makes one."
        )
    return token
