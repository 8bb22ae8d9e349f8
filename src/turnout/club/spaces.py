"""Usable shares of a full artificial pitch or a hall, and what an area per player is called."""

from turnout.club.tonight import Space
from turnout.evidence import number, value
from turnout.problems import BadInput, Problem

# share -> (cuts along the length, cuts across the width, shared edges along the length, across the width)
SHARES = {
    "whole": (1, 1, 0, 0),
    "half": (2, 1, 1, 0),
    "third": (3, 1, 1, 0),  # an end third: the usual hire
    "end third": (3, 1, 1, 0),
    "middle third": (3, 1, 2, 0),
    "quarter": (2, 2, 1, 1),
    "end sixth": (3, 2, 1, 1),
    "middle sixth": (3, 2, 2, 1),
    "end eighth": (4, 2, 1, 1),
    "middle eighth": (4, 2, 2, 1),
}
AREA_WORDS = ("tight", "tactical", "running", "match-like")


def usable_share(share: str, *, length_m: float, width_m: float, edge_m: float) -> tuple[float, float]:
    """What is left of a share of a pitch after `edge_m` on each edge shared with others: along its length, across.

    share: one of SHARES; raises KeyError on another. The margin is our own choice (evidence: share.edge-margin).
    """
    along, across, along_edges, across_edges = SHARES[share]
    return length_m / along - edge_m * along_edges, width_m / across - edge_m * across_edges


def space_named(name: str) -> Space:
    """'third of 3G', 'half of 3G', '3G' or 'hall' as a space; the pitch's length runs north. Raises BadInput."""
    text = " ".join(name.casefold().split())
    if text == "hall":
        size = {"across_m": number("hall.4court.width"), "up_m": number("hall.4court.length")}
        return Space(name, run_off_m=number("hall.margin.side"), **size)
    share = "whole" if text in ("3g", "full 3g") else text.removesuffix(" of 3g").removesuffix(" of a 3g")
    if share not in SHARES or (share == text and share != "whole"):
        known = ", ".join(f"{each} of 3G" for each in SHARES if each != "whole")
        raise BadInput([Problem("space", None, None, name, f"a share such as {known}; 3G; or hall")])
    up_m, across_m = usable_share(
        share,
        length_m=number("g3.playing.length"),
        width_m=number("g3.playing.width"),
        edge_m=number("share.edge-margin"),
    )
    return Space(name, across_m=across_m, up_m=up_m)


def area_per_player_m2(*, across_m: float, up_m: float, outfield: int) -> float:
    """Ground per outfield player, m2; goalkeepers do not count."""
    return across_m * up_m / outfield


def area_word(m2_per_player: float) -> str:
    """What an area per outfield player asks for: tight, tactical, running or match-like (evidence: app.*)."""
    for word in AREA_WORDS[:-1]:
        high = value(f"app.{word}").high
        if high is not None and m2_per_player < high:
            return word
    return AREA_WORDS[-1]
