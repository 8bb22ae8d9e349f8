"""Goals and lines of those who wait in the fit: nets take ground, lines are capped and priced, kit is counted."""

from dataclasses import replace
from math import dist

import pytest
from shipped_practices import shipped
from toy_practices import session_of, tonight

from turnout.club.read import read_tonight
from turnout.fit import fit_session
from turnout.fit.arrangements import arrangements
from turnout.fit.ground import footprint
from turnout.fit.roles import in_line, role_table
from turnout.fit.words import copies_words
from turnout.layout import lay_out
from turnout.practice.model import Group, Home
from turnout.practice.nets import NET_DEPTH_M, ends, has_net
from turnout.practice.shelf import SHELF
from turnout.rota import rota_for
from turnout.session.model import Part
from turnout.session.read import read_session
from turnout.show.view import evening_view


def waves(most: int):
    """The free game with up to four more in a line, of whom the practice lets `most` wait."""
    practice = shipped("open-water").practice
    line = Group("waiting", "", 0, 0, 4, Home("pitch", behind="west"))
    return replace(practice, groups=(*practice.groups, line), arrange=replace(practice.arrange, waiting_at_most=most))


def one(practice, players, **more):
    return fit_session(session_of(Part(practice, 20)), tonight(players, minutes=20, **more))


def test_nets_take_ground_behind_the_lines():
    for key, kind in (("open-water", "goal"), ("four-coves", "small goal")):
        setup = shipped(key)
        box = footprint(setup.practice)
        assert box.up == pytest.approx(setup.field.up_m + 2 * NET_DEPTH_M[kind])
        assert box.across == pytest.approx(setup.field.across_m)


@pytest.mark.parametrize("most", [0, 1, 3])
def test_no_line_is_longer_than_the_practice_lets_wait(most):
    practice = waves(most)
    assert max(in_line(practice.groups, mix.counts) for mixes in role_table(practice.groups, most).values()
               for mix in mixes) <= most  # fmt: skip
    for players in range(6, 19):
        for way in arrangements(practice, players, 2, 15.0):
            for mix, waiting in zip(way.mixes, way.waiting, strict=True):
                assert in_line(practice.groups, mix.counts) + waiting <= most


def test_nobody_stands_in_line_who_could_play():
    fitted = one(waves(2), 12)
    assert all(copy.setup.count("waiting") == 0 for part in fitted.parts for copy in part.copies)


def test_the_line_takes_turns_by_the_block():
    practice = waves(2)
    fixed = tuple(replace(g, count=2, low=2, high=2) if g.waits else g for g in practice.groups)
    fitted = one(replace(practice, groups=fixed), 14)
    (rota,) = rota_for(fitted)
    stood = [block.waiting for block in rota.blocks]
    assert all(len(labels) == 2 for labels in stood)
    assert len({label for labels in stood for label in labels}) == 2 * len(rota.blocks)


def test_numbers_of_pairs_are_pairs():
    fitted = one(shipped("lock-gates").practice, 13)
    assert "6 pairs (one of 3)" in copies_words(fitted.parts[0])
    fourteen = one(shipped("lock-gates").practice, 14)
    assert "14 players instead of 12: 7 pairs instead of 6." in fourteen.parts[0].gave_way


@pytest.mark.parametrize("players", range(4, 21))
def test_any_number_from_four_to_twenty_arrives(players):
    fitted = one(shipped("lock-gates").practice, players)
    assert fitted.fits and sum(copy.setup.players for copy in fitted.parts[0].copies) == players
    balls = dict(lay_out(fitted).kit)["balls"]
    assert balls == sum(copy.setup.players // 2 for copy in fitted.parts[0].copies)


@pytest.mark.parametrize("players", range(10, 17))
def test_the_sixty_minutes_fit_and_no_cone_stands_in_a_goal(players):
    session = read_session(SHELF / "sessions" / "out-to-sea.yaml")
    facts = read_tonight(SHELF.parent / "season-example" / "tuesday.yaml")
    fitted = fit_session(session, replace(facts, players=players))
    assert fitted.fits and not fitted.left_out
    layout = lay_out(fitted)
    for part, laid in zip(fitted.parts, layout.parts, strict=True):
        cones = [(item.x_m, item.y_m) for item in laid.items if item.kind.endswith("cone")]
        for copy in part.copies:
            for _, goal in copy.setup.places:
                if has_net(goal):
                    at = (-goal.y_m, goal.x_m) if copy.turned else (goal.x_m, goal.y_m)
                    middle = (at[0] + copy.x_m, at[1] + copy.y_m)
                    assert min(dist(middle, cone) for cone in cones) > dist(*ends(goal)) / 2


def test_goals_are_in_the_bag_and_in_the_care_box():
    session = read_session(SHELF / "sessions" / "out-to-sea.yaml")
    facts = read_tonight(SHELF.parent / "season-example" / "tuesday.yaml")
    fitted = fit_session(session, facts)
    layout = lay_out(fitted)
    coves = next(part for part in fitted.parts if part.copies[0].setup.practice.key == "four-coves")
    assert (dict(layout.kit)["goals"], dict(layout.kit)["small goals"]) == (2, 4 * len(coves.copies))
    view = evening_view(fitted, rota_for(fitted, facts.labels), layout, {}, names=True)
    warned = [any(row.key == "goals" for row in part.care) for part in view.parts]
    assert warned == [False, False, True, True] and any(row.key == "goals" for row in view.care)
    pairs = view.parts[0].rota.rows[0].cells[0]
    assert " & " in pairs and pairs.count(" & ") + pairs.count(", ") == facts.players - 1
