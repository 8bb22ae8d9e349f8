"""Same seed, same run: on any number of threads, compiled or not."""

import json
import os
import subprocess
import sys

import numpy as np
import pytest
from shipped_practices import KEYS, shipped

from turnout.play.simulate import simulate
from turnout.study.many import Who, many

PLAY = """
import json, sys
sys.path.insert(0, sys.argv[1])
from shipped_practices import KEYS, shipped
from turnout.play.kernel.compiling import COMPILED
from turnout.play.simulate import simulate
logs = {}
for key in KEYS:
    for seed in (1, 2, 3):
        sums = simulate(shipped(key), age=12, level="settled", seed=seed, seconds=60, log=True)
        logs[f"{key} {seed}"] = [[round(float(cell), 9) for cell in row] for row in sums.log]
print(json.dumps({"compiled": COMPILED, "logs": logs}))
"""


def logs_when(compiled: bool) -> dict:
    from pathlib import Path

    env = {**os.environ, "TURNOUT_COMPILE": "1" if compiled else "0"}
    here = str(Path(__file__).parent.parent)
    done = subprocess.run([sys.executable, "-c", PLAY, here], env=env, capture_output=True, text=True, check=True)
    answer = json.loads(done.stdout)
    assert answer["compiled"] is compiled
    return answer["logs"]


def test_compiled_and_plain_python_play_the_same_sixty_seconds() -> None:
    compiled, plain = logs_when(True), logs_when(False)
    assert len(compiled) == 3 * len(KEYS)
    for name, log in compiled.items():
        assert len(log) > 20, name
        assert log == plain[name], name


@pytest.mark.parametrize("key", KEYS)
def test_threads_do_not_change_the_answer(key: str) -> None:
    def blocks(threads: int) -> list[np.ndarray]:
        sums = many(shipped(key), Who(), block_s=60, seed=5, first=0, number=6, threads=threads)
        return [np.concatenate([s.S.ravel(), s.V.ravel(), s.E.ravel(), s.Q]) for s in sums]

    for one, four in zip(blocks(1), blocks(4), strict=True):
        assert np.array_equal(one, four)


def test_other_seeds_play_otherwise() -> None:
    first, second = (simulate(shipped("harbour-square"), age=12, level="settled", seed=s, seconds=60).S for s in (1, 2))
    assert not np.array_equal(first, second)
