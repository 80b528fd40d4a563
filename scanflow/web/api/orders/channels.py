"""Channels: where orders come from, and what their files' statuses mean."""

from __future__ import annotations

from flask import Blueprint, Response

from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import channels as channel_views
from scanflow.storage.views.channels import ChannelRow
from scanflow.web.api import given, paging
from scanflow.web.api.contract import MANAGERS, STAFF, answer_view, call, do
from scanflow.web.once import CallReply
from scanflow.workflow.orders import channels

blueprint = Blueprint("api_channels", __name__)


@call(blueprint, "GET", "/api/channels", STAFF, {200: given.ChannelPage})
def index(query: paging.PageQuery) -> Response:
    """Lists the channels by name."""

    def work(unit: SqlUnit) -> given.ChannelPage:
        (start,) = query.after((0,))
        rows = channel_views.channel_rows(unit.connection)
        places = {row.name: place for place, row in enumerate(rows, 1)}
        page, following = query.cut(rows[start : start + query.limit + 1], lambda row: (places[row.name],))
        return {"channels": [_given(row) for row in page], "next": following}

    return answer_view(work)


@call(blueprint, "POST", "/api/channels", MANAGERS, {200: given.ChannelSaid, 201: given.ChannelSaid})
def say(said: channels.SayChannel) -> Response:
    """Says what a channel's statuses mean, and whether its file is complete: 201 for a new one."""

    def work(unit: SqlUnit) -> CallReply:
        channel, new = channels.say(unit, said)
        body: given.ChannelSaid = {
            "name": channel.name,
            "statuses": dict(channel.statuses),
            "complete": channel.complete,
        }
        return CallReply(201, body, "/api/channels") if new else CallReply(200, body)

    return do(work)


def _given(row: ChannelRow) -> given.ChannelSaid:
    return {"name": row.name, "statuses": dict(row.statuses), "complete": row.complete}
