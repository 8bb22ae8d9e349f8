"""The replay of each part: a clear passage of the simulated play, as a page of its own."""

from collections.abc import Sequence

from turnout.evening.fits import FittedEvening
from turnout.evening.forecasts import Tell, nobody
from turnout.fit.model import FittedPart
from turnout.play.recording import Recording
from turnout.show.evening import EveningView, PartView
from turnout.show.ink import Side


def recorded(answer: FittedEvening, part: FittedPart) -> Recording:
    """The passage to show of a part: its first copy, the one that is drawn, played from the evening's seed."""
    from turnout.play.simulate import record
    from turnout.study.passage import find

    tonight, setup, seed = answer.evening.tonight, part.copies[0].setup, answer.evening.seed
    surface = tonight.surface
    window = find(setup, age=tonight.age, level=tonight.level, seed=seed, surface=surface)
    return record(setup, age=tonight.age, level=tonight.level, seed=seed, window=window, surface=surface)


def replay_files_of(answer: FittedEvening, view: EveningView, index: int) -> dict[str, str]:
    """The replay of one part as three files for a server: replay.html, replay.css and replay.js."""
    from turnout.show.captions import captions
    from turnout.show.replay import replay_files

    part, seen = answer.fitted.parts[index], view.parts[index]
    setup, recording = part.copies[0].setup, recorded(answer, part)
    return replay_files(recording, setup, seen, captions(recording, setup, sides(seen)))


def replay_pages(answer: FittedEvening, view: EveningView, tell: Tell = nobody) -> dict[str, str]:
    """The replays of all parts, each one file that needs nothing else, by the practice's key."""
    from turnout.show.captions import captions
    from turnout.show.replay import replay_page

    pages: dict[str, str] = {}
    for done, (part, seen) in enumerate(zip(answer.fitted.parts, view.parts, strict=True)):
        tell("Recording the replays", done / len(view.parts))
        setup, recording = part.copies[0].setup, recorded(answer, part)
        told = captions(recording, setup, sides(seen))
        pages[free_name(seen.key, pages)] = replay_page(recording, setup, seen, told)
    return pages


def sides(part: PartView) -> Sequence[Side]:
    """The sides as tonight's drawing shows them."""
    return [view.side for view in part.sides]


def free_name(key: str, taken: dict[str, str]) -> str:
    """The key, or with a number when the same practice comes twice in the hour."""
    name, number = key, 2
    while name in taken:
        name, number = f"{key}-{number}", number + 1
    return name
