"""Where shipped practices live, and finding a practice by its key."""

import re
from collections.abc import Iterable
from pathlib import Path

SHELF = Path(__file__).parents[1] / "shelf"


def practice_files(folders: Iterable[Path] = (SHELF,)) -> dict[str, Path]:
    """Practice key -> file, for every practice in `folders`; an earlier folder goes first."""
    found: dict[str, Path] = {}
    for folder in folders:
        for path in sorted(folder.glob("*/practice.yaml")):
            found.setdefault(path.parent.name, path)
        for path in sorted(folder.glob("*.yaml")):
            if is_practice(path):
                found.setdefault(path.stem, path)
    return found


def is_practice(path: Path) -> bool:
    """Whether a file says near its beginning that it is a practice."""
    try:
        with open(path, "rb") as stream:
            return re.search(rb"^practice *:", stream.read(2000), re.MULTILINE) is not None
    except OSError:
        return False
