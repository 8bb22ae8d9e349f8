"""Every practice of the shelf is played as it was when its snapshot was written, or its figures lie in their bands.

What play cannot play yet has no snapshot; it is listed, with the sentence, among the warnings of the run.
"""

import warnings

import pytest

from turnout.play.knows import unplayed
from turnout.practice.ground import setup_of
from turnout.practice.meaning import table
from turnout.practice.read import read_practice
from turnout.practice.shelf import practice_files
from turnout.practice.steps import with_steps
from turnout.study.snapshot import FIGURES, bands_in, file_of, moved

AGAIN = "play has changed: run tools/shelf-snapshots, look at what moved, and keep it"
FILES = practice_files()
PRACTICES = {key: read_practice(path) for key, path in FILES.items()}
MISSING = {key: list(unplayed(practice, table(practice))) for key, practice in PRACTICES.items()}
PLAYED = sorted(key for key, missing in MISSING.items() if not missing)


@pytest.mark.parametrize("key", PLAYED)
def test_a_practice_plays_within_its_bands(key: str) -> None:
    kept = file_of(FILES[key])
    assert kept.exists(), f"{key} can be played and has no snapshot: run tools/shelf-snapshots"
    text = kept.read_text("utf-8")
    assert set(bands_in(text)) == set(FIGURES)
    assert PRACTICES[key].name in text.splitlines()[2]
    assert moved(text, setup_of(PRACTICES[key])) == [], AGAIN


def test_what_cannot_be_played_is_said_and_has_no_snapshot() -> None:
    for key, missing in MISSING.items():
        for one in missing:
            assert one.said and one.kind
            warnings.warn(f"NOT PLAYED YET: {key}: “{one.said}” ({one.kind})", stacklevel=1)
        assert not (missing and file_of(FILES[key]).exists()), f"{key} cannot be played: run tools/shelf-snapshots"


def test_the_whole_of_the_first_six_is_played() -> None:
    assert {"gull-square", "harbour-square", "breakwater", "lock-gates", "four-coves", "open-water"} <= set(PLAYED)


def test_play_of_another_kind_leaves_its_bands() -> None:
    text = file_of(FILES["gull-square"]).read_text("utf-8")
    smaller = with_steps(PRACTICES["gull-square"], ["Less room", "One touch"])
    left = {one.figure for one in moved(text, setup_of(smaller))}
    assert {"passes_per_min", "pass_success"} <= left and len(left) >= 4
