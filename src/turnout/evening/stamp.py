"""One short name for the content of an input, so that equal inputs are known to be equal."""

import dataclasses
import hashlib
import json
from pathlib import Path

from turnout.practice.model import Source


def plain(value: object) -> object:
    """Dataclasses as plain lists and dicts; where a sentence stood in its file is left out."""
    if dataclasses.is_dataclass(value) and not isinstance(value, type):
        fields = [(field.name, getattr(value, field.name)) for field in dataclasses.fields(value)]
        return {name: plain(inner) for name, inner in fields if not isinstance(inner, Source)}
    if isinstance(value, dict):
        return {str(key): plain(inner) for key, inner in value.items()}
    if isinstance(value, (list, tuple)):
        return [plain(inner) for inner in value]
    return value


def content_hash(*values: object) -> str:
    """A SHA-256 over the values' content: same content, same name, whatever file it came from."""
    text = json.dumps([plain(value) for value in values], sort_keys=True, ensure_ascii=False, default=str)
    return hashlib.sha256(text.encode()).hexdigest()


def files_hash(paths: list[Path]) -> str:
    """A SHA-256 over the bytes of files, in order; a file that cannot be read counts as empty."""
    digest = hashlib.sha256()
    for path in paths:
        content = path.read_bytes() if path.is_file() else b""
        digest.update(len(content).to_bytes(8, "big") + content)
    return digest.hexdigest()
