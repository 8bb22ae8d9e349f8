"""Games with goals and keepers as outside rows play them, and the counts read off their logs: toy logs first."""

import numpy as np
import pytest

from turnout.play.kernel import columns as c
from turnout.study.outside.games import GAMES, game_setup
from turnout.study.outside.holding import centres, lost_by_touch, lost_in_control, possessions_s
from turnout.study.outside.kicks import TWOS, Kicks, kicks, spread_deg
from turnout.study.outside.matches import MATCHES
from turnout.study.outside.measures import actions, metres_per_min, out_field
from turnout.study.outside.plays import Play, Run, play_once
from turnout.study.outside.scoring import crosses_per_min, dribbles, each_min, scores_per_min, short_passes

GOALS = Play("goals 12 x 6 ft", 4, 4, (30.0, 40.0), 13)


class Toy:
    """A run that is nothing but a log; amber attack up the page on 40 x 50 m, for two minutes."""

    play = Play("goals 16 x 7 ft", 6, 6, (40.0, 50.0), 18)
    aim = np.array([0.0, 1.0])
    minutes = 2.0

    def __init__(self, *events: tuple[float, ...]):
        log = np.zeros((len(events), c.LOG_COLUMNS))
        for row, event in enumerate(events):
            log[row, : len(event)] = event
        self.sums = type("Sums", (), {"log": log})()


@pytest.fixture(scope="module")
def run() -> Run:
    return play_once(GOALS, 1)


def event(t_s: float, kind: int, player: int, side: int, *, other: int = -1, at: tuple[float, float] = (0.0, 0.0),
          value: float = 0.0, aim: tuple[float, float] = (0.0, 0.0)) -> tuple[float, ...]:  # fmt: skip
    return (t_s, kind, player, other, side, *at, value, *aim)


def test_keepers_come_on_top_of_the_numbers_and_stand_in_their_goals(run: Run) -> None:
    for name, game in GAMES.items():
        counts = dict(game_setup(name, amber=3, blue=2, neutral=1, size_m=(20.0, 30.0)).counts)
        if not game.alone:
            assert sum(counts.values()) == 5 + 2 * game.keepers + ("neutral" in counts), name
    assert run.keeper.tolist() == [False] * 8 + [True] * 2
    assert run.play.says() == "goals 12 x 6 ft 4v4 + keepers, 40 x 30 m, U13 settled"
    assert {play.amber + 1 for play in MATCHES.values()} == {5, 8, 11}


def test_keepers_are_left_out_of_what_a_player_does(run: Run) -> None:
    S = run.sums.S
    outfield = S[:8, c.S_DISTANCE].sum() / (S[:8, c.S_TIME].sum() / 60)
    assert metres_per_min(run) == pytest.approx(outfield)
    assert metres_per_min(run) > S[:, c.S_DISTANCE].sum() / (S[:, c.S_TIME].sum() / 60)
    done = [c.S_RECEIVED, c.S_PASSES, c.S_SHOTS, c.S_CUT_OUT, c.S_TACKLES]
    assert actions(run) == S[:8][:, done].sum()
    assert out_field(run, 1).sum() == 4
    assert scores_per_min(run) * run.minutes == run.sums.V[:2, c.V_GOALS].sum()


def test_a_ball_is_lost_by_touch_only_when_the_other_side_or_the_line_has_it_next() -> None:
    let_go, has, passed = (event(1.0, kind, 2, 0) for kind in (c.LOG_SPILL, c.LOG_CONTROL, c.LOG_PASS))
    out = event(2.0, c.LOG_OUT, 2, 0, value=c.OUT)
    cut = event(2.0, c.LOG_CUT_OUT, 5, 1, other=2, value=c.MISCONTROLLED)
    off_them = [event(1.0, c.LOG_SPILL, 5, 1), event(2.0, c.LOG_OUT, 5, 1, value=c.DEFLECTED_OUT)]
    cases = {
        "let go to an opponent": ([let_go, cut], [True, False]),
        "let go, kept by his side": ([let_go, event(2.0, c.LOG_CONTROL, 3, 0)], [False, False]),
        "off an opponent": (off_them, [False, False]),
        "let go over the line": ([let_go, out], [True, False]),
        "carried out": ([has, out], [False, True]),
        "passed out": ([passed, out], [False, False]),
    }
    for name, (events, lost) in cases.items():
        assert lost_by_touch(np.array(events)).tolist() == lost, name


def test_tackles_are_lost_under_pressure(run: Run) -> None:
    pressed, free = lost_in_control(run)
    assert pressed >= run.sums.S[:, c.S_LOST_HELD].sum()
    assert free >= 0


def test_possessions_end_with_the_other_side_or_a_stop() -> None:
    toy = Toy(
        event(0.0, c.LOG_START, 1, 0), event(3.0, c.LOG_PASS, 1, 0), event(4.0, c.LOG_CONTROL, 2, 0),
        event(6.0, c.LOG_CUT_OUT, 5, 1), event(7.5, c.LOG_OUT, 5, 1), event(9.0, c.LOG_START, 1, 0),
        event(13.0, c.LOG_STOP, 1, 0),
    )  # fmt: skip
    assert possessions_s(toy).tolist() == [6.0, 1.5, 4.0]  # type: ignore[arg-type]


def test_clusters_of_three_clear_heaps_are_their_means() -> None:
    assert centres(np.array([3.0, 4, 5, 9, 10, 11, 17, 18, 19]), 3).tolist() == [4.0, 10.0, 18.0]


def test_a_cross_goes_in_play_from_a_wide_channel_into_the_area_before_goal() -> None:
    def crosses(at: tuple[float, float], aim: tuple[float, float], *, side: int = 0, restart: bool = False) -> float:
        first = event(0.0, c.LOG_START if restart else c.LOG_CONTROL, 1, side, at=at)
        return crosses_per_min(Toy(first, event(1.0, c.LOG_PASS, 1, side, at=at, aim=aim)))  # type: ignore[arg-type]

    assert crosses((15.0, 15.0), (2.0, 20.0)) == 0.5
    assert crosses((-15.0, -15.0), (-2.0, -20.0), side=1) == 0.5
    assert crosses((15.0, 15.0), (2.0, 20.0), side=1) == 0  # before the own goal
    assert crosses((15.0, 15.0), (2.0, 20.0), restart=True) == 0
    assert crosses((5.0, 15.0), (2.0, 20.0)) == 0  # from the middle
    assert crosses((15.0, -5.0), (2.0, 20.0)) == 0  # from the own half
    assert crosses((15.0, 15.0), (2.0, 12.0)) == 0  # short of the area
    assert crosses((15.0, 15.0), (12.0, 20.0)) == 0  # beside it


def test_dribbles_and_short_passes() -> None:
    toy = Toy(
        event(0.0, c.LOG_CONTROL, 1, 0), event(1.0, c.LOG_PASS, 1, 0, at=(0, 3), aim=(0, 12.9)),
        event(2.0, c.LOG_CONTROL, 2, 0, at=(0, 13)), event(3.0, c.LOG_PASS, 2, 0, at=(1, 14), aim=(1, 24.1)),
        event(4.0, c.LOG_CONTROL, 1, 0, at=(1, 24)), event(5.0, c.LOG_TACKLE, 5, 1, at=(4, 24)),
    )  # fmt: skip
    assert dribbles(toy) == 2  # type: ignore[arg-type]
    assert short_passes(toy) == 1  # type: ignore[arg-type]


def test_counts_are_shared_over_outfield_minutes(run: Run) -> None:
    assert each_min(run, 40.0) == pytest.approx(40.0 / (8 * run.minutes), rel=0.01)


def test_kicks_go_where_they_were_aimed_but_for_their_error() -> None:
    twos = play_once(TWOS[0], 1)
    found = kicks(twos)
    assert 50 < len(found.off_deg) <= (twos.sums.log[:, c.LOG_KIND] == c.LOG_PASS).sum()
    assert 1.0 < spread_deg(found, ~found.restart) < 8.0
    assert np.isnan(spread_deg(found, np.zeros(len(found.off_deg), dtype=bool)))
    toy = Kicks(np.array([3.0, 4.0]), *(np.zeros(2) for _ in range(4)))
    assert spread_deg(toy, np.array([True, True])) == pytest.approx(12.5**0.5)
