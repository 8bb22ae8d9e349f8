"""The small keys of a practice: ages, develops, also called, coach, kit and arrange."""

import re
from collections.abc import Sequence
from typing import Any

from turnout.measure import UNITS_M, metres
from turnout.practice.keys import AGES, ARRANGE, BAND, CAPABILITIES, KIT, LENGTH, QUESTION, SPAN, WEIGHT
from turnout.practice.model import Arrange, BallsInPlay, Group, PlaceDef, Question
from turnout.practice.names import Names, singular
from turnout.reading import Node, Pairs, Report, Text, nearest
from turnout.reading.declare import Keys

YOUNGEST, OLDEST = 5, 21
MOST_BALLS = 12  # in play at once for everybody together


def read_ages(node: Node | None, report: Report) -> tuple[int, int]:
    """`U10-U16` as (10, 16)."""
    text = report.text(node, "ages")
    if text is None:
        return (YOUNGEST, OLDEST)
    found = AGES.fullmatch(text.value.strip())
    low, high = (int(found[1]), int(found[2] or found[1])) if found else (0, 0)
    if not YOUNGEST <= low <= high <= OLDEST:
        report.add(text, f"ages read like U10-U16, from the younger to the older, U{YOUNGEST} to U{OLDEST}")
        return (YOUNGEST, OLDEST)
    return low, high


def read_develops(node: Node | None, report: Report) -> tuple[tuple[str, int], ...]:
    """Capability and weight: 3 what it is for (one at most), 2 matters, 1 touched on."""
    pairs = report.pairs(node, "develops")
    report.keys(pairs, CAPABILITIES, "develops")
    found: list[tuple[str, int]] = []
    for key, value in pairs.entries if pairs else ():
        weight = whole(value, report, f"the weight of {key.value}", WEIGHT.low, WEIGHT.high)
        if weight == 3 and any(other == 3 for _, other in found):
            report.add(value, "one capability at most is what a practice is for (3); give the others 2 or 1")
        if weight and key.value in CAPABILITIES:
            found.append((key.value, weight))
    return tuple(found)


def whole(node: Node | None, report: Report, what: str, low: int, high: int) -> int | None:
    """A whole number between two bounds."""
    text = report.text(node, what)
    if text is None:
        return None
    if re.fullmatch(r"[0-9]{1,4}", text.value) and low <= int(text.value) <= high:
        return int(text.value)
    report.add(text, f"{what} is a whole number from {low} to {high}")
    return None


def whole_of(pairs: Pairs, key: str, declared: Keys, report: Report) -> int | None:
    """The whole number under a key, within its declared bounds."""
    return whole(pairs.get(key), report, key, *declared.whole(key))


def read_also(node: Node | None, report: Report, names: Names) -> tuple[tuple[str, tuple[str, ...]], ...]:
    """Other words for sides, roles and places."""
    pairs = report.pairs(node, "also called")
    taken, known = set(names.all()), names.all()
    found: list[tuple[str, tuple[str, ...]]] = []
    for key, value in pairs.entries if pairs else ():
        words = report.texts(value, f"other words for {key.value}")
        if key.value not in known:
            report.add(key, f"names of this practice: {', '.join(known)}", near=nearest(key.value, known))
            continue
        for word in words:
            if word.value in taken:
                report.add(word, "this word names something already; another word must name one thing only")
        taken |= {word.value for word in words}
        found.append((key.value, tuple(word.value for word in words)))
    return tuple(found)


def read_coach(node: Node | None, report: Report) -> list[Question]:
    """What to ask and look for, by capability."""
    pairs = report.pairs(node, "coach")
    report.keys(pairs, CAPABILITIES, "coach")
    found = []
    for key, value in pairs.entries if pairs else ():
        lines = report.pairs(value, f"coach, {key.value},")
        report.keys(lines, QUESTION.keys, "a question")
        if lines is None:
            continue
        ask = report.text(lines.get("ask"), "ask")
        look = report.text(lines.get("look for"), "look for")
        found.append(Question(key.value, ask.value if ask else "", look.value if look else ""))
    return found


def read_balls(node: Node | None, report: Report) -> int:
    """The balls a practice needs; bibs and cones are worked out."""
    pairs = report.pairs(node, "kit")
    report.keys(pairs, KIT.keys, "kit")
    if pairs is None:
        return 6
    for key, (only,) in (("bibs", KIT.words("bibs")), ("cones", KIT.words("cones"))):
        text = report.text(pairs.get(key), key)
        if text is not None and text.value != only:
            report.add(text, f"{key} are worked out: write “{key}: {only}”", near=nearest(text.value, (only,)))
    balls = pairs.get("balls")
    return 6 if balls is None else whole(balls, report, "balls", *KIT.whole("balls")) or 6


def read_in_play(node: Node | None, report: Report, groups: Sequence[Group]) -> tuple[BallsInPlay, int]:
    """`1 per pair`, `1 per player` or how many for everybody together; without the line every small side has a ball,
    else there is one for all."""
    units = next((group.side for group in groups if group.of > 1), None)
    text = report.text(node, "balls in play")
    if text is None:
        return ("per unit" if units else "one"), 1
    said = text.value.strip()
    if re.fullmatch(r"[1-9]\d?", said) and int(said) <= MOST_BALLS:
        return ("one" if said == "1" else "several"), int(said)
    known = ["1 per player"] + ([f"1 per {singular(units)}"] if units else [])
    if said in known:
        return ("per player" if said == known[0] else "per unit"), 1
    lead = "balls in play reads " + " or ".join(f"“{way}”" for way in known) + f" or a number up to {MOST_BALLS}"
    more = "; one ball for all is what stands without this line" if not units else ""
    if not units and re.fullmatch(r"1 per (?!player\b)\w+", said):
        more = "; for a ball to each small side write them under people: “pairs: 6 (3-10) of 2 in …”"
    report.add(text, lead + more, near=nearest(text.value, known))
    return "one", 1


def read_arrange(node: Node | None, report: Report, ground: list[PlaceDef]) -> Arrange:
    """What a fit may do; every key has a default."""
    pairs = report.pairs(node, "arrange")
    report.keys(pairs, ARRANGE.keys, "arrange")
    if pairs is None:
        return Arrange()
    given: dict[str, Any] = {
        "copies_per_adult": whole_of(pairs, "copies per adult", ARRANGE, report),
        "waiting_at_most": whole_of(pairs, "waiting at most", ARRANGE, report),
        "block_minutes": span(pairs.get("blocks"), report, "blocks", 15),
        "minutes": span(pairs.get("minutes"), report, "minutes", 60),
        "gap_m": gap(pairs.get("gap"), report),
        "band": band(pairs.get("band"), report),
        "keep_square": square(pairs.get("keep square"), report, ground),
        "fixed": fixed(pairs.get("size"), report),
        "bibs_may_change": yes_or_no(pairs.get("bibs may change"), report, "bibs may change"),
    }
    return Arrange(**{key: value for key, value in given.items() if value is not None})


def span(node: Node | None, report: Report, what: str, most: float) -> tuple[float, float] | None:
    """`2 to 4 minutes` as (2, 4); one number is both."""
    text = report.text(node, what)
    if text is None:
        return None
    found = SPAN.fullmatch(text.value.strip())
    low, high = (float(found[1]), float(found[2] or found[1])) if found else (0.0, 0.0)
    if not 0.5 <= low <= high <= most:
        report.add(text, f"{what} reads like “2 to 4 minutes”, from the least to the most, up to {most:g}")
        return None
    return low, high


def gap(node: Node | None, report: Report) -> float | None:
    """A length with its unit, in metres."""
    text = report.text(node, "gap")
    if text is None:
        return None
    found = LENGTH.fullmatch(text.value.strip())
    if not found or found[2] not in UNITS_M or not 0 <= metres(float(found[1]), found[2]) <= 30:
        near = nearest(found[2], UNITS_M) if found else None
        report.add(text, "a gap reads like “3 yd”; lengths are in yd, m, ft or paces, up to 30 m", near=near)
        return None
    return metres(float(found[1]), found[2])


def band(node: Node | None, report: Report) -> float | None:
    """`25 %` as 0.25."""
    text = report.text(node, "band")
    if text is None:
        return None
    found = BAND.fullmatch(text.value.strip())
    if not found:
        report.add(text, "the band of area per player reads like “25 %”, below 100 %")
        return None
    return int(found[1]) / 100


def square(node: Node | None, report: Report, ground: list[PlaceDef]) -> tuple[str, ...] | None:
    """Places whose sides stay equal."""
    names = tuple(place.name for place in ground)
    texts = report.texts(node, "keep square")
    for text in texts:
        if text.value not in names:
            report.add(text, f"places of this practice: {', '.join(names)}", near=nearest(text.value, names))
    return tuple(text.value for text in texts if text.value in names) if node is not None else None


def fixed(node: Node | None, report: Report) -> bool | None:
    """`size: fixed`."""
    text: Text | None = report.text(node, "size")
    if text is not None and text.value != "fixed":
        report.add(text, "size says “fixed” or is left out", near=nearest(text.value, ("fixed",)))
    return None if text is None else text.value == "fixed"


def yes_or_no(node: Node | None, report: Report, what: str) -> bool | None:
    """`yes` or `no`; None when nothing is said."""
    text = report.text(node, what)
    if text is None:
        return None
    answers = {"yes": True, "true": True, "no": False, "false": False}
    if text.value.casefold() not in answers:
        report.add(text, f"{what} is yes or no", near=nearest(text.value, ("yes", "no")))
        return None
    return answers[text.value.casefold()]
