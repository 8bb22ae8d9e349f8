"""What a practice may say and play cannot do yet: one list, which shrinks to nothing as play gains them.

An entry is a kind of row (or of ground or people) and what it must do in play. `unplayed` looks a practice up in it
before anything is compiled, so that no sentence is silently ignored. Whoever teaches play one of these takes its entry
out; the tests then hold play to it.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from turnout.practice.clash_parts import acts, events, whos
from turnout.practice.model import Practice
from turnout.practice.table import Event, Row
from turnout.problems import TurnoutError

# what play does, by the name it has in practice.table
PLAYED: dict[str, frozenset[str]] = {
    "do": frozenset({
        "score", "only passes count", "touches", "stay in", "stay out", "no tackle", "move along", "stand still",
        "no repeat", "plays for", "attacks", "exchange", "change over", "comes in", "goes out", "rotate", "starts",
        "ball in", "add points", "passes count", "score counts", "score after", "score how", "score when",
    }),
    "act": frozenset({
        "passes in a row", "passes", "pass to", "pass into", "pass through", "receive in", "run into", "win",
        "win and pass", "lose", "score", "shoot", "touches", "enter", "start", "tackle",
        "pass over", "pass back", "one-two", "concede", "leave",
        "run through", "stop in", "move from to", "keep for", "head",
    }),
    "who": frozenset({
        "a side", "side with the ball", "side without the ball", "other side", "side", "role", "its role", "everyone",
        "nobody", "passer", "receiver", "winner", "loser", "scorer", "last to touch", "nearest", "farthest",
        "next group", "side behind", "a player", "player there", "other role", "some", "longest waiting", "their side",
    }),
    "event": frozenset({
        "act", "ball out", "ball enters", "ball leaves", "seconds pass", "seconds without", "coach calls",
    }),
    "while": frozenset({"has the ball", "ball in", "behind", "in place"}),
    "passes": frozenset({"between", "to", "from to", "into", "through", "over", "back"}),
}  # fmt: skip

# kind of row, named as in practice.table -> what it must do in play
MISSING: dict[str, str] = {
    # do
    "do: at most": "no further one of `who` steps into `where` while `value` are there; each: of each side",
    "do: at least": "none of `who` steps out of `where` while only `value` are there; each: of each side",
    "do: must": "the ball is the other side's unless `who` do `act` within_s of `after` (None: of each start)",
    "do: may not": "`who` avoid `act`; done all the same it counts nothing and the other side starts there",
    "do: only may": "everybody but `who` avoids `act`; done all the same it costs as “may not” does",
    "do: no passes": "such passes are not chosen; played all the same the other side starts where it was played",
    "do: may come in": "the home of `who` is no fence towards `where` while or until it holds; then they go home",
    "do: may enter": "from the event to the next start `who` may be in `where`, whatever kept them out",
    "do: now attacks": "from the event on the side attacks `where`: its aim, its goals and its relative places turn",
    "do: change ends": "the sides swap what they attack and defend, every Where with `relative` too",
    "do: goes back": "`who` takes again the role it had when the turn began",
    "do: joins": "`who` takes the role of `target`; skipped alone when a role would leave its range",
    "do: first pass": "at a start one of `who` passes in to one of `target`; the start is in play when it is received",
    "do: new ball": "the old ball is gone; one of `who` passes a new one in at once, from `where`, nobody set",
    "do: keeps the ball": "play goes on where the ball is, in the possession of `who`",
    "do: turn lasts": "a turn ends `value` seconds after it began: everybody home, the next group plays",
    "do: turn points": "a turn ends when a side has `value` points in it: everybody home, the next group plays",
    "do: turn ends": "the turn ends at the event: everybody home, the next group plays",
    "do: free pass": "nobody tackles or cuts out the ball before the first pass of a start is received",
    "do: everyone set": "a restart waits until all are within two metres of where they belong",
    "do: offside": "a pass to a team-mate in an offside position is not chosen; played, the other side starts there",
    "do: no heading": "nobody plays the ball above the chest; done all the same the other side starts there",
    "do: on the ground": "no pass leaves the ground by more than half a metre",
    # value of a restart
    "ball in: throw-in": "the ball comes in from the hands at the line, from above, and cannot score",
    # acts, wherever they stand: scoring, a When, an until, a guard, a duty
    # who
    # where
    "limit where: edge": "a limit on the line round `where`, not on its inside (played: “move only along the edge”)",
    # events
    "event: turn starts": "a turn begins",
    "event: turn ends": "a turn is over",
    # conditions
    # kinds of pass, in “only … count”
    # clauses
    "starts: player": "the one player named starts, not the side's nearest",
    # ground and people
    "ground: polygon": "a place with corners: inside, edge, nearest point, and the ball out over its sides",
    "people: sides": "edge players share out the named sides of their place only",
    "people: at a point": "they stand at a point, within a metre of it",
    "people: two homes": "home with the ball, `without` while the other side has it",
    "people: waiting for a role": "the next group fills the groups of `feeds`, longest waiting first",
    "balls: several": "`balls_at_once` balls in play for everybody together",
}
SINGLE = ("passer", "receiver", "winner", "loser", "scorer", "last to touch", "nearest", "farthest", "next group")


@dataclass(frozen=True)
class Unplayed:
    """Something a practice says and play cannot do yet: its kind, and the sentence or line."""

    kind: str
    said: str


def check_played(practice: Practice, rows: tuple[Row, ...]) -> None:
    """Raise TurnoutError for the first thing a practice says that play cannot do yet, naming its sentence."""
    first = next(unplayed(practice, rows), None)
    if first is not None:
        what = MISSING[first.kind]
        raise TurnoutError(f"“{first.said}” can be read and printed, and not played yet ({first.kind}: {what}).")


def unplayed(practice: Practice, rows: tuple[Row, ...]) -> Iterator[Unplayed]:
    """Everything in a practice that is on the list."""
    for row in rows:
        yield from (Unplayed(kind, row.source.text) for kind in kinds_of(row) if kind in MISSING)
    yield from (Unplayed("ground: polygon", place.name) for place in practice.ground if place.kind == "polygon")
    for group in practice.groups:
        homes = {
            "people: sides": group.home.sides, "people: at a point": group.home.at is not None,
            "people: two homes": group.without, "people: waiting for a role": group.feeds,
        }  # fmt: skip
        yield from (Unplayed(kind, group.key) for kind, there in homes.items() if there and kind in MISSING)
    if practice.balls_in_play == "several" and "balls: several" in MISSING:
        yield Unplayed("balls: several", f"balls in play: {practice.balls_at_once}")


def kinds_of(row: Row) -> Iterator[str]:
    """Every kind of thing in a row, named as on the list."""
    yield f"do: {row.do}"
    yield from (f"act: {act.kind}" for act in acts(row))
    yield from (f"who: {who.kind}" for who in whos(row))
    yield from (f"event: {event.kind}" for event in events(row))
    yield from (f"act where: {act.where.how}" for act in acts(row) if act.where is not None)
    if row.while_ is not None:
        yield f"while: {row.while_.kind}"
    if row.passes is not None:
        yield f"passes: {row.passes.kind}"
    if row.until is not None:
        yield until_kind(row.until)
    yield from details(row)


def details(row: Row) -> Iterator[str]:
    """What a row asks for beyond its kind."""
    if row.do == "ball in":
        yield f"ball in: {row.value}"
    if row.do == "starts" and row.who.kind in SINGLE:
        yield "starts: player"
    if row.where is not None:
        yield f"where: {row.where.how}"
        if row.kind == "limit" and row.do != "move along":
            yield f"limit where: {row.where.how}"


def until_kind(until: Event) -> str:
    """The kind of an until, named as on the list."""
    if until.kind == "act":
        return "until: touches" if until.act and until.act.kind == "touches" else "until: act"
    known = ("ball enters", "seconds pass", "ball leaves", "ball out")
    return f"until: {until.kind}" if until.kind in known else "until: other"
