"""What gave way in one part: every way it departs from the practice as written and the hour as planned."""

from turnout.fit.bibs import Dressed
from turnout.fit.colours import verdict
from turnout.fit.ground import area_per_player_m2, at_home
from turnout.fit.minutes import Timing
from turnout.fit.model import Copy
from turnout.fit.roles import designed_mix
from turnout.fit.words import figure, number_word, plural
from turnout.practice.ground import setup_of
from turnout.practice.model import Group
from turnout.practice.units import counted
from turnout.session.model import Part

AREA_SEEN = 0.10  # a tenth more or less room is seen; less is the same to a coach and not worth a line (own choice)
MINUTES_SEEN = 2.0


def gave_way(
    part: Part, copies: tuple[Copy, ...], dressed: Dressed, timing: Timing, share_min: float, own: str | None
) -> tuple[str, ...]:
    """Sentences, most important first; empty when the part runs as written."""
    lines = [*_adults(dressed), *_waiting(copies), *_roles(part, copies), *_unequal(copies), *_room(part, copies)]
    return (*lines, *_minutes(part, timing, share_min), *_bibs(copies, own))


def _adults(dressed: Dressed) -> list[str]:
    if not dressed.candidate.way.stretched:
        return []
    return [f"{number_word(len(dressed.copies)).capitalize()} areas are one more than your adults can look after."]


def _waiting(copies: tuple[Copy, ...]) -> list[str]:
    waiting = sum(copy.waiting for copy in copies)
    if not waiting:
        return []
    return [f"{number_word(waiting).capitalize()} {'waits' if waiting == 1 else 'wait'} a turn in every block."]


def _roles(part: Part, copies: tuple[Copy, ...]) -> list[str]:
    """Groups whose number is not the written one, once for each sort of copy."""
    groups = part.practice.groups
    written = dict(zip((group.key for group in groups), designed_mix(groups), strict=True))
    lines = []
    for copy in copies:
        now = dict(copy.setup.counts)
        changed = [_instead(group, now[group.key], written[group.key]) for group in groups]
        changed = [words for words in changed if words]
        if changed:
            players = f"{copy.setup.players} players instead of {sum(written.values())}: "
            lines.append(f"{players if copy.setup.players != sum(written.values()) else ''}{', '.join(changed)}.")
    return list(dict.fromkeys(lines))


def _instead(group: Group, now: int, written: int) -> str:
    """'5 amber instead of 4', '7 pairs instead of 6'; empty when the number is the written one."""
    if now == written:
        return ""
    return f"{counted(group, now)} instead of {written // group.of}"


def _unequal(copies: tuple[Copy, ...]) -> list[str]:
    players = [copy.setup.players for copy in copies]
    if max(players) == min(players):
        return []
    return [f"The areas are not equal: {max(players)} players in the largest, {min(players)} in the smallest."]


def _room(part: Part, copies: tuple[Copy, ...]) -> list[str]:
    written = area_per_player_m2(setup_of(part.practice))
    now = [area_per_player_m2(copy.setup) for copy in copies]
    off = [value / written - 1 for value in now]
    worst = max(off, key=abs)
    if abs(worst) <= AREA_SEEN:
        return []
    who = "player inside" if len(at_home(part.practice)) < len(part.practice.groups) else "player"
    way = "less" if worst < 0 else "more"
    return [f"{round(abs(worst) * 100)} % {way} room for each {who} than written ({now[off.index(worst)]:.0f} m²)."]


def _minutes(part: Part, timing: Timing, share_min: float) -> list[str]:
    lines = []
    longest = part.practice.arrange.minutes[1]
    if timing.minutes > longest:
        lines.append(f"{figure(timing.minutes - longest)} min longer than its usual {figure(longest)} min.")
    off = timing.minutes - share_min
    if abs(off) > MINUTES_SEEN:
        way = "more" if off > 0 else "less"
        lines.append(f"{plural(round(abs(off)), 'minute')} {way} than its share of the hour.")
    return lines


def _bibs(copies: tuple[Copy, ...], own: str | None) -> list[str]:
    lines = []
    worn: dict[str, set[str]] = {}
    for side, colour in (pair for copy in copies for pair in copy.bibs):
        worn.setdefault(side, set()).add(colour)
    if any(len(colours) > 1 for colours in worn.values()):
        lines.append("The areas wear different bibs, because there are not enough of one colour.")
    hard = {
        (one, other)
        for copy in copies
        for _, one in copy.bibs
        for _, other in copy.bibs
        if one < other and verdict(one, other, own) == "hard"
    }
    return lines + [
        f"{one.capitalize()} and {other} are hard to tell apart for some eyes." for one, other in sorted(hard)
    ]
