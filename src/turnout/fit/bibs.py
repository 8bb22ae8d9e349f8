"""Bibs: which side wears what, so that few players change between parts. Own shirts are a colour too.

A layered shortest path over the parts. A state is a candidate dressed in some way; what a step costs depends only on
how many wear each colour before and after, so states that wear the same are merged and the cheapest kept.
"""

from dataclasses import dataclass

from turnout.club.tonight import Kit
from turnout.fit import prices
from turnout.fit.candidates import Candidate
from turnout.fit.dress import OWN, Dress, Worn, dressings, sides_of
from turnout.practice.model import Practice


@dataclass(frozen=True)
class Dressed:
    """A candidate and the bibs of each copy: what it costs, and how many wear each colour."""

    candidate: Candidate
    copies: tuple[Dress, ...]
    worn: Worn
    price: float  # candidate and colours, without the changes into it


@dataclass(frozen=True)
class Chain:
    """One dressed candidate per part, the bib changes into each part, and the price of it all."""

    dressed: tuple[Dressed, ...]
    changes: tuple[int, ...]
    price: float


def dress_all(practice: Practice, found: tuple[Candidate, ...], kit: Kit) -> list[Dressed]:
    """Every candidate in every way the kit dresses it; of those that wear the same, the cheapest."""
    best: dict[Worn, Dressed] = {}
    for candidate in found:
        for copies, worn, extra in dressings(sides_of(practice, candidate.way), kit):
            dressed = Dressed(candidate, copies, worn, candidate.price + extra)
            if worn not in best or dressed.price < best[worn].price - 1e-9:
                best[worn] = dressed
    return sorted(best.values(), key=lambda dressed: (dressed.price, dressed.worn))


def chain(layers: list[list[Dressed]], players: int) -> Chain | None:
    """The cheapest walk through the parts, bib changes priced; None when a part cannot be dressed."""
    start: Worn = ((OWN, players),)
    best: dict[Worn, Chain] = {start: Chain((), (), 0.0)}
    for layer in layers:
        step: dict[Worn, Chain] = {}
        for worn, so_far in best.items():
            for dressed in layer:
                changed = bib_changes(worn, dressed.worn)
                price = so_far.price + dressed.price + prices.BIB_CHANGE * changed
                if dressed.worn not in step or price < step[dressed.worn].price - 1e-9:
                    step[dressed.worn] = Chain((*so_far.dressed, dressed), (*so_far.changes, changed), price)
        best = step
    return min(best.values(), key=lambda found: found.price) if best else None


def bib_changes(before: Worn, after: Worn) -> int:
    """Fewest players who must change: those wearing a colour beyond the number who wore it before."""
    had = dict(before)
    return sum(max(0, count - had.get(colour, 0)) for colour, count in after)
