"""What is shipped: practices and sessions by name, and the example evening."""

import re
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Literal

from turnout.evening.values import nearest
from turnout.problems import BadInput, Problem

Kind = Literal["practice", "session", "tonight"]
EXAMPLE = "hold-and-break"  # the session of the example evening
FIRST_KEY = re.compile(rb"^(practice|session|tonight)\s*:", re.MULTILINE)
PLAIN_STEMS = ("practice", "session", "tonight")  # then the folder carries the name


@dataclass(frozen=True)
class Shipped:
    """One file of the shelf or of the example season."""

    kind: Kind
    name: str
    path: Path


def folders() -> tuple[Path, ...]:
    """The folders that travel with Turnout: inside the package, or beside it in a checkout."""
    package = Path(__file__).parents[1]
    places = [base / name for base in (package, package.parents[1]) for name in ("shelf", "season-example")]
    return tuple(place for place in places if place.is_dir())


def kind_of(path: Path) -> Kind | None:
    """What a file says it is, by its first telling key; None when it does not say."""
    try:
        found = FIRST_KEY.search(path.read_bytes()[:20_000])
    except OSError:
        return None
    word = found[1].decode() if found else None
    return word if word in ("practice", "session", "tonight") else None  # type: ignore[return-value]


@lru_cache(maxsize=1)
def shipped() -> tuple[Shipped, ...]:
    """Everything shipped, in order of name."""
    files = [path for folder in folders() for path in sorted(folder.rglob("*.yaml"))]
    found = [(kind_of(path), path) for path in files]
    return tuple(Shipped(kind, name_of(path), path) for kind, path in found if kind)


def name_of(path: Path) -> str:
    """What a shipped file is called: its stem, or its folder's name when the stem says only the kind."""
    return path.parent.name if path.stem in PLAIN_STEMS else path.stem


def find(text: str, kinds: tuple[Kind, ...], *, name: str) -> Path:
    """A path as given, or the shipped file of that name; raises BadInput naming the nearest."""
    known = {item.name: item for item in shipped()}
    path = Path(text) if Path(text).is_file() or text not in known else known[text].path
    named = [item.name for item in known.values() if item.kind in kinds]
    what = " or ".join(kinds)
    kind = kind_of(path)
    if kind is not None and kind not in kinds:
        raise BadInput([Problem(name, None, None, text, f"that is a {kind}; name a {what}", nearest(text, named))])
    if path.is_file():
        return path
    expected = f"a {what} file, or one of the shelf: {', '.join(sorted(named)) or 'none is installed'}"
    raise BadInput([Problem(name, None, None, text, expected, nearest(text, named))])


def first(kind: Kind) -> Path:
    """The shipped session or evening that stands for all: the example's, else the first by name; raises BadInput when
    none is there."""
    there = [item for item in shipped() if item.kind == kind]
    for item in sorted(there, key=lambda item: item.name != EXAMPLE):
        return item.path
    raise BadInput([Problem("the shelf", None, None, kind, f"no {kind} is installed; name a file instead")])
