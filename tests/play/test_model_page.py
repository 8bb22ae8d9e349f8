"""docs/model.md lists the numbers the simulator runs on."""

from pathlib import Path

from turnout.play.describe import ladders_table, weights_table

PAGE = Path(__file__).parents[2] / "docs" / "model.md"


def test_the_page_lists_every_weight_and_ability_as_it_is() -> None:
    page = PAGE.read_text(encoding="utf-8")
    assert weights_table() in page
    assert ladders_table() in page
