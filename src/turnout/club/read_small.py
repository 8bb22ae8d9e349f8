"""The small values of club files: labels, counts by colour, ages, times; and what is refused about children."""

import re
from collections.abc import Iterable

from turnout.club.keys import COUNT, HERE, MOST_PLAYERS, START
from turnout.practice.read_small import whole
from turnout.reading import Items, Node, Pairs, Report, Text, nearest
from turnout.session.read import age_of

LABEL = re.compile(r"[^\W_][\w'’ .-]{0,19}")
DATE = re.compile(r"\d{1,4}[-./]\d{1,2}[-./]\d{1,4}|\b(?:19|20)\d\d\b")
PRIVATE = (
    (("birth", "born", "dob", "birthday"), "birth dates: the age group is enough"),
    (("health", "medical", "allerg", "injur", "asthma", "medicine", "condition"), "health facts"),
    (("photo", "picture", "image", "portrait"), "photographs"),
    (("surname", "family name", "last name", "address", "phone", "email", "school"), "contacts or family names"),
)


def refuse_private(pairs: Pairs, allowed: Iterable[str], report: Report, what: str) -> None:
    """Fault unknown keys; a key for private facts is told why there is none."""
    known = tuple(allowed)
    for key, _ in pairs.entries:
        if key.value in known:
            continue
        if reason := private(key.value):
            report.add(key, f"Turnout keeps no {reason}; take this line out")
        else:
            report.add(key, f"{what} knows the keys {', '.join(known)}", near=nearest(key.value, known))


def private(key: str) -> str | None:
    """What kind of private fact a key asks for, if any."""
    said = key.casefold()
    return next((reason for words, reason in PRIVATE if any(word in said for word in words)), None)


def labels(node: Node | None, report: Report) -> tuple[str, ...]:
    """The labels or first names of a list, each once."""
    if node is None:
        return ()
    if not isinstance(node, Items):
        report.add(node, "players is a list of labels or first names")
        return ()
    good = [item.value for item in node.items if isinstance(item, Text) and good_label(item, report)]
    for item in node.items:
        if isinstance(item, Pairs):
            refuse_private(item, (), report, "a player is a label only, and")
        elif isinstance(item, Items):
            report.add(item, "a player is one label, not a list; write each on a line of its own after “- ”")
        elif isinstance(item, Text) and good.count(item.value) > 1:
            report.add(item, "two players have this label; add a letter")
            good.remove(item.value)
    if len(good) > MOST_PLAYERS:
        report.add(node, f"a squad has at most {MOST_PLAYERS} players", read=f"{len(good)} players")
    return tuple(good)


def good_label(text: Text, report: Report) -> bool:
    """Whether a text is a label or first name, perhaps with an initial."""
    words = text.value.split()
    if DATE.search(text.value):
        report.add(text, "Turnout keeps no birth dates; a first name or a label is enough")
    elif len(words) > 1 and any(len(word.strip(".")) > 1 for word in words[1:]):
        report.add(text, "a first name or a label is enough", near=f"{words[0]} {words[-1][0]}")
    elif not LABEL.fullmatch(text.value):
        report.add(text, "a label is a few letters or digits, at most 20")
    else:
        return True
    return False


def turnout(node: Node | None, report: Report, squad: tuple[str, ...]) -> tuple[int, tuple[str, ...]]:
    """How many came, and their labels: a count takes the first of the squad, a list names them."""
    if isinstance(node, Items):
        names = labels(node, report)
        for item in node.items:
            if isinstance(item, Text) and squad and item.value in names and item.value not in squad:
                report.add(item, "nobody in the squad has this label", near=nearest(item.value, squad))
        return len(names), names
    count = whole(node, report, "players", HERE.low, HERE.high) or 0
    return count, squad[:count]


def counts(node: Node | None, report: Report, what: str) -> tuple[tuple[str, int], ...] | None:
    """`{amber: 8, blue: 8}` as pairs."""
    pairs = report.pairs(node, what)
    if pairs is None:
        return None
    read = [
        (key.value, whole(value, report, f"{what}, {key.value},", COUNT.low, COUNT.high))
        for key, value in pairs.entries
    ]
    return tuple((key, count) for key, count in read if count is not None)


def ages(node: Node | None, report: Report) -> int | None:
    """`U12` as 12."""
    return age_of(node, report)


def choice(node: Node | None, report: Report, what: str, known: tuple[str, ...]) -> str | None:
    """One of the known words, in any letter case."""
    text = report.text(node, what)
    if text is None:
        return None
    for word in known:
        if word.casefold() == text.value.strip().casefold():
            return word
    report.add(text, f"{what} is one of {', '.join(known)}", near=nearest(text.value, known))
    return None


def clock_time(node: Node | None, report: Report) -> str | None:
    """`18:00`."""
    text = report.text(node, "start")
    if text is None:
        return None
    found = START.fullmatch(text.value.strip())
    if found is None:
        report.add(text, "the start reads like 18:00")
        return None
    return f"{int(found[1]):02d}:{found[2]}"
