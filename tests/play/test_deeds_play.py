"""What players do with the ball, who a sentence means and when it binds: by the effect in play, with and without it."""

from itertools import pairwise
from pathlib import Path

import numpy as np
import pytest
from play_toys import PITCH, SQUARE, clear_of_zero, of_kind, played, scored_by, toy

from turnout.play.kernel import columns as c
from turnout.play.simulate import Sums, record
from turnout.practice.setup import Setup

RUN = "A side scores 1 for completing 4 passes in a row."
NOTHING = "Amber score 1 for completing 30 passes in a row."
SEEDS = range(1, 9)
MARK = "When amber {}, amber score 3"  # points by a change, which nobody plays for: the same act seen
GATES = SQUARE.replace("people:", "  west gate: gate 3 yd at (-4, 0)\n  east gate: gate 3 yd at (4, 0)\n"
                       "  gates: west gate, east gate\npeople:")  # fmt: skip
ROLES = """practice: Toy roles
ground:
  square: rectangle 18 x 18 yd
  middle: square 6 yd at the centre of square
people:
  amber inside: 3 (1-6) in square
  amber edge: 3 (0-6) on the edge of square
  blue inside: 3 (1-6) in square
  blue edge: 3 (0-6) on the edge of square
rules:
"""


def told(setup: Setup, seconds: float = 900) -> list[float]:
    """How often a change gave points, by seed."""
    return [float(len(of_kind(played(setup, seed, seconds), c.LOG_ADDED))) for seed in SEEDS]


def done(setup: Setup, sentence: int, seconds: float = 900) -> list[float]:
    """How often amber scored by a sentence, by seed."""
    found = []
    for seed in SEEDS:
        scores = of_kind(played(setup, seed, seconds), c.LOG_SCORE)
        found.append(float(((scores[:, c.LOG_OTHER] == sentence) & (scores[:, c.LOG_SIDE] == 0)).sum()))
    return found


@pytest.mark.parametrize(
    ("act", "base", "stops"),
    [
        ("run the ball through the middle", SQUARE, False),
        ("run the ball through a gate", GATES, False),
        ("stop the ball in the north end", SQUARE, True),
        ("move the ball from the north end to the south end", SQUARE, False),
        ("pass back to the passer", SQUARE, False),
        ("play a one-two", SQUARE, False),
        ("pass through the middle to a team-mate", SQUARE, False),
        ("pass into the middle", SQUARE, True),
    ],
)
def test_players_do_more_of_what_scores(act: str, base: str, stops: bool, tmp_path: Path) -> None:
    word = act.split()[0]
    ing = {"run": "running", "stop": "stopping", "move": "moving", "pass": "passing", "play": "playing",
           "receive": "receiving"}[word]  # fmt: skip
    paid = toy(tmp_path, [f"Amber score 3 for {act.replace(word, ing, 1)}."], base)
    unpaid = toy(tmp_path, [NOTHING, MARK.format(act) + (" and the other side starts." if stops else ".")], base)
    low, _ = clear_of_zero(done(paid, 1, 1800), told(unpaid, 1800))
    assert low > 0


def test_a_side_paid_for_keeping_the_ball_shoots_less(tmp_path: Path) -> None:
    paid = toy(tmp_path, ["Amber score 3 for keeping the ball for 10 seconds."], PITCH)
    shots = [
        [float(played(case, seed, 1800).V[0, c.V_SHOTS]) for seed in SEEDS] for case in (paid, toy(tmp_path, [], PITCH))
    ]
    assert clear_of_zero(*shots)[1] < 0
    assert sum(done(paid, 3, 1800)) > 5


@pytest.mark.parametrize(("where", "least_m", "most_m"), [("outside", 0.0, 99.0), ("on the edge of", 0.0, 1.0)])
def test_what_is_done_beside_a_place_is_done_there(where: str, least_m: float, most_m: float, tmp_path: Path) -> None:
    setup = toy(tmp_path, [f"A side scores 1 for receiving {where} the middle."])
    half, far = setup.place("middle").across_m / 2, []
    for seed in (1, 2, 3):
        scores = of_kind(played(setup, seed), c.LOG_SCORE)
        far += (np.abs(scores[:, c.LOG_X : c.LOG_Y + 1]).max(axis=1) - half).tolist()
    assert len(far) > 20
    assert least_m < min(far) and max(far) <= most_m


@pytest.mark.parametrize("rule", ["A score with the head counts 5.", "Amber score 1 for heading the ball."])
def test_where_heading_pays_balls_are_played_high_and_headed(rule: str, tmp_path: Path) -> None:
    setup, plain = toy(tmp_path, [rule], PITCH), toy(tmp_path, [], PITCH)
    lofted, headed, worth = [], 0, []
    for case in (setup, plain):
        runs = [played(case, seed, 1800) for seed in SEEDS]
        lofted.append([float(run.S[:, c.S_LOFTED].sum()) for run in runs])
        headers = sum(len(of_kind(run, c.LOG_HEADER)) for run in runs)
        assert headers == 0 or case is setup
        headed += headers
        worth += [row for run in runs for row in of_kind(run, c.LOG_SCORE)] if case is setup else []
    assert headed > 20
    assert clear_of_zero(*lofted)[0] > 0
    assert any(row[c.LOG_VALUE] == 5 for row in worth) or any(row[c.LOG_OTHER] == 3 for row in worth)


def test_points_for_keeping_come_after_so_long_without_losing_it(tmp_path: Path) -> None:
    sums = played(toy(tmp_path, ["A side scores 1 for keeping the ball for 8 seconds."]), seconds=1800)
    scores = of_kind(sums, c.LOG_SCORE)
    assert len(scores) > 5
    turned = of_kind(sums, c.LOG_CUT_OUT, c.LOG_TACKLE, c.LOG_START)
    for row in scores:
        since = turned[turned[:, c.LOG_T] <= row[c.LOG_T]][-1]
        assert row[c.LOG_T] - since[c.LOG_T] >= 7.99


def test_passes_over_a_place_are_tried_and_clear_it(tmp_path: Path) -> None:
    paid = toy(tmp_path, ["A side scores 3 for passing over the centre zone."], PITCH)
    tried = [[over_aims(played(case, seed, 1800), case) for seed in SEEDS] for case in (paid, toy(tmp_path, [], PITCH))]
    assert clear_of_zero(*tried)[0] > 0
    zone = paid.place("centre zone")
    scores = [row for seed in SEEDS for row in of_kind(played(paid, seed, 1800), c.LOG_SCORE) if row[c.LOG_OTHER] == 3]
    assert len(scores) > 5
    assert all(abs(row[c.LOG_Y] - zone.y_m) > zone.up_m / 2 for row in scores)


def over_aims(sums: Sums, setup: Setup) -> float:
    """Passes aimed from one side of the centre zone to the other."""
    zone, passes = setup.place("centre zone"), of_kind(sums, c.LOG_PASS)
    start, aim = passes[:, c.LOG_Y] - zone.y_m, passes[:, c.LOG_AIM_Y] - zone.y_m
    return float(((start * aim < 0) & (np.minimum(abs(start), abs(aim)) > zone.up_m / 2)).sum())


def test_conceding_is_the_other_sides_score(tmp_path: Path) -> None:
    sums = played(toy(tmp_path, [RUN, "When amber concede, blue score 5."]))
    scores, added = of_kind(sums, c.LOG_SCORE), of_kind(sums, c.LOG_ADDED)
    assert len(added) == (scores[:, c.LOG_SIDE] == 1).sum() > 0


def test_who_leaves_a_place_was_in_it(tmp_path: Path) -> None:
    setup = toy(tmp_path, ["Amber score 1 for leaving the middle.", RUN])
    place, film = setup.place("middle"), record(setup, age=12, level="settled", seed=1, window=(0, 120))
    inside = (np.abs(film.players_m - [place.x_m, place.y_m]) <= place.across_m / 2).all(axis=2)
    left = [event for event in film.events if event.kind == "score" and event.other == 1]
    assert len(left) > 10
    for event in left:
        frame = int(np.searchsorted(film.t_s, event.t_s))
        assert inside[max(0, frame - 3) : frame + 1, event.player].any()
        assert not inside[min(frame + 1, len(inside) - 1), event.player] or not inside[frame, event.player]


def test_the_coach_calls_once_a_minute(tmp_path: Path) -> None:
    added = of_kind(played(toy(tmp_path, [RUN, "When the coach calls, blue score 1."]), seconds=605), c.LOG_ADDED)
    assert len(added) >= 8
    gaps = np.diff(added[:, c.LOG_T])
    assert gaps.min() > 50


def test_a_place_stays_closed_until_it_is_done(tmp_path: Path) -> None:
    inside = []
    for rule in ("Blue stay out of the middle until a side completes 5 passes.", "Blue stay out of the middle.",
                 "Blue stay out of the middle until the ball leaves the north end."):  # fmt: skip
        setup = toy(tmp_path, [RUN, rule])
        inside.append([in_middle(setup, seed, slice(5, 8)) for seed in SEEDS])
    closed = inside[1]
    assert clear_of_zero(inside[0], closed)[0] > 0
    assert clear_of_zero(inside[2], closed)[0] > 0


def in_middle(setup: Setup, seed: int, who: slice, when: str = "") -> float:
    """Mean number of these players in the middle; when: only while 'ours' or 'theirs' (blue's or amber's) ball."""
    place, film = setup.place("middle"), record(setup, age=12, level="settled", seed=seed, window=(0, 300), rate_hz=2)
    there = (np.abs(film.players_m[:, who] - [place.x_m, place.y_m]) <= place.across_m / 2 - 0.3).all(axis=2)
    holder = film.holder
    chosen = {"ours": holder >= 5, "theirs": (holder >= 0) & (holder < 5)}.get(when, holder > -2)
    return float(there[chosen].sum(axis=1).mean())


def test_while_their_side_has_the_ball(tmp_path: Path) -> None:
    setup = toy(tmp_path, [RUN, "Blue stay out of the middle while their side has the ball."])
    ours, theirs = ([in_middle(setup, seed, slice(5, 8), when) for seed in SEEDS] for when in ("ours", "theirs"))
    assert clear_of_zero(theirs, ours)[0] > 0


@pytest.mark.parametrize(
    "condition",
    ["their side is behind", "amber are behind", "blue are in the south end", "the side that is behind has the ball"],
)  # fmt: skip
def test_a_condition_binds_only_while_it_holds(condition: str, tmp_path: Path) -> None:
    always, never = toy(tmp_path, [RUN, "Blue stay out of the middle."]), toy(tmp_path, [RUN])
    some = toy(tmp_path, [RUN, f"Blue stay out of the middle while {condition}."])
    inside = [[in_middle(case, seed, slice(5, 8)) for seed in SEEDS] for case in (some, always, never)]
    if condition == "amber are behind":  # amber, two more, hardly ever are
        assert clear_of_zero(inside[0], inside[1])[0] > 0
    else:
        assert clear_of_zero(inside[2], inside[0])[0] > 0 or clear_of_zero(inside[0], inside[1])[0] > 0


@pytest.mark.parametrize("act", ["passing into the middle", "losing the ball", "passing back to the passer"])
def test_within_so_long_of_an_act_makes_a_score_rarer(act: str, tmp_path: Path) -> None:
    run = "A side scores 1 for completing 2 passes in a row"
    hurried, free = toy(tmp_path, [f"{run} within 5 seconds of {act}."]), toy(tmp_path, [f"{run}."])
    counts = [[float(scored_by(played(case, seed), 1)) for seed in SEEDS] for case in (hurried, free)]
    assert sum(counts[0]) > 0
    assert clear_of_zero(*counts)[1] < 0


@pytest.mark.parametrize("whom", ["the side without the ball", "the side that is behind", "blue"])
def test_whom_neutrals_play_for_moves_the_scores(whom: str, tmp_path: Path) -> None:
    base = SQUARE.replace("amber: 5", "amber: 4").replace("rules:", "  neutral: 2 (0-2) in square\nrules:")
    ours = []
    for target in (whom, "the side with the ball" if whom != "blue" else "amber"):
        setup = toy(tmp_path, [RUN, f"Neutrals play for {target}."], base)
        sums = [played(setup, seed, 1200).V[:, c.V_POINTS] for seed in SEEDS]
        ours.append([float(points[0] - points[1]) if whom == "blue" else float(points.sum()) for points in sums])
    assert clear_of_zero(*ours)[1] < 0


def test_a_neutral_of_the_side_behind_passes_only_to_it(tmp_path: Path) -> None:
    base = SQUARE.replace("rules:", "  neutral: 2 (0-2) in square\nrules:")
    setup, kicks = toy(tmp_path, [RUN, "Neutrals play for the side that is behind."], base), 0
    for seed in (1, 2, 3):
        have = [0.0, 0.0]
        for row in played(setup, seed, 1200).log:
            if row[c.LOG_KIND] == c.LOG_SCORE:
                have[int(row[c.LOG_SIDE])] += row[c.LOG_VALUE]
                scored_at = row[c.LOG_T]
            elif row[c.LOG_KIND] == c.LOG_PASS and row[c.LOG_PLAYER] >= 8 and row[c.LOG_T] > scored_at + 10:
                kicks += 1
                assert have[int(row[c.LOG_SIDE])] < have[1 - int(row[c.LOG_SIDE])]
            elif row[c.LOG_KIND] == c.LOG_START:
                scored_at = 0.0 if row[c.LOG_T] == 0 else scored_at
    assert kicks > 10


def role_counts(setup: Setup, sums: Sums) -> np.ndarray:
    """How many players each role has after every moment, (moments, roles)."""
    roles = np.repeat(np.arange(len(setup.counts)), [count for _, count in setup.counts])
    found = [np.bincount(roles, minlength=len(setup.counts))]
    changes = of_kind(sums, c.LOG_CHANGE)
    for number, row in enumerate(changes):
        roles[int(row[c.LOG_PLAYER])] = int(row[c.LOG_VALUE])
        if number + 1 == len(changes) or changes[number + 1, c.LOG_T] > row[c.LOG_T]:
            found.append(np.bincount(roles, minlength=len(setup.counts)))
    return np.array(found)


def test_so_many_players_go_out_at_once(tmp_path: Path) -> None:
    base = ROLES.replace("amber inside: 3", "amber inside: 5").replace("amber edge: 3", "amber edge: 1")
    counts = role_counts(*both(tmp_path, [RUN, "When a side scores, 2 amber inside players go out."], base))
    assert counts[:, 0].tolist() == [5, 3, 1]


def both(folder: Path, rules: list[str], base: str, seconds: float = 1800) -> tuple[Setup, Sums]:
    setup = toy(folder, rules, base)
    return setup, played(setup, seconds=seconds)


def test_a_whole_group_comes_in(tmp_path: Path) -> None:
    counts = role_counts(*both(tmp_path, [RUN, "When the coach calls, the amber edge players come in."], ROLES))
    assert counts[-1].tolist() == [6, 0, 3, 3]


def test_whoever_goes_out_to_a_place_takes_the_role_at_home_there(tmp_path: Path) -> None:
    base = ROLES.replace("rules:", "  amber spare: 1 (0-9) in middle\nrules:")
    rules = [RUN, "When the coach calls, its nearest inside player goes out to the middle."]
    counts = role_counts(*both(tmp_path, rules, base))
    assert counts[-1, 4] > counts[0, 4]
    assert (counts[:, 1] == 3).all()


def test_groups_of_two_sides_change_over(tmp_path: Path) -> None:
    rules = [RUN, "When a side scores, its inside players and the other side's edge players change over."]
    setup, sums = both(tmp_path, rules, ROLES)
    first = of_kind(sums, c.LOG_SCORE)[0]
    side, log = int(first[c.LOG_SIDE]), of_kind(sums, c.LOG_CHANGE)
    moved = {(int(row[c.LOG_PLAYER]), int(row[c.LOG_VALUE])) for row in log[log[:, c.LOG_T] == first[c.LOG_T]]}
    inside, edge = (range(3), range(9, 12)) if side == 0 else (range(6, 9), range(3, 6))
    assert moved == {(p, 3 if side == 0 else 1) for p in inside} | {(p, 0 if side == 0 else 2) for p in edge}
    assert (role_counts(setup, sums) == 3).all()


def test_who_has_waited_longest_comes_on(tmp_path: Path) -> None:
    base = SQUARE.replace("  middle: square 6 yd at the centre of square\n", "").replace(
        "  north end: strip 5 yd inside the north end of square\n", "").replace(
        "  south end: strip 5 yd inside the south end of square\n", "").replace(
        "rules:", "  waiting: 2 (0-6) behind the south end of square\nrules:")  # fmt: skip
    rules = [RUN, "When a side scores, the player who has waited longest changes places with the scorer."]
    _, sums = both(tmp_path, rules, base, 3600)
    queue, turns = [8, 9], 0
    for row in of_kind(sums, c.LOG_CHANGE):
        if int(row[c.LOG_VALUE]) != 2 and int(row[c.LOG_PLAYER]) in queue:
            assert int(row[c.LOG_PLAYER]) == queue.pop(0)
            turns += 1
        elif int(row[c.LOG_VALUE]) == 2:
            queue.append(int(row[c.LOG_PLAYER]))
    assert turns > 5


def test_a_shelter_until_the_player_there_has_touches(tmp_path: Path) -> None:
    rule = "Nobody tackles in the square until the player there has 3 touches."
    counts = []
    for rules in ([RUN, rule], [RUN]):
        runs = [played(toy(tmp_path, rules), seed) for seed in SEEDS]
        counts.append([float(len(of_kind(run, c.LOG_TACKLE))) for run in runs])
    assert clear_of_zero(*counts)[1] < 0


def test_a_start_from_behind_a_goal_comes_in_from_off_the_field(tmp_path: Path) -> None:
    rule = "When a side scores, the other side starts from behind the south goal."
    setup = toy(tmp_path, [rule], PITCH)
    runs = [of_kind(played(setup, seed, 1800), c.LOG_START, c.LOG_OUT, c.LOG_SCORE) for seed in SEEDS]
    pairs = [(before, row) for run in runs for before, row in pairwise(run)]
    after = np.array([row for before, row in pairs if before[c.LOG_KIND] == c.LOG_SCORE])
    after = after[after[:, c.LOG_KIND] == c.LOG_START]
    line = setup.field.y_m - setup.field.up_m / 2
    assert len(after) > 10
    assert (after[:, c.LOG_Y] < line).all()
    at_once = [row[c.LOG_KIND] == c.LOG_OUT and row[c.LOG_T] < before[c.LOG_T] + 3 for before, row in pairs
               if before[c.LOG_KIND] == c.LOG_START and before[c.LOG_Y] < line]  # fmt: skip
    assert np.mean(at_once) < 0.1
