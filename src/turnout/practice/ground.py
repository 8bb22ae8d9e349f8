"""A practice at numbers and a size: its players per group and its places in metres."""

from collections.abc import Mapping

from turnout.practice.model import Group, Place, Practice
from turnout.practice.placing import placed
from turnout.practice.relative import every_place
from turnout.practice.setup import Setup


def setup_of(
    practice: Practice, counts: Mapping[str, int] | None = None, size_m: tuple[float, float] | None = None
) -> Setup:
    """The practice at these players per group (default: as designed) and field size (across, up) in metres."""
    wanted = counts if counts is not None else designed_counts(practice)
    return Setup(
        practice=practice,
        counts=tuple((group.key, int(wanted[group.key])) for group in practice.groups),
        places=places_of(practice, size_m),
    )


def designed_counts(practice: Practice) -> dict[str, int]:
    """Players per group as written, ties followed and clamped to their range."""
    counts = {group.key: group.count for group in practice.groups}
    for group in practice.groups:
        counts[group.key] = tied_count(group, counts)
    return counts


def tied_count(group: Group, counts: Mapping[str, int]) -> int:
    """The count a tie asks for, clamped to the group's range; the group's own count when it has no tie."""
    if group.tie is None:
        return counts[group.key]
    return min(group.high, max(group.low, counts[group.tie.group] + group.tie.offset))


def places_of(practice: Practice, field_size_m: tuple[float, float] | None = None) -> tuple[tuple[str, Place], ...]:
    """Every place by name, in the order of `ground`, then those that sentences tell from a side ('the attacking
    half'); `field_size_m` (across, up) replaces the first place's size."""
    return placed(every_place(practice), field_size_m)
