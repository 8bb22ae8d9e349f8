"""Ground and people lines in canonical words: what a file says, written back."""

from turnout.measure import UNITS_M
from turnout.practice.model import LINES, Group, PlaceDef, Practice
from turnout.practice.names import singular
from turnout.practice.units import units_side


def ground_line(place: PlaceDef, pieces: tuple[str, ...] = ()) -> str:
    """The expression that declares a place, as under `ground`. `pieces` are the names of halves or thirds where
    `place` is one of them."""
    if place.kind in LINES:
        return line_words(place)
    if place.kind == "rectangle":
        return f"rectangle {written(place.across_m, place.unit)} x {written(place.up_m, place.unit)} {place.unit}"
    if place.kind == "circle":
        return f"circle {written(place.across_m, place.unit)} {place.unit} across"
    if place.kind == "strip":
        how = "inside" if place.inside else "beyond"
        return f"strip {written(place.depth_m, place.unit)} {place.unit} {how} {side_of(place)}"
    if place.kind == "part":
        word = {2: "halves", 3: "thirds"}[place.pieces]
        return f"{word} of {place.of} from {place.along} ({', '.join(pieces)})"
    return ", ".join(place.members)


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
    """'in square', 'on the edge of square', 'from square', 'behind the south end of pitch'."""
    home = group.home
    if home.behind is not None:
        end = "end" if home.behind in ("north", "south") else "side"
        return f"behind the {home.behind} {end} of {home.place}"
    return f"{'on the edge of' if home.on_edge else 'in' if home.fence else 'from'} {home.place}"


def balls_line(practice: Practice) -> str | None:
    """`1 per pair` or `1 per player`; None where one ball is in play and nothing is written."""
    if practice.balls_in_play == "per player":
        return "1 per player"
    side = units_side(practice)
    return f"1 per {singular(side)}" if side and practice.balls_in_play == "per unit" else None
