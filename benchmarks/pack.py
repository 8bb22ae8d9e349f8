"""How long the pack takes: with nothing kept from before, and once everything has been played; and `--help`."""

import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path

RUN = "from turnout.cli.main import run; run()"
SECONDS = "600"  # simulated seconds a part
HELP_RUNS = 7


def timed(arguments: list[str], cache: Path) -> float:
    """Wall seconds of one `turnout` process, start of Python included; raises CalledProcessError when it fails."""
    start = time.perf_counter()
    environment = {**os.environ, "TURNOUT_CACHE": str(cache)}
    command = [sys.executable, "-c", RUN, *arguments]
    subprocess.run(command, check=True, capture_output=True, env=environment)
    return time.perf_counter() - start


def run() -> dict:
    """Cold and warm pack of the example evening, `--help`, and a bare Python process as the yardstick."""
    with tempfile.TemporaryDirectory() as folder:
        cache, out = Path(folder) / "cache", Path(folder) / "out"
        arguments = ["pack", "--out", str(out), "--seconds", SECONDS]
        cold_s, warm_s = timed(arguments, cache), timed(arguments, cache)
        size_kb = sum(file.stat().st_size for file in out.iterdir()) / 1000
        helps = [timed(["--help"], cache) for _ in range(HELP_RUNS)]
    bare = [bare_python_s() for _ in range(HELP_RUNS)]
    figures = {
        "pack_cold_s": round(cold_s, 2),
        "pack_warm_s": round(warm_s, 2),
        "pack_kb": round(size_kb),
        "help_s": round(min(helps), 3),
    }
    return {"figures": figures, "yardstick": {"bare_python_s": round(min(bare), 3)}}


def bare_python_s() -> float:
    """Wall seconds to start Python and stop it again: what no command can be quicker than."""
    start = time.perf_counter()
    subprocess.run([sys.executable, "-c", "pass"], check=True)
    return time.perf_counter() - start
