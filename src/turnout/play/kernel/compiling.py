"""Compile a kernel function with numba, or leave it plain Python when TURNOUT_COMPILE=0.

numba's cache does not see an edit in a called function of another file, so the cache folder carries a stamp of every
kernel source: an edit anywhere in this folder means a fresh compile.
"""

import hashlib
import os
from collections.abc import Callable
from functools import lru_cache
from pathlib import Path
from typing import Any, TypeVar

Function = TypeVar("Function", bound=Callable[..., Any])

COMPILED = os.environ.get("TURNOUT_COMPILE", "1") != "0"


@lru_cache
def model_stamp() -> str:
    """Twelve hex digits that change with any edit of the simulator's sources and data."""
    folder = Path(__file__).parent.parent
    digest = hashlib.sha256()
    for path in sorted([*folder.glob("*.py"), *folder.glob("kernel/*.py")]):
        digest.update(path.name.encode() + path.read_bytes())
    return digest.hexdigest()[:12]


def cache_folder() -> Path:
    """Where compiled kernels and answers are kept: TURNOUT_CACHE, or the user's cache folder."""
    base = os.environ.get("TURNOUT_CACHE") or os.environ.get("XDG_CACHE_HOME") or str(Path.home() / ".cache")
    return Path(base) / "turnout"


def _kernel_stamp() -> str:
    digest = hashlib.sha256()
    for path in sorted(Path(__file__).parent.glob("*.py")):
        digest.update(path.name.encode() + path.read_bytes())
    return digest.hexdigest()[:12]


def kernel(function: Function) -> Function:
    """Mark a kernel function. It may not make arrays, so it need not count references to those it gets."""
    return _compiled(function, _nrt=False)


def kernel_inlined(function: Function) -> Function:
    """Mark a small kernel function that is called in inner loops."""
    return _compiled(function, _nrt=False, forceinline=True)


def kernel_making_arrays(function: Function) -> Function:
    """Mark one of the few kernel functions that make arrays."""
    return _compiled(function)


def _compiled(function: Function, **options: Any) -> Function:
    if not COMPILED:
        return function
    os.environ.setdefault("NUMBA_CACHE_DIR", str(cache_folder() / f"kernel-{_kernel_stamp()}"))
    import numba

    return numba.njit(nogil=True, cache=True, error_model="numpy", **options)(function)  # type: ignore[call-overload, no-any-return]
