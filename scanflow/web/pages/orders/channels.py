"""Channels: where orders come from, what their statuses mean, and whether a file lists all open orders."""

from __future__ import annotations

from flask import Blueprint, request
from flask.typing import ResponseReturnValue

from scanflow.domain.words import STATUSES
from scanflow.storage.views import channels as channel_views
from scanflow.web.pages.declare import Group, MenuEntry, page
from scanflow.web.pages.forms import sent
from scanflow.web.pages.rendering import do, render
from scanflow.web.pages.room_view import ask
from scanflow.workflow.orders import channels
from scanflow.workflow.orders.channels import SayChannel

blueprint = Blueprint("channel_page", __name__)
STATUS = "status "
"""How the names of fields begin that say what a status means."""


@page(blueprint, "GET", "/channels", menu=MenuEntry(Group.SHOP, 3, "Channels"))
def index(said: str = "", status: int = 200) -> ResponseReturnValue:
    rows = ask(channel_views.channel_rows)
    unclaimed = ask(channel_views.without_channel)
    return render("orders/channels.html", rows=rows, unclaimed=unclaimed, said=said, meanings=STATUSES), status


@page(blueprint, "POST", "/channels")
def save() -> ResponseReturnValue:
    """One channel as its form says it."""
    fields = request.form.items()
    statuses = {field.removeprefix(STATUS): meant for field, meant in fields if field.startswith(STATUS)}
    said = {"name": request.form.get("name", ""), "complete": "complete" in request.form, "statuses": statuses}
    return do(index, lambda unit: channels.say(unit, SayChannel.of(said)))


@page(blueprint, "POST", "/channels/claim")
def claim() -> ResponseReturnValue:
    """Orders that name no channel are of this one."""
    return do(index, lambda unit: channels.claim(unit, sent(channels.Claim).name))
