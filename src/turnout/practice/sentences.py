"""Ground, people and rules of a set-up practice as sentences, with actual numbers and sizes in yards."""

from collections.abc import Mapping, Sequence

from turnout.measure import yards
from turnout.practice.line_sentences import line_sentence_words, lines_words, listed_lines, off_middle
from turnout.practice.lines import end_or_side, sides_words, written
from turnout.practice.model import LINES, Group, Place, PlaceDef, Practice
from turnout.practice.names import COLOURS, names_of
from turnout.practice.printing import one, print_rule, side_name, the, tonight_name
from turnout.practice.setup import Setup
from turnout.practice.starts import at_point
from turnout.practice.units import counted as small_sides


def rule_sentences(practice: Practice, sides: Mapping[str, str] | None = None) -> list[str]:
    """Every rule in canonical words; `sides` maps stand-in side names to tonight's ({'amber': 'blue'})."""
    names = names_of(practice)
    return [print_rule(rule.phrase, names, sides) for rule in practice.rules]


def people_sentences(setup: Setup, sides: Mapping[str, str] | None = None) -> list[str]:
    """Who is where: '4 amber v 3 blue inside a square of 16 yd.' and '3 amber and 3 blue edge players on its edge.'"""
    told: list[str] = []
    last: str | None = None
    for groups in by_home(setup):
        home = groups[0].home
        if groups[0].keeper or groups[0].waits or groups[0].of > 1:
            told.append(f"{special(setup, groups, sides or {}, named=seen(told, home.place))}.")
            last = home.place
            continue
        where = place_words(
            setup.place(home.place), home.on_edge, last == home.place, seen(told, home.place), home.sides
        )  # fmt: skip
        if home.at is not None:
            where = f"at a point {off_middle(*point_of(setup, groups[0]))}"
        role = groups[0].role if home.on_edge or groups[0].role != "inside" else ""
        told.append(f"{counted(setup, groups, role, sides or {})} {where}{otherwise(groups[0])}.")
        last = home.place
    return told


def otherwise(group: Group) -> str:
    """' with the ball, in the court without it'; '' for a group with one home."""
    home = group.without
    if home is None:
        return ""
    edge = f"on {sides_words(home.sides) if home.sides else 'the edge'} of"
    return f" with the ball, {edge if home.on_edge else 'inside'} {the(home.place)} without it"


def by_home(setup: Setup) -> list[list[Group]]:
    """Groups that somebody is in tonight, those of one role and home together, in the order of `people`."""
    found: dict[tuple[object, str], list[Group]] = {}
    for group in setup.practice.groups:
        if setup.count(group.key):
            alone = "" if group.role or group.side in COLOURS else group.side
            place = "" if group.keeper else group.home.place
            home = (place, group.home.on_edge, group.home.sides, group.home.at, group.without)
            found.setdefault((home, group.role or alone), []).append(group)
    return list(found.values())


def special(setup: Setup, groups: Sequence[Group], sides: Mapping[str, str], *, named: bool) -> str:
    """Keepers, many small sides and those who wait: '6 pairs, each with a ball, inside a basin of 26 x 22 yd'."""
    group, count = groups[0], setup.count(groups[0].key)
    if group.keeper:
        told = [f"1 {side_word(one, sides, adjective=True)} keeper in {the(one.home.place)}" for one in groups]
        return " and ".join(told)
    if group.waits:
        end = "end" if group.home.behind in ("north", "south") else "side"
        verb = "waits" if count == 1 else "wait"
        return f"{count} {verb} behind the {group.home.behind} {end} of {the(group.home.place)}"
    ball = ", each with a ball," if setup.practice.balls_in_play == "per unit" else ""
    return f"{small_sides(group, count)}{ball} {place_words(setup.place(group.home.place), False, False, named)}"


def counted(setup: Setup, groups: Sequence[Group], role: str, sides: Mapping[str, str]) -> str:
    """'4 amber v 3 blue', '3 amber and 3 blue edge players', '2 neutrals'."""
    between = " v " if not groups[0].home.on_edge else " and "
    counts = [setup.count(group.key) for group in groups]
    words = [side_word(group, sides, adjective=bool(role) or n == 1) for group, n in zip(groups, counts, strict=True)]
    told = between.join(f"{count} {word}" for count, word in zip(counts, words, strict=True))
    players = " player" if counts[-1] == 1 else " players"
    return f"{told} {role}{players}" if role else told


def side_word(group: Group, sides: Mapping[str, str], *, adjective: bool) -> str:
    """A side's word tonight: 'blue', 'green shirts' or, before a role, 'green shirt'."""
    name = tonight_name(group.side, sides)
    return side_name(name, "adjective" if adjective else "noun")


def seen(told: Sequence[str], name: str) -> bool:
    """Whether a sentence has introduced the place."""
    return any(f" {name} " in sentence for sentence in told)


def point_of(setup: Setup, group: Group) -> tuple[float, float]:
    """Where a group at a point stands tonight, metres."""
    assert group.home.at is not None
    return at_point(setup, group.home.at, 1)[0]


def place_words(place: Place, on_edge: bool, just_named: bool, named: bool, sides: tuple[str, ...] = ()) -> str:
    """'inside a square of 16 yd', 'on its edge', 'on its long sides', 'in it', 'on the edge of the square'."""
    edge = sides_words(sides) if sides else "the edge"
    if just_named:
        return f"on its {edge.removeprefix('the ')}" if on_edge else "inside it"
    words = the(place.name) if named else introduced(place)
    return f"on {edge} of {words}" if on_edge else f"inside {words}"


def introduced(place: Place) -> str:
    """A place with its size: 'a square of 16 yd', 'a pitch of 24 x 34 yd', 'box 2 (10 x 8 yd)'."""
    size = size_words(place)
    if the(place.name) == place.name:
        return f"{place.name} ({size})"
    return f"{one(place.name)} of {size}"


def size_words(place: Place) -> str:
    """'16 yd' for a square, '24 x 34 yd', '18 yd across' for a circle."""
    across, up = trimmed(yards(place.across_m)), trimmed(yards(place.up_m))
    if place.kind == "polygon":
        return f"{len(place.corners)} sides within {trimmed(yards(place.across_m))} x {trimmed(yards(place.up_m))} yd"
    if place.kind == "circle":
        return f"{across} yd across"
    return f"{across} yd" if across == up else f"{across} x {up} yd"


def trimmed(value: float) -> str:
    """A number to one decimal, whole when it is whole."""
    return f"{value:.1f}".removesuffix(".0")


def ground_sentences(setup: Setup, sides: Mapping[str, str] | None = None) -> list[str]:
    """Every place with its size: 'Square: 16 yd.', 'North end: the 5 yd inside the north end of the pitch.'"""
    told, listed = [], listed_lines(setup.practice)
    for definition in setup.practice.ground:
        words = ground_words(definition, setup.place(definition.name))
        if found := listed.get(definition.name):
            words = lines_words(found)
        told.append(f"{definition.name[:1].upper()}{definition.name[1:]}: {words}.")
    return told


def ground_words(definition: PlaceDef, place: Place) -> str:
    """What a place is, at its size."""
    if definition.kind in LINES:
        return line_sentence_words(definition, place)
    if definition.kind == "list":
        return " and ".join(the(name) for name in definition.members)
    if definition.kind == "strip":
        depth = place.up_m if definition.side in ("north", "south") else place.across_m
        how = "inside" if definition.inside else "beyond"
        end = "end" if definition.side in ("north", "south") else "side"
        return f"the {trimmed(yards(depth))} yd {how} the {definition.side} {end} of {the(definition.of or '')}"
    if definition.kind == "part":
        share = {2: "half", 3: "third", 4: "quarter"}[definition.pieces]
        return f"a {share} of {the(definition.of or '')}, {size_words(place)}"
    if definition.kind == "same":
        beside = f"{written(definition.depth_m, definition.unit)} {definition.unit} {definition.side}"
        return f"{size_words(place)}, {beside} of {the(definition.of or '')}"
    return f"{size_words(place)}{stands(definition, place)}"


def stands(definition: PlaceDef, place: Place) -> str:
    """', at the centre of the pitch'; '' for a place in the middle of all."""
    of = the(definition.of) if definition.of else ""
    if definition.spot == "centre":
        return f", at the centre of {of}"
    if definition.spot == "corner":
        return f", in the {definition.corner} corner of {of}"
    if definition.spot == "side":
        return f", inside the {definition.side} {end_or_side(definition.side or '')} of {of}"
    return f", {off_middle(place.x_m, place.y_m)}" if definition.spot == "point" else ""
