"""docs/one-evening.md says what the program says."""

import runpy
from pathlib import Path

ROOT = Path(__file__).parents[2]


def test_the_page_is_what_its_script_prints() -> None:
    script = runpy.run_path(str(ROOT / "tools" / "one-evening"))
    assert (ROOT / "docs" / "one-evening.md").read_text(encoding="utf-8") == script["page"]()
