"""Marks for the whole suite: every journey drives a real browser."""

import pytest


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    for item in items:
        if "journeys" in item.path.parts:
            item.add_marker("browser")
