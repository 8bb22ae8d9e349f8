"""What a score counts and which score counts: each sentence moves what is played, or holds at every score."""

from pathlib import Path

import numpy as np
import pytest
from play_toys import PITCH, clear_of_zero, of_kind, played, scored_by, toy

from turnout.play.kernel import columns as c
from turnout.play.scene import scene_of
from turnout.play.simulate import Sums, record

RUN = "A side scores 1 for completing 6 passes in a row."
SEEDS = range(1, 9)


def points(sums: Sums) -> float:
    return float(sums.V[:, c.V_POINTS].sum())


def before(sums: Sums, row: np.ndarray, *kinds: int) -> np.ndarray:
    """The events of these kinds up to a moment, the last one last."""
    events = of_kind(sums, *kinds)
    return events[events[:, c.LOG_T] <= row[c.LOG_T] + 1e-9]


def scores(folder: Path, rule: str, seconds: float = 1800, base: str = PITCH) -> list[tuple[Sums, np.ndarray]]:
    """Every score in three runs of a toy with a rule, with its run; at least a few, else nothing is shown."""
    setup = toy(folder, [rule], base)
    found = [(sums, row) for seed in (1, 2, 3) for sums in [played(setup, seed, seconds)]
             for row in of_kind(sums, c.LOG_SCORE)]  # fmt: skip
    assert len(found) >= 3
    return found


def shot_of(sums: Sums, row: np.ndarray) -> np.ndarray:
    return before(sums, row, c.LOG_SHOT, c.LOG_PASS)[-1]


def within(setup_place, x: float, y: float, grow_m: float = 0.0) -> bool:  # type: ignore[no-untyped-def]
    return (abs(x - setup_place.x_m) <= setup_place.across_m / 2 + grow_m
            and abs(y - setup_place.y_m) <= setup_place.up_m / 2 + grow_m)  # fmt: skip


def test_points_are_the_sum_of_what_the_log_says(tmp_path: Path) -> None:
    sums = played(toy(tmp_path, [RUN, "When a side wins the ball, the other side scores 2."]))
    told = of_kind(sums, c.LOG_SCORE, c.LOG_ADDED)
    for side in (0, 1):
        assert told[told[:, c.LOG_SIDE] == side, c.LOG_VALUE].sum() == sums.V[side, c.V_POINTS]
    added = of_kind(sums, c.LOG_ADDED)
    assert len(added) > 20
    won = of_kind(sums, c.LOG_CUT_OUT, c.LOG_TACKLE)
    assert set(added[:, c.LOG_T]) <= set(won[:, c.LOG_T])


def test_only_the_side_that_is_behind_gets_the_points(tmp_path: Path) -> None:
    rule = "When 20 seconds pass without a score, the side that is behind scores 1."
    setup, added = toy(tmp_path, [RUN, rule]), 0
    for seed in SEEDS:
        sums, have, last = played(setup, seed), [0.0, 0.0], 0.0
        for row in of_kind(sums, c.LOG_SCORE, c.LOG_ADDED, c.LOG_START):
            side = int(row[c.LOG_SIDE])
            if row[c.LOG_KIND] == c.LOG_ADDED:
                added += 1
                assert have[side] < have[1 - side]
                assert row[c.LOG_T] - last == pytest.approx(20, abs=0.15)
            else:
                last = row[c.LOG_T]
            have[side] += row[c.LOG_VALUE] if row[c.LOG_KIND] != c.LOG_START else 0
    assert added > 3


def test_a_side_that_is_not_behind_does_not_score(tmp_path: Path) -> None:
    rules = [RUN, "The side that is behind score 1 for completing 3 passes in a row."]
    sums = played(toy(tmp_path, rules), seconds=1800)
    have = [0.0, 0.0]
    for row in of_kind(sums, c.LOG_SCORE):
        side = int(row[c.LOG_SIDE])
        if row[c.LOG_OTHER] == 2:
            assert have[side] < have[1 - side]
        have[side] += row[c.LOG_VALUE]
    assert scored_by(sums, 2) > 3


@pytest.mark.parametrize(
    ("rule", "up"),
    [
        ("Passes into the middle count 2.", True),
        ("Passes through the middle count 3.", True),
        ("Passes back to the passer do not count.", False),
        ("Passes into the north end do not count.", False),
        ("Only passes into the north end count.", False),
    ],
)
def test_what_a_pass_adds_to_a_run_changes_the_scores(rule: str, up: bool, tmp_path: Path) -> None:
    with_it, without = (
        [points(played(setup, seed, 1200)) for seed in SEEDS]
        for setup in (toy(tmp_path, [RUN, rule]), toy(tmp_path, [RUN]))
    )
    low, high = clear_of_zero(with_it, without)
    assert low > 0 if up else high < 0


def test_a_run_told_by_passes_over_a_place_needs_the_ball_in_the_air(tmp_path: Path) -> None:
    rules = ["A side scores 1 for completing 1 passes in a row.", "Only passes over the centre zone count."]
    setup = toy(tmp_path, rules, PITCH)
    scene, found = scene_of(setup), 0
    assert (scene.F[:, c.F_KIND] == c.PASS_OVER).all()
    for seed in SEEDS:
        sums = played(setup, seed, 1800)
        for row in of_kind(sums, c.LOG_SCORE)[:]:
            if row[c.LOG_OTHER] != 3:
                continue
            found += 1
            kicked = before(sums, row, c.LOG_PASS)[-1]
            zone = setup.place("centre zone")
            assert (kicked[c.LOG_Y] - zone.y_m) * (row[c.LOG_Y] - zone.y_m) < 0
            assert abs(row[c.LOG_Y] - zone.y_m) > zone.up_m / 2 < abs(kicked[c.LOG_Y] - zone.y_m)
    assert found > 5


def test_a_score_from_outside_counts_more_and_is_tried_more(tmp_path: Path) -> None:
    rule = "A score from outside the north zone counts 5."
    setup, plain = toy(tmp_path, [rule], PITCH), toy(tmp_path, [], PITCH)
    zone, shares, values = setup.place("north zone"), [], set()
    for case in (setup, plain):
        runs = [played(case, seed, 1800) for seed in SEEDS]
        shots = [shot for run in runs for shot in [of_kind(run, c.LOG_SHOT)]]
        shares.append([
            np.mean([not within(zone, row[c.LOG_X], row[c.LOG_Y]) for row in shot[shot[:, c.LOG_SIDE] == 0]])
            for shot in shots
        ])  # fmt: skip
        for sums in runs if case is setup else []:
            for row in of_kind(sums, c.LOG_SCORE):
                kick = shot_of(sums, row)
                values.add(row[c.LOG_VALUE])
                if kick[c.LOG_SIDE] == row[c.LOG_SIDE]:
                    assert (row[c.LOG_VALUE] == 5) != within(zone, kick[c.LOG_X], kick[c.LOG_Y])
    assert values == {1.0, 5.0}
    assert clear_of_zero(*shares)[0] > 0


def test_with_the_first_touch_it_counts_more_and_is_shot_at_once(tmp_path: Path) -> None:
    setup, plain = toy(tmp_path, ["A score with the first touch counts 5."], PITCH), toy(tmp_path, [], PITCH)
    at_once, values = [], set()
    for case in (setup, plain):
        runs = [played(case, seed, 1800) for seed in SEEDS]
        at_once.append([float(first_time(run).sum()) for run in runs])
        values |= {value for run in runs for value in of_kind(run, c.LOG_SCORE)[:, c.LOG_VALUE] if case is setup}
    assert 5.0 in values
    assert clear_of_zero(*at_once)[0] > 0


def first_time(sums: Sums) -> np.ndarray:
    """Whether each shot went off in the step its taker got the ball."""
    shots, controls = of_kind(sums, c.LOG_SHOT), of_kind(sums, c.LOG_CONTROL)
    return np.isin(shots[:, c.LOG_T], controls[:, c.LOG_T])


def test_a_score_counts_only_from_inside(tmp_path: Path) -> None:
    setup = toy(tmp_path, [], PITCH)
    zone = setup.place("centre zone")
    for sums, row in scores(tmp_path, "A score counts only from inside the centre zone.", 3600):
        kick = shot_of(sums, row)
        assert within(zone, kick[c.LOG_X], kick[c.LOG_Y], 0.01)


def test_a_score_counts_only_after_three_passes(tmp_path: Path) -> None:
    for sums, row in scores(tmp_path, "A score counts only after a side completes 3 passes."):
        started = before(sums, row, c.LOG_START)[-1][c.LOG_T]
        got = before(sums, row, c.LOG_CONTROL)
        got = got[(got[:, c.LOG_T] >= started) & (got[:, c.LOG_OTHER] >= 0) & (got[:, c.LOG_SIDE] == row[c.LOG_SIDE])]
        assert len(got) >= 3


def test_a_score_counts_only_so_soon_after_the_ball_was_won(tmp_path: Path) -> None:
    for sums, row in scores(tmp_path, "A score counts only within 8 seconds of winning the ball."):
        won = before(sums, row, c.LOG_CUT_OUT, c.LOG_TACKLE)
        assert row[c.LOG_T] - won[won[:, c.LOG_SIDE] == row[c.LOG_SIDE]][-1][c.LOG_T] <= 8.01


def test_a_score_counts_only_from_a_pass_from_a_place(tmp_path: Path) -> None:
    zone = toy(tmp_path, [], PITCH).place("centre zone")
    for sums, row in scores(tmp_path, "A score counts only from a pass from the centre zone.", 3600):
        got = before(sums, row, c.LOG_CONTROL)
        got = got[(got[:, c.LOG_OTHER] >= 0) & (got[:, c.LOG_SIDE] == row[c.LOG_SIDE])][-1]
        passes = before(sums, got, c.LOG_PASS)
        kick = passes[passes[:, c.LOG_PLAYER] == got[c.LOG_OTHER]][-1]
        assert within(zone, kick[c.LOG_X], kick[c.LOG_Y], 0.01)


def test_a_score_counts_only_from_a_pass_by_a_side(tmp_path: Path) -> None:
    assert {row[c.LOG_SIDE] for _, row in scores(tmp_path, "A score counts only from a pass by blue.", 3600)} == {1.0}


def test_a_score_counts_only_when_everyone_is_there(tmp_path: Path) -> None:
    rule, found = "A score counts only when everyone is in the attacking half.", 0
    setup = toy(tmp_path, [rule], PITCH)
    for seed in (1, 2, 3, 4):
        film = record(setup, age=12, level="settled", seed=seed, window=(0, 1200), rate_hz=10)
        for event in film.events:
            if event.kind == "score":
                found += 1
                frame = int(np.searchsorted(film.t_s, event.t_s))
                y = film.players_m[max(0, frame - 1), slice(0, 5) if event.side == 0 else slice(5, 9), 1]
                assert (y if event.side == 0 else -y).min() > -0.8
    assert found >= 3


def test_a_side_gathers_where_a_guard_wants_it(tmp_path: Path) -> None:
    rule = "A score counts only when everyone is in the attacking half."
    up = [
        [attacking_m(toy(tmp_path, rules, PITCH), seed) for seed in SEEDS] for rules in ([rule], [])
    ]  # fmt: skip
    assert clear_of_zero(*up)[0] > 0


def attacking_m(setup, seed: int) -> float:  # type: ignore[no-untyped-def]
    """How far up amber's rearmost player is, on average, while amber have the ball: m."""
    film = record(setup, age=12, level="settled", seed=seed, window=(0, 300), rate_hz=2)
    ours = (film.holder >= 0) & (film.holder < 5)
    return float(film.players_m[ours][:, :5, 1].min(axis=1).mean())


def test_only_while_it_is_behind_does_a_side_score(tmp_path: Path) -> None:
    run = "A side scores 1 for completing 3 passes in a row."
    setup = toy(tmp_path, [run, "A score counts only when the side that is behind has the ball.",
                           "When the coach calls, amber score 1."])  # fmt: skip
    have, scored = [0.0, 0.0], 0
    for row in of_kind(played(setup, seconds=1800), c.LOG_SCORE, c.LOG_ADDED):
        side = int(row[c.LOG_SIDE])
        if row[c.LOG_KIND] == c.LOG_SCORE:
            scored += 1
            assert have[side] < have[1 - side]
        have[side] += row[c.LOG_VALUE]
    assert scored > 3
