"""A fit seen by an independent geometry library: nothing here calls the program's own geometry."""

from shapely.affinity import rotate, translate
from shapely.geometry import Point, Polygon, box
from shapely.ops import unary_union

from turnout.fit.model import Copy, Fitted, FittedPart

EDGE_M = 1.0


def place_shape(copy: Copy, name: str) -> Polygon:
    """A place where it lies in the space."""
    place = copy.setup.place(name)
    half_across, half_up = place.across_m / 2, place.up_m / 2
    if place.kind == "circle":
        shape = Point(place.x_m, place.y_m).buffer(half_across)
    else:
        shape = box(place.x_m - half_across, place.y_m - half_up, place.x_m + half_across, place.y_m + half_up)
    turned = rotate(shape, 90, origin=(0, 0)) if copy.turned else shape
    return translate(turned, copy.x_m, copy.y_m)


def ground_taken(copy: Copy) -> Polygon:
    """Everything a copy takes: its places, and a metre round each place whose edge players stand on."""
    shapes = [place_shape(copy, name) for name, _ in copy.setup.places]
    edges = {group.home.place for group in copy.setup.practice.groups if group.home.on_edge}
    shapes += [place_shape(copy, name).buffer(EDGE_M, join_style="mitre") for name in edges]
    return unary_union(shapes)


def faults(fitted: Fitted) -> list[str]:
    """Everything wrong on the ground, in words; empty when all is well."""
    space = fitted.tonight.space
    off = space.run_off_m
    room = box(off, off, space.across_m - off, space.up_m - off).buffer(1e-6)
    found = []
    for part in fitted.parts:
        taken = [ground_taken(copy) for copy in part.copies]
        gap = part.copies[0].setup.practice.arrange.gap_m
        found += [f"part {part.index}: outside" for shape in taken if not room.contains(shape)]
        near = [one.distance(other) for n, one in enumerate(taken) for other in taken[:n]]
        found += [f"part {part.index}: {metres:.2f} m apart" for metres in near if metres < gap - 1e-6]
        found += people_faults(fitted, part)
    return found


def people_faults(fitted: Fitted, part: FittedPart) -> list[str]:
    """Players lost or doubled, roles out of range, too many waiting, more bibs than there are."""
    found = []
    placed = sum(copy.setup.players + copy.waiting for copy in part.copies)
    if placed != fitted.tonight.players:
        found.append(f"part {part.index}: {placed} players")
    worn: dict[str, int] = {}
    for copy in part.copies:
        practice = copy.setup.practice
        for group, (_, count) in zip(practice.groups, copy.setup.counts, strict=True):
            if not group.low <= count <= group.high:
                found.append(f"part {part.index}: {count} {group.key}")
            if count:
                colour = dict(copy.bibs)[group.side]
                worn[colour] = worn.get(colour, 0) + count
        if copy.waiting > practice.arrange.waiting_at_most:
            found.append(f"part {part.index}: {copy.waiting} waiting")
        colours = [colour for _, colour in copy.bibs]
        if len(set(colours)) != len(colours):
            found.append(f"part {part.index}: two sides in one colour")
    stock = dict(fitted.tonight.kit.bibs)
    found += [f"{count} {colour}" for colour, count in worn.items() if colour != "own" and count > stock[colour]]
    return found
