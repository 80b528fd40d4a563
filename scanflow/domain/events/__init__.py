"""What the ledger tells: a closed set of types, each declared once with its kind, its fields and what it moves.

A type is added in the module of its noun. All of them stand here by name: `events.PutAway`.
"""

from scanflow.domain.events.access import *  # noqa: F403
from scanflow.domain.events.counts import *  # noqa: F403
from scanflow.domain.events.kinds import KINDS as KINDS
from scanflow.domain.events.kinds import Event as Event
from scanflow.domain.events.kinds import NamedThing as NamedThing
from scanflow.domain.events.kinds import Noun as Noun
from scanflow.domain.events.kinds import Told as Told
from scanflow.domain.events.kinds import Unknown as Unknown
from scanflow.domain.events.kinds import read as read
from scanflow.domain.events.orders import *  # noqa: F403
from scanflow.domain.events.parcels import *  # noqa: F403
from scanflow.domain.events.picking import *  # noqa: F403
from scanflow.domain.events.returns import *  # noqa: F403
from scanflow.domain.events.shop import *  # noqa: F403
from scanflow.domain.events.stock import *  # noqa: F403
