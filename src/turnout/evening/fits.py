"""Fit, rota and layout of an evening, and the JSON objects that say them."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from turnout.evening.load import Evening, labels_for
from turnout.fit.model import Copy, Fitted, FittedPart
from turnout.layout.model import Layout
from turnout.practice.model import Place
from turnout.rota.model import BlockPlaces, PartRota


@dataclass(frozen=True)
class FittedEvening:
    """An evening with its answer: who, where, when, and what stands on the ground."""

    evening: Evening
    fitted: Fitted
    rotas: tuple[PartRota, ...] = ()
    layout: Layout | None = None


def fit_evening(evening: Evening) -> FittedEvening:
    """Fit the evening; when it fits, also turns and cones."""
    from turnout.fit import fit_session
    from turnout.layout import lay_out
    from turnout.rota import rota_for

    fitted = fit_session(evening.session, evening.tonight)
    if not fitted.fits:
        return FittedEvening(evening, fitted)
    rotas = rota_for(fitted, labels_for(evening.tonight))
    return FittedEvening(evening, fitted, tuple(rotas), lay_out(fitted))


def fits_for(
    evening: Evening, turnouts: Iterable[int], tell: Callable[[str, float], None] = lambda _stage, _share: None
) -> dict[str, dict]:
    """The fit of every turnout as JSON values, keyed by the turnout."""
    counts = list(turnouts)
    answers = {}
    for done, count in enumerate(counts):
        tell(f"Fitting {counts[0]} to {counts[-1]} players", done / len(counts))
        answers[str(count)] = fit_plain(fit_evening(evening.at(count)))
    return answers


def fit_plain(answer: FittedEvening) -> dict:
    """A fit as JSON values: yes with who, where and when, or no with the smallest change that would do."""
    fitted = answer.fitted
    if not fitted.fits:
        return {"fits": False, "why": list(fitted.why()), "smallest_change": fitted.smallest_change}
    parts = [part_plain(part, rota, fitted) for part, rota in zip(fitted.parts, answer.rotas, strict=True)]
    return {"fits": True, "why": list(fitted.why()), "left_out": list(fitted.left_out), "parts": parts}


def part_plain(part: FittedPart, rota: PartRota, fitted: Fitted) -> dict:
    """One part of the hour as JSON values."""
    return {
        "practice": fitted.session.parts[part.index].practice.key,
        "start_min": part.start_min,
        "minutes": part.minutes,
        "rest_min": part.rest_min,
        "changeover_min": part.changeover_min,
        "bibs": dict(part.bibs),
        "gave_way": list(part.gave_way),
        "blocks": [block_plain(block) for block in rota.blocks],
        "copies": [copy_plain(copy, part) for copy in part.copies],
    }


def block_plain(block: BlockPlaces) -> dict:
    """Who is where in one block: all copies together under `who`, each for itself under `by_copy`."""
    together: dict[str, list[str]] = {}
    apart: dict[int, dict[str, list[str]]] = {}
    for (copy, role), labels in block.who:
        together.setdefault(role, []).extend(labels)
        apart.setdefault(copy, {})[role] = list(labels)
    copies = [apart[copy] for copy in sorted(apart)]
    return {"minutes": block.minutes, "who": together, "waiting": list(block.waiting), "by_copy": copies}


def copy_plain(copy: Copy, part: FittedPart) -> dict:
    """One copy: players of every role, who waits how long at most, and its places on the ground."""
    places = {name: place_plain(place, copy) for name, place in copy.setup.places}
    waiting_s = 60.0 * max(part.blocks) if copy.waiting else 0.0
    return {"roles": dict(copy.setup.counts), "waiting": copy.waiting, "waiting_s": waiting_s, "places": places}


def place_plain(place: Place, copy: Copy) -> dict:
    """A place as a polygon on the ground, a goal or gate as a line from end to end, or a list of places by name."""
    from turnout.fit.ground import place_polygon

    if place.kind == "list":
        return {"members": list(place.members)}
    points = [[round(x, 3), round(y, 3)] for x, y in place_polygon(copy, place.name)]
    return {"line_m": points[::2], "height_m": place.height_m} if place.is_line else {"polygon_m": points}
