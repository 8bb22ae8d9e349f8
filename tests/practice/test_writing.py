"""Edits of a practice in a coach's terms, and the refusal of what would not read."""

import re
from pathlib import Path

import pytest
from shipped_practices import KEYS

from turnout.club.writing import edit_file
from turnout.practice.read import read_practice
from turnout.practice.renaming import rename
from turnout.practice.shelf import practice_files
from turnout.practice.writing import (
    add_line,
    add_sentence,
    add_step,
    change_line,
    change_number,
    replace_sentence,
    take_line,
    take_sentence,
    take_step,
)
from turnout.problems import BadInput
from turnout.reading.edit import Draft, draft_of

MINE = """\
# Tuesday's favourite
practice:   Harbour  # by the sea
ground:
    square: "rectangle 16 x 16 yd"   # paced out
people:
    amber inside: 4 (2-5) in square
    blue inside: amber inside - 1 (1-4) in square
    amber edge: 3 (2-5) on the edge of square
    blue edge: 3 (2-5) on the edge of square

rules:
# how it goes
- Play starts with amber inside.
- 'A side scores 1 for completing 6 passes in a row.'   # six!
- edge players have two touches
steps:
- easier: More room      # when it is crowded
  ground: {square: rectangle 20 x 20 yd}
""".replace("two touches", "2 touches")


@pytest.fixture
def path(tmp_path: Path) -> Path:
    file = tmp_path / "harbour.yaml"
    file.write_text(MINE, encoding="utf-8", newline="")
    return file


def changed(path: Path, change: object) -> dict[str, str]:
    """Lines that went and came, joined, after an edit."""
    before = path.read_text("utf-8").split("\n")
    edit_file(path, change)  # type: ignore[arg-type]
    after = path.read_text("utf-8").split("\n")
    gone, come = [x for x in before if x not in after], [x for x in after if x not in before]
    return {"gone": "|".join(gone), "come": "|".join(come)}


def test_each_edit_touches_its_own_line(path: Path) -> None:
    six = "- 'A side scores 1 for completing 6 passes in a row.'   # six!"
    assert changed(path, lambda d: replace_sentence(d, 2, "A side scores 1 for completing 7 passes in a row.")) == {
        "gone": six, "come": six.replace("completing 6", "completing 7"),
    }  # fmt: skip
    assert changed(path, lambda d: change_number(d, ("rules", 1), 7, 6))["come"] == six
    assert changed(path, lambda d: add_sentence(d, "Nobody tackles edge players.", number=2)) == {
        "gone": "", "come": "- Nobody tackles edge players.",
    }  # fmt: skip
    assert changed(path, lambda d: change_line(d, "ground", "square", "rectangle 18 x 18 yd")) == {
        "gone": '    square: "rectangle 16 x 16 yd"   # paced out',
        "come": '    square: "rectangle 18 x 18 yd"   # paced out',
    }
    fewer = changed(path, lambda d: change_number(d, ("people", "amber inside"), 4, 3))
    assert fewer["come"] == "    amber inside: 3 (2-5) in square"
    more = changed(path, lambda d: add_line(d, "people", "neutral", "1 (0-2) in square"))
    assert more == {"gone": "", "come": "    neutral: 1 (0-2) in square"}
    step = {"add": ["Everyone stays in the square."]}
    assert changed(path, lambda d: add_step(d, "easier", "Three: for all", step)) == {
        "gone": "", "come": '- easier: "Three: for all"|  add:|  - Everyone stays in the square.',
    }  # fmt: skip
    read_practice(path)


def test_what_is_put_in_and_taken_out_leaves_the_file_as_it_was(path: Path) -> None:
    step = {"add": ["Nobody tackles edge players."], "ground": {"square": "rectangle 18 x 18 yd"}}
    edit_file(path, lambda d: add_step(d, "harder", "Sheltered", step, number=1))
    assert [step.name for step in read_practice(path).steps] == ["Sheltered", "More room"]
    edit_file(path, lambda d: take_step(d, "Sheltered"))
    edit_file(path, lambda d: add_sentence(d, "Everyone stays in the square."))
    edit_file(path, lambda d: take_sentence(d, 4))
    edit_file(path, lambda d: add_line(d, "ground", "box 2", "strip 4 yd inside the north side of square"))
    edit_file(path, lambda d: take_line(d, "ground", "box 2"))
    assert path.read_text("utf-8") == MINE


def test_the_last_step_takes_its_key_along_and_a_first_one_brings_it(path: Path) -> None:
    edit_file(path, lambda d: take_step(d, "More room"))
    assert path.read_text("utf-8") == MINE[: MINE.index("steps:")]
    edit_file(path, lambda d: add_step(d, "easier", "More room", {"ground": {"square": "rectangle 20 x 20 yd"}}))
    assert read_practice(path).steps[0].tags == ("space",)


@pytest.mark.parametrize(
    ("change", "told"),
    [
        (lambda d: replace_sentence(d, 3, "Egde players have 2 touches."), "Did you mean “Edge”?"),
        (lambda d: replace_sentence(d, 9, "Everyone has 1 touch."), "no item 9"),
        (lambda d: change_line(d, "ground", "square", "rectangle 16 x 16 yrd"), "Did you mean “yd”?"),
        (lambda d: change_line(d, "people", "blue inside", "red inside - 1 (1-4) in square"), "groups: amber inside"),
        (lambda d: take_line(d, "people", "amber inside"), "groups: "),
        (lambda d: take_line(d, "ground", "square"), "the only one"),
        (lambda d: take_sentence(d, 2), "nobody can score"),
        (lambda d: add_sentence(d, "Edge players have 3 touches."), "edge players have 2 touches"),
        (lambda d: add_step(d, "faster", "Quick", {"add": ["Everyone has 1 touch."]}), "harder, easier or different"),
        (lambda d: take_step(d, "More rom"), "the steps are More room"),
        (lambda d: change_number(d, ("rules", 1), 9, 8), "this number is not there"),
        (lambda d: change_number(d, ("ground", "square"), 16, 18), "more than once"),
        (lambda d: rename(d, "square", "side"), "another name"),
        (lambda d: rename(d, "sqare", "box"), "Did you mean “square”?"),
        (lambda d: rename(d, "square", "amber"), "names something already"),
    ],
)
def test_what_would_not_read_is_refused_and_nothing_written(path: Path, change: object, told: str) -> None:
    with pytest.raises(BadInput) as caught:
        edit_file(path, change)  # type: ignore[arg-type]
    assert told in str(caught.value)
    assert path.read_text("utf-8") == MINE


def test_a_file_with_two_faults_can_be_mended_one_by_one(path: Path) -> None:
    path.write_text(MINE.replace("16 yd", "16 yrd").replace("in a row", "in a roe"), encoding="utf-8")
    edit_file(path, lambda d: change_line(d, "ground", "square", "rectangle 16 x 16 yd"))
    with pytest.raises(BadInput):
        edit_file(path, lambda d: replace_sentence(d, 3, "Edge players have too touches."))
    edit_file(path, lambda d: replace_sentence(d, 2, "A side scores 1 for completing 6 passes in a row."))
    assert path.read_text("utf-8") == MINE


def swapped(text: str, pairs: tuple[tuple[str, str], ...]) -> str:
    for old, new in pairs:
        text = re.sub(old, new, text)
    return text


@pytest.mark.parametrize(
    ("old", "new", "pairs"),
    [
        ("square", "dock", ((r"square(?=:|\n)", "dock"),)),
        ("blue", "red", ((r"blue", "red"),)),
        ("edge", "rim", ((r"(?<=amber )edge|(?<=blue )edge(?=:)|edge(?= players)", "rim"),)),
        ("inside", "dock", ((r"(?<=amber )inside|(?<=blue )inside", "dock"),)),
    ],
)
def test_a_name_changes_wherever_it_names_and_nowhere_else(
    path: Path, old: str, new: str, pairs: tuple[tuple[str, str], ...]
) -> None:
    edit_file(path, lambda d: rename(d, old, new))
    wanted = swapped(MINE, pairs).replace("{square:", f"{{{new if old == 'square' else 'square'}:")
    assert path.read_text("utf-8") == wanted
    edit_file(path, lambda d: rename(d, new, old))
    assert path.read_text("utf-8") == MINE


@pytest.mark.parametrize("key", (*KEYS, "three-lanterns", "ferry-turn", "rope-walk", "slipways"))
def test_every_name_of_the_shelf_can_change(key: str) -> None:
    text = practice_files()[key].read_text("utf-8")
    draft = draft_of(text, f"{key}.yaml")
    practice = read_practice(practice_files()[key])
    done = 0
    for kind, names in (("place", practice.ground), ("side", practice.groups), ("role", practice.groups)):
        for name in dict.fromkeys(getattr(one, "name" if kind == "place" else kind) for one in names):
            if name and not name.startswith("for "):  # a line for a role goes by the name of the role
                new = rename(draft, name, "quay", kind=kind)  # type: ignore[arg-type]
                assert "quay" in new.text and len(new.text.split("\n")) == len(text.split("\n"))
                done += 1
    assert done >= 3


WHOLE = """\
practice: Quayside
ground:
  pitch: rectangle 20 x 30 yd
  box 1: rectangle 8 x 6 yd at (-6, 0)
  box 2: same as box 1, 10 yd east of it
  yard: square 6 yd in the north-east corner of pitch
  lane: channel 4 yd along the west side of pitch
  far end: strip 4 yd inside the north end of pitch
  near end: strip 4 yd inside the south end of pitch
people:
  amber attacker: 3 (2-5) in box 2
  amber wide: 1 (0-2) on the left side of pitch with the ball, in yard without
  blue: amber attacker - 1 (1-4) in the pitch
  server: 1 at (0, -12)
  waiting for attackers: 2 (0-6) behind the south end of pitch
rules:
  - Amber attack the far end and defend the near end.
  - Blue attack the near end.
  - Amber score 1 for running the ball into the attacking end.
  - Blue score 1 for winning the ball in the box 1.
  - Wide players may come in to the lane while amber have the ball.
  - Attackers stay out of the defending half until the server passes to attackers.
  - A turn lasts 60 seconds.
steps:
  - harder: Two balls
    balls in play: 2
"""


@pytest.mark.parametrize("kind, names", [
    ("place", ("pitch", "box 1", "box 2", "yard", "lane", "far end")), ("side", ("amber", "blue", "server")),
    ("role", ("attacker", "wide")),
])  # fmt: skip
def test_a_name_changes_in_every_kind_of_line(kind: str, names: tuple[str, ...]) -> None:
    draft = draft_of(WHOLE, "quayside.yaml")
    for name in names:
        new = rename(draft, name, "quay", kind=kind)  # type: ignore[arg-type]
        assert not re.search(rf"\b{name}s?\b", new.text, re.IGNORECASE)
        assert rename(new, "quay", name, kind=kind).text == WHOLE  # type: ignore[arg-type]


def test_the_line_of_those_who_wait_follows_the_role_it_feeds() -> None:
    new = rename(draft_of(WHOLE, "quayside.yaml"), "attacker", "runner").text
    assert "  waiting for runners: 2 (0-6)" in new and "blue: amber runner - 1" in new
    assert "Runners stay out of the defending half until the server passes to runners." in new


def test_comments_of_a_draft_survive_a_rename() -> None:
    draft: Draft = rename(draft_of(MINE, "mine.yaml"), "square", "dock")
    assert re.findall(r"#.*", draft.text) == re.findall(r"#.*", MINE)
