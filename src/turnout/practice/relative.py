"""Places told from the side a sentence is about: 'the attacking half', 'the defending end'.

Each becomes a place of its own for each side that attacks something, and each sentence a row for each of them.
"""

from collections.abc import Iterable, Sequence
from dataclasses import replace

from turnout.practice.model import Phrase, PlaceDef, Practice
from turnout.practice.placing import placed
from turnout.practice.table import Act, Event, How, Passes, Row, Where, While, Who

PIECES = {"half": 2, "third": 3}
GENERAL = ("a side", "a player", "side with the ball", "everyone", "side behind")
Directions = dict[str, tuple[str, str | None]]  # side -> what it attacks and defends
OPPOSITE = ("other side", "side without the ball", "other role")


def directions(practice: Practice) -> Directions:
    """Side -> the places it attacks and defends, from its own sentence; where none says what it defends, what the
    only other side attacks."""
    told = [rule.phrase for rule in practice.rules if rule.phrase.form == "attacks"]
    places = [
        (name_of(phrase["who"], "side"), name_of(phrase["where"], "place"), name_of(phrase.get("also"), "place"))
        for phrase in told
    ]
    found = {side: (place, also) for side, place, also in places if side and place}
    return {
        side: (place, also or next((theirs for other, (theirs, _) in found.items() if other != side), None))
        for side, (place, also) in found.items()
    }


def name_of(value: object, slot: str) -> str:
    """The name in one slot of a phrase; "" where it has none."""
    return str(value.get(slot) or "") if isinstance(value, Phrase) else ""


def every_place(practice: Practice) -> tuple[PlaceDef, ...]:
    """The places under `ground`, then the halves and thirds that sentences tell from a side."""
    words = {piece for rule in practice.rules for piece in told_pieces(rule.text)}
    if not words:
        return practice.ground
    found = dict(placed(practice.ground))
    fresh = [
        piece_of(practice, side, word, found[attacked].x_m, found[attacked].y_m)
        for side, (attacked, _) in directions(practice).items()
        for word in sorted(words)
    ]
    return (*practice.ground, *fresh)


def told_pieces(text: str) -> list[str]:
    """The halves and thirds a sentence names: 'attacking half'."""
    if "ing " not in text and "middle" not in text:
        return []
    return [
        f"{way} {piece}"
        for piece in PIECES
        for way in ("attacking", "middle", "defending")
        if f"the {way} {piece}" in text
    ]


def piece_of(practice: Practice, side: str, word: str, x_m: float, y_m: float) -> PlaceDef:
    """One half or third of the first place for a side that attacks towards (x_m, y_m)."""
    way, piece = word.split()
    pieces = PIECES[piece]
    up = abs(y_m) >= abs(x_m)
    forward = (y_m if up else x_m) >= 0
    index = {"attacking": pieces - 1, "middle": 1, "defending": 0}[way]
    along = "south to north" if up else "west to east"
    return PlaceDef(
        f"{side} {word}", "part", of=practice.ground[0].name, pieces=pieces,
        index=index if forward else pieces - 1 - index, along=along,  # type: ignore[arg-type]
    )  # fmt: skip


def for_sides(practice: Practice, rows: Sequence[Row]) -> list[Row]:
    """The rows with a place in the stead of every relative one: a row for each side where the sentence is about any
    side or everybody."""
    known = directions(practice)
    played = frozenset((group.side, group.role) for group in practice.groups)
    return [told for row in rows for told in (told_for(row, known, played) if any(relatives(row)) else [row])]


def told_for(row: Row, known: Directions, played: frozenset[tuple[str, str]]) -> list[Row]:
    """One row that tells of a relative place, for one side or for each that has the role."""
    if row.do == "attacks" or not known:
        return [row]
    about = row.when.who if row.when and row.when.who else row.who
    named = about.side or row.who.side
    having = [side for side in known if (side, about.role) in played]
    sides = [named] if named in known else having or list(known)
    return [SideRow(side, known, played).row(row) for side in sides]


def relatives(row: Row) -> Iterable[Where]:
    """Every relative place of a row."""
    acts = [row.act, row.after, *(event.act for event in (row.when, row.until, row.event) if event)]
    acts += [row.how.after] if row.how else []
    wheres = [row.where, row.also, *(where for act in acts if act for where in (act.where, act.further))]
    wheres += [part.where for part in (row.when, row.until, row.event, row.while_, row.how, row.passes) if part]
    return [where for where in wheres if where is not None and where.relative is not None]


class SideRow:
    """Puts the places of one side into a row that is told of any side."""

    def __init__(self, side: str, known: Directions, played: frozenset[tuple[str, str]]):
        self.side = side
        self.known = known
        self.played = played
        self.other = next((other for other in known if other != side), side)

    def row(self, row: Row) -> Row:
        """The row as it holds for this side."""
        doer = row.when.who if row.when and row.when.who else None
        changes = row.when is not None or row.every_s is not None
        who = row.who if changes and not (row.when and row.who == row.when.who) else self.who(row.who)
        if row.do in ("at most", "at least"):
            row = replace(row, each=False)
        return replace(
            row, who=who, where=self.where(row.where, row.who), also=self.where(row.also, row.who),
            when=self.event(row.when, doer or row.who), until=self.event(row.until, row.who),
            event=self.event(row.event, row.who), while_=self.moment(row.while_, row), act=self.act(row.act, row.who),
            after=self.act(row.after, row.who), how=self.how(row.how, row.who), passes=self.passes(row.passes, row.who),
        )  # fmt: skip

    def who(self, who: Who) -> Who:
        """Somebody told of in general, of this side."""
        if who.kind in GENERAL:
            return Who("side", side=self.side)
        own = who.kind == "role" and who.side is None and (self.side, who.role) in self.played
        return replace(who, side=self.side) if own else who

    def meant(self, who: Who | None) -> str:
        """The side a place is told from."""
        if who is None or who.side in self.known:
            return who.side if who and who.side else self.side
        return self.other if who.kind in OPPOSITE or who.whose == "other" else self.side

    def where(self, where: Where | None, who: Who | None) -> Where | None:
        """The side's own place in the stead of a relative one."""
        if where is None or where.relative is None:
            return where
        side = self.meant(who)
        attacked, defended = self.known[side]
        ends = {"attacking end": attacked, "defending end": defended or attacked}
        return replace(where, place=ends.get(where.relative, f"{side} {where.relative}"))

    def act(self, act: Act | None, who: Who | None) -> Act | None:
        """An act in the side's own places."""
        if act is None:
            return None
        return replace(act, where=self.where(act.where, who), further=self.where(act.further, who))

    def event(self, event: Event | None, who: Who | None) -> Event | None:
        """An event with the side in the stead of “a side”."""
        if event is None:
            return None
        doer = event.who or who
        told = self.who(event.who) if event.who else None
        return replace(event, who=told, act=self.act(event.act, doer), where=self.where(event.where, doer))

    def moment(self, moment: While | None, row: Row) -> While | None:
        """A condition in the side's own places; “everyone” in a guard is the side that scores."""
        if moment is None:
            return None
        who = self.who(moment.who) if moment.who and row.kind == "guard" else moment.who
        return replace(moment, who=who, where=self.where(moment.where, moment.who or row.who))

    def how(self, how: How | None, who: Who | None) -> How | None:
        """A way to score in the side's own places."""
        return replace(how, where=self.where(how.where, who), after=self.act(how.after, who)) if how else None

    def passes(self, passes: Passes | None, who: Who | None) -> Passes | None:
        """A kind of pass in the side's own places."""
        return replace(passes, where=self.where(passes.where, who)) if passes else None
