"""Tonight and squad files: spaces in the trade's words, labels only, private facts refused."""

from pathlib import Path

import pytest

from turnout.club.read import read_space, read_squad, read_tonight
from turnout.problems import BadInput

EXAMPLE = Path(__import__("turnout").__file__).parent / "season-example"


def written(tmp_path: Path, text: str) -> Path:
    path = tmp_path / "toy.yaml"
    path.write_text(text, encoding="utf-8")
    return path


def test_the_example_evening() -> None:
    squad, tonight = read_squad(EXAMPLE / "saltmarsh-juniors.yaml"), read_tonight(EXAMPLE / "tuesday.yaml")
    assert len(squad.labels) == 16 == len(set(squad.labels))
    assert tonight.players == 14 and tonight.labels == squad.labels[:14]
    assert (tonight.age, tonight.adults, tonight.first_aider, tonight.start) == (12, 2, True, "18:00")
    assert tonight.kit.bibs == (("amber", 8), ("blue", 8), ("red", 4)) and tonight.kit.own is None


@pytest.mark.parametrize(
    ("text", "across_m", "up_m"),
    [
        ("third of 3G", 64, 100 / 3 - 1.5),  # one edge shared with the others on the pitch, 1.5 m kept from it
        ("half of 3G", 64, 48.5),
        ("quarter of 3G", 30.5, 48.5),
        ("32 x 30 m", 32, 30),
        ("35 x 33 yd", 35 * 0.9144, 33 * 0.9144),
        ("hall 33 x 18 m", 33, 18),
    ],
)
def test_spaces(text: str, across_m: float, up_m: float) -> None:
    space = read_space(text)
    assert (space.across_m, space.up_m) == (pytest.approx(across_m), pytest.approx(up_m))


@pytest.mark.parametrize(
    ("text", "near"), [("thrid of 3G", "third of 3G"), ("32 x 30 metres", "m"), ("1 x 30 m", None), ("", None)]
)
def test_spaces_that_are_none(text: str, near: str | None) -> None:
    with pytest.raises(BadInput) as caught:
        read_space(text)
    assert caught.value.problems[0].nearest == near


def test_players_by_name_override_the_count(tmp_path: Path) -> None:
    path = written(tmp_path, "tonight:\n  players: [Ada, Gus, 7]\n  space: half of 3G\n")
    tonight = read_tonight(path)
    assert (tonight.players, tonight.labels, tonight.adults) == (3, ("Ada", "Gus", "7"), None)


def test_age_and_minutes_are_the_sessions_where_nobody_says(tmp_path: Path) -> None:
    path = written(tmp_path, "tonight:\n  players: 12\n  space: half of 3G\n")
    assert (read_tonight(path, age=9, minutes=45).age, read_tonight(path, age=9, minutes=45).minutes) == (9, 45)
    (tmp_path / "gulls.yaml").write_text("squad: Gulls\nplayers: [Ada, Gus]\n")
    said = "tonight:\n  squad: gulls\n  age: U14\n  players: 2\n  space: half of 3G\n  minutes: 50\n"
    assert read_tonight(written(tmp_path, said.replace("  age: U14\n", "")), age=9).age == 9
    tonight = read_tonight(written(tmp_path, said), age=9, minutes=45)
    assert (tonight.age, tonight.minutes) == (14, 50)


@pytest.mark.parametrize(
    ("line", "reason"),
    [
        ("birth dates: {Ada: 2013}", "birth dates"),
        ("allergies: none", "health facts"),
        ("photos: folder", "photographs"),
        ("phone: 1234", "contacts"),
    ],
)
def test_private_facts_have_no_place(tmp_path: Path, line: str, reason: str) -> None:
    with pytest.raises(BadInput) as caught:
        read_squad(written(tmp_path, f"squad: Toy\nplayers: [Ada, Gus]\n{line}\n"))
    assert [problem.line for problem in caught.value.problems] == [3]
    assert reason in caught.value.problems[0].expected


@pytest.mark.parametrize(
    ("label", "wanted"), [("Ada Marsh", "first name"), ("Ada 12.03.2013", "birth dates"), ("Ada 2013", "birth dates")]
)
def test_labels_are_first_names_only(tmp_path: Path, label: str, wanted: str) -> None:
    with pytest.raises(BadInput) as caught:
        read_squad(written(tmp_path, f"squad: Toy\nplayers: [Gus, {label}]\n"))
    assert wanted in caught.value.problems[0].expected


def test_a_player_with_facts_is_refused(tmp_path: Path) -> None:
    with pytest.raises(BadInput) as caught:
        read_squad(written(tmp_path, "squad: Toy\nplayers:\n  - Gus\n  - dob: 1 May\n"))
    assert caught.value.problems[0].line == 4 and "birth dates" in caught.value.problems[0].expected


def test_unknown_keys_get_the_nearest(tmp_path: Path) -> None:
    text = "tonight:\n  players: 12\n  space: third of 3G\n  adlts: 2\n  kit: {bibz: {red: 8}}\n  level: lerning\n"
    with pytest.raises(BadInput) as caught:
        read_tonight(written(tmp_path, text))
    assert [(problem.line, problem.nearest) for problem in caught.value.problems] == [
        (4, "adults"), (5, "bibs"), (6, "learning"),
    ]  # fmt: skip
