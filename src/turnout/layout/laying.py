"""The evening's layout: what stands in each part, what is lifted and laid between parts, and what the bag lacks."""

from collections import Counter
from itertools import permutations

from turnout.fit.model import Fitted, FittedPart
from turnout.fit.words import joined, plural
from turnout.layout.cones import Cone, cones_of
from turnout.layout.heaps import heaps_of
from turnout.layout.model import Item, Layout, PartLayout
from turnout.practice.nets import has_net
from turnout.practice.units import balls_for

SAME_SPOT_M = 0.3  # a cone this near to where one is wanted stays


def lay_out(fitted: Fitted) -> Layout:
    """Cones, heaps and the coach's spot for every part, in the space's metres; no parts when it does not fit."""
    standing: list[Item] = []
    parts, most = [], Counter[str]()
    for part in fitted.parts:
        cones = _coloured(part, fitted.tonight.kit.cones)
        found = _changed(standing, cones)
        items = (*cones, *heaps_of(part, fitted.tonight.space))
        lay, lift, stay = (sum(found[what].values()) for what in ("lay", "lift", "stay"))
        parts.append(PartLayout(part.index, items, lay, lift, stay, change_sentence(found)))
        most |= Counter(item.colour for item in cones)
        standing = cones
    kit = _kit(fitted, most)
    return Layout(tuple(parts), kit, _short(fitted, most))


def _coloured(part: FittedPart, stock: tuple[tuple[str, int], ...]) -> list[Item]:
    """Cones in two colours of the bag, outlines and zone lines, so chosen that as few as can be are lacking."""
    cones = [cone for copy in part.copies for cone in cones_of(copy)]
    line, zone = _colours(cones, stock)
    return [
        Item(cone.kind, cone.x_m, cone.y_m, zone if cone.kind == "zone cone" else line, part.index)  # type: ignore[arg-type]
        for cone in cones
    ]


def _colours(cones: list[Cone], stock: tuple[tuple[str, int], ...]) -> tuple[str, str]:
    """(outline colour, zone colour): two different ones if the bag has two; earlier in the bag wins a tie."""
    names = [name for name, _ in stock] or ["white"]
    if len(names) == 1:
        return names[0], names[0]
    zones = sum(cone.kind == "zone cone" for cone in cones)
    need = (len(cones) - zones, zones)

    def lacking(pair: tuple[str, ...]) -> int:
        return sum(max(0, count - dict(stock)[name]) for count, name in zip(need, pair, strict=True))

    line, zone = min(permutations(names, 2), key=lacking)
    return line, zone


def _changed(before: list[Item], after: list[Item]) -> dict[str, Counter[str]]:
    """Colours laid, lifted and left standing between two parts; each cone stays for at most one."""
    left = list(before)
    found: dict[str, Counter[str]] = {"lay": Counter(), "lift": Counter(), "stay": Counter()}
    for cone in after:
        same = next((old for old in left if old.colour == cone.colour and _apart_m(old, cone) <= SAME_SPOT_M), None)
        if same is None:
            found["lay"][cone.colour] += 1
        else:
            left.remove(same)
            found["stay"][cone.colour] += 1
    found["lift"].update(cone.colour for cone in left)
    return found


def _apart_m(one: Item, other: Item) -> float:
    return ((one.x_m - other.x_m) ** 2 + (one.y_m - other.y_m) ** 2) ** 0.5


def change_sentence(found: dict[str, Counter[str]]) -> str:
    """'Move 8 white cones, lay 4 red cones, take up 2 white cones; 4 stay.'"""
    lay, lift = found["lay"], found["lift"]
    moved = lay & lift
    steps = [("move", moved), ("lay", lay - moved), ("take up", lift - moved)]
    words = [f"{verb} {_cones(counts)}" for verb, counts in steps if counts]
    stay = sum(found["stay"].values())
    tail = f"; {stay} stay{'s' if stay == 1 else ''}" if stay else ""
    text = ", ".join(words) if words else "nothing to lay"
    return f"{text[0].upper()}{text[1:]}{tail}."


def _cones(counts: Counter[str]) -> str:
    named = [f"{count} {colour}" for colour, count in sorted(counts.items(), key=lambda pair: (-pair[1], pair[0]))]
    return f"{joined(named)} cone{'s' if sum(counts.values()) > 1 else ''}"


def _kit(fitted: Fitted, most: Counter[str]) -> tuple[tuple[str, int], ...]:
    """What the evening needs: most cones laid at once, most bibs worn at once, most balls."""
    cones = [(f"{colour} cones", count) for colour, count in sorted(most.items())]
    bibs = [(f"{colour} bibs", count) for colour, count in sorted(_bibs_worn(fitted).items())]
    return (*cones, *bibs, *_goals(fitted), ("balls", _balls(fitted)))


def _goals(fitted: Fitted) -> list[tuple[str, int]]:
    """Goals of each kind, most at once: 'goals', 'small goals'."""
    most = Counter[str]()
    for part in fitted.parts:
        most |= Counter(f"{place.kind}s" for copy in part.copies for _, place in copy.setup.places if has_net(place))
    return sorted(most.items())


def _bibs_worn(fitted: Fitted) -> Counter[str]:
    most = Counter[str]()
    for part in fitted.parts:
        worn = Counter[str]()
        for copy in part.copies:
            sides = {group.key: group.side for group in copy.setup.practice.groups}
            for key, count in copy.setup.counts:
                worn[dict(copy.bibs).get(sides[key], "own")] += count
        most |= worn
    del most["own"]
    return most


def _balls(fitted: Fitted) -> int:
    """Balls of the part that needs most."""
    return max((_balls_of(part) for part in fitted.parts), default=0)


def _balls_of(part: FittedPart) -> int:
    """The practice's number for each copy; where many are in play at once, as many as are."""
    return sum(balls_for(copy.setup) for copy in part.copies)


def _short(fitted: Fitted, most: Counter[str]) -> tuple[str, ...]:
    """What the bag lacks, in words."""
    kit = fitted.tonight.kit
    stock = dict(kit.cones)
    lines = [
        f"{plural(count - stock.get(colour, 0), f'{colour} cone')} short: "
        f"{count} at once, {stock.get(colour, 0)} in the bag."
        for colour, count in sorted(most.items())
        if count > stock.get(colour, 0)
    ]
    return (*lines, *_balls_short(fitted))


def _balls_short(fitted: Fitted) -> list[str]:
    """The part whose areas together want more balls than there are."""
    wanted, there = _balls(fitted), fitted.tonight.kit.balls
    if wanted <= there:
        return []
    part = max(fitted.parts, key=_balls_of)
    name = part.copies[0].setup.practice.name
    each = {balls_for(copy.setup) for copy in part.copies}
    areas = plural(len(part.copies), "area")
    told = f"{each.pop()} at each" if len(each) == 1 else "one for each in play"
    return [f"{name}: {there} balls for {areas}, {wanted} would be {told}."]
