"""What a card says of steps that bring a place, of two homes and of who waits."""

from turnout.club.tonight import Space, Tonight
from turnout.evening.fits import fit_evening
from turnout.evening.load import Evening
from turnout.evening.views import view_of
from turnout.practice.ground import setup_of
from turnout.practice.read import read_practice
from turnout.practice.sentences import people_sentences
from turnout.practice.shelf import SHELF, practice_files
from turnout.session.read import read_session
from turnout.show.steps import step_sentence


def setup(key):
    return setup_of(read_practice(practice_files()[key]))


def told(key, name):
    made = setup(key)
    (step,) = [step for step in made.practice.steps if step.name == name]
    return step_sentence(made, step, {})


def test_a_place_a_step_brings_is_told_with_where_it_lies():
    assert told("rowing-boats", "Stop in the gate").startswith("Pier: 3 yd, 6 yd south of the middle.")
    assert "South middle goal: 6 x 3 ft at the south end of the pitch." in told("long-waves", "One goal more to guard")


def test_a_list_is_told_by_its_places():
    words = told("long-waves", "One goal more to guard")
    assert "South goals: the south-west goal and the south middle goal and the south-east goal." in words


def test_a_size_for_each_player_is_told_in_yards_for_those_there_are():
    # 11 players at 45 m2 on 4:3 are 25.7 x 19.3 m
    assert told("undertow", "Less room to hide in").startswith("Bay is 28 x 21 yd")


def test_players_on_some_sides_are_told_on_them():
    assert "on the long sides of the pitch" in told("echo-wall", "Two bounce players")


def test_a_second_home_is_told():
    first = people_sentences(setup("three-lanterns"))[0]
    assert (
        first
        == "4 amber and 4 blue on the long sides of a court of 26 x 20 yd with the ball, inside the court without it."
    )


def test_who_waits_is_not_given_bibs():
    session = read_session(SHELF / "sessions" / "many-goals.yaml")
    tonight = Tonight(players=12, space=Space("half of 3G", 60.0, 64.0), minutes=session.minutes)
    view = view_of(fit_evening(Evening(session, tonight)), {})
    (waves,) = [part for part in view.parts if part.key == "long-waves"]
    words = [side.bibs for side in waves.sides if side.players]
    assert any(word.endswith(" waiting") for word in words) and not any("waiting bib" in word for word in words)
