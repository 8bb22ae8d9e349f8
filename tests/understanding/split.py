"""Which half of the sentences one belongs to: told by its own text, so that nobody chooses it."""

import hashlib


def normalised(sentence: str) -> str:
    """The sentence in small letters, one space between words, none at the ends."""
    return " ".join(sentence.casefold().split())


def split_of(sentence: str) -> str:
    """'tune' where the SHA-256 of the normalised sentence is an even number, else 'held'."""
    digest = hashlib.sha256(normalised(sentence).encode("utf-8")).digest()
    return "tune" if digest[-1] % 2 == 0 else "held"
