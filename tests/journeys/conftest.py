"""The real desk, started as a coach starts it, in the suite's real browser."""

import os
import re
import subprocess
import sys
from collections.abc import Iterator

import pytest


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
