"""Bibs: which side wears what, so that few players change between parts. Own shirts are a colour too.

A layered shortest path over the parts. A state is a candidate dressed in some way; what a step costs depends only on
how many wear each colour before and after, so states that wear the same are merged and the cheapest kept.
"""

from dataclasses import dataclass
from itertools import pairwise

import numpy as np

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
    if not all(layers):
        return None
    colours = sorted({colour for layer in layers for dressed in layer for colour, _ in dressed.worn} | {OWN})
    start: Worn = ((OWN, players),)
    table = [_table([start], colours), *(_table([dressed.worn for dressed in layer], colours) for layer in layers)]
    total, back = np.zeros(1), []
    for number, layer in enumerate(layers):
        # (before, after): players wearing a colour beyond the number who wore it before, summed over colours
        changed = np.maximum(table[number + 1][None] - table[number][:, None], 0).sum(axis=2)
        cost = total[:, None] + prices.BIB_CHANGE * changed
        back.append(cost.argmin(axis=0))
        total = cost.min(axis=0) + np.array([dressed.price for dressed in layer])
    return _walked(layers, back, int(total.argmin()), float(total.min()), start)


def _table(states: list[Worn], colours: list[str]) -> np.ndarray:
    """Players per colour of each state, (states, colours)."""
    return np.array([[dict(worn).get(colour, 0) for colour in colours] for worn in states])


def _walked(layers: list[list[Dressed]], back: list[np.ndarray], last: int, price: float, start: Worn) -> Chain:
    """The walk that ends in state `last`, read backwards."""
    walk: list[Dressed] = []
    for layer, before in zip(reversed(layers), reversed(back), strict=True):
        walk.insert(0, layer[last])
        last = int(before[last])
    worn = [start, *(dressed.worn for dressed in walk)]
    return Chain(tuple(walk), tuple(bib_changes(*pair) for pair in pairwise(worn)), price)


def bib_changes(before: Worn, after: Worn) -> int:
    """Fewest players who must change: those wearing a colour beyond the number who wore it before."""
    had = dict(before)
    return sum(max(0, count - had.get(colour, 0)) for colour, count in after)
