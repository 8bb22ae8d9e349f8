"""Reading tonight's file and a squad's. What must not be kept about children has no key, and asking says why."""

import re
from pathlib import Path
from typing import Any

from turnout.club.keys import FACTS, KIT, LEVELS, SQUAD, SURFACES, TONIGHT
from turnout.club.read_small import ages, choice, clock_time, counts, labels, refuse_private, turnout
from turnout.club.spaces import space_named
from turnout.club.squad import Squad
from turnout.club.tonight import Kit, Space, Tonight
from turnout.measure import UNITS_M, metres
from turnout.practice.place_parts import UNIT_WORDS
from turnout.practice.read_small import whole, yes_or_no
from turnout.problems import BadInput, Problem
from turnout.reading import Document, Node, Report, load, nearest

SIZE = re.compile(r"(hall )?(\d{1,3}(?:\.\d{1,2})?) ?x ?(\d{1,3}(?:\.\d{1,2})?) ?([a-z]+)", re.IGNORECASE)


def read_space(text: str) -> Space:
    """A space as a coach says it: 'third of 3G', 'hall', 'hall 33 x 18 m' or '32 x 30 m'. Raises BadInput."""
    said = " ".join(text.split())
    found = SIZE.fullmatch(said)
    if found is None:
        return named_space(said)
    hall, across, up, unit = found.groups()
    if unit.casefold() not in UNITS_M:
        near = UNIT_WORDS.get(unit.casefold()) or nearest(unit, UNITS_M)
        raise BadInput([Problem("space", None, None, text, "lengths are in yd, m, ft or paces", near)])
    across_m, up_m = (metres(float(side), unit.casefold()) for side in (across, up))
    if not 5 <= min(across_m, up_m) <= max(across_m, up_m) <= 150:
        raise BadInput([Problem("space", None, None, text, "a space is 5 to 150 m each way")])
    run_off_m = space_named("hall").run_off_m if hall else Space("", 0, 0).run_off_m
    return Space(said, across_m, up_m, run_off_m)


def named_space(said: str) -> Space:
    """A share of a pitch or a hall by its name, with the other ways to say a space when it is none."""
    try:
        return space_named(said)
    except BadInput as error:
        fault = error.problems[0]
        names = ("third of 3G", "half of 3G", "quarter of 3G", "3G", "hall")
        expected = f"{fault.expected}; or a size such as 32 x 30 m or hall 33 x 18 m"
        near = nearest(said, names)
        raise BadInput([Problem(fault.file, None, None, said, expected, near)]) from None


def read_squad(path: str | Path) -> Squad:
    """The squad in the file at `path`; raises BadInput with every problem."""
    document = load(path)
    report = Report(document.file, document.problems)
    squad = squad_of(document, report)
    report.close()
    assert squad is not None
    return squad


def squad_of(document: Document, report: Report) -> Squad | None:
    """The squad of a document, its faults added to `report`."""
    root = report.pairs(document.root, "a squad")
    if root is None:
        return None
    refuse_private(root, SQUAD.keys, report, "a squad")
    report.needed(root, SQUAD.needed, "a squad")
    name = report.text(root.get("squad"), "the squad's name")
    given: dict[str, Any] = {"age": ages(root.get("age"), report)}
    given["level"] = choice(root.get("level"), report, "level", LEVELS)
    names = labels(root.get("players"), report)
    if name is None:
        return None
    return Squad(name.value, labels=names, **{key: value for key, value in given.items() if value is not None})


def read_tonight(path: str | Path, *, age: int | None = None, minutes: float | None = None) -> Tonight:
    """Tonight's facts in the file at `path`; raises BadInput with every problem.

    age (12 for U12), minutes: the session's, for a file that does not say and whose squad does not.
    """
    document = load(path)
    report = Report(document.file, document.problems)
    tonight = tonight_of(document, report, age=age, minutes=minutes)
    report.close()
    assert tonight is not None
    return tonight


def tonight_of(
    document: Document, report: Report, *, age: int | None = None, minutes: float | None = None
) -> Tonight | None:
    """Tonight's facts of a document, its faults added to `report`."""
    root = report.pairs(document.root, "a tonight file")
    if root is None:
        return None
    report.keys(root, TONIGHT.keys, "a tonight file")
    report.needed(root, TONIGHT.needed, "a tonight file")
    facts = report.pairs(root.get("tonight"), "tonight")
    if facts is None:
        return None
    refuse_private(facts, FACTS.keys, report, "tonight")
    report.needed(facts, FACTS.needed, "tonight")
    squad = squad_beside(facts.get("squad"), report)
    players, names = turnout(facts.get("players"), report, squad.labels if squad else ())
    space = space_of(facts.get("space"), report)
    given: dict[str, Any] = {
        "kit": kit_of(facts.get("kit"), report),
        "minutes": whole(facts.get("minutes"), report, "minutes", *FACTS.whole("minutes")) or minutes,
        "age": ages(facts.get("age"), report) or (squad.age if squad else None) or age,
        "level": choice(facts.get("level"), report, "level", LEVELS) or (squad.level if squad else None),
        "adults": whole(facts.get("adults"), report, "adults", *FACTS.whole("adults")),
        "first_aider": yes_or_no(facts.get("first aider"), report, "first aider"),
        "surface": choice(facts.get("surface"), report, "surface", SURFACES),
        "country": country(facts.get("country"), report),
        "start": clock_time(facts.get("start"), report),
    }
    if not players or space is None:
        return None
    known = {key: value for key, value in given.items() if value is not None}
    return Tonight(players=players, space=space, labels=names, **known)


def squad_beside(node: Node | None, report: Report) -> Squad | None:
    """The squad whose file stands beside tonight's, by the name of the file; its faults join the report."""
    text = report.text(node, "squad")
    if text is None:
        return None
    folder = Path(report.file).parent
    here = {path.stem: path for path in sorted(folder.glob("*.yaml"))}
    if text.value not in here:
        report.add(text, f"no file {text.value}.yaml stands beside this one", near=nearest(text.value, here))
        return None
    try:
        return read_squad(here[text.value])
    except BadInput as error:
        report.problems += error.problems
        return None


def space_of(node: Node | None, report: Report) -> Space | None:
    """The space, faulted at its line."""
    text = report.text(node, "space")
    if text is None:
        return None
    try:
        return read_space(text.value)
    except BadInput as error:
        report.add(text, error.problems[0].expected, near=error.problems[0].nearest)
        return None


def country(node: Node | None, report: Report) -> str | None:
    """The country whose usual cautions apply."""
    text = report.text(node, "country")
    return text.value if text else None


def kit_of(node: Node | None, report: Report) -> Kit | None:
    """What is in the bag."""
    pairs = report.pairs(node, "kit")
    report.keys(pairs, KIT.keys, "kit")
    if pairs is None:
        return None
    own = report.text(pairs.get("own shirts"), "own shirts")
    given: dict[str, Any] = {
        "bibs": counts(pairs.get("bibs"), report, "bibs"),
        "cones": counts(pairs.get("cones"), report, "cones"),
        "balls": whole(pairs.get("balls"), report, "balls", *KIT.whole("balls")),
        "own": own.value if own and own.value != "mixed" else None,
    }
    return Kit(**{key: value for key, value in given.items() if value is not None})
