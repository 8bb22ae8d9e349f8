"""turnout pack"""

from pathlib import Path

from turnout.cli.answer import NO, answering
from turnout.cli.progress import progress
from turnout.cli.say import fit_text
from turnout.evening.fits import fit_evening
from turnout.evening.load import load_evening, with_facts
from turnout.evening.pack import write_pack
from turnout.evening.values import refuse, seconds_value


def run(
    session: str | None, *, tonight: Path | None, facts: dict, seconds: str, out: str, seed: str, json: bool
) -> None:
    """Write the pack; exit 1 when the session does not fit tonight."""
    with answering("pack", json=json, seed=seed) as answer, progress() as tell:
        span_s = seconds_value(seconds)
        if not out.strip():
            refuse("--out", out, "a folder to write into, such as out")
        evening = with_facts(load_evening(session, tonight=tonight, seed=answer.seed or 0), **facts)
        fitted = fit_evening(evening)
        answer.inputs_hash = evening.inputs_hash
        if not fitted.fitted.fits:
            answer.body = {"fits": False, "files": [], "smallest_change": fitted.fitted.smallest_change}
            answer.text, answer.code = fit_text(fitted), NO
            return
        files = write_pack(fitted, Path(out), seconds=span_s, tell=tell)
        answer.body = {"fits": True, "files": [str(file) for file in files]}
        answer.text = "\n".join(f"{file}  {file.stat().st_size / 1000:.0f} kB" for file in files)
