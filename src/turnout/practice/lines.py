"""Ground and people lines in canonical words: what a file says, written back."""

from turnout.measure import UNITS_M
from turnout.practice.model import LINES, Group, Home, PlaceDef, Practice
from turnout.practice.names import singular
from turnout.practice.units import units_side


def ground_line(place: PlaceDef, pieces: tuple[str, ...] = ()) -> str:
    """The expression that declares a place, as under `ground`. `pieces` are the names of halves or thirds where
    `place` is one of them."""
    if place.kind in LINES:
        return line_words(place)
    if place.kind in ("rectangle", "circle", "polygon", "same"):
        return area_words(place)
    if place.word == "channel":
        return f"channel {written(place.depth_m, place.unit)} {place.unit} along the {place.side} side of {place.of}"
    if place.kind == "strip":
        how = "inside" if place.inside else "beyond"
        return f"strip {written(place.depth_m, place.unit)} {place.unit} {how} {side_of(place)}"
    if place.kind == "part":
        word = {2: "halves", 3: "thirds", 4: "quarters"}[place.pieces]
        return f"{word} of {place.of} from {place.along} ({', '.join(pieces)})"
    return ", ".join(place.members)


def area_words(place: PlaceDef) -> str:
    """A rectangle, square, circle, polygon or a place like another."""
    across, up = written(place.across_m, place.unit), written(place.up_m, place.unit)
    if place.kind == "same":
        return f"same as {place.of}, {written(place.depth_m, place.unit)} {place.unit} {place.side} of it"
    if place.kind == "polygon":
        corners = [f"({written(x, place.unit)},{written(y, place.unit)})" for x, y in place.corners]
        return f"polygon {' '.join(corners)} {place.unit}"
    if place.area_m2:
        shape = "square" if place.word else f"rectangle {place.ratio[0]:g}:{place.ratio[1]:g}"
        return f"{shape} with {f'at {place.bound} ' if place.bound else ''}{place.area_m2:g} m2 per player"
    if place.kind == "circle":
        return f"circle {across} {place.unit} across{spot_words(place)}"
    size = across if place.word == "square" else f"{across} x {up}"
    return f"{place.word or 'rectangle'} {size} {place.unit}{spot_words(place)}"


def spot_words(place: PlaceDef) -> str:
    """' at the centre of pitch'; '' for a place in the middle."""
    if place.spot == "point":
        unit = "" if place.at_unit == "yd" else f" {place.at_unit}"
        return f" at ({written(place.x_m, place.at_unit)}, {written(place.y_m, place.at_unit)}){unit}"
    if place.spot == "corner":
        return f" in the {place.corner} corner of {place.of}"
    if place.spot == "side":
        return f" inside {side_of(place)}"
    return f" at the centre of {place.of}" if place.spot == "centre" else ""


def line_words(place: PlaceDef) -> str:
    """A goal or gate: its size and where it stands."""
    high = f" x {written(place.height_m, place.unit)}" if writes_height(place) else ""
    size = f"{place.kind} {written(place.width_m, place.unit)}{high} {place.unit}"
    unit = "" if place.at_unit == "yd" else f" {place.at_unit}"
    if place.side is None:
        x, y = (written(value, place.at_unit) for value in (place.x_m, place.y_m))
        run = "" if place.along == "west to east" else f" from {place.along}"
        return f"{size} at ({x}, {y}){unit}{run}"
    if place.offset_m:
        return f"{size} at {side_of(place)}, {off_middle(place)}"
    return f"{size} at {'the middle of ' if place.kind == 'gate' else ''}{side_of(place)}"


def writes_height(place: PlaceDef) -> bool:
    """Whether a line's height is part of its words: a goal's always, a small goal's when it is not the usual one."""
    from turnout.practice.line_words import SMALL_GOAL_HEIGHT_M

    return place.kind == "goal" or (place.kind == "small goal" and place.height_m != SMALL_GOAL_HEIGHT_M)


def off_middle(place: PlaceDef) -> str:
    """'6 yd west of the middle'."""
    minus, plus = ("west", "east") if place.side in ("north", "south") else ("south", "north")
    way = plus if place.offset_m > 0 else minus
    return f"{written(abs(place.offset_m), place.at_unit)} {place.at_unit} {way} of the middle"


def side_of(place: PlaceDef) -> str:
    """'the north end of pitch'; a gate stands on a side whichever way it lies."""
    end = "end" if place.side in ("north", "south") and place.kind != "gate" else "side"
    return f"the {place.side} {end} of {place.of}"


def written(length_m: float, unit: str) -> str:
    """A length as written in its unit."""
    return f"{round(length_m / UNITS_M[unit], 3):g}"


def people_line(group: Group) -> str:
    """The line that declares a group, as under `people`."""
    count, low, high = (number // group.of for number in (group.count, group.low, group.high))
    told = str(count)
    if group.tie is not None:
        sign = f" {'+' if group.tie.offset > 0 else '-'} {abs(group.tie.offset)}" if group.tie.offset else ""
        told = f"{group.tie.group}{sign}"
    spread = "" if low == high == count and group.tie is None else f" ({low}-{high})" if low != high else f" ({low})"
    return f"{told}{spread}{f' of {group.of}' if group.of > 1 else ''} {home_words(group)}"


def home_words(group: Group) -> str:
    """'in square', 'on the edge of square', 'on the left side of pitch with the ball, in pitch without'."""
    if group.without is None:
        return one_home(group.home)
    return f"{one_home(group.home)} with the ball, {one_home(group.without)} without"


def one_home(home: Home) -> str:
    """'in square', 'from square', 'on the long sides of pitch', 'behind the south end of pitch', 'at (0, -12)'."""
    if home.behind is not None:
        return f"behind the {home.behind} {end_or_side(home.behind)} of {home.place}"
    if home.at is not None:
        unit = "" if home.at_unit == "yd" else f" {home.at_unit}"
        return f"at ({written(home.at[0], home.at_unit)}, {written(home.at[1], home.at_unit)}){unit}"
    if home.sides:
        return f"on {sides_words(home.sides)} of {home.place}"
    return f"{'on the edge of' if home.on_edge else 'in' if home.fence else 'from'} {home.place}"


def sides_words(sides: tuple[str, ...]) -> str:
    """'the north end', 'the long sides', 'the left and right sides'."""
    many = len(sides) > 1 or sides[0] in ("long", "short")
    end = end_or_side(sides[0]) if len({end_or_side(side) for side in sides}) == 1 else "side"
    return f"the {' and '.join(sides)} {end}{'s' if many else ''}"


def end_or_side(side: str) -> str:
    """What a side of a place is called."""
    return "end" if side in ("north", "south") else "side"


def balls_line(practice: Practice) -> str | None:
    """`1 per pair`, `1 per player` or `3`; None where one ball is in play and nothing is written."""
    if practice.balls_in_play == "per player":
        return "1 per player"
    if practice.balls_in_play == "several":
        return str(practice.balls_at_once)
    side = units_side(practice)
    return f"1 per {singular(side)}" if side and practice.balls_in_play == "per unit" else None
