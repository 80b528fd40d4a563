"""Whether the data are what they were: `scanflow verify` reads them, `scanflow health` says what is known."""

from __future__ import annotations

import contextlib
import json
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from scanflow.cli.opening import in_shop, must_exist, open_shop

if TYPE_CHECKING:
    from scanflow.shop import Shop

WHO = "scanflow verify"


@click.command()
@click.option("--brief", is_flag=True, help="Check only what is new since the last time, and what is quick.")
@click.option("--accept", metavar="REASON", default="", help="Go on with what is amiss. The ledger keeps this reason.")
@click.option("--json", "as_json", is_flag=True, help="Report as one JSON document.")
@in_shop
def verify(brief: bool, accept: str, as_json: bool, data: Path | None, database: str | None) -> None:
    """Check all of the shop's data: database, ledger, rows and pictures. Status 1 if anything is amiss.

    The service does this by itself: in brief when it starts, and as a whole each night. If something is amiss, it shows
    its pages and records nothing, until this command finds all well or you accept what is amiss.
    """
    if brief and accept:
        raise click.UsageError("A brief check may miss something. Use --accept without --brief.")
    must_exist(data, database)
    say = (lambda what: None) if as_json else lambda what: click.echo(f"Checking {what}.", err=True)
    with contextlib.closing(open_shop(data, database)) as shop:
        held = shop.database
        last = held.guard.note.last_good if held.guard.note else ""
        known = bool(held.guard.amiss)
        result = held.verify(shop.clock(), whole=not brief, say=say)
        found = list(dict.fromkeys((*held.guard.amiss, *result.findings) if brief else result.findings))
        if found and accept:
            held.accept(shop.clock(), WHO, accept)
        elif known and not found:
            held.clear()
    if as_json:
        told = {"ledger": result.seq, "whole": not brief, "accepted": bool(found and accept)}
        click.echo(json.dumps({**told, "amiss": [each.as_dict() for each in found]}))
    else:
        for each in found:
            click.echo(f"{each.words}\n  {each.advice}")
        if found and last:
            click.echo(last)
        click.echo(_outcome(len(found), result.seq, bool(accept)))
    sys.exit(int(bool(found) and not accept))


def _outcome(found: int, seq: int, accepted: bool) -> str:
    if not found:
        return f"Nothing is amiss, up to entry {seq} of the ledger."
    amiss = "1 thing is" if found == 1 else f"{found} things are"
    return f"{amiss} amiss{', and accepted. A running service records again within a minute' if accepted else ''}."


@click.command()
@click.option("--json", "as_json", is_flag=True, help="Report as one JSON document.")
@in_shop
def health(as_json: bool, data: Path | None, database: str | None) -> None:
    """Say in one look what is amiss. Status 1 if nothing can be recorded."""
    must_exist(data, database)
    with contextlib.closing(open_shop(data, database)) as shop:
        state = _state(shop)
    click.echo(json.dumps(state) if as_json else "\n".join(_lines(state, shop)))
    sys.exit(int(state["status"] != "ok"))


def _state(shop: Shop) -> dict[str, Any]:
    from scanflow.storage.database import trouble_of

    trouble, note = trouble_of(shop.database), shop.database.guard.note
    with shop.looking() as unit:
        ledger = unit.seq
    return {
        "status": trouble.code if trouble else "ok",
        "detail": trouble.detail if trouble else "",
        "database": shop.database.kind,
        "ledger": ledger,
        "verified": note.verified if note else 0,
        "verified_whole": note.whole if note and note.whole else None,
        "backup": note.backup if note and note.backup else None,
        "backup_at": note.backup_at if note and note.backup else None,
        "amiss": [each.as_dict() for each in shop.database.guard.amiss],
    }


def _lines(state: dict[str, Any], shop: Shop) -> list[str]:
    whole = state["verified_whole"]
    last = f"The newest backup is {state['backup']}, of {state['backup_at']}."
    return [
        state["detail"] or "Nothing is amiss: what is scanned is recorded.",
        f"The database is {state['database']}; its ledger has {state['ledger']} entries.",
        f"All data were verified at {whole}."
        if whole
        else f"The data were never verified as a whole. Run {shop.command('verify')}.",
        last if state["backup"] else f"There is no backup yet. Run {shop.command('backup', 'DEST')}.",
    ]
