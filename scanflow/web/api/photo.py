"""How a picture is asked for."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from scanflow.workflow.fields import Command, Maybe, OneOf, like


class PhotoQuery(Command):
    size: Annotated[str, OneOf(("whole", "small"))] = Field(default="whole", description="At most 1600 or 320 pixels.")
    hash: Maybe[Annotated[str, like("^[0-9a-f]{64}$")]] = Field(
        default=None, description="Of the picture expected: if it is that one, it may be kept for ever."
    )
