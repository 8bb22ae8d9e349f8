"""What a phrasing means, built from what its slots hold: trees of the language, nothing else."""

from collections.abc import Iterator, Mapping
from functools import cache

from turnout.practice.forms import BY_ID
from turnout.practice.model import Phrase
from turnout.practice.saying.patterns import Made
from turnout.practice.templates import parts, slots

Value = Phrase | int | str | tuple["Value", ...]  # type: ignore[misc]
# whom “you”, “he” or “they” mean in what follows what somebody did
DOER = {
    "act.lose": "who.loser", "act.win": "who.winner", "act.win and pass": "who.winner", "act.score": "who.scorer",
    "act.pass to": "who.passer", "act.pass into": "who.passer", "act.pass through": "who.passer",
}  # fmt: skip
# whom “them” and “him” mean there
MET = {"act.pass to": "who.receiver", "act.lose": "who.winner", "act.win": "who.loser", "act.win and pass": "who.loser"}
TOLD = ("who.a side", "who.side", "who.role", "who.side behind", "who.YOU", "who.YOURS")  # who can do what follows
PERSON, SIDE, THEY, THEM = "who.PERSON", "who.DOERS", "who.THEY", "who.THEM"


def built(meaning: tuple[Made, ...], gaps: Mapping[str, Value]) -> Iterator[Value]:
    """The value of a meaning; nothing where it cannot be built."""
    values = [value_of(made, gaps) for made in meaning]
    if any(value is None for value in values):
        return
    yield values[0] if len(values) == 1 else tuple(flat(values))  # type: ignore[misc]


def flat(values: list[Value | None]) -> Iterator[Value]:
    """Several rules as one row of rules."""
    for value in values:
        if isinstance(value, tuple):
            yield from value
        elif value is not None:
            yield value


def value_of(made: Made, gaps: Mapping[str, Value]) -> Value | None:
    """The value of one expression; None where a slot that is needed holds nothing."""
    if made.number is not None:
        return made.number
    if made.gap:
        return gaps[made.gap] if made.gap in gaps else value_of(made.missing, gaps) if made.missing else None
    filled = {name: inner.form if name == "form" else value_of(inner, gaps) for name, inner in made.slots}
    if made.form in JOINED:
        return JOINED[made.form](filled)
    return phrase_of(made.form, {name: value for name, value in filled.items() if value is not None})


def phrase_of(form: str, filled: Mapping[str, Value]) -> Phrase | None:
    """A tree with its slots in the order of the template; None where one is missing or is no single thing."""
    filled = {name: value for name, value in filled.items() if value != Phrase("NOEACH")}
    if form not in BY_ID:
        return Phrase(form, tuple(filled.items()))  # type: ignore[arg-type]
    order, needed = slot_names(form)
    if not needed <= set(filled) or not set(filled) <= set(order):
        return None
    if any(isinstance(value, tuple) for value in filled.values()):
        return None
    return Phrase(form, tuple((name, filled[name]) for name in order if name in filled))  # type: ignore[misc]


@cache
def slot_names(form: str) -> tuple[tuple[str, ...], frozenset[str]]:
    """The slots of a form in order, and those that are needed."""
    from turnout.practice.templates import Slot

    template = parts(BY_ID[form].templates[0][1])
    every = tuple(dict.fromkeys(slot.name for slot in slots(template)))
    return every, frozenset(piece.name for piece in template if isinstance(piece, Slot))


def chain(filled: Mapping[str, Value | None]) -> Value | None:
    """Changes one after the other, each a tuple or one."""
    found = tuple(flat([filled.get("a"), filled.get("b")]))
    return found if 0 < len(found) <= 4 else None


def when(filled: Mapping[str, Value | None]) -> Value | None:
    """A When of an event and its changes; “you” and “they” become who did it."""
    event, then = filled.get("event"), filled.get("then")
    if not isinstance(event, Phrase) or then is None:
        return None
    changes = [bound(change, event) for change in flat([then])]
    pointed = [change for change in flat([then]) if isinstance(change, Phrase) and change.form == "change.points"]
    if any(change is None for change in changes) or (len(changes) == 1 and pointed and told_of_you(event, pointed)):
        return None  # points for what they did themselves are a score
    return Phrase("when", (("event", event), ("then", listed(changes))))  # type: ignore[arg-type]


def told_of_you(event: Phrase, pointed: list[Phrase]) -> bool:
    """Whether points are for “you” or “they”, or follow what “you” or “they” did: then it is a score and no change."""
    return any(loose(change) for change in pointed) or event.get("who") in (Phrase("who.YOU"), Phrase("who.YOURS"))


def when_last(filled: Mapping[str, Value | None]) -> Value | None:
    """A When told after its changes. “May enter … once …” may be a limit until then, so it is not read."""
    entering = any(isinstance(one, Phrase) and one.form == "change.may enter" for one in flat([filled.get("then")]))
    return None if entering else when(filled)


def clock(filled: Mapping[str, Value | None]) -> Value | None:
    """An Every of a time and its changes, from `t` minutes or `s` seconds."""
    changes = tuple(flat([filled.get("then")]))
    unit, number = ("minutes", filled.get("t")) if filled.get("t") else ("seconds", filled.get("s"))
    if not isinstance(number, int) or not changes or any(loose(change) for change in changes):
        return None
    return Phrase(
        f"every {unit}", (("t", number), ("then", listed([change for change in changes if isinstance(change, Phrase)])))
    )


def turn(filled: Mapping[str, Value | None]) -> Value | None:
    """A turn that lasts `t` minutes or `s` seconds."""
    unit, number = ("minutes", filled.get("t")) if filled.get("t") else ("seconds", filled.get("s"))
    return Phrase(f"turn {unit}", (("t", number),)) if isinstance(number, int) else None


def sixty(filled: Mapping[str, Value | None]) -> Value | None:
    """Minutes and a part of one, in seconds."""
    minutes, more = filled.get("t"), filled.get("s") or 0
    return minutes * 60 + more if isinstance(minutes, int) and isinstance(more, int) else None


def exchange(filled: Mapping[str, Value | None]) -> Value | None:
    """Two groups change over; where one is a player, they change places."""
    who, other = filled.get("who"), filled.get("with_") or filled.get("with")
    if not isinstance(who, Phrase) or not isinstance(other, Phrase):
        return None
    both = who.form in GROUPED and other.form in GROUPED
    return Phrase("change.over" if both else "change.exchange", (("who", who), ("with", other)))


def several(filled: Mapping[str, Value | None]) -> Value | None:
    """Several rules; “they” of a rule that follows one about named players are those, and read elsewhere."""
    after = filled.get("b")
    first, named = (after[0] if isinstance(after, tuple) and after else after), tuple(flat([filled.get("a")]))
    before = named[-1].get("who") or named[-1].get("whom") if named and isinstance(named[-1], Phrase) else None
    about = isinstance(before, Phrase) and before.form in ("who.role", "who.side")
    loosely = (Phrase("who.YOU"), Phrase("who.ALL"))
    if about and isinstance(first, Phrase) and (first.get("who") in loosely or first.get("whom") in loosely):
        return None
    return tuple(flat([filled.get("a"), filled.get("b")])) or None


def listed(changes: list[Phrase]) -> Phrase:
    """Changes as the list the grammar has for so many."""
    form = ("changes.one", "changes.two", "changes.three", "changes.four")[len(changes) - 1]
    return Phrase(form, tuple(zip("abcd", changes, strict=False)))


def loose(value: object) -> bool:
    """Whether a “you” or “they” in it is not bound."""
    if not isinstance(value, Phrase):
        return False
    return value.form in (PERSON, SIDE, THEY, THEM, "who.CONCEDERS", "who.MATE") or any(
        loose(inner) for _, inner in value.slots
    )


def bound(change: Value, event: Phrase) -> Phrase | None:
    """A change with “you”, “he” and “they” as whoever did what the event tells; None where not certain."""
    act = event.get("act")
    doer = DOER.get(act.form) if isinstance(act, Phrase) else None
    if not isinstance(change, Phrase):
        return None
    alone = change.form not in ("change.starts", "change.keeps", "change.points", "change.new ball", "change.attacks")
    slots = []
    for name, value in change.slots:
        if isinstance(value, Phrase) and value.form == THEM:
            met = MET.get(act.form) if isinstance(act, Phrase) and alone else None
            if met is None:
                return None
            value = Phrase(met)
        if value == Phrase(THEY) and event.get("who") == Phrase("who.YOURS"):
            value = Phrase("who.other side")  # “if you lose it, they start”
        if value == Phrase("who.MATE"):
            if not isinstance(act, Phrase) or act.form != "act.pass to":
                return None  # whom they swap with is certain after a pass alone
            value = Phrase("who.receiver")
        if value == Phrase("who.CONCEDERS"):
            scored = isinstance(act, Phrase) and act.form == "act.score"
            value = Phrase("who.other side" if scored else SIDE)
        if isinstance(value, Phrase) and value.form in (PERSON, SIDE, THEY):
            who = event.get("who")
            if alone and value.form != SIDE:
                value = Phrase(doer) if doer else None  # type: ignore[assignment]
            elif not (isinstance(who, Phrase) and who.form in TOLD):
                return None
            else:
                value = who
            if value is None:
                return None
        slots.append((name, value))
    return Phrase(change.form, tuple(slots))


def bind(filled: Mapping[str, Value | None]) -> Value | None:
    """A change with its subject in the place of WHO."""
    change, who = filled.get("do"), filled.get("who")
    if not isinstance(change, Phrase) or not isinstance(who, Phrase):
        return None
    slots = [(name, who if value == Phrase("who.WHO") else value) for name, value in change.slots]
    if change.form == "change.exchange":
        return exchange(dict(slots))
    return Phrase(change.form, tuple(slots))


def long(filled: Mapping[str, Value | None]) -> Value | None:
    """A limit with its “while” or “until”, if it has one."""
    by, form, act = filled.get("by"), str(filled.get("form")), filled.get("act")
    if form == "may not" and isinstance(act, Phrase) and act.form in ("act.touches", "act.start"):
        return None  # “do not have 2 touches” may say that they have more
    slots = {name: value for name, value in filled.items() if name not in ("by", "form") and value is not None}
    if isinstance(by, Phrase):
        slots |= {{"state": "while_", "event": "until"}[name]: value for name, value in by.slots}
    return phrase_of(form, slots)


def no_tackle(filled: Mapping[str, Value | None]) -> Value | None:
    """Nobody tackles."""
    return long({**filled, "form": "no tackle"})


def timed(filled: Mapping[str, Value | None]) -> Value | None:
    """A score for an act, within seconds of another if that is said; a regain within seconds is of the loss."""
    by, act = filled.get("by"), filled.get("act")
    slots = {name: value for name, value in filled.items() if name != "by" and value is not None}
    if isinstance(act, Phrase) and act.form == "act.score" and act.get("where") is None:
        return None  # a score is no act that scores
    if isinstance(by, Phrase) and by.slots:
        slots |= dict(by.slots)
        if "after" not in slots:
            if not isinstance(act, Phrase) or act.form not in ("act.win", "act.win and pass"):
                return None
            slots["after"] = Phrase("act.lose")
    return phrase_of("score", slots)


def inside(filled: Mapping[str, Value | None]) -> Value | None:
    """A place as it stands."""
    return filled.get("p")


def uses(filled: Mapping[str, Value | None]) -> Value | None:
    """Somebody plays for a side; “both sides” is the one with the ball."""
    slots = {name: value for name, value in filled.items() if value is not None}
    if slots.get("side") == Phrase("who.a side"):
        slots["side"] = Phrase("who.side with the ball")
    return phrase_of("plays for", slots)


def more(filled: Mapping[str, Value | None]) -> Value | None:
    """Rules and what follows them about the same players (“they”, or nobody named again)."""
    before, after = tuple(flat([filled.get("a")])), tuple(flat([filled.get("b")]))
    last = before[-1] if before else None
    who = (last.get("who") or last.get("whom")) if isinstance(last, Phrase) else None
    if not isinstance(who, Phrase):
        return None
    place = last.get("where") if isinstance(last, Phrase) else None
    return (*before, *(same(rule, who, place) for rule in after if isinstance(rule, Phrase)))


def same(phrase: Phrase, who: Phrase, place: object = None) -> Phrase:
    """A tree with those named before in the place of “they”, and the place named before as “there”."""
    if phrase == Phrase("who.SAME"):
        return who
    if phrase == Phrase("place.it") and isinstance(place, Phrase):
        return place
    slots = ((name, same(value, who, place) if isinstance(value, Phrase) else value) for name, value in phrase.slots)
    return Phrase(phrase.form, tuple(slots))


def either(filled: Mapping[str, Value | None]) -> Value | None:
    """A When of either of two events: two rules."""
    rules = [when({"event": filled.get(name), "then": filled.get("then")}) for name in ("e", "f")]
    return None if None in rules else tuple(flat(rules))


def doing(filled: Mapping[str, Value | None]) -> Value | None:
    """A When of either of two acts of the same players."""
    who = filled.get("who")
    events = {name: Phrase("event.act", (("who", who), ("act", filled.get(name)))) for name in ("a", "b")}  # type: ignore[arg-type]
    return either({"e": events["a"], "f": events["b"], "then": filled.get("then")})


def alike(filled: Mapping[str, Value | None]) -> Value | None:
    """Passes from one role to another, or between players of one."""
    first, second = (phrase_of("who.role", {"role": filled[name]}) for name in ("a", "b"))  # type: ignore[dict-item]
    if first == second:
        return phrase_of("passes.between", {"who": first})  # type: ignore[dict-item]
    return phrase_of("passes.from to", {"who": first, "to": second})  # type: ignore[dict-item]


def alone(filled: Mapping[str, Value | None]) -> Value | None:
    """A score of a player with a ball of their own."""
    score = phrase_of("score", {name: value for name, value in filled.items() if value is not None})
    return Phrase("ALONE", (("score", score),)) if isinstance(score, Phrase) else None


def about(filled: Mapping[str, Value | None]) -> Value | None:
    """A rule told of “you”, who have just been named."""
    who, rules = filled.get("who"), tuple(flat([filled.get("rule")]))
    if not isinstance(who, Phrase):
        return None
    return tuple(same(rule, who) for rule in rules if isinstance(rule, Phrase))


GROUPED = {"who.role", "who.side", "who.its role", "who.other role"}
JOINED = {
    "chain": chain, "WHEN": when, "LATE": when_last, "EVERY": clock, "TURN": turn, "sixty": sixty,
    "SWAP": exchange, "both": several, "BIND": bind,
    "LONG": long, "NOTACKLE": no_tackle, "TIMED": timed, "IN": inside, "BARE": inside, "USES": uses, "MORE": more,
    "ALIKE": alike, "ALONE": alone, "ABOUT": about, "EITHER": either, "DOING": doing,
}  # fmt: skip
