"""The rows that come out of simulated play: each answered or openly waiting, shared plays played once."""

from collections import Counter
from pathlib import Path

import numpy as np
import pytest

from turnout.play.kernel.weights import weights
from turnout.study.outside import answers, asking, output_checks
from turnout.study.outside.measures import lost_per_min, pass_success
from turnout.study.outside.passes import arrivals, ball_log, completion, flights, on_ball_s, touches_per_hold
from turnout.study.outside.plays import Change, Play, abilities_of, altered_weights, play_once
from turnout.study.outside.register import ROWS, Row, row

KEEP = Play("keep-ball", 4, 4, (20.0, 25.0), 14, seconds=120.0)


def test_every_output_row_has_an_answer_or_an_open_reason() -> None:
    assert set(ROWS) == set(output_checks())
    for entry in ROWS.values():
        assert entry.open or entry.figures, entry.id
        assert entry.open or entry.plays or entry.id == "dir-01", entry.id  # only the roll is no game


def test_no_row_is_answered_twice() -> None:
    with pytest.raises(ValueError, match="touch-02 is answered twice"):
        row("touch-02", KEEP, figures="touches")(touches_per_hold)


def test_a_row_waits_for_what_the_kernel_does_not_count() -> None:
    entry = Row("toy", (KEEP,), pass_success, ("share",), needs=("S_PASSES", "S_NOSUCH"))
    assert entry.open == "the kernel to count S_NOSUCH"
    assert Row("toy", (KEEP,), pass_success, ("share",), needs=("S_PASSES",)).open == ""


def test_a_handful_of_rows() -> None:
    ids = ("touch-02", "ssg-td-order", "ssg-youth-band", "dir-01", "dir-08", "dir-15", "dir-21")
    found = answers(ids, seeds=range(12))
    assert tuple(found) == ids
    assert {each: found[each].verdict for each in ("dir-01", "dir-08", "dir-15", "dir-21")} == {
        "dir-01": "clear", "dir-08": "clear", "dir-15": "clear", "dir-21": "clear",
    }  # fmt: skip
    for each in ids:
        assert found[each].low <= found[each].value <= found[each].high
        assert len(found[each].figures) == len(ROWS[each].figures)


def test_shared_plays_are_played_once_per_seed(monkeypatch: pytest.MonkeyPatch) -> None:
    played: Counter[tuple[Play, int]] = Counter()

    def counting(play: Play, seed: int, **how: object) -> object:
        played[play, seed] += 1
        return play_once(play, seed, **how)  # type: ignore[arg-type]

    monkeypatch.setattr(asking, "play_once", counting)
    answers(("ssg-td-40x25", "ssg-slope", "ssg-td-order"), seeds=range(6), share=0.1)
    assert len(played) == 4 * 6
    assert set(played.values()) == {1}


def test_the_same_question_has_the_same_answer_and_weights_move_it() -> None:
    how = {"seeds": range(6), "share": 0.2}
    once, again = answers(("dir-09", "touch-01"), **how), answers(("dir-09", "touch-01"), threads=1, **how)
    assert once == again
    slower = answers(("touch-01",), W=weights(HOLD=1.0), **how)
    assert slower["touch-01"].value > once["touch-01"].value


def test_too_few_seeds_and_unknown_rows_are_refused() -> None:
    with pytest.raises(ValueError, match="at least 6 seeds, not 5"):
        answers(("touch-02",), seeds=range(5))
    with pytest.raises(KeyError):
        answers(("ball-01",), seeds=range(6))


def test_plays_alter_abilities_of_one_side_and_single_weights() -> None:
    plain = abilities_of(KEEP, 5)
    altered = Play("keep-ball", 4, 4, (20.0, 25.0), 14, changes=(Change("AIM_SD", "times", 0.5, side=0),))
    other = abilities_of(altered, 5)
    assert np.allclose(other[:4, 3], plain[:4, 3] / 2)
    assert np.array_equal(other[4:], plain[4:])
    scans = abilities_of(Play("keep-ball", 4, 4, (20.0, 25.0), 14, levels=((1, "scanning", "strong"),)), 5)
    assert np.array_equal(scans[:4], plain[:4])
    assert (scans[4:, 7] > plain[4:, 7]).all()
    assert (altered_weights(None, (("HOLD", 2.0),)) != weights()).sum() == 1
    with pytest.raises(KeyError):
        altered_weights(None, (("HOLT", 2.0),))


def test_measures_agree_with_the_sums() -> None:
    run = play_once(KEEP, 1)
    log = ball_log(run)
    kicked, arrived = arrivals(log)
    assert len(kicked) == pytest.approx(run.sums.S[:, 1].sum(), abs=1)
    assert arrived.sum() == pytest.approx(run.sums.S[:, 2].sum(), abs=1)
    metres, speed = flights(run)
    assert len(metres) <= arrived.sum()
    assert (speed < 20).all()
    assert (speed > 1).all()
    assert completion(run, 0.0, 100.0) == pytest.approx(pass_success(run), abs=0.03)
    assert 0.2 < on_ball_s(run) < 3.0
    assert 1.0 < touches_per_hold(run) < 4.0
    assert lost_per_min(run) > 0


def test_the_page_of_the_docs_lists_every_output_row() -> None:
    text = (Path(__file__).parents[2] / "docs" / "outside.md").read_text(encoding="utf-8")
    lines = {line.split("|")[1].strip(): line for line in text.splitlines() if line.startswith("| ")}
    for each, check in output_checks().items():
        assert lines[each].endswith(f"| {check.part} |"), "run tools/outside-checks"
        assert ("**waiting**" in lines[each]) == bool(ROWS[each].open), "run tools/outside-checks"
