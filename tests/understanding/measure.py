"""How many sentences are understood: `PYTHONPATH=src:tests python -m understanding.measure tune` (or `held`).

With `--misses` it lists the sentences that fell short; not for the held-back half before its one measurement is done.
"""

import sys
from collections.abc import Iterable
from dataclasses import dataclass
from math import sqrt

from understanding.corpus import Meaning, Sentence, meaning, names, right_forms, right_meanings, sentences

from turnout.practice.names import Names
from turnout.practice.rules import RuleError, parse_rule, parse_rules

MOST_SUGGESTIONS = 3
Z95 = 1.959964  # of the standard normal, two-sided 95 %


@dataclass(frozen=True)
class Found:
    """What the reader made of one sentence."""

    said: Sentence
    read: Meaning | None  # None: not read at once
    suggested: tuple[str, ...]  # the forms suggested, by name, best first

    @property
    def right(self) -> bool:
        """Read at once with the right meaning, all of it."""
        return self.said.sayable and self.read in right_meanings(self.said)

    @property
    def wrong(self) -> bool:
        """Read at once with a meaning it has not, or only a part of its meaning."""
        return self.read is not None and not self.right

    def offered(self, most: int = MOST_SUGGESTIONS) -> bool:
        """Read right, or its form among the first suggestions."""
        return self.right or (self.read is None and bool(set(self.suggested[:most]) & right_forms(self.said)))


def understood(said: Sentence) -> Found:
    """The sentence read as it stands, else what the reader suggests."""
    known = names(said.context)
    try:
        return Found(said, meaning(said.context, parse_rules(said.sentence, known)), ())
    except RuleError as error:
        return Found(said, None, suggested_forms(said.sentence, error, known))


def suggested_forms(sentence: str, error: RuleError, known: Names) -> tuple[str, ...]:
    """The forms a message offers: the sentence with its near spelling, then the forms named in it."""
    near = corrected(sentence, error)
    forms = [form_of(near, known) if near else None, *(offer.form for offer in error.offers)]
    return tuple(dict.fromkeys(form for form in forms if form))


def corrected(sentence: str, error: RuleError) -> str | None:
    """The sentence with the nearest spelling in the place of what was not read."""
    if error.nearest is None:
        return None
    return sentence[: error.offset] + error.nearest + sentence[error.offset + len(error.read) :]


def form_of(text: str, known: Names) -> str | None:
    """The form of a corrected sentence; None where it does not read."""
    try:
        return parse_rule(text, known).form
    except RuleError:
        return None


def wilson(hits: int, of: int) -> tuple[float, float]:
    """The 95 % interval of a share, both ends from 0 to 1 (Wilson, Journal of the American Statistical Association 22,
    1927)."""
    if of == 0:
        return 0.0, 1.0
    share, z2 = hits / of, Z95 * Z95
    middle = share + z2 / (2 * of)
    half = Z95 * sqrt(share * (1 - share) / of + z2 / (4 * of * of))
    return max(0.0, (middle - half) / (1 + z2 / of)), min(1.0, (middle + half) / (1 + z2 / of))


def share(hits: int, of: int) -> str:
    """'17 of 54, 31 % (21-45)'."""
    low, high = wilson(hits, of)
    return f"{hits} of {of}, {100 * hits / max(1, of):.0f} % ({100 * low:.0f}-{100 * high:.0f})"


def figures(found: Iterable[Found]) -> dict[str, str]:
    """The shares of a set of sentences: of those the language can say, and (read wrong) of all."""
    every = list(found)
    sayable = [one for one in every if one.said.sayable]
    return {
        "read at once, right": share(sum(one.right for one in sayable), len(sayable)),
        "right form suggested first, or read right": share(sum(one.offered(1) for one in sayable), len(sayable)),
        "right form in the first three, or read right": share(sum(one.offered() for one in sayable), len(sayable)),
        "read at once, wrong (of all sentences)": share(sum(one.wrong for one in every), len(every)),
    }


def report(split: str, misses: bool = False) -> None:
    """Print the shares of one half, by source and together, and if asked what fell short."""
    found = [understood(said) for said in sentences() if said.split == split]
    for source in ("fresh", "earlier"):
        some = [one for one in found if one.said.source == source]
        print(f"{split}, {source}: {len(some)} sentences")
        for what, said in figures(some).items():
            print(f"  {what}: {said}")
    for one in found if misses else ():
        if one.wrong or (one.said.sayable and not one.right):
            how = "WRONG" if one.wrong else "suggested" if one.offered() else "missed"
            print(f"{how}\t{one.said.id}\t{one.said.sentence}\t{one.said.canonical}")


if __name__ == "__main__":
    halves = [word for word in sys.argv[1:] if word in ("tune", "held")]
    if not halves:
        sys.exit("say which half: tune or held")
    for half in halves:
        report(half, misses="--misses" in sys.argv)
