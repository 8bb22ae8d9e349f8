"""One or two sentences on how fair a part's turns are; every number is counted."""

from turnout.fit.words import joined, plural
from turnout.rota.copy_blocks import WAITING

Share = tuple[str, tuple[int, int, int, int]]  # kind -> spread, least spread, fewest, most


def note_for(kinds: list[Share], blocks: int, *, stay: bool, twice: int) -> str:
    """How often everybody is what, whether that is as even as arithmetic allows, and whether sides stay."""
    if not kinds:
        return "Everybody keeps their place for the whole part."
    if blocks == 1:
        return "One block: nobody changes places."
    told = [_told(kind, few, most) for kind, few, most in _merged(kinds)]
    uneven = max(share[0] - share[1] for _, share in kinds)
    even = "as even as it can be" if uneven <= 0 else f"{plural(uneven, 'block')} less even than arithmetic allows"
    lines = [f"Of {blocks} blocks everyone {joined(told)}: {even}."]
    if stay:
        lines.append("Sides stay for the whole part.")
    if any(kind == WAITING for kind, _ in kinds):
        lines.append(
            "Nobody waits twice running." if twice == 0 else f"{plural(twice, 'time')} somebody waits twice running."
        )
    return " ".join(lines)


def _merged(kinds: list[Share]) -> list[tuple[str, int, int]]:
    """(kind, fewest, most) over all areas, kinds in order of appearance, roles that make up the rest left out."""
    found: dict[str, tuple[int, int]] = {}
    for kind, (_, _, few, most) in kinds:
        low, high = found.get(kind, (few, most))
        found[kind] = (min(low, few), max(high, most))
    return [(kind, low, high) for kind, (low, high) in found.items()]


def _told(kind: str, few: int, most: int) -> str:
    times = f"{few}" if few == most else f"{few} or {most}" if most == few + 1 else f"{few} to {most}"
    return f"waits in {times}" if kind == WAITING else f"is {_as_said(kind)} in {times}"


def _as_said(kind: str) -> str:
    return "on the edge" if kind == "edge" else kind
