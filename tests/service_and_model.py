"""The service and the pure model as one: each act is done on both, and what they answer is compared."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Callable, Iterator, Mapping
from typing import Any

import model
from clients import client_of
from memory import Memory

from labels import slot_code
from scanflow.domain.access import Role
from scanflow.domain.life import CardState, Hold, LineState, ParcelState, RoundState
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Bin, Line, Order, Parcel, Round, Scan, Section, Slot, Station, Stay
from scanflow.shop import Shop
from scanflow.storage.ledger import entry_of, first_break
from scanflow.storage.trust.replay import NOW, rows_now
from scanflow.storage.views.lists import ledger_page
from scanflow.web import create_app
from scanflow.workflow import orders, parcels, stock
from scanflow.workflow.orders import receiving
from scanflow.workflow.picking import rounds, scans, undoing
from scanflow.workflow.picking.reading import ScanBase, StationReading
from scanflow.workflow.ports import Settings

GONE = "- -"
"""What the ledger says of a row that is there no more."""

DEFAULTS = {"table": "main", "take_out": False}

Work = Callable[[Memory], Any]


def outcomes(path: str, told: Any) -> Iterator[str]:
    """What a call came to, in a word or some."""
    yield from (str(told[name]) for name in ("code", "verdict", "reason") if told.get(name))
    yield from (name for name in ("replayed", "released") if told.get(name))
    yield from (str(line["hold"]) for line in told.get("lines", ()) if line["hold"])
    if told.get("verdict") == "accepted" and not told["changed"]:
        yield "repeated"
    if path.endswith("/undo") and "state" in told:
        yield "undone"


class ServiceAndModel:
    """Things are named by counting back from the newest, going round by way of one that does not exist."""

    def __init__(self, shop: Shop) -> None:
        self.shop, self.room, self.names = shop, Memory(), model.Names()
        self.client = client_of(create_app(shop), shop, Role.OWNER)
        self.shown: Memory | None = None
        self.calls = 0
        self.seen: Counter[str] = Counter()
        self.readings: dict[str, dict[str, Any]] = {}
        self.answered: list[tuple[str, str, Any, Any]] = []
        self.replayed, self.told = 0, dict[str, str]()
        """The ledger's last entry that was replayed, and what it says by then of each row."""

    # One call on both sides

    def call(self, path: str, body: Any, work: Work, status: int = 200, method: str = "POST") -> Any:
        """Do `work` in the model, send the call to the service, compare; the model's answer, None for a problem."""
        self.calls += 1
        before = self.room
        fork = before.fork()
        try:
            wanted, told = status, work(fork)
        except Exception as error:
            fork, (wanted, told) = before, model.problem(error)
        path, body = "/".join(self.names.theirs(part) for part in path.split("/")), self.names.theirs(body)
        headers = {"Idempotency-Key": f"call-{self.calls}"} if method == "POST" and path != "/api/scans" else {}
        answer = self.client.open(path, method=method, json=body, headers=headers)
        said = answer.get_json()
        if wanted >= 400:
            assert "application/problem+json" == answer.mimetype
            for member in ("type", "title", "status", "detail"):
                said.pop(member)
        elif headers:
            self.answered.append((headers["Idempotency-Key"], path, body, said))
        assert (wanted, told) == (answer.status_code, told), said
        self.names.same(told, said)
        self.room = fork
        self.seen.update(outcomes(path, told))
        return told if wanted < 400 else None

    def get(self, path: str) -> Any:
        answer = self.client.get("/".join(self.names.theirs(part) for part in path.split("/")))
        assert 200 == answer.status_code
        return answer.get_json()

    def pick(self, kind: type, n: int) -> str:
        """The name of the n-th newest thing of a kind, going round by way of one that does not exist."""
        names = [*reversed(self.room.all(kind)), "nobody"]
        return names[n % len(names)]

    def code(self, n: int) -> str:
        codes = [*self.room.all(Slot), "D099"]
        return codes[n % len(codes)]

    # Setting up

    def furnish(self, auto_close: bool, scan_at_bin: bool) -> None:
        for code, count, bulk in (("D", 4, 2), ("LP", 2, 3)):
            self.call(
                "/api/sections",
                {"code": code, "name": code, "slots_per_bin": bulk, "colour": "yellow"},
                lambda unit, code=code, bulk=bulk: self.section(
                    unit,
                    stock.add_section(
                        unit, stock.AddSection(code=code, name=code, slots_per_bin=bulk, colour="yellow")
                    ).code,
                ),
                201,
            )
            self.call(
                f"/api/sections/{code}/slots",
                {"count": count},
                lambda unit, code=code, count=count: {
                    "codes": [slot.code for slot in stock.add_slots(unit, code, stock.AddSlots(count=count))]
                },
                201,
            )
        chosen = Settings(auto_close=auto_close, scan_at_bin=scan_at_bin)
        self.room.set_settings(chosen)
        self.shop.act("owner", lambda unit: unit.set_settings(chosen))

    @staticmethod
    def section(room: Memory, code: str) -> Any:
        known = room.all(Section)[code]
        counts = dict.fromkeys(("free", "taken", "due", "retired"), 0)
        for each in room.find(Slot, section=code):
            counts[model.slot(room, each)["state"]] += 1
        named = {"code": code, "name": known.name, "colour": known.colour, "digits": known.digits}
        return named | {"slots_per_bin": known.slots_per_bin, "slots": counts}

    # Stock

    def put_away(self, section: str, title: str, listing: str) -> None:
        self.store({"title": title, "listing": listing, "section": section})

    def put_away_in_a_slot(self, n: int, title: str) -> None:
        self.store({"title": title, "code": self.code(n)})

    def put_away_by_card(self, n: int, misread: int) -> None:
        self.store({"title": "Crank", "text": self.card(n, misread)})

    def store(self, body: dict[str, Any]) -> None:
        self.call("/api/stays", body, lambda unit: model.stay(unit, stock.put_away(unit, stock.PutAway(**body))), 201)

    def card(self, n: int, misread: int) -> str:
        """A card's text: as printed, as somebody types it, with a wrong check, or no card's text at all."""
        text = slot_code.card_text(self.code(n))
        wrong = text[:-1] + str((int(text[-1]) + 1) % 10)
        return [text, f" {text[:1].lower()}{text[1:-1]} {text[-1:]}", wrong, "4006381333931", ""][misread]

    def change_item(self, n: int, words: dict[str, str]) -> None:
        name = self.pick(Stay, n)

        def work(unit: Memory) -> Any:
            return model.stay(unit, stock.change_item(unit, name, stock.ChangeItem.of(words)))

        self.call(f"/api/stays/{name}", words, work, method="PATCH")

    def withdraw(self, n: int) -> None:
        name = self.pick(Stay, n)
        self.call(
            f"/api/stays/{name}/withdraw",
            {"reason": "cracked"},
            lambda unit: model.stay(unit, stock.withdraw(unit, name, stock.Withdraw(reason="cracked"))),
        )

    def move(self, n: int, to: int) -> None:
        name, code = self.pick(Stay, n), self.code(to)
        work: Work = lambda unit: model.stay(unit, stock.move(unit, name, stock.Move(to=code)))  # noqa: E731
        self.call(f"/api/stays/{name}/move", {"to": code}, work)

    # Orders

    def reference(self, n: int, form: int) -> str:
        stays = [*reversed(self.room.all(Stay).values())]
        if not stays or form == 3:
            return "D099-01X"
        named = stays[n % len(stays)]
        return [slot_code.reference(named.code, named.turn), named.code, slot_code.card_text(named.code)][form]

    def receive(self, number: int, lines: list[tuple[int, int, str, str]], times: tuple[str | None, ...]) -> None:
        told = [{"reference": self.reference(n, form), "title": t, "listing": ident} for n, form, t, ident in lines]
        given = {name: time for name, time in zip(("ordered_at", "ship_by"), times, strict=True) if time is not None}
        body = {"number": str(number), **given}
        incoming = IncomingOrder(**body, lines=tuple(IncomingLine(**each) for each in told))
        known = bool(self.room.find(Order, number=body["number"]))

        def work(unit: Memory) -> Any:
            return model.order(unit, receiving.receive(unit, incoming)[0])

        self.call("/api/orders", {**body, "lines": told}, work, 200 if known else 201)

    def cancel(self, n: int, line: int | None) -> None:
        name = self.pick(Order, n)
        own = [*(each.id for each in self.room.find(Line, order=name)), "nobody"]
        self.cancel_line(name, None if line is None else own[line % len(own)])

    def cancel_line(self, name: str, chosen: str | None) -> None:
        body = {} if chosen is None else {"line": chosen}
        self.call(
            f"/api/orders/{name}/cancel",
            body,
            lambda unit: model.order(unit, orders.cancel(unit, name, orders.Cancel(line=chosen))),
        )

    def settle(self, n: int, stay: int | None) -> None:
        chosen = None if stay is None else self.pick(Stay, stay)
        self.settle_line(self.pick(Line, n), chosen)

    def settle_line(self, name: str, stay: str | None) -> None:
        body = {} if stay is None else {"stay": stay}
        self.call(
            f"/api/lines/{name}/settle",
            body,
            lambda unit: model.line(unit, orders.settle(unit, name, orders.Settle(stay=stay))),
        )

    def say_of_a_line(self, n: int, what: str) -> None:
        self.say(self.pick(Line, n), what)

    def say(self, name: str, what: str) -> None:
        said = {"short": orders.Short(note="gone"), "hold": orders.NotThis(why="other colour")}.get(what)
        act = getattr(orders, what)
        body, more = (said.sent(), (said,)) if said is not None else ({}, ())
        self.call(f"/api/lines/{name}/{what}", body, lambda unit: model.line(unit, act(unit, name, *more)))

    def doubt(self, n: int) -> None:
        """“Not this thing”, said of a line on a round; its card is scanned all the same."""
        lines = [line for line in self.room.all(Line).values() if line.state is LineState.WAITING and line.round]
        if lines:
            line = lines[n % len(lines)]
            self.say(line.id, "hold")
            self.read({"station": "bin", "round": line.round, "text": self.text_of(line)})

    # Rounds and parcels

    def open_round(self, which: list[int] | None) -> None:
        self.walk(None if which is None else [self.pick(Order, n) for n in which])

    def walk(self, wanted: list[str] | None) -> None:
        body = {} if wanted is None else {"orders": wanted}
        work: Work = lambda unit: model.round_(unit, *rounds.open_round(unit, rounds.OpenRound(orders=wanted)))  # noqa: E731
        self.call("/api/rounds", body, work, 201)

    def close_round(self, n: int) -> None:
        name = self.pick(Round, n)
        self.call(f"/api/rounds/{name}/close", {}, lambda unit: model.round_(unit, rounds.close_round(unit, name)))

    def open_parcel(self, which: list[int], table: str) -> None:
        self.open_for([self.pick(Order, n) for n in which], table)

    def open_for(self, wanted: list[str], table: str) -> None:
        body = {"orders": wanted, "table": table}
        said = parcels.OpenParcel(orders=wanted, table=table)
        self.call("/api/parcels", body, lambda unit: model.parcel(unit, parcels.open_parcel(unit, said)), 201)

    def close_parcel(self, n: int, partial: bool) -> None:
        name = self.pick(Parcel, n)

        def work(unit: Memory) -> Any:
            parcels.close_parcel(unit, name, partial=partial)
            return model.parcel(unit, unit.all(Parcel)[name])

        self.call(f"/api/parcels/{name}/close", {"partial": partial}, work)

    def set_aside(self, n: int) -> None:
        name = self.pick(Parcel, n)
        self.call(f"/api/parcels/{name}/set-aside", {}, lambda unit: model.parcel(unit, parcels.set_aside(unit, name)))

    def reopen(self, n: int) -> None:
        name = self.pick(Parcel, n)
        self.call(f"/api/parcels/{name}/reopen", {}, lambda unit: model.parcel(unit, parcels.reopen(unit, name)))

    # Scans

    def scan(
        self, station: Station, n: int, misread: int, where: int, more: dict[str, str], take_out: bool, table: str
    ) -> None:
        body = {"station": station.value, "text": self.card(n, misread), **more}
        bins = [slot.bin for slot in self.room.all(Slot).values()]
        match station:
            case Station.BIN:
                body |= {"round": self.pick(Round, where)}
            case Station.TABLE:
                body |= {"table": table, "take_out": take_out}
            case Station.SHELF:
                slot = self.room.get(Slot, self.code(n))
                body |= {"bin": slot.bin if slot and where % 2 else [*bins, "Z-9-9"][n % (len(bins) + 1)]}
        self.read(body)

    def show_at_shelf(self, n: int, right: bool) -> None:
        """A thing that is in stock is seen in its own bin, or in another."""
        stays = [stay for stay in self.room.all(Stay).values() if stay.open]
        if stays:
            code = stays[n % len(stays)].code
            own = self.room.all(Slot)[code].bin
            others = [bin_ for bin_ in self.room.all(Bin) if bin_ != own]
            spot = own if right else others[n % len(others)]
            self.read({"station": "shelf", "text": slot_code.card_text(code), "bin": spot})

    def scan_a_slip(self, n: int, table: str, station: Station) -> None:
        slips = [slot_code.slip_text(order.slip) for order in reversed(self.room.all(Order).values())]
        text = [*slips, slot_code.slip_text(999)][n % (len(slips) + 1)]
        self.read({"station": station.value, "table": table, "text": text})

    def read(self, body: dict[str, Any]) -> None:
        key = f"key-{len(self.readings)}"
        self.readings[key] = body
        self.send(key, body)

    def send(self, key: str, body: dict[str, Any]) -> Any:
        fields = DEFAULTS | body
        said = ScanBase(key=key, **{name: value for name, value in fields.items() if name != "text"})
        reading = StationReading(said, (fields["text"],), json.dumps(fields, sort_keys=True))
        return self.call("/api/scans", {"key": key, **body}, lambda unit: scans.scan(unit, reading))

    def repeat_a_scan(self, n: int, spelled: bool) -> None:
        """The same key and body again, also with the defaults spelled out."""
        keys = [*reversed(self.readings)]
        if keys:
            key = keys[n % len(keys)]
            body = self.readings[key]
            self.send(key, DEFAULTS | body if spelled else body)

    def reuse_a_key(self, n: int) -> None:
        """The same key with another body."""
        keys = [*reversed(self.room.all(Scan))]
        if keys:
            key = keys[n % len(keys)]
            self.send(key, {**self.readings[key], "text": "D0990"})

    def beep_again(self) -> None:
        """The last reading under a new key."""
        if self.readings:
            self.read([*self.readings.values()][-1])

    def undo(self, n: int) -> None:
        key = self.pick(Scan, n)
        self.call(f"/api/scans/{key}/undo", {}, lambda unit: model.line(unit, undoing.undo(unit, key)))

    # Repeats of other calls

    def repeat_a_call(self, n: int, other: bool) -> None:
        """The same Idempotency-Key again: with the same call its answer, marked, and with another a problem."""
        if not self.answered:
            return
        self.calls += 1
        key, path, body, said = self.answered[-1 - n % len(self.answered)]
        sent = {**body, "title": "Other"} if other else body
        answer = self.client.post(path, json=sent, headers={"Idempotency-Key": key})
        if other:
            told = answer.get_json()["code"]
            assert (422, True) == (answer.status_code, told in ("key_reused", "unknown_field"))
        else:
            assert (said, "true") == (answer.get_json(), answer.headers.get("Answer-Stored"))

    # The next sensible thing, so that runs get far

    def go_on(self, n: int) -> None:
        """What a person would do next for some line that is wanted."""
        lines = [line for line in self.room.all(Line).values() if line.live]
        if lines:
            self.go_on_with(lines[n % len(lines)], n)
        else:
            self.tidy(n)

    def go_on_with(self, line: Line, n: int) -> None:
        held = line.hold is not None
        match line.state:
            case LineState.PACKED:
                self.go_on_packed(line, n)
            case _ if held and n % 3:
                self.settle_line(line.id, None)
            case LineState.SHORT:
                self.say(line.id, "found")
            case LineState.WAITING:
                self.go_on_waiting(line)
            case LineState.PICKED:
                self.go_on_picked(line)

    def go_on_waiting(self, line: Line) -> None:
        on = self.room.get(Round, line.round) if line.round else None
        others = [other for other in self.room.find(Line, order=line.order) if other.state is LineState.UNBOUND]
        if on is not None and on.state is RoundState.OPEN:
            self.read({"station": "bin", "round": on.id, "text": self.text_of(line)})
        elif others:
            self.cancel_line(line.order, others[0].id)
        else:
            self.walk(None)

    def go_on_picked(self, line: Line) -> None:
        opened = parcels.open_parcel_at(self.room, "main")
        if opened is None:
            order = self.room.all(Order)[line.order]
            before = self.room.get(Parcel, order.parcel) if order.parcel else None
            self.open_for(list(before.orders) if before else [line.order], "main")
        elif line.order in opened.orders:
            self.read({"station": "table", "text": self.text_of(line)})
        else:
            self.call(
                f"/api/parcels/{opened.id}/set-aside",
                {},
                lambda unit: model.parcel(unit, parcels.set_aside(unit, opened.id)),
            )

    def go_on_packed(self, line: Line, n: int) -> None:
        box = self.room.all(Parcel)[line.parcel or ""]
        if box.state is ParcelState.ASIDE:
            self.open_for(list(box.orders), "side")
        elif line.hold is Hold.CANCELLED_IN_BOX:
            self.read({"station": "table", "table": box.table, "take_out": True, "text": self.text_of(line)})
        elif line.hold is not None:
            self.settle_line(line.id, None)
        else:
            place = [*reversed(self.room.all(Parcel))].index(box.id)
            self.close_parcel(n=place, partial=n % 3 > 0)

    def text_of(self, line: Line) -> str:
        return slot_code.card_text(self.room.all(Stay)[line.stay or ""].code)

    def tidy(self, n: int) -> None:
        """A card that is due comes back to the tray."""
        due = [slot.code for slot in self.room.all(Slot).values() if slot.card is CardState.DUE]
        if due:
            self.read({"station": "tray", "text": slot_code.card_text(due[n % len(due)])})

    # What both hold

    def lists_agree(self) -> None:
        """Slots and orders are shown alike, and the newest rounds and parcels."""
        room = self.room
        if room is self.shown:
            return
        self.shown = room
        slots = sorted(room.all(Slot).values(), key=lambda slot: (slot.section, slot.number))
        wanted = {"slots": [model.slot(room, each) for each in slots], "next": None}
        self.names.same(wanted, self.get("/api/slots?limit=500"), "/slots")
        known = [model.order(room, each) for each in room.all(Order).values()]
        self.names.same({"orders": known, "next": None}, self.get("/api/orders?limit=500"), "/orders")
        for each in list(room.all(Parcel).values())[-1:]:
            self.names.same(model.parcel(room, each), self.get(f"/api/parcels/{each.id}"), "/parcel")
        for each in list(room.all(Round).values())[-1:]:
            self.names.same(model.round_(room, each), self.get(f"/api/rounds/{each.id}"), "/round")

    def rows_stand_as_told(self) -> None:
        """Replayed from its first entry on, the ledger says of each row how it stands, and of no other."""
        with self.shop.looking() as unit:
            for entry in ledger_page(unit.connection, self.replayed, 100_000):
                self.told.update(map(_row, json.loads(entry.data).get(NOW, ())))
                self.replayed = entry.seq
            stand = dict(map(_row, rows_now(unit.connection)))
        assert stand == {name: said for name, said in self.told.items() if said != GONE}

    def all_agrees(self) -> None:
        """At the end every field of every thing is the same, and so is the account; a verification finds nothing."""
        with self.shop.looking() as unit:
            ours = model.everything(lambda kind: list(self.room.all(kind).values()))
            self.names.same(ours, model.everything(unit.find))
            entries = [entry_of(row) for row in ledger_page(unit.connection, 0, 100_000)]
        told = [[entry["kind"], _without_rows(entry["data"])] for entry in entries if entry["kind"] != "token made"]
        self.names.same([[event.kind, event.data()] for event in self.room.ledger], told, "/ledger")
        assert None is first_break(entries)
        assert [] == self.shop.database.verify(self.shop.clock(), whole=True).findings


def _row(now: str) -> tuple[str, str]:
    """Table and name of a row, and its state with the digest of all its columns."""
    name, state, digest = now.rsplit(" ", 2)
    return name, f"{state} {digest}"


def _without_rows(data: Mapping[str, Any]) -> dict[str, Any]:
    """An entry's data without what rows became by it, of which the model knows nothing."""
    return {name: value for name, value in data.items() if name != NOW}
