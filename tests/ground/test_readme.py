"""What the front pages point to is there."""

import re
from pathlib import Path

ROOT = Path(__file__).parents[2]
PACKAGE = ROOT / "src" / "turnout"


def test_every_place_named_exists() -> None:
    text = "".join((ROOT / page).read_text(encoding="utf-8") for page in ("README.md", "CONTRIBUTING.md"))
    named = set(re.findall(r"`((?:src|docs|tests|tools)/[\w./-]+|[A-Z]+\.md)`", text))
    assert len(named) > 8
    assert sorted(name for name in named if not (ROOT / name).exists()) == []


def test_all_rooms_stand_in_the_readme() -> None:
    text = (ROOT / "README.md").read_text(encoding="utf-8")
    rooms = {path.stem for path in PACKAGE.iterdir() if (path / "__init__.py").exists() or path.suffix == ".py"}
    assert sorted(room for room in rooms - {"__init__"} if f"`{room}`" not in text) == []
