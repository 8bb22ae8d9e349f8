"""Tonight with one thing changed: players, ground, minutes, adults or bibs."""

from dataclasses import replace

from turnout.club.tonight import Space, Tonight

PLENTY_ADULTS = 12
PLENTY_BIBS = 60
PLENTY_M = 400.0
_MORE_COLOURS = ("blue", "yellow", "purple", "white")


def with_players(tonight: Tonight, players: int) -> Tonight:
    """Tonight with this many players; labels are cut, or made up with the numbers that follow."""
    labels = tonight.labels[:players]
    if labels:
        labels += tuple(str(number) for number in range(len(labels) + 1, players + 1))
    return replace(tonight, players=players, labels=labels)


def with_space(tonight: Tonight, *, across_m: float, up_m: float, name: str | None = None) -> Tonight:
    """Tonight on a rectangle of this size, metres; the run-off stays."""
    called = name or f"{across_m:g} × {up_m:g} m"
    return replace(tonight, space=Space(called, across_m, up_m, tonight.space.run_off_m))


def with_minutes(tonight: Tonight, minutes: float) -> Tonight:
    """Tonight with this many minutes."""
    return replace(tonight, minutes=minutes)


def with_adults(tonight: Tonight, adults: int) -> Tonight:
    """Tonight with this many adults."""
    return replace(tonight, adults=adults)


def with_more_bibs(tonight: Tonight, more: int) -> Tonight:
    """Tonight with this many more bibs of every colour in the bag."""
    bibs = tuple((colour, count + more) for colour, count in tonight.kit.bibs)
    return replace(tonight, kit=replace(tonight.kit, bibs=bibs))


def endless_ground(tonight: Tonight) -> Tonight:
    """Tonight on more ground than anybody has."""
    return with_space(tonight, across_m=PLENTY_M, up_m=PLENTY_M, name="endless ground")


def plenty_of_bibs(tonight: Tonight) -> Tonight:
    """Tonight with more bibs than players in at least four colours."""
    colours = dict.fromkeys([colour for colour, _ in tonight.kit.bibs] + list(_MORE_COLOURS), PLENTY_BIBS)
    return replace(tonight, kit=replace(tonight.kit, bibs=tuple(colours.items())))


def plenty_of_adults(tonight: Tonight) -> Tonight:
    """Tonight with more adults than anybody has."""
    return with_adults(tonight, PLENTY_ADULTS)
