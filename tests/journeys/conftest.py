"""A real browser on the real desk. Without chromium these tests are skipped loudly, on CI they fail."""

import os
import re
import shutil
import subprocess
import sys
from collections.abc import Iterator

import pytest

CHROMIUM = shutil.which("chromium") or shutil.which("chromium-browser")
FLAGS = [
    "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
    "--disable-component-update", "--disable-sync",
]  # fmt: skip
MISSING = "NO CHROMIUM: the journeys in a real browser were NOT run. Install chromium, or set CI=true to fail here."


def pytest_terminal_summary(terminalreporter) -> None:
    """Say it at the very end too, where it is read."""
    if CHROMIUM is None and any(
        "journeys" in str(report.nodeid) for report in terminalreporter.stats.get("skipped", [])
    ):
        terminalreporter.write_line(MISSING, red=True, bold=True)


@pytest.fixture(scope="session")
def chromium() -> str:
    """The path of the browser; skips when there is none, fails on CI."""
    if CHROMIUM is None:
        if os.environ.get("CI", "").lower() == "true":
            pytest.fail(MISSING)
        pytest.skip(MISSING)
    return CHROMIUM


@pytest.fixture(scope="session")
def browser(chromium) -> Iterator:
    """Chromium, driven."""
    from playwright.sync_api import sync_playwright

    with sync_playwright() as driver:
        opened = driver.chromium.launch(executable_path=chromium, args=FLAGS)
        yield opened
        opened.close()


@pytest.fixture(scope="session")
def desk_process(chromium, tmp_path_factory) -> Iterator[str]:
    """The desk as a coach starts it, on a free port; gives its first address."""
    code = "from turnout.cli.main import run; run()"
    process = subprocess.Popen(
        [sys.executable, "-u", "-c", code, "desk", "--no-open"], stdout=subprocess.PIPE, text=True,
        env={**os.environ, "TURNOUT_CACHE": str(tmp_path_factory.mktemp("cache"))},
    )  # fmt: skip
    assert process.stdout is not None
    address = re.search(r"http://127\.0\.0\.1:\d+/\?start=\S+", process.stdout.readline())
    assert address, "the desk did not say its address"
    yield address[0]
    process.terminate()
    process.wait(timeout=20)
    assert process.returncode is not None


@pytest.fixture
def desk(browser, desk_process) -> Iterator:
    """A fresh page on the desk's own address, all requests noted in `page.requests_made`."""
    context = browser.new_context(viewport={"width": 1440, "height": 900}, accept_downloads=True)
    page = context.new_page()
    page.requests_made = []
    page.faults = []
    page.on("request", lambda request: page.requests_made.append(request.url))
    page.on("console", lambda message: page.faults.append(message.text) if message.type == "error" else None)
    page.on("pageerror", lambda error: page.faults.append(str(error)))
    page.goto(desk_process)
    page.wait_for_selector("#hour")
    yield page
    context.close()
