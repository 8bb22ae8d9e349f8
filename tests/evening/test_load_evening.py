"""The example evening and typed facts."""

from pathlib import Path

import pytest

from turnout.evening import shelf
from turnout.evening.check import files_of
from turnout.evening.load import labels_for, load_evening, with_facts
from turnout.evening.stamp import content_hash, files_hash
from turnout.problems import BadInput


def test_the_example_evening_is_there():
    evening = load_evening(None)
    assert len(evening.session.parts) >= 3
    assert len(evening.tonight.labels) >= evening.tonight.players


def test_a_session_without_tonight_gets_the_middle_of_the_expected_turnout():
    evening = load_evening("hold-and-break")
    low, high = evening.session.expected
    assert low <= evening.tonight.players <= high
    assert evening.tonight.minutes == evening.session.minutes and evening.tonight.age == evening.session.age


def test_typed_facts_replace_the_read_ones():
    evening = with_facts(load_evening(None), players="9", space="32 x 30 m", minutes="45")
    assert (evening.tonight.players, evening.tonight.minutes) == (9, 45.0)
    assert (evening.tonight.space.across_m, evening.tonight.space.up_m) == (32.0, 30.0)
    assert len(labels_for(evening.tonight)) == 9


def test_everybody_has_a_label_of_their_own():
    evening = with_facts(load_evening(None), players="24")
    labels = labels_for(evening.tonight)
    assert len(set(labels)) == 24


def test_the_hash_follows_the_content_not_the_file(tmp_path):
    path = shelf.find("hold-and-break", ("session",), name="session")
    copy = tmp_path / "hold-and-break.yaml"
    copy.write_bytes(path.read_bytes())
    here, there = load_evening("hold-and-break"), load_evening(str(copy))
    assert here.inputs_hash == there.inputs_hash
    assert here.at(9).inputs_hash != here.inputs_hash
    assert content_hash(here.session) != content_hash(here.tonight)


def test_names_that_lead_nowhere_teach():
    with pytest.raises(BadInput) as caught:
        load_evening("hold-and-brake")
    assert caught.value.problems[0].nearest == "hold-and-break"


@pytest.mark.parametrize("what", ["breakwater", "path"])
def test_a_file_of_another_kind_is_called_by_its_kind(what):
    path = shelf.find("breakwater", ("practice",), name="practice")
    with pytest.raises(BadInput, match="that is a practice; name a session"):
        load_evening(str(path) if what == "path" else what)


def test_folders_are_searched_for_files(tmp_path):
    (tmp_path / "deep").mkdir()
    (tmp_path / "deep" / "a.yaml").write_text("practice: a")
    (tmp_path / "b.yml").write_text("practice: b")
    (tmp_path / "c.txt").write_text("nothing")
    files, problems = files_of([tmp_path, tmp_path / "b.yml", tmp_path / "none.yaml", Path("/dev/null")])
    assert sorted(file.name for file in files) == ["a.yaml", "b.yml"]
    assert [problem.expected for problem in problems] == [
        "there is no such file; name a practice, session, tonight or squad file, or a folder of them",
        "this is no file; name a file or a folder",
    ]  # fmt: skip


def test_file_hashes_follow_the_bytes_and_their_order(tmp_path):
    one, two = tmp_path / "1", tmp_path / "2"
    one.write_bytes(b"ab")
    two.write_bytes(b"c")
    assert files_hash([one, two]) == files_hash([one, two])
    assert files_hash([one, two]) != files_hash([two, one])
    first = files_hash([one, two])
    one.write_bytes(b"a")
    two.write_bytes(b"bc")
    assert files_hash([one, two]) != first
