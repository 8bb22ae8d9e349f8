"""turnout shelf"""

from collections.abc import Mapping

from turnout.cli.answer import NO, answering
from turnout.evening.shelf_search import Answered, search
from turnout.evening.stamp import files_hash
from turnout.practice.finding import Match
from turnout.show.words import size_yards

HEADS = ("practice", "players", "ages", "minutes", "ground", "scores")
SHOWN_SCORES = 2
OPTIONS = {"words": "the words", "space_m": "--space"}  # a wish as a person typed it; else -- and its name


def run(words: list[str], *, asked: Mapping[str, str | None], json: bool) -> None:
    """List or search the shelf; exit 1 when nothing on it takes what is asked."""
    with answering("shelf", json=json) as answer:
        found = search(words, asked)
        answer.inputs_hash = files_hash(list(found.files))
        answer.body = {
            "found": len(found.matches), "of": found.all, "practices": [as_object(one) for one in found.matches],
            "without": {OPTIONS.get(name, f"--{name}"): count for name, count in found.without.items()},
        }  # fmt: skip
        answer.text = table(found) if found.matches else nothing(found)
        answer.code = 0 if found.matches else NO


def as_object(one: Match) -> dict:
    """One practice for machines."""
    row = one.row
    return {
        "practice": row.key, "name": row.name, "about": row.about, "ages": list(row.ages),
        "players": {"written": row.designed, "numbers": list(row.numbers)}, "areas": one.areas,
        "space_m": [round(row.across_m, 2), round(row.up_m, 2)], "gap_m": round(row.gap_m, 2),
        "minutes": list(row.minutes), "groups": list(row.groups), "scored": list(row.scored), "steps": list(row.steps),
    }  # fmt: skip


def table(found: Answered) -> str:
    """One line a practice under heads, columns as wide as they need; then how many there are."""
    lines = [HEADS, *(cells(one, found.wanted.players) for one in found.matches)]
    wide = [max(len(line[at]) for line in lines) for at in range(len(HEADS) - 1)]
    told = [
        "  ".join([*(cell.ljust(size) for cell, size in zip(line, wide, strict=False)), line[-1]]) for line in lines
    ]
    some = "1 practice" if found.all == 1 else f"{found.all} practices"
    foot = some if len(found.matches) == found.all else f"{len(found.matches)} of {some}"
    return "\n".join([*(line.rstrip() for line in told), f"{foot}. Sizes as written, in yards; a fit changes them."])


def cells(one: Match, players: int | None) -> tuple[str, ...]:
    """The cells of one practice."""
    row = one.row
    low, high = row.numbers[0], row.numbers[-1]
    who = f"{row.designed} ({low}-{high})" if players is None else f"{players} in {areas_text(one.areas)}"
    minutes = f"{row.minutes[0]:g}-{row.minutes[1]:g}"
    size = size_yards(row.across_m, row.up_m)
    return row.key, who, f"U{row.ages[0]}-U{row.ages[1]}", minutes, size, scores_text(row.scored)


def scores_text(scored: tuple[str, ...]) -> str:
    """The first ways to score, and how many more there are."""
    more = len(scored) - SHOWN_SCORES
    return " · ".join([*scored[:SHOWN_SCORES], *([f"{more} more"] if more > 0 else [])])


def areas_text(areas: int) -> str:
    """'1 area', '2 areas'."""
    return "1 area" if areas == 1 else f"{areas} areas"


def nothing(found: Answered) -> str:
    """That nothing was found, which wish alone stands in the way, and what a misspelt word may mean."""
    lines = [f"Nothing on the shelf takes that, of {found.all} practices."]
    for name, count in found.without.items():
        if count:
            lines.append(f"Without {OPTIONS.get(name, f'--{name}')} there {'is' if count == 1 else 'are'} {count}.")
    lines += [f"“{word}” is written nowhere on it. Did you mean “{near}”?" for word, near in found.near.items()]
    return "\n".join(lines)
