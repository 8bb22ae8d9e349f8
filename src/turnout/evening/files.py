"""Files written whole or not at all."""

import secrets
from collections.abc import Callable, Mapping
from pathlib import Path

from turnout.problems import BadInput, Problem
from turnout.reading.whole import write_whole

__all__ = ["read_or_none", "ready_folder", "write_folder", "write_whole"]


def ready_folder(folder: Path) -> None:
    """Make the folder and try that it can be written, before hours of work are meant for it; raises BadInput."""
    try:
        folder.mkdir(parents=True, exist_ok=True)
        scrap = folder / f".{secrets.token_hex(4)}.part"
        scrap.write_bytes(b"")
        scrap.unlink()
    except OSError as error:
        raise BadInput([unwritable(folder, error)]) from error


def write_folder(folder: Path, contents: Mapping[str, bytes]) -> list[Path]:
    """Write several files into a folder: everything is put beside its place first, then all are renamed.

    Raises BadInput when the folder cannot be made or written; then no file of it has changed.
    """
    ready_folder(folder)
    scraps: list[tuple[Path, Path]] = []
    try:
        for name, content in contents.items():
            scrap = folder / f".{name}.{secrets.token_hex(4)}.part"
            scraps.append((scrap, folder / name))
            scrap.write_bytes(content)
        for scrap, path in scraps:
            scrap.replace(path)
    except OSError as error:
        raise BadInput([unwritable(folder, error)]) from error
    finally:
        for scrap, _ in scraps:
            scrap.unlink(missing_ok=True)
    return [path for _, path in scraps]


def unwritable(folder: Path, error: OSError) -> Problem:
    """Why a folder cannot take the pack."""
    return Problem(
        str(folder), None, None, error.strerror or str(error), "name a folder you may write in, with room on the disk"
    )


def read_or_none(path: Path, parse: Callable[[bytes], object]) -> object | None:
    """The parsed file, or None when it is missing, unreadable or not what `parse` takes."""
    try:
        return parse(path.read_bytes())
    except (OSError, ValueError, KeyError, TypeError, AttributeError):
        return None
