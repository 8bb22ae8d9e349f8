"""The view tells what was fitted, dealt out and laid: every face reads the same words and figures."""

import io
from dataclasses import replace

import pytest
from pypdf import PdfReader

from turnout.club.read import read_tonight
from turnout.fit import fit_session
from turnout.layout import lay_out
from turnout.practice.shelf import SHELF
from turnout.rota import rota_for
from turnout.session.read import read_session
from turnout.show.ink import sides_of
from turnout.show.paper import cards_pdf
from turnout.show.strips import AXES, strip, tally
from turnout.show.svg import svg
from turnout.show.view import evening_view, told_tonight
from turnout.show.words import clock, figure, minutes_text, number_word, paces_text, yards_text
from turnout.study.model import Band, Figure, Forecast

BAND = Band(1.0, 2.0, 3.0, 5.0, 8.0)


def forecast(key):
    figures = (
        ("passes_in_a_row", Figure(3.4, 3.1, 3.7, "passes", "side", BAND)),
        ("success", Figure(0.21, 0.18, 0.24, "share", "side", Band(0.08, 0.15, 0.2, 0.3, 0.4))),
    )
    return Forecast(key, 3600.0, 7, 20, 180.0, figures, (), (), True, "stamp")


def evening_of(players=14, names=True, **changes):
    session = read_session(SHELF / "sessions" / "hold-and-break.yaml")
    tonight = replace(read_tonight(SHELF.parent / "season-example" / "tuesday.yaml"), players=players, **changes)
    fitted = fit_session(session, tonight)
    assert fitted.fits
    forecasts = {number: forecast(part.practice.key) for number, part in enumerate(session.parts)}
    rotas, layout = rota_for(fitted, tonight.labels), lay_out(fitted)
    return fitted, evening_view(fitted, rotas, layout, forecasts, names=names, date="Tuesday", club="Saltmarsh Juniors")


@pytest.fixture(scope="module")
def evening():
    return evening_of()


def test_parts_follow_each_other_through_the_hour(evening):
    fitted, view = evening
    assert [part.number for part in view.parts] == [1, 2, 3]
    assert view.start == view.parts[0].start == "18:00"
    assert view.parts[-1].end == view.end == "19:00"
    for part, seen in zip(fitted.parts, view.parts, strict=True):
        assert seen.start == clock("18:00", part.start_min)
        assert len(seen.rules) == len(part.copies[0].setup.practice.rules)


def test_everybody_drawn_is_somebody_fitted(evening):
    fitted, view = evening
    for part, seen in zip(fitted.parts, view.parts, strict=True):
        drawn = sum(mark.kind == "player" for mark in seen.drawing.marks)
        assert drawn == part.copies[0].setup.players
        on_ground = sum(mark.kind == "player" for mark in seen.ground.marks)
        assert on_ground == sum(copy.setup.players for copy in part.copies) == sum(s.players for s in seen.sides)


def test_sentences_carry_tonights_colours(evening):
    fitted, view = evening
    for part, seen in zip(fitted.parts, view.parts, strict=True):
        told = " ".join((*seen.people, *seen.rules, seen.rota.note, *seen.gave_way)).lower()
        worn = {colour for _, colour in part.bibs}
        for colour in {"amber", "blue", "red"} - worn:
            assert colour not in told
        if "own" in worn:
            assert "own shirt" in told


def test_names_stand_on_the_rota_only_where_no_place_stands():
    _, named = evening_of(names=True)
    _, numbered = evening_of(names=False)
    assert "Ada" in str(named.parts[0].rota)
    assert (named.date, named.club) == (None, None)
    assert "3G" not in named.space
    assert "Ada" not in str(numbered)
    assert (numbered.date, numbered.club) == ("Tuesday", "Saltmarsh Juniors")
    assert numbered.space.startswith("third of 3G, ")


def test_without_names_no_two_players_share_a_number():
    _, view = evening_of(players=18, names=False)
    for part in view.parts:
        first = next(n for n, row in enumerate(part.rota.rows[1:], start=1) if row.block) if part.copies > 1 else 1
        cells = [cell for row in part.rota.rows[:first] for cell in row.cells if cell]
        numbers = ", ".join(cells).split(", ")
        assert sorted(numbers, key=int) == [str(n) for n in range(1, 19)]


def test_where_the_bibs_differ_the_rota_calls_sides_by_letter_and_says_what_each_copy_wears():
    fitted, view = evening_of(players=22)
    mixed = [n for n, part in enumerate(fitted.parts) if len({copy.bibs for copy in part.copies}) > 1]
    assert mixed
    for n in mixed:
        rota = view.parts[n].rota
        assert [words for _, words in rota.columns] == ["A inside", "B inside", "A edge", "B edge"]
        for copy, row in zip(fitted.parts[n].copies, rota.rows, strict=False):
            worn = {side: "own shirts" if colour == "own" else colour for side, colour in copy.bibs}
            assert row.copy.endswith(f": A {worn['amber']}, B {worn['blue']}")


def test_forecast_rows_carry_value_interval_and_band(evening):
    row = evening[1].parts[0].forecast[0]
    assert (row.value, row.low, row.high, row.one_block) == (3.4, 3.1, 3.7, BAND)
    assert row.text == "3 (1–8)"
    assert evening[1].parts[0].forecast[1].text == "20 (8–40)"
    assert "60 simulated minutes, seed 7; one block of 3 min." in evening[1].parts[0].forecast_note


def test_steps_are_said_at_tonights_size(evening):
    steps = [step.sentence for part in evening[1].parts for step in (*part.harder, *part.easier)]
    assert "Square is 20 x 20 yd: 20 paces." in steps
    assert any(sentence.startswith("North end is 8 yd deep") for sentence in steps)
    assert any(sentence.startswith("No longer: ") for sentence in steps)


def test_cones_of_the_first_copy_come_from_the_layout(evening):
    fitted, view = evening
    for part, seen in zip(fitted.parts, view.parts, strict=True):
        cones = [mark for mark in seen.drawing.marks if "cone" in mark.kind]
        laid = [mark for mark in seen.ground.marks if "cone" in mark.kind]
        if len(part.copies) == 1:
            assert len(cones) == len(laid)
        else:
            assert 4 <= len(cones) < len(laid)


def test_too_few_adults_stand_in_every_care_box():
    _, view = evening_of(adults=1)
    for box in (view.care, *(part.care for part in view.parts)):
        assert box[0].level == "stop"
        assert "adults" in {caution.key for caution in box if caution.level == "stop"}


@pytest.mark.parametrize("players", [8, 11, 14, 16, 20])
def test_every_turnout_prints_one_page_a_part(players):
    fitted, view = evening_of(players=players)
    pages = PdfReader(io.BytesIO(cards_pdf(view))).pages
    assert len(pages) == 1 + len(fitted.parts)


def test_the_ground_shows_every_copy(evening):
    drawn = svg(evening[1].parts[0].ground, width_px=420)
    assert drawn.count("<rect") >= 1 + evening[1].parts[0].copies
    assert "side by side" in evening[1].parts[0].ground.desc


def test_colours_change_places_without_mixing():
    practice = evening_of()[0].parts[1].copies[0].setup.practice
    sides = sides_of(practice, bibs=(("amber", "blue"), ("blue", "own")))
    told = told_tonight("4 amber inside v 3 blue inside; blue win.", practice, sides)
    assert told == "4 blue inside v 3 own shirt inside; own shirts win."


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        (clock("18:00", 74.6), "19:15"),
        (clock("23:50", 20), "00:10"),
        (clock("18:00", 14.5), "18:15"),
        (clock("18:00", 17.5), "18:18"),
        (figure(0.433), "0.43"),
        (figure(4.44), "4.4"),
        (figure(21.4), "21"),
        (figure(3.0), "3"),
        (figure(0.0), "0"),
        (minutes_text(2.5), "2½ min"),
        (minutes_text(0.5), "30 s"),
        (yards_text(14.6304), "16 yd"),
        (paces_text(14.6304), "16 paces"),
        (number_word(3), "three"),
        (number_word(14), "14"),
    ],
)
def test_figures_are_said_as_a_coach_says_them(said, wanted):
    assert said == wanted


def test_a_strip_puts_values_on_the_fixed_axis():
    drawn = strip(BAND, AXES["passes_in_a_row"], width_px=158)
    assert 'cx="34.0"' in drawn  # 3 on an axis of 0 to 15 over 150 px, from 4
    assert "M14.0 8.0H84.0" in drawn  # 1 to 8


def test_a_value_past_the_axis_ends_at_its_edge():
    assert "H154.0" in strip(Band(1, 2, 3, 5, 99), AXES["passes_in_a_row"], width_px=158)


@pytest.mark.parametrize(("count", "strokes"), [(1, 1), (4, 4), (5, 5), (14, 14)])
def test_a_tally_has_a_stroke_for_each(count, strokes):
    assert tally(count).count("M") == strokes
