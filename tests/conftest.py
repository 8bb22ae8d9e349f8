"""One browser for the whole suite. Without chromium its tests are left out, loudly; on CI that is a failure."""

import os
import shutil
from collections.abc import Iterator
from typing import Any

import pytest

CHROMIUM = shutil.which("chromium") or shutil.which("chromium-browser")
FLAGS = (
    "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
    "--disable-component-update", "--disable-sync",
)  # fmt: skip
LEFT_OUT = pytest.StashKey[int]()


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Mark whatever asks for the browser; leave it out where there is none."""
    driven = [item for item in items if {"browser", "chromium"} & set(getattr(item, "fixturenames", ()))]
    for item in driven:
        item.add_marker("browser")
    if CHROMIUM is None and driven:
        if os.environ.get("CI", "").lower() == "true":
            raise pytest.UsageError("no chromium here: CI must run the browser tests")
        config.hook.pytest_deselected(items=driven)
        config.stash[LEFT_OUT] = len(driven)
        items[:] = [item for item in items if item not in driven]


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter, config: pytest.Config) -> None:
    """Say at the end, where it is read, that the browser tests did not run."""
    count = config.stash.get(LEFT_OUT, 0)
    if count:
        said = f"NO CHROMIUM: {count} tests in a real browser were NOT run. Install chromium to run them."
        terminalreporter.write_line(said, red=True, bold=True)


@pytest.fixture(scope="session")
def chromium() -> str:
    """The path of the browser."""
    assert CHROMIUM is not None, "tests that need the browser are left out when there is none"
    return CHROMIUM


@pytest.fixture(scope="session")
def browser(chromium: str) -> Iterator[Any]:
    """Chromium, driven; one for the whole run, since two drivers in one process get in each other's way."""
    from playwright.sync_api import sync_playwright

    with sync_playwright() as driver:
        opened = driver.chromium.launch(executable_path=chromium, args=list(FLAGS))
        yield opened
        opened.close()
