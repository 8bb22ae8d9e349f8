"""Who takes turns by the clock: the groups 'the next group changes places with', and how often."""

from functools import lru_cache

from turnout.practice.model import Practice, Rule


def turn_minutes(practice: Practice) -> float | None:
    """Minutes between two swaps by the clock, the shortest there is; None when nobody swaps, or blocks cannot follow.

    Blocks follow the clock only when its minutes lie in the practice's range for blocks.
    """
    low, high = practice.arrange.block_minutes
    found = [seconds / 60 for _, seconds in _swaps(practice.rules) if low <= seconds / 60 <= high]
    return min(found) if found else None


def turning_groups(practice: Practice) -> tuple[str, ...]:
    """Keys of the groups everybody takes a turn in, because a rule swaps them with the next group by the clock."""
    sides = {who for who, _ in _swaps(practice.rules)}
    return tuple(
        group.key for group in practice.groups if group.side in sides or group.role in sides or group.key in sides
    )


@lru_cache(maxsize=256)
def _swaps(rules: tuple[Rule, ...]) -> tuple[tuple[str, float], ...]:
    """(side, role or group, seconds) of every sentence in which the next group changes places by the clock."""
    from turnout.practice.meaning import rule_rows

    rows = [row for rule in rules for row in rule_rows(rule)]
    found = []
    for row in rows:
        if row.do == "rotate" and row.every_s is not None and row.target is not None:
            name = " ".join(word for word in (row.target.side, row.target.role) if word)
            found.append((name, row.every_s))
    return tuple(found)
