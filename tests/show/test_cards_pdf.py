"""The paper, read back from the file: pages, tags, title, alt texts, reading order, and what may not stand together."""

import io
from dataclasses import replace
from itertools import pairwise

import pytest
from pypdf import PdfReader
from show_evening import NAMES, care, circle_part, evening, square_part, zone_part
from show_toys import SQUARE_RULES

from turnout.problems import TurnoutError
from turnout.show.paper import cards_pdf

LONG_NAMES = tuple(
    f"{name}-Margaretha {letter}." for name, letter in zip(NAMES, "ABCDEFGHJKLMNOPQRSTUVWXY", strict=True)
)


def read(view):
    return PdfReader(io.BytesIO(cards_pdf(view)))


def elements(reader):
    """Every structure element in reading order: (tag, alt text)."""
    found = []

    def walk(node):
        node = node.get_object()
        if isinstance(node, list):
            for child in node:
                walk(child)
        elif hasattr(node, "get"):
            if "/S" in node:
                found.append((node["/S"], node.get("/Alt")))
            if "/K" in node:
                walk(node["/K"])

    walk(reader.trailer["/Root"]["/StructTreeRoot"]["/K"])
    return found


@pytest.fixture(scope="module")
def reader():
    return read(evening())


def test_one_sheet_and_one_card_for_each_part(reader):
    assert len(reader.pages) == 4
    first_lines = [page.extract_text().split("\n")[0] for page in reader.pages]
    assert [line.split(",")[0] for line in first_lines] == [
        "Out of pressure",
        "Lighthouse",
        "Harbour square",
        "Two harbours",
    ]


def test_the_file_says_what_it_is(reader):
    root = reader.trailer["/Root"]
    assert root["/MarkInfo"]["/Marked"] is True or root["/MarkInfo"]["/Marked"].value is True
    assert root["/Lang"].lower() == "en-gb"
    assert root["/ViewerPreferences"]["/DisplayDocTitle"].value is True
    assert reader.metadata.title == "Out of pressure: evening sheet and cards"
    assert b"pdfuaid" in root["/Metadata"].get_object().get_data()


def test_headings_come_in_order_and_never_skip_a_level(reader):
    levels = [int(tag[2:]) for tag, _ in elements(reader) if tag in ("/H1", "/H2", "/H3")]
    assert levels.count(1) == 4
    assert levels[0] == 1
    assert all(after - before <= 1 for before, after in pairwise(levels))


def test_every_picture_has_words(reader):
    figures = [alt for tag, alt in elements(reader) if tag == "/Figure"]
    assert all(figures)
    assert sum("Harbour square, 13 players. A square of 16 x 16 yd." in alt for alt in figures) == 2
    assert sum(alt.startswith("Passes in a row: middle value 3") for alt in figures) == 3


def test_the_rota_is_a_table_with_heads(reader):
    tags = [tag for tag, _ in elements(reader)]
    assert tags.count("/Table") == 3
    assert tags.count("/TH") >= 12


def test_a_card_is_read_in_the_order_a_coach_needs(reader):
    text = " ".join(reader.pages[2].extract_text().split())
    order = ["Harbour square", "18:14 to 18:32", "Set up", "4 v 3 inside", "Who goes where", "Too easy", "Care"]
    places = [text.index(words) for words in order]
    assert places == sorted(places)
    assert places[2] < text.index("Look for, and ask") < places[4]


def test_every_sentence_size_and_name_is_on_the_card(reader):
    text = " ".join(reader.pages[2].extract_text().replace("\xad", "").split())
    part = square_part()
    for words in (
        *part.rules,
        *part.people,
        "16 x 16 yd",
        "14.6 x 14.6 m",
        "16 x 16 paces",
        "Ada",
        "Nell",
        "7 yellow bibs",
    ):
        assert words in text, words


def test_every_page_carries_the_care_box_with_sources(reader):
    for page in reader.pages:
        text = " ".join(page.extract_text().split())
        for caution in care():
            assert caution.do_now in text
            assert caution.source in text


def test_a_sheet_with_names_carries_no_club_date_or_place():
    reader = read(evening(names=True))
    text = " ".join(page.extract_text() for page in reader.pages)
    assert "Ada" in text
    for secret in ("Saltmarsh", "October", "third of 3G"):
        assert secret not in text
    with pytest.raises(TurnoutError, match="no date"):
        evening(names=True, date="Tuesday 6 October")


def test_a_sheet_with_date_and_place_carries_no_names():
    numbers = tuple(str(n) for n in range(1, 15))
    parts = (square_part(1, 1, names=numbers),)
    text = " ".join(page.extract_text() for page in read(evening(parts, names=False)).pages)
    assert "Tuesday 6 October" in text
    assert "Saltmarsh Juniors" in text
    assert not any(name in text for name in NAMES)


def test_copies_stand_side_by_side_in_the_rota_where_they_fit():
    part = square_part(1, 1, copies=2)
    narrow = replace(part.rota, columns=part.rota.columns[:2], rows=tuple(_first_two(row) for row in part.rota.rows))
    text = " ".join(read(evening((replace(part, rota=narrow),))).pages[1].extract_text().split())
    assert "1: Yellows inside" in text
    assert "2: Blues inside" in text
    assert text.count("18:17") == 1
    block = text[text.index("2 18:17") : text.index("3 18:20")]
    for cell in (cell for row in narrow.rows[2:4] for cell in row.cells):
        assert cell in block


def _first_two(row):
    return replace(row, cells=row.cells[:2])


LONG = tuple(
    f"When the side with the ball completes {n} passes in a row between inside players, its edge players change over"
    " with the other side's edge players."
    for n in range(3, 15)
)


GAVE_WAY = ("14 players instead of 13, and 18 x 18 yd instead of 16 x 16 yd.",)


@pytest.mark.parametrize(
    "changes",
    [
        {"rules": LONG},
        {"names": LONG_NAMES[:14]},
        {"names": LONG_NAMES, "blocks": 6},
        {"names": NAMES, "blocks": 5, "copies": 3},
        {"rules": LONG, "names": LONG_NAMES, "blocks": 6},
        {"care": care(24, uses_goals=True, adults=None, first_aider=None, age=10, run_off_m=1.0), "rules": LONG},
        {"people": ("A long sentence about who stands where and why they stand there. " * 3,) * 4},
        {"rota": None, "forecast": (), "harder": (), "easier": (), "questions": (), "set_up": ""},
    ],
)
def test_a_card_never_runs_over_its_page(changes):
    reader = read(evening((square_part(1, 1, **changes),)))
    assert len(reader.pages) == 2


def test_a_sheet_of_six_long_parts_stays_on_its_page():
    parts = tuple(square_part(n + 1, 6, rules=SQUARE_RULES + LONG[:3], gave_way=GAVE_WAY) for n in range(6))
    grave = care(24, uses_goals=True, adults=None, first_aider=None, age=10, run_off_m=1.0)
    view = evening(parts, care=grave)
    assert len(read(view).pages) == 7


def test_fonts_come_from_the_packages_and_are_embedded(reader):
    fonts = {}
    for page in reader.pages:
        for font in page["/Resources"]["/Font"].values():
            inner = font["/DescendantFonts"][0].get_object() if "/DescendantFonts" in font else font
            fonts[inner["/BaseFont"].split("+")[-1]] = inner["/FontDescriptor"].get_object()
    assert all(name.startswith(("SourceSans", "SourceSerif")) for name in fonts)
    assert all({"/FontFile", "/FontFile2", "/FontFile3"} & set(descriptor) for descriptor in fonts.values())


def test_parts_of_every_shape_print():
    assert len(read(evening((circle_part(1, 2), zone_part(2, 2)))).pages) == 3
