"""The play told in sentences, from the log alone: nothing is said that was not recorded."""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from math import dist

from turnout.measure import YARD_M
from turnout.play.recording import PlayEvent, Recording
from turnout.practice.model import Place
from turnout.practice.printing import the
from turnout.practice.setup import Setup
from turnout.show.cast import Caption, Cast
from turnout.show.following import followed, gate_between, of_ball
from turnout.show.ink import Side
from turnout.show.shots import shot
from turnout.show.words import listed, number_word

FIRST_TIME_S = 0.35  # a pass this soon after the ball arrived was played first time
TUSSLE_S = 1.2  # tackles closer together than this are one fight for the ball
LOOSE_TOUCH = 4.0  # the log's cause of a ball taken off a loose touch

TOLD_PLAINLY = ("start", "score", "points added", "header")


def captions(recording: Recording, setup: Setup, sides: Sequence[Side]) -> tuple[Caption, ...]:
    """The window told in order. sides: as the drawing shows them tonight."""
    cast = Cast(recording, setup, tuple(sides))
    events = [event for event in recording.events if event.kind != "journey end"]
    ball = followed(events, cast)
    told = list(_told(of_ball(ball, events, cast), cast))
    return (*_opening(cast, told, ball), *told)


def _opening(cast: Cast, told: Sequence[Caption], ball: int) -> Iterator[Caption]:
    """Who has the ball when the window opens; of many balls, which one is followed."""
    start, holder = float(cast.recording.t_s[0]), int(cast.recording.holders[0, ball])
    if len(cast.teams) > 1:
        mates = listed([cast.label(player, start) for player in cast.teams[ball]])
        balls = number_word(len(cast.teams))
        yield Caption(start, f"{balls.capitalize()} balls are in play; this follows {mates}.", kind="hold")
        return
    if told and told[0].t_s - start < 0.3:
        return
    if holder >= 0:
        yield Caption(
            start, f"{cast.label(holder, start)} has the ball{_where(cast, holder, start, None)}.", kind="hold"
        )
    else:
        yield Caption(start, "The ball is on its way.", kind="hold")


def _told(events: Sequence[PlayEvent], cast: Cast) -> Iterator[Caption]:
    index = 0
    while index < len(events):
        event = events[index]
        if event.kind == "pass":
            yield _pass(events, index, cast)
        elif event.kind == "shot":
            yield shot(events, index, cast)
        elif event.kind in ("save", "block") and not _in_flight(events, index):
            yield _stopped(event, cast)
        elif event.kind == "tackle":
            last = _end_of_tussle(events, index)
            yield _tackle(events, index, last, cast)
            index = last
        elif event.kind == "cut out" and not _in_flight(events, index):
            yield Caption(event.t_s, _cut_out(event, cast), kind="won")
        elif event.kind == "change":
            last = _same_moment(events, index)
            yield _change(events[index : last + 1], cast)
            index = last
        elif event.kind in TOLD_PLAINLY or (event.kind == "out" and not _in_flight(events, index)):
            yield _plain(event, cast)
        index += 1


def _pass(events: Sequence[PlayEvent], index: int, cast: Cast) -> Caption:
    """A pass and what became of it: received, cut out, gone out, or still rolling when the window closes."""
    sent = events[index]
    end = _end_of_pass(events, index)
    who = cast.label(sent.player, sent.t_s)
    quick = ", first time," if _first_time(events, index) else ""
    if end is None:
        towards = f" towards {cast.label(sent.other, sent.t_s)}" if sent.other >= 0 else ""
        return Caption(sent.t_s, f"{who}{quick} passes{towards}.", kind="pass")
    line = ((sent.x_m, sent.y_m), (end.x_m, end.y_m))
    text = _passed(sent, end, who, quick, events, index, cast)
    return Caption(sent.t_s, text, line, end.t_s, "pass")


def _passed(
    sent: PlayEvent, end: PlayEvent, who: str, quick: str, events: Sequence[PlayEvent], index: int, cast: Cast
) -> str:
    meant = cast.label(sent.other, sent.t_s) if sent.other >= 0 else ""
    if end.kind == "out":
        return f"{who}{quick} passes{' towards ' + meant if meant else ''}, and it goes out."
    if end.kind in ("save", "block"):
        verb = "gathers" if end.kind == "save" else "blocks"
        towards = f" towards {meant}" if meant else ""
        return f"{who}{quick} passes{towards}; {cast.named(end.player, end.t_s)} {verb} it."
    if end.kind != "control":
        winner = cast.label(end.player, end.t_s)
        loose = end.value == LOOSE_TOUCH and end.other >= 0
        how = (
            f"{cast.label(end.other, end.t_s)}’s touch is loose and {winner} takes it"
            if loose
            else f"{winner} cuts it out"
        )
        return f"{who}{quick} passes{' towards ' + meant if meant else ''}; {how}."
    receiver = cast.label(end.player, end.t_s)
    yd = round(dist((sent.x_m, sent.y_m), (end.x_m, end.y_m)) / YARD_M)
    far = f", {yd} yd" if yd >= 2 else ""
    through = gate_between(cast, sent, end)
    where = f"{f' through {the(through)}' if through else ''}{_where(cast, end.player, end.t_s, end)}"
    if meant and end.player != sent.other:
        text = f"{who}{quick} looks for {meant}, and {receiver} has it{where}{far}"
    else:
        text = f"{who}{quick} passes to {receiver}{where}{far}"
    return f"{text}{_in_a_row(events, index, end, cast)}."


def _in_a_row(events: Sequence[PlayEvent], index: int, end: PlayEvent, cast: Cast) -> str:
    """The run so far, as the next arrival of the same side records it; nothing when play ended before that, nor where
    each small side has a ball that nobody takes from it."""
    if cast.teams:
        return ""
    for later in events[index + 1 :]:
        if later.t_s <= end.t_s + 1e-9:
            continue
        if later.side != end.side and later.kind in ("control", "cut out", "tackle"):
            return ""
        if later.kind in ("stop", "score", "out", "start"):
            return ""
        if later.kind == "control" and later.other >= 0:
            return f": {later.value:.0f} in a row" if later.value >= 2 else ""
    return ""


def _end_of_pass(events: Sequence[PlayEvent], index: int) -> PlayEvent | None:
    ends = ("control", "cut out", "tackle", "out", "save", "block")
    return next((event for event in events[index + 1 :] if event.kind in ends), None)


def _in_flight(events: Sequence[PlayEvent], index: int, kicks: Sequence[str] = ("pass", "shot")) -> bool:
    """Whether what happened to the ball is already told in the sentence of the kick it ended."""
    ends = ("pass", "shot", "control", "tackle", "cut out", "out", "save", "block", "start", "stop", "score")
    before = next((event for event in reversed(events[:index]) if event.kind in ends), None)
    return before is not None and before.kind in kicks


def _stopped(event: PlayEvent, cast: Cast) -> Caption:
    verb = "gathers" if event.kind == "save" else "blocks"
    return Caption(event.t_s, f"{_capital(cast.named(event.player, event.t_s))} {verb} the ball.", kind="won")


def _first_time(events: Sequence[PlayEvent], index: int) -> bool:
    sent = events[index]
    arrivals = ("control", "cut out", "tackle", "start")
    before = next((event for event in reversed(events[:index]) if event.kind in arrivals), None)
    if before is None or before.kind not in ("control", "cut out") or before.player != sent.player:
        return False
    return sent.t_s - before.t_s < FIRST_TIME_S


def _end_of_tussle(events: Sequence[PlayEvent], index: int) -> int:
    """The last of the tackles that follow each other so closely that they are one fight for the ball."""
    last = index
    for number in range(index + 1, len(events)):
        event = events[number]
        if event.t_s - events[last].t_s > TUSSLE_S or event.kind not in ("tackle", "spill", "control"):
            break
        if event.kind == "tackle":
            last = number
    return last


def _tackle(events: Sequence[PlayEvent], index: int, last: int, cast: Cast) -> Caption:
    first, end = events[index], events[last]
    winner = cast.label(end.player, end.t_s)
    if _in_flight(events, index):
        return Caption(first.t_s, f"{winner} wins the ball.", kind="won")
    loser = cast.label(first.other, first.t_s) if first.other >= 0 else "the player with the ball"
    if last == index:
        return Caption(first.t_s, f"{winner} tackles {loser} and has the ball.", kind="won")
    fighters = sorted(
        {cast.label(p, first.t_s) for e in events[index : last + 1] for p in (e.player, e.other) if p >= 0}
    )
    return Caption(first.t_s, f"{listed(fighters)} fight for it, and {winner} comes away with it.", kind="won")


def _cut_out(event: PlayEvent, cast: Cast) -> str:
    who = cast.label(event.player, event.t_s)
    if event.value == LOOSE_TOUCH and event.other >= 0:
        return f"{cast.label(event.other, event.t_s)}’s touch is loose and {who} takes it."
    return f"{who} wins the ball."


def _same_moment(events: Sequence[PlayEvent], index: int) -> int:
    last = index
    while last + 1 < len(events) and events[last + 1].kind == "change" and events[last + 1].t_s == events[index].t_s:
        last += 1
    return last


def _change(events: Sequence[PlayEvent], cast: Cast) -> Caption:
    """Who takes which role: 'A5 comes in and B2 goes out.'"""
    moved = [_moved(event, cast) for event in events]
    owner = [e for e in cast.recording.events if e.kind == "owner" and e.t_s == events[0].t_s]
    lead = f"{cast.playing_side(owner[0].side)} have it now: " if owner else ""
    text = lead + listed(moved)
    return Caption(events[0].t_s, f"{text[:1].upper()}{text[1:]}.", kind="change")


def _moved(event: PlayEvent, cast: Cast) -> str:
    old, new = cast.role(event.player, event.t_s - 1e-3), int(event.value)
    who = f"{cast.side_of(old).letter}{cast.numbers[event.player]}"
    before, after = cast.groups[old], cast.groups[new]
    if before.side == after.side and before.home.on_edge != after.home.on_edge:
        return f"{who} comes in" if before.home.on_edge else f"{who} goes out"
    side = cast.side_of(new)
    role = f"{side.name} {after.role}".strip()
    return f"{who} goes to the {role}"


def _plain(event: PlayEvent, cast: Cast) -> Caption:
    who = cast.label(event.player, event.t_s) if event.player >= 0 else ""
    if event.kind == "start":
        return Caption(event.t_s, f"{who} starts{_where(cast, event.player, event.t_s, None)}.", kind="start")
    if event.kind == "out":
        return Caption(event.t_s, f"The ball goes out{' off ' + who if who else ''}.", kind="out")
    sentence = f" (sentence {event.other})" if event.other > 0 else ""
    if event.kind == "header":
        return Caption(event.t_s, f"{who} heads it.", kind="pass")
    if event.kind == "points added":
        return Caption(event.t_s, f"{cast.playing_side(event.side)} get {event.value:.0f}{sentence}.", kind="score")
    mates = next((team for team in cast.teams if event.player in team), ())
    scorers = listed([cast.label(player, event.t_s) for player in mates]) if mates else cast.playing_side(event.side)
    return Caption(event.t_s, f"{scorers} score {event.value:.0f}{sentence}.", kind="score")


def _where(cast: Cast, player: int, t_s: float, event: PlayEvent | None) -> str:
    """' on the edge' or ' in the north end', from the player's role and where the ball was."""
    if cast.groups[cast.role(player, t_s)].home.on_edge:
        return " on the edge"
    if event is None:
        return ""
    areas = [place for _, place in cast.setup.places[1:] if place.kind in ("rectangle", "circle")]
    zones = [place for place in areas if _holds(place, event)]
    return f" in {the(zones[0].name)}" if zones else ""


def _holds(place: Place, event: PlayEvent) -> bool:
    return abs(event.x_m - place.x_m) <= place.across_m / 2 and abs(event.y_m - place.y_m) <= place.up_m / 2


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def shifted(told: Sequence[Caption], start_s: float) -> tuple[Caption, ...]:
    """Captions with their times counted from `start_s`."""
    return tuple(replace(c, t_s=c.t_s - start_s, line_to_s=c.line_to_s - start_s) for c in told)
