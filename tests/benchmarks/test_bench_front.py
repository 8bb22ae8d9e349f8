"""The front of the benchmarks: names, the documented object, the way out for a wrong name."""

import json
import sys
from types import ModuleType

import pytest

from benchmarks import __main__ as front


@pytest.fixture
def toy(monkeypatch: pytest.MonkeyPatch) -> str:
    module = ModuleType("benchmarks.toy")
    module.run = lambda: {"figures": {"sums_per_s": 12.5}, "yardstick": {"loops_per_s": 3}}  # type: ignore[attr-defined]
    monkeypatch.setitem(sys.modules, "benchmarks.toy", module)
    monkeypatch.setattr(front, "names", lambda: ["toy"])
    return "toy"


def test_the_documented_object(toy: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert front.main([toy, "--json"]) == 0
    printed = json.loads(capsys.readouterr().out)
    assert list(printed) == ["name", "machine", "figures", "yardstick"]
    assert printed["figures"] == {"sums_per_s": 12.5}
    assert set(printed["machine"]) == {"processor", "cores", "system", "python"}


def test_the_same_for_eyes(toy: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert front.main([toy]) == 0
    assert "sums_per_s" in capsys.readouterr().out


def test_a_wrong_name_is_answered_with_the_right_ones(toy: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert front.main(["toi"]) == 2
    assert "Did you mean “toy”?" in capsys.readouterr().err
    assert front.main([]) == 2


def test_the_machinery_is_no_benchmark() -> None:
    assert not [name for name in front.names() if name.startswith("_")]
