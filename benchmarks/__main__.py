"""`python -m benchmarks NAME [--json]`: run one benchmark and print its figures."""

import json
import os
import platform
import sys
from difflib import get_close_matches
from importlib import import_module
from pathlib import Path
from typing import Any


def names() -> list[str]:
    """The benchmarks there are: every file here that is not this machinery."""
    return sorted(path.stem for path in Path(__file__).parent.glob("*.py") if not path.stem.startswith("_"))


def machine() -> dict[str, Any]:
    """What ran it: processor, cores, Python; nothing that names the computer or its user."""
    return {
        "processor": _processor(),
        "cores": len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count(),
        "system": platform.system(),
        "python": platform.python_version(),
    }


def report(name: str) -> dict[str, Any]:
    """One benchmark's documented object: name, machine, figures, yardstick."""
    measured = import_module(f"benchmarks.{name}").run()
    return {
        "name": name,
        "machine": machine(),
        "figures": dict(measured["figures"]),
        "yardstick": dict(measured["yardstick"]),
    }


def main(arguments: list[str]) -> int:
    """Run the benchmark named; 0 done, 2 for a name there is not."""
    wanted = [each for each in arguments if each != "--json"]
    if len(wanted) != 1 or wanted[0] not in names():
        near = get_close_matches(wanted[0], names(), n=1) if wanted else []
        hint = f" Did you mean “{near[0]}”?" if near else ""
        known = ", ".join(names()) or "none yet"
        print(f"Usage: python -m benchmarks NAME [--json]; the benchmarks are: {known}.{hint}", file=sys.stderr)
        return 2
    result = report(wanted[0])
    print(json.dumps(result, indent=2) if "--json" in arguments else _table(result))
    return 0


def _table(result: dict[str, Any]) -> str:
    machine = result["machine"]
    lines = [f"{result['name']} on {machine['processor']}, {machine['cores']} cores, Python {machine['python']}"]
    for part in ("figures", "yardstick"):
        lines.append(f"{part}:")
        for name, value in result[part].items():
            lines.append(f"  {name:<40} {f'{value:,.4g}' if isinstance(value, float) else value}")
    return "\n".join(lines)


def _processor() -> str:
    info = Path("/proc/cpuinfo")
    lines = info.read_text(encoding="utf-8").splitlines() if info.exists() else []
    named = [line.partition(":")[2].strip() for line in lines if line.startswith("model name")]
    return named[0] if named else platform.processor() or platform.machine()


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
