"""What the shelf tells of a practice without playing it: numbers, ages, minutes, ground, roles, what scores.

Rules are read as text only: building the grammar would cost more than reading the whole shelf. A test holds what
scores here to what the grammar makes of the same sentences.
"""

import re
from collections.abc import Iterable
from dataclasses import dataclass
from itertools import accumulate
from pathlib import Path

from turnout.practice.ground import setup_of, tied_count
from turnout.practice.model import GOALS, Group, Practice
from turnout.practice.read import key_of
from turnout.practice.read_model import read_ground, read_people_lines
from turnout.practice.read_small import read_ages, read_arrange
from turnout.practice.setup import Setup
from turnout.practice.sizing import sized
from turnout.problems import BadInput
from turnout.reading import Items, Node, Pairs, Report, Text, load
from turnout.shapes.packing import Piece, pack

SCORES = re.compile(r"\bscores? (\d+) for (.+?)\.?$", re.IGNORECASE)
IN_A_GOAL = "scoring in a goal"
MOST_AREAS = 4  # areas side by side a turnout is shared over; own choice


@dataclass(frozen=True)
class Row:
    """One practice of the shelf. numbers: every number of players one area takes; across_m, up_m: all its places at
    their written size; minutes: how long it lasts; words: everything written in the file, for searching."""

    key: str
    name: str
    about: str
    ages: tuple[int, int]
    numbers: tuple[int, ...]
    designed: int
    across_m: float
    up_m: float
    gap_m: float
    minutes: tuple[float, float]
    groups: tuple[str, ...]
    called: tuple[str, ...]
    scored: tuple[str, ...]
    steps: tuple[str, ...]
    words: str

    def areas(self, players: int) -> int | None:
        """Over how few areas side by side so many players are shared, none left over; None when over none."""
        counts = [{0}, *([set(self.numbers)] * MOST_AREAS)]
        totals = list(accumulate(counts, lambda some, one: {a + b for a in some for b in one}))
        return next((areas for areas in range(1, MOST_AREAS + 1) if players in totals[areas]), None)

    def fits_on(self, across_m: float, up_m: float, areas: int = 1) -> bool:
        """Whether so many areas of the written size lie side by side on a clear rectangle, their gap between them."""
        return pack(areas, Piece(self.across_m, self.up_m, self.gap_m), across=across_m, up=up_m) is not None


def row_of(path: Path) -> Row:
    """One practice file as a row; raises BadInput when its ground, people or small keys cannot be read."""
    document = load(path)
    report = Report(document.file, document.problems)
    root = report.pairs(document.root, "a practice")
    if root is None:
        raise BadInput(report.problems)
    report.needed(root, ("ground", "people"), "a practice")
    practice = without_rules(path, root, report)
    report.close()
    return made(root, practice)


def without_rules(path: Path, root: Pairs, report: Report) -> Practice:
    """The practice of a file as far as its sentences are not needed."""
    ground = read_ground(root.get("ground"), report, {})
    groups = read_people_lines(root.get("people"), report, {place.name: place for place in ground}, {})
    return Practice(
        key=key_of(str(path)), name=said(root.get("practice")), about=said(root.get("about")),
        ages=read_ages(root.get("ages"), report), develops=(), ground=sized(ground, groups), groups=tuple(groups),
        rules=(), arrange=read_arrange(root.get("arrange"), report, ground),
    )  # fmt: skip


def made(root: Pairs, practice: Practice) -> Row:
    """The row of what has been read."""
    setup, arrange = setup_of(practice), practice.arrange
    across_m, up_m = extent(setup)
    called = [word for group in practice.groups for word in (group.side, group.role)]
    called += [word for name, node in named(root.get("also called")) if name in called for word in texts(node)]
    scored = [found[2] for sentence in texts(root.get("rules")) if (found := SCORES.search(sentence))]
    scored += [IN_A_GOAL] if any(place.kind in GOALS for place in practice.ground) else []
    return Row(
        key=practice.key, name=practice.name, about=practice.about, ages=practice.ages,
        numbers=tuple(sorted(totals(practice.groups))), designed=setup.players, across_m=across_m, up_m=up_m,
        gap_m=arrange.gap_m, minutes=arrange.minutes, groups=tuple(group.key for group in practice.groups),
        called=tuple(dict.fromkeys(filter(None, called))), scored=tuple(dict.fromkeys(scored)),
        steps=tuple(step_names(root.get("steps"))), words=" ".join(every_word(root)),
    )  # fmt: skip


def totals(groups: Iterable[Group]) -> set[int]:
    """Every number of players that the ranges and ties of the groups allow."""
    groups = tuple(groups)
    found = {0}
    for root in groups:
        if root.tie is None:
            chain = followers(root, groups)
            own = {chain_total(root, count, chain) for count in range(root.low, root.high + 1)}
            found = {before + some for before in found for some in own}
    return found


def followers(root: Group, groups: tuple[Group, ...]) -> list[Group]:
    """The groups whose count follows that of `root`, each after the one it follows."""
    found = [root]
    for at in found:
        found += [group for group in groups if group.tie and group.tie.group == at.key]
    return found[1:]


def chain_total(root: Group, count: int, chain: list[Group]) -> int:
    """The players of a group and of all that follow it."""
    counts = {root.key: count}
    for group in chain:
        counts[group.key] = tied_count(group, counts)
    return sum(counts.values())


def extent(setup: Setup) -> tuple[float, float]:
    """The sides of the rectangle round every place, metres."""
    places = [place for _, place in setup.places]
    west = min(place.x_m - place.across_m / 2 for place in places)
    east = max(place.x_m + place.across_m / 2 for place in places)
    south = min(place.y_m - place.up_m / 2 for place in places)
    north = max(place.y_m + place.up_m / 2 for place in places)
    return east - west, north - south


def said(node: Node | None) -> str:
    """A text, or nothing."""
    return node.value if isinstance(node, Text) else ""


def texts(node: Node | None) -> list[str]:
    """The texts of a list; one text alone is a list of one."""
    items = node.items if isinstance(node, Items) else (node,) if node is not None else ()
    return [item.value for item in items if isinstance(item, Text)]


def named(node: Node | None) -> list[tuple[str, Node]]:
    """The keys of a node with their values."""
    return [(key.value, value) for key, value in node.entries] if isinstance(node, Pairs) else []


def step_names(node: Node | None) -> list[str]:
    """The names of the steps: the text their first key holds."""
    steps = node.items if isinstance(node, Items) else ()
    return [said(step.entries[0][1]) for step in steps if isinstance(step, Pairs) and step.entries]


def every_word(node: Node) -> list[str]:
    """Every text in a node, keys too."""
    if isinstance(node, Text):
        return [node.value]
    inner = node.items if isinstance(node, Items) else [one for pair in node.entries for one in pair]
    return [word for one in inner for word in every_word(one)]
