"""The evidence page of the docs: what answers each outside check, which are not answered yet or never, and on what."""

from collections import Counter
from collections.abc import Callable, Iterator

from turnout.evidence.loader import Check, checks, references, values

_MARKS = {
    "read": "seen in the source's own text",
    "relayed": "seen in a copy, quotation or digest made by others",
    "memory": "recalled, not re-read: never fails the build for a published figure",
    "computed": "worked out from stated inputs",
    "own": "our design choice; no published figure was found, so it is a free parameter",
}
_KINDS = {
    "definition": "true by law, rule or arithmetic; a miss fails the build",
    "worked-example": "exact inputs, exact answer; a miss fails the build",
    "published": "measured by somebody; the answer must land in the band (only a warning where it was remembered)",
    "other-program": "another program's behaviour under its own rules; never a calibration of children",
    "direction": "only the sign is claimed; paired simulations",
}
_USES = {
    "own code": "computed by code of ours",
    "look-up": "looked up in our tables",
    "input": "a figure put into the simulator",
    "simulator output": "comes out of simulated play",
    "not modelled": "never answered; the reason is given",
}


def page() -> str:
    """The whole page as Markdown; `docs/evidence.md` is this text and a test holds it to it."""
    parts = (_head(), _sources(), _kinds(), _uses(), _answered(), _outputs(), _waiting(), _not_modelled())
    return "\n".join(line for part in parts for line in part) + "\n"


def counts() -> Counter[str]:
    """Checks by status: computed, looked up, simulated, not yet."""
    return Counter(check.status for check in checks())


def _head() -> Iterator[str]:
    by = counts()
    running = by["computed"] + by["looked up"] + by["simulated"]
    yield "# What Turnout is checked against\n"
    yield "Generated from the evidence room by `tools/evidence-page`; a test fails when it is out of date.\n"
    yield (
        f"Of {sum(by.values())} outside checks **{running} run now**: {by['computed']} answers are computed by the "
        f"program, {by['looked up']} are looked up in its own tables (that guards against a slip, not against an "
        f"error of ours), {by['simulated']} are measured in simulated play, right or wrong. **{by['not yet']} are not "
        "answered** and are listed below, each with the reason.\n"
    )


def _sources() -> Iterator[str]:
    marks: Counter[str] = Counter(value.mark for value in values().values())
    yield "## Where the numbers come from\n"
    yield f"{len(values())} numbers from {len(references())} sources, each with the mark of how it was come by:\n"
    yield "| mark | numbers | meaning |\n|---|---|---|"
    yield from (f"| {mark} | {marks[mark]} | {said} |" for mark, said in _MARKS.items())
    yield ""


def _kinds() -> Iterator[str]:
    yield "## Kinds of check\n"
    yield "| kind | checks | run now | meaning |\n|---|---|---|---|"
    for kind, said in _KINDS.items():
        ours = [check for check in checks() if check.kind == kind]
        yield f"| {kind} | {len(ours)} | {sum(check.status != 'not yet' for check in ours)} | {said} |"
    yield ""


def _uses() -> Iterator[str]:
    yield "## What answers a check\n"
    yield (
        "Every check is assigned. Outputs of the simulator are either *fit* (weights may be fitted to them) or *test* "
        "(kept apart to test what was fitted), by topic and source, never row by row.\n"
    )
    yield "| use | checks | run now | fit | test | meaning |\n|---|---|---|---|---|---|"
    for use, said in _USES.items():
        ours = [check for check in checks() if check.use == use]
        fit, test = (sum(check.part == part for check in ours) for part in ("fit", "test"))
        run = sum(check.status != "not yet" for check in ours)
        yield f"| {use} | {len(ours)} | {run} | {fit or ''} | {test or ''} | {said} |"
    yield ""


def _answered() -> Iterator[str]:
    yield "## Run now\n"
    yield "| check | what | expected | source | answer |\n|---|---|---|---|---|"
    yield from (f"{_row(check)} {check.status} |" for check in checks() if check.status in ("computed", "looked up"))
    yield ""


def _outputs() -> Iterator[str]:
    yield "## Outputs of the simulator\n"
    yield "| check | what | expected | source | part | what is played and measured | answer |"
    yield "|---|---|---|---|---|---|---|"
    for check in checks():
        if check.use == "simulator output":
            yield f"{_row(check)} {check.part} | {_cell(check.why)} | {check.status} |"
    yield ""


def _waiting() -> Iterator[str]:
    yield "## Waiting\n"
    yield from _unanswered(lambda check: check.use in ("own code", "look-up", "input"))
    yield ""


def _not_modelled() -> Iterator[str]:
    yield "## Not modelled\n"
    yield from _unanswered(lambda check: check.use == "not modelled")


def _unanswered(meant: Callable[[Check], bool]) -> Iterator[str]:
    yield "| check | what | expected | source | why |\n|---|---|---|---|---|"
    for check in checks():
        if meant(check) and check.status == "not yet":
            yield f"{_row(check)} {_cell(check.why)} |"


def _cell(text: str) -> str:
    return text.replace("|", "/")


def _row(check: Check) -> str:
    room = f" ± {check.tolerance}" if check.tolerance not in ("", "0", "sign") else ""
    unit = f" {check.unit}" if check.unit != "-" else ""
    cells = (check.id, check.what, f"{check.expected}{room}{unit}", check.ref)
    return "".join(f"| {_cell(cell)} " for cell in cells) + "|"
