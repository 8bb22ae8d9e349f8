"""A coach's words for the players and places of one practice: used only where exactly one of them fits."""

from collections.abc import Iterator, Mapping
from dataclasses import replace

from turnout.practice.lexer import Piece, named
from turnout.practice.model import LINES, Group, Phrase
from turnout.practice.names import Names, singular
from turnout.practice.saying.words import Token, words_alike

EDGE = (
    "outside player", "helper", "player outside", "player on outside", "player on edge", "player on outside of square",
    "outsides", "outsider", "wall player", "bumper", "bounce player", "1 outside", "1 on outside", "edge", "edge "
     "player",
    "outer player", "player around edge", "helper on outside", "player round edge", "wall", "support player",
     "outside 1",
    "helper on edge", "player round outside", "player around outside", "someone on outside", "player on the side",
     "mate on edge", "mate on outside", "mate outside", "outside mate", "player on sides", "outside support", "side "
     "player",
)  # fmt: skip
INSIDE = (
    "inside player", "player inside", "player in middle", "middle player", "insider", "1 in middle", "1 inside",
    "inside 1", "player in square",
)  # fmt: skip
NEUTRAL = (
    "neutral", "neutral player", "floater", "floating player", "joker", "magic player", "spare player", "extra player",
    "free player", "all-time attacker", "extra", "bib", "wild card", "wildcard", "neutral 1", "magic",
)  # fmt: skip
HUNTERS = (
    "middle player", "player in middle", "1 in middle", "pair in middle", "2 in middle", "middle pair", "middle 1",
    "middle 2", "defender", "press player", "presser", "2 defender", "chaser", "piggy", "two", "player defend",
)  # fmt: skip
KEEPERS = ("keeper", "shot stopper", "player in goal")
SERVERS = ("server", "coach", "me", "i", "feeder", "server player")
FIRST = (
    "square",
    "grid",
    "area",
    "pitch",
    "field",
    "box",
    "circle",
    "playing area",
    "zone",
    "bay",
    "lane",
    "big square",
)
MIDDLE = ("middle", "middle square", "central square", "middle box", "middle zone", "centre", "center", "central zone")


Alias = tuple[tuple[str, ...], str, Phrase | str]  # its words, the type it reads as, what it means


def aliases(names: Names) -> list[Alias]:
    """Every coach's word for players and places of the practice; one that would mean two things means none."""
    whom = only_one(who_words(names))
    roles = {
        words: str(value["role"]) for words, value in whom.items() if [name for name, _ in value.slots] == ["role"]
    }
    kinds: dict[str, Mapping[tuple[str, ...], Phrase | str]] = {
        "coach_who": whom, "coach_role": roles, "coach_place": only_one(place_words(names)),
        "coach_end": only_one(end_words(names)), "in_middle": only_one(middle_words(names)),
        "coach_places": only_one(list_words(names)), "server_who": only_one(server_words(names)),
        "on_edge": only_one(edge_words(names)),
    }  # fmt: skip
    return [(words, kind, value) for kind, some in kinds.items() for words, value in some.items()]


def only_one(pairs: Iterator[tuple[str, Phrase]]) -> dict[tuple[str, ...], Phrase]:
    """Words and what they mean, without those that mean two things."""
    found: dict[tuple[str, ...], set[Phrase]] = {}
    for words, value in pairs:
        found.setdefault(tuple(words_alike(words)), set()).add(value)
    return {words: next(iter(values)) for words, values in found.items() if len(values) == 1}


def server_words(names: Names) -> Iterator[tuple[str, Phrase]]:
    """Words for the one who serves."""
    value = single([group for group in names.groups if "server" in (group.side, group.role)])
    if value is not None:
        yield from ((word, value) for word in SERVERS)


def edge_words(names: Names) -> Iterator[tuple[str, Phrase]]:
    """“On the outside”: those on the edge; in a rondo those round it."""
    groups = [group for group in names.groups if group.home.on_edge and not group.home.sides and not group.waits]
    value = single(groups)
    if value is not None:
        yield from ((word, value) for word in ("on outside", "on edge", "round outside", "on wall", "outside"))


def list_words(names: Names) -> Iterator[tuple[str, Phrase]]:
    """“The zones”: the one list of places that ends so."""
    lasts = [name.split()[-1] for name in names.lists]
    for name, last in zip(names.lists, lasts, strict=True):
        if lasts.count(last) == 1:
            yield last, named_place(name)


def whom(group: Group) -> Phrase:
    """What a sentence calls a group whose role has one side or several."""
    if group.role:
        return Phrase("who.role", (("role", group.role),))
    return Phrase("who.side", (("side", group.side),))


def single(groups: list[Group]) -> Phrase | None:
    """The one noun phrase that all these groups go by, None where there are none or several."""
    found = {whom(group) for group in groups}
    return found.pop() if len(found) == 1 else None


def who_words(names: Names) -> Iterator[tuple[str, Phrase]]:
    """Words for players and whom they mean."""
    playing = [group for group in names.groups if not group.waits]
    edge = [group for group in playing if group.home.on_edge and not group.keeper]
    inner = [group for group in playing if not group.home.on_edge and group.home.at is None and not group.keeper]
    neutral = [group for group in playing if "neutral" in (group.side, group.role)]
    if not neutral and len({group.side for group in playing}) == 3:
        neutral = [group for group in edge if sum(other.side == group.side for other in playing) == 1]
    servers = [group for group in playing if "server" in (group.side, group.role)]
    kinds = ((EDGE, edge), (NEUTRAL, neutral), (KEEPERS, [group for group in playing if group.keeper]))
    for words, groups in (*kinds, (SERVERS, servers), (INSIDE, inner if edge and all(g.role for g in inner) else [])):
        if (value := single(groups)) is not None:
            yield from ((word, value) for word in words)
    yield from hunting(names, playing)
    yield from counted(playing)
    yield from endings(playing)


def counted(playing: list[Group]) -> Iterator[tuple[str, Phrase]]:
    """“The three floaters”: a role or side with as many as the practice has."""
    for name in {group.role or group.side for group in playing}:
        groups = [group for group in playing if name == (group.role or group.side)]
        if len({group.count for group in groups}) == 1 and groups[0].count > 1 and (value := single(groups)):
            yield f"{groups[0].count} {name}", value
            yield from ((f"{groups[0].count} {word}", value) for word in NEUTRAL[:3] if name == "neutral")


def hunting(names: Names, playing: list[Group]) -> Iterator[tuple[str, Phrase]]:
    """Those in the middle of a rondo; else “defenders” as the side without the ball, where no name says so."""
    sides = {group.side for group in playing}
    if rondo := rondo_defenders(names):
        yield from ((word, whom(rondo)) for word in HUNTERS)
        others = [group for group in playing if group != rondo]
        yield from ((word, value) for word in (*EDGE, "attacker") if (value := single(others)))
    elif not any("defend" in name for name in (*names.sides, *names.roles)) and len(sides) > 1:
        yield "defender", Phrase("who.side without the ball")
        yield "presser", Phrase("who.side without the ball")
    if not any("attack" in name for name in names.all()) and len(sides) > 1:
        yield "attacker", Phrase("who.side with the ball")


def rondo_defenders(names: Names) -> Group | None:
    """The fewer of two sides in one place without goals or ends: those in the middle."""
    playing = [group for group in names.groups if not group.waits]
    if len(playing) != 2 or len(names.places) != 1 or playing[0].home.place != playing[1].home.place:
        return None
    few = min(playing, key=lambda group: group.count)
    return few if playing[0].count != playing[1].count and playing[0].side != playing[1].side else None


def endings(playing: list[Group]) -> Iterator[tuple[str, Phrase]]:
    """The last word of a role of several words, where one role ends so: “targets”, “the recovering one” not."""
    roles = list(dict.fromkeys(group.role for group in playing if group.role))
    for role in roles:
        last = role.split()[-1]
        if sum(other.split()[-1] == last for other in roles) == 1 and last != role:
            yield last, Phrase("who.role", (("role", role),))
        yield from ((f"{role} {man}", Phrase("who.role", (("role", role),))) for man in ("man", "1"))


def named_place(name: str) -> Phrase:
    """A place by its name."""
    return Phrase("place.named", (("place", name),))


def place_words(names: Names) -> Iterator[tuple[str, Phrase]]:
    """Words for places and which they mean."""
    first, rest = names.places[0] if names.places else "", names.places[1:]
    by_last: dict[str, list[str]] = {}
    for name in names.places:
        by_last.setdefault(" ".join(words_alike(name.split()[-1])), []).append(name)
    taken = {last for last, some in by_last.items() if some != [first]}
    yield from ((word, named_place(first)) for word in FIRST if first and words_alike(word)[-1] not in taken)
    for last, some in by_last.items():
        one = some if len(some) == 1 else [name for name in some if name in names.lists]
        if len(one) == 1 and (len(some) == 1 or covers(names, one[0], some)) and not last.isdigit():
            yield last, named_place(one[0])
    middle = [name for name in rest if set(words_alike(name)) & {"middle", "central", "centre", "center"}]
    spots = [place.name for place in names.ground if place.spot == "centre" and place.name != first]
    chosen = middle or spots
    if not chosen and any(group.home.on_edge for group in names.groups):
        chosen = [first]
    if len(chosen) == 1:
        yield from ((word, named_place(chosen[0])) for word in (*MIDDLE, *(("inside",) if chosen == [first] else ())))


def covers(names: Names, whole: str, some: list[str]) -> bool:
    """Whether a list holds every other of these places."""
    members = next((place.members for place in names.ground if place.name == whole), ())
    return set(some) <= {whole, *members}


def end_words(names: Names) -> Iterator[tuple[str, Phrase]]:
    """“The end zone” of two opposite ends: to who scores there, the one attacked."""
    by_name = {place.name: place for place in names.ground}
    for place in names.ground:
        ends = [by_name[name] for name in place.members if name in by_name]
        opposite = {end.side for end in ends} in ({"north", "south"}, {"east", "west"})
        if len(ends) == 2 and opposite and all(end.kind in (*LINES, "strip") for end in ends):
            last = singular(place.name).split()[-1]
            yield singular(place.name), Phrase("place.attacking end")
            value = Phrase("place.attacking end")
            yield from ((words, value) for words in (last, f"end {last}", "end", f"other {last}", "far end"))


def middle_words(names: Names) -> Iterator[tuple[str, Phrase]]:
    """“Goes in the middle” in a rondo: joins those in the middle."""
    rondo = rondo_defenders(names)
    for words in ("in middle", "inside", "in", "into middle", "in there", "middle", "in to defend", "in the square"):
        if rondo:
            yield words, whom(rondo)


def words_of_names(pieces: list[Piece], names: Names) -> frozenset[int]:
    """The numbers of the written words that are a name's."""
    starts = range(len(pieces))
    every = [one for start in starts for one in named(pieces, start, start, names)]
    return frozenset(at for one in every for at in range(one.start, one.end))


def named_readings(
    pieces: list[Piece], tokens: list[Token], names: Names
) -> Mapping[tuple[str, int], tuple[tuple[int, Phrase | str], ...]]:
    """The readings of names and of coach's words: (type, token where it begins) -> where it ends and its value."""
    found: dict[tuple[str, int], dict[tuple[int, Phrase | str], None]] = {}
    first_of = {token.at: number for number, token in reversed(list(enumerate(tokens)))}
    taken: set[tuple[int, int, bool]] = set()
    pieces = [replace(piece, word=piece.word.removesuffix("'s")) for piece in pieces]
    for number, token in enumerate(tokens):
        if first_of[token.at] != number:
            continue
        for reading in named(pieces, token.at, token.at, names):
            end = number + sum(number <= at and other.at < reading.end for at, other in enumerate(tokens))
            end -= end > number + 1 and tokens[end - 1].word == "'s"
            kind = {"SIDE": "side_name", "ROLE": "role_name", "PLACE": "place_name"}[reading.terminal]
            found.setdefault((kind, number), {})[(end, str(reading.value))] = None
            if reading.terminal == "PLACE" and str(reading.value) in names.lists:
                found.setdefault(("list_name", number), {})[(end, str(reading.value))] = None
            taken.add((number, end, kind == "place_name"))
    words = [token.word for token in tokens]
    for said, kind, value in aliases(names):
        for number in range(len(words) - len(said) + 1):
            end = number + len(said)
            place = kind.startswith(("coach_place", "coach_end"))
            many = pieces[tokens[end - 1].at].word.endswith("s")
            if kind == "coach_end" and many:
                continue
            if (
                tuple(words[number:end]) != said
                or (kind != "coach_end" and (number, end, place) in taken)
                or (kind == "coach_places" and not many)
            ):
                continue
            found.setdefault((kind, number), {})[(end, value)] = None
    return {key: tuple(values) for key, values in found.items()}
