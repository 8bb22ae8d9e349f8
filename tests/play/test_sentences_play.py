"""Every kind of act, event and change that can be written is played: scored, obeyed, or refused by its sentence."""

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from shipped_practices import shipped

from turnout.play.kernel import columns as c
from turnout.play.simulate import Sums, record, simulate
from turnout.practice.read import read_practice
from turnout.practice.setup import Setup
from turnout.problems import TurnoutError


def with_rules(key: str, folder: Path, rules: list[str], drop: tuple[str, ...] = ()) -> Setup:
    """A shipped practice with sentences put first and others taken out."""
    setup = shipped(key)
    text = Path(setup.practice.rules[0].source.file).read_text(encoding="utf-8")
    kept = [line for line in text.splitlines() if not any(words in line for words in drop)]
    at = kept.index("rules:") + 1
    steps = next(number for number, line in enumerate(kept) if line == "steps:")
    coach = next(number for number, line in enumerate(kept) if line == "coach:")
    file = folder / "practice.yaml"
    lines = kept[:at] + [f"  - {rule}" for rule in rules] + kept[at:steps] + kept[coach:]
    file.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return replace(setup, practice=read_practice(file))


def played(setup: Setup, seconds: float = 900, seed: int = 2) -> Sums:
    return simulate(setup, age=12, level="settled", seed=seed, seconds=seconds, log=True)


def scores_of_sentence(sums: Sums, number: int) -> int:
    log = sums.log
    return int(((log[:, c.LOG_KIND] == c.LOG_SCORE) & (log[:, c.LOG_OTHER] == number)).sum())


@pytest.mark.parametrize(
    "sentence",
    [
        "A side scores 3 for completing 3 passes in a row.",
        "A side scores 3 for completing 4 passes.",
        "A side scores 3 for completing 2 passes in a row between inside players.",
        "A side scores 3 for passing to edge players.",
        "A side scores 3 for winning the ball.",
        "A side scores 3 for winning the ball and completing a pass.",
        "A side scores 3 for tackling.",
        "Amber inside players score 3 for having 2 touches.",
        "A side scores 3 for completing 2 passes in a row within 8 seconds of winning the ball.",
    ],
)
def test_each_act_scores_when_it_is_done(sentence: str, tmp_path: Path) -> None:
    sums = played(with_rules("harbour-square", tmp_path, [sentence], drop=("A side scores 1",)))
    assert scores_of_sentence(sums, 1) > 0
    assert sums.V[:, c.V_POINTS].sum() >= 3 * scores_of_sentence(sums, 1)


@pytest.mark.parametrize(
    "sentence",
    ["Amber score 2 for passing into the north end.", "Amber score 2 for entering the north end.",
     "A side scores 2 for winning the ball in the end zones."],
)  # fmt: skip
def test_acts_in_a_place_score_there(sentence: str, tmp_path: Path) -> None:
    sums = played(with_rules("breakwater", tmp_path, [sentence]), 1800)
    assert scores_of_sentence(sums, 1) > 0


def test_a_time_limit_on_a_score_makes_it_rarer(tmp_path: Path) -> None:
    free, hurried = (
        scores_of_sentence(played(with_rules("harbour-square", tmp_path, [text], drop=("A side scores 1",)), 3600), 1)
        for text in (
            "A side scores 3 for completing 4 passes in a row.",
            "A side scores 3 for completing 4 passes in a row within 6 seconds of winning the ball.",
        )
    )
    assert 0 < hurried < free


@pytest.mark.parametrize(
    "sentence",
    [
        "When the ball goes out, the scorer changes places with the player who touched it last.",
        "When a side wins the ball, the winner changes places with the loser.",
        "When a side passes to edge players, the passer changes places with the receiver.",
        "When a side loses the ball, its inside players and its edge players change over.",
        "Every 30 seconds, the next group changes places with the edge players.",
    ],
)
def test_each_change_moves_players_and_keeps_the_numbers(sentence: str, tmp_path: Path) -> None:
    drop = ("wins the ball and completes", "change over")
    setup = with_rules("harbour-square", tmp_path, [sentence], drop=drop)
    log = played(setup).log
    changes = log[log[:, c.LOG_KIND] == c.LOG_CHANGE]
    assert len(changes) > 0
    roles = np.repeat(np.arange(4), [count for _, count in setup.counts])
    for row in changes:
        roles[int(row[c.LOG_PLAYER])] = int(row[c.LOG_VALUE])
    assert np.bincount(roles, minlength=4).tolist() == [count for _, count in setup.counts]


def test_who_stands_still_stands_still(tmp_path: Path) -> None:
    setup = with_rules("breakwater", tmp_path, ["Neutrals stand still."])
    film = record(setup, age=12, level="settled", seed=2, window=(0, 150), rate_hz=2)
    free = film.holder[:, None] != np.arange(8, 10)
    moved = np.hypot(*np.moveaxis(film.players_m[:, 8:] - film.players_m[0, 8:], 2, 0))
    assert np.median(moved[free]) < 0.3


def test_moving_along_an_edge_lets_edge_players_use_all_of_it(tmp_path: Path) -> None:
    drop, reach = ("wins the ball and completes", "change over"), []
    for rules in ([], ["Edge players move only along the edge of square."]):
        setup = with_rules("harbour-square", tmp_path, rules, drop=drop)
        films = [record(setup, age=12, level="settled", seed=seed, window=(0, 300), rate_hz=2) for seed in (2, 3, 4, 5)]
        reach.append([np.ptp(film.players_m[:, 7:], axis=0).sum() for film in films])
    assert np.mean(reach[1]) > np.mean(reach[0])


def test_a_shelter_lasts_until_the_touches_are_taken(tmp_path: Path) -> None:
    drop = ("Edge players have",)
    tackles = []
    for until in ("2 touches", "1 touch"):  # whoever is safe for two touches stops the ball and passes it
        setup = with_rules("harbour-square", tmp_path, [f"Nobody tackles until a side has {until}."], drop=drop)
        tackles.append(int((played(setup).log[:, c.LOG_KIND] == c.LOG_TACKLE).sum()))
    assert tackles[0] < tackles[1]


def test_what_cannot_be_played_is_refused_by_its_sentence(tmp_path: Path) -> None:
    sentence = "A side scores 1 for completing 2 passes in a row within 4 seconds of losing the ball."
    with pytest.raises(TurnoutError, match="within 4 seconds of losing"):
        played(with_rules("harbour-square", tmp_path, [sentence]))


@pytest.mark.parametrize(
    "event",
    ["the ball enters the north end", "the ball leaves the south end", "20 seconds pass", "a side starts",
     "a side scores", "amber tackle", "neutrals receive in the pitch"],
)  # fmt: skip
def test_each_event_sets_its_change_off(event: str, tmp_path: Path) -> None:
    rule = f"When {event}, the next group changes places with the neutrals."
    setup = with_rules("breakwater", tmp_path, [rule], drop=("Every 3 minutes", "When a side scores"))
    log = played(setup, 600).log
    changes = log[log[:, c.LOG_KIND] == c.LOG_CHANGE]
    assert len(changes) >= 4
    assert sum(int(row[c.LOG_VALUE]) == 2 for row in changes) == len(changes) / 2
