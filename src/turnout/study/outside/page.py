"""The page of the docs that says what simulated play answers to the outside rows, and how much of it holds."""

from collections.abc import Iterator, Mapping, Sequence

from turnout.evidence import Check, checks
from turnout.study.outside.verdict import Answer, Figure, bands_of

_BANDS = ("inside", "outside", "waiting")
_SIGNS = ("clear", "flat", "reversed", "waiting")


def page(answers: Mapping[str, Answer], *, seeds: int, model: str) -> str:
    """The whole page as Markdown, of the answers to every output row."""
    asked = [check for check in checks() if check.id in answers]
    parts = [*_head(seeds, model), *totals(asked, answers), ""]
    for topic in dict.fromkeys(check.topic for check in asked):
        parts += [*_topic(topic, [check for check in asked if check.topic == topic], answers), ""]
    return "\n".join((*parts, *_not_modelled())) + "\n"


def totals(asked: Sequence[Check], answers: Mapping[str, Answer]) -> Iterator[str]:
    """Two tables: bands met and directions clear, of the rows fitted to and of those kept for testing."""
    directions = [check for check in asked if check.kind == "direction"]
    bands = [check for check in asked if check.kind != "direction"]
    for name, rows, verdicts in (("bands", bands, _BANDS), ("directions", directions, _SIGNS)):
        yield f"| {name} | rows | {' | '.join(verdicts)} | {verdicts[0]} of answered | of all |"
        yield "|---" * (len(verdicts) + 4) + "|"
        for part in ("test", "fit"):
            said = [answers[check.id].verdict for check in rows if check.part == part]
            counts = [said.count(verdict) for verdict in verdicts]  # type: ignore[arg-type]
            shares = (_percent(counts[0], len(said) - counts[-1]), _percent(counts[0], len(said)))
            yield f"| {part} | {len(said)} | {' | '.join(map(str, counts))} | {' | '.join(shares)} |"
        yield ""


def line(check: Check, answer: Answer) -> str:
    """One row: what is claimed, by whom, what play gives, the verdict, and whether it is fitted to."""
    simulated = answer.said if answer.verdict == "waiting" else "; ".join(map(_figure, answer.figures))
    simulated += f". Misses: {'; '.join(answer.missed)}" if answer.missed else ""
    cells = (check.id, check.what, _claim(check), check.ref, check.why, simulated, f"**{answer.verdict}**", check.part)
    return "".join(f"| {cell.replace('|', '/')} " for cell in cells) + "|"


def _head(seeds: int, model: str) -> Iterator[str]:
    yield "# Simulated play against outside figures\n"
    yield (
        "Written by `tools/outside-checks`. Every row of the evidence that comes out of simulated play is played and "
        "measured here, right or wrong: no expected figure and no tolerance is moved. *fit*: weights may be fitted to"
        " the row. *test*: kept apart from every search for weights; but whoever wrote the behaviours has read these "
        "rows too, so they are no blind test (`docs/model.md`). A band is **inside** when the mean over seeds lies in"
        " it. A direction is **clear** when the 90 % intervals of all its figures lie above zero the published way, "
        "**reversed** when one lies wholly below, else **flat**.\n"
    )
    yield (
        f"{seeds} seeds of 300 s each (games of 20 min, and games whose figures are rare, longer), the same for all "
        f"variants of a row; model {model}. In brackets the 90 % interval of the mean over seeds. Adults are simulated "
        "at U18: professionals as *strong*, amateurs as *settled*. Where a study did not record its pitch or its "
        "goals, an association's usual ones are taken. What is said of a player is said of outfield players. "
        "*Technical actions* are passes received, passes, shots, balls cut out and tackles that won the ball, in every "
        "row. A figure that is *nan* was never seen in play.\n"
    )


def _topic(topic: str, rows: Sequence[Check], answers: Mapping[str, Answer]) -> Iterator[str]:
    yield f"## {topic[0].upper()}{topic[1:]}\n"
    yield "| row | what | published | source | what is played and measured | simulated | verdict | part |"
    yield "|---|---|---|---|---|---|---|---|"
    yield from (line(check, answers[check.id]) for check in rows)


def _not_modelled() -> Iterator[str]:
    yield "## Not modelled\n"
    yield "| row | what | why |\n|---|---|---|"
    yield from (
        f"| {check.id} | {check.topic}: {check.what} | {check.why} |"
        for check in checks()
        if check.use == "not modelled" and check.kind in ("published", "other-program", "direction")
    )


def _claim(check: Check) -> str:
    if check.kind == "direction":
        return check.expected
    bands = "; ".join(band.says() for band in bands_of(check))
    unit = f" {check.unit}" if check.unit != "-" else ""
    return f"{bands}{unit}" if check.tolerance or not check.expected[0].isalpha() else check.expected


def _figure(figure: Figure) -> str:
    low, high = f"{figure.low:.3g}", f"{figure.high:.3g}"
    return f"{figure.what}: {figure.value:.3g} ({low} to {high})"


def _percent(part: int, whole: int) -> str:
    return f"{100 * part / whole:.0f} %" if whole else "–"
