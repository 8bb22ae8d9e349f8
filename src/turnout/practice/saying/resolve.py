"""What a phrasing leaves open, filled from the practice: who “you” are, where a role belongs."""

from turnout.practice.model import LINES, Group, Phrase, PlaceDef
from turnout.practice.names import Names
from turnout.practice.saying.coach_names import named_place

YOU, YOURS, ALL = "who.YOU", "who.YOURS", "who.ALL"
LIMITS = ("touches", "stay in", "stay out", "may not", "must", "stand still")
# whoever does it first had not, or had, the ball before: saying so says nothing
PLAIN = {
    "who.side without the ball": ("act.win", "act.win and pass", "act.tackle"), "who.side with the ball": ("act.lose",),
}  # fmt: skip


class Open(Exception):
    """A part that the practice does not fill, or fills in more ways than one."""


def resolved(rule: Phrase, names: Names) -> tuple[Phrase, ...]:
    """A rule with nothing left open, or the rules it stands for; raises Open."""
    if rule.form == "FOLLOW":
        return (follow(names),)
    if rule.form == "ROTATE":
        return rotation(names)
    if rule.form == "ALONE":  # who goes through a gate on the own feet: certain only where everybody has a ball
        rule = rule["score"] if len(names.sides) == 1 else Phrase("NOBODY")  # type: ignore[assignment]
    return (plain(rule, names),)


def plain(rule: Phrase, names: Names) -> Phrase:
    """One rule with nothing left open; raises Open."""
    return filled(told(homed(rule, names), names), names)


def told(rule: Phrase, names: Names) -> Phrase:
    """A limit on “you” as one on everyone; until “they have 2 touches”: the player there."""
    slots = []
    for name, value in rule.slots:
        if value in (Phrase(YOU), Phrase(YOURS), Phrase(ALL)) and rule.form in LIMITS:
            value = Phrase("who.everyone") if rule.form != "must" or len(names.sides) == 1 else Phrase("who.a side")
        if name == "until" and isinstance(value, Phrase) and rule.form in ("stay out", "no tackle"):
            value = there(value) if rule.get("where") else value
        slots.append((name, value))
    return Phrase(rule.form, tuple(slots))


def there(event: Phrase) -> Phrase:
    """Touches and holding the ball of “you”, told of the player in the place named."""
    act = event.get("act")
    held = isinstance(act, Phrase) and act.form in ("act.touches", "act.keep for")
    if event.get("who") not in (Phrase(YOU), Phrase(YOURS)) or not isinstance(act, Phrase) or not held:
        return event
    return Phrase("event.act", (("who", Phrase("who.player there")), ("act", act)))


def filled(phrase: Phrase, names: Names) -> Phrase:
    """A tree with its “you” and its crossing of lines filled."""
    if phrase.form in (YOU, YOURS, "who.SOMEONE"):
        return anybody(names)
    if phrase.form.rpartition(".")[2].isupper() and phrase.form != "act.RUN":
        raise Open
    slots = tuple((name, filled(value, names) if isinstance(value, Phrase) else value) for name, value in phrase.slots)
    act, who = phrase.get("act"), phrase.get("who")
    plain = PLAIN.get(who.form, ()) if isinstance(who, Phrase) and phrase.form == "event.act" else ()
    if isinstance(act, Phrase) and act.form in plain:
        return Phrase("event.act", (("who", Phrase("who.a side")), ("act", filled(act, names))))
    to = phrase.get("to")
    if phrase.form == "act.pass to" and isinstance(to, Phrase) and to.form == "who.its role":
        return Phrase("act.pass to", (("to", Phrase("who.role", to.slots)),))  # a pass goes to the own side anyway
    if phrase.form == "passes.from to" and phrase.get("who") == to:
        return Phrase("passes.between", (("who", to),))  # type: ignore[arg-type]
    if phrase.form == "act.RUN":
        return Phrase("act.run through" if is_line(slots, names) else "act.run into", slots)
    return Phrase(phrase.form, slots)


def anybody(names: Names) -> Phrase:
    """Who “you” is in this practice: a pair where many small sides play, a player where there is one side."""
    if len(names.units) == 1:
        return Phrase("who.side", (("side", names.units[0]),))
    return Phrase("who.a player" if len(names.sides) == 1 else "who.a side")


def is_line(slots: tuple[tuple[str, object], ...], names: Names) -> bool:
    """Whether the place is a gate or goal, or a list of them."""
    where = dict(slots).get("where")
    if not isinstance(where, Phrase) or where.form != "place.named":
        return False
    place = place_of(str(where["place"]), names)
    kinds = [place_of(name, names).kind for name in place.members] or [place.kind]
    return all(kind in LINES for kind in kinds)


def place_of(name: str, names: Names) -> PlaceDef:
    """A place of the ground by its name; raises Open."""
    for place in names.ground:
        if place.name == name:
            return place
    raise Open


def homed(rule: Phrase, names: Names) -> Phrase:
    """A rule with the place its players come in to, or move along, as their home tells."""
    where = rule.get("where")
    if not isinstance(where, Phrase) or where.form not in ("place.INNER", "place.EDGE"):
        return rule
    who = rule.get("who")
    homes = set(homes_of(who, names))
    if len(homes) != 1:
        raise Open
    place, on_edge = homes.pop()
    if not place:
        raise Open
    if where.form == "place.EDGE" or not on_edge:
        if not (on_edge and where.form == "place.EDGE"):
            raise Open
        found = Phrase("place.edge", (("place", place),))
    else:
        found = named_place(place)
    return Phrase(rule.form, tuple((name, found if name == "where" else value) for name, value in rule.slots))


def homes_of(who: object, names: Names) -> list[tuple[str, bool]]:
    """Places and whether they are on its edge, of every group a noun phrase names; one that starts outside the first
    place and is told to wait is at the edge of it."""
    if not isinstance(who, Phrase) or who.form not in ("who.role", "who.side"):
        return []
    role, side = who.get("role"), who.get("side")
    groups = [g for g in names.groups if not g.waits and (role in (None, g.role)) and (side in (None, g.side))]
    first = names.places[0] if names.places else ""
    return [home_of(group, first) for group in groups]


def home_of(group: Group, first: str) -> tuple[str, bool]:
    """Place and whether on its edge; no place where it is a stretch of an edge."""
    if group.home.on_edge:
        return ("" if group.home.sides else group.home.place), True
    return (group.home.place, False) if group.home.place == first else (first, True)


def follow(names: Names) -> Phrase:
    """“Follow your pass”: to those on the edge, who come in."""
    edge = {group.role for group in names.groups if group.home.on_edge and group.role}
    if len(edge) != 1:
        raise Open
    to = Phrase("who.role", (("role", edge.pop()),))
    event = Phrase("event.act", (("who", Phrase("who.a side")), ("act", Phrase("act.pass to", (("to", to),)))))
    swap = Phrase("change.exchange", (("who", Phrase("who.passer")), ("with", Phrase("who.receiver"))))
    return Phrase("when", (("event", event), ("then", Phrase("changes.one", (("a", swap),)))))


def rotation(names: Names) -> tuple[Phrase, ...]:
    """“Whoever loses it defends”, of two roles that keep the ball off a third group: each changes over with it."""
    playing = [group for group in names.groups if not group.waits]
    keep = [group for group in playing if sum(other.side == group.side for other in playing) > 1]
    rest = [group for group in playing if group not in keep]
    if len(keep) < 2 or len({group.side for group in keep}) != 1 or len(rest) != 1:
        raise Open
    return tuple(changed_over(group.role, rest[0].side) for group in keep)


def changed_over(role: str, side: str) -> Phrase:
    """When a role loses the ball, it and a side change over."""
    who, other = Phrase("who.role", (("role", role),)), Phrase("who.side", (("side", side),))
    event = Phrase("event.act", (("who", who), ("act", Phrase("act.lose"))))
    change = Phrase("change.over", (("who", who), ("with", other)))
    return Phrase("when", (("event", event), ("then", Phrase("changes.one", (("a", change),)))))
