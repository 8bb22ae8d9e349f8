"""The evidence page of the docs: how many outside checks our program answers, which it does not yet, and on what."""

from collections import Counter
from collections.abc import Iterator

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


def page() -> str:
    """The whole page as Markdown; `docs/evidence.md` is this text and a test holds it to it."""
    return "\n".join((*_head(), *_sources(), *_kinds(), *_answered(), *_not_yet())) + "\n"


def counts() -> Counter[str]:
    """Checks by status: computed, looked up, not yet."""
    return Counter(check.status for check in checks())


def _head() -> Iterator[str]:
    by = counts()
    running = by["computed"] + by["looked up"]
    yield "# What Turnout is checked against\n"
    yield "Generated from the evidence room by `tools/evidence-page`; a test fails when it is out of date.\n"
    yield (
        f"Of {sum(by.values())} outside checks **{running} run now**: {by['computed']} answers are computed by the "
        f"program, {by['looked up']} are looked up in its own tables (that guards against a slip, not against an "
        f"error of ours). **{by['not yet']} are not answered yet** and are listed below.\n"
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


def _answered() -> Iterator[str]:
    yield "## Run now\n"
    yield "| check | what | expected | source | answer |\n|---|---|---|---|---|"
    yield from (f"{_row(check)} {check.status} |" for check in checks() if check.status != "not yet")
    yield ""


def _not_yet() -> Iterator[str]:
    yield "## Not yet\n"
    yield "| check | what | expected | source |\n|---|---|---|---|"
    yield from (_row(check) for check in checks() if check.status == "not yet")


def _row(check: Check) -> str:
    room = f" ± {check.tolerance}" if check.tolerance not in ("", "0", "sign") else ""
    unit = f" {check.unit}" if check.unit != "-" else ""
    cells = (check.id, check.what, f"{check.expected}{room}{unit}", check.ref)
    return "".join(f"| {cell.replace('|', '/')} " for cell in cells) + "|"
