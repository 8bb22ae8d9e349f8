"""Lines of a text by character: where one begins and ends, and which line break a file uses."""

import re

BREAK = re.compile(r"\r\n|\n|\r")


def line_start(text: str, at: int) -> int:
    """The first character of the line on which the character `at` stands."""
    return max(text.rfind("\n", 0, at), text.rfind("\r", 0, at)) + 1


def line_end(text: str, at: int) -> int:
    """The character after the last one of the line on which `at` stands: its line break, or the end of the text."""
    found = BREAK.search(text, at)
    return found.start() if found else len(text)


def after_line(text: str, at: int) -> int:
    """The first character of the line after the one on which `at` stands; the end of the text when there is none."""
    found = BREAK.search(text, at)
    return found.end() if found else len(text)


def break_near(text: str, at: int) -> str:
    """The line break of this line, else of the line before, else a line feed."""
    here = BREAK.match(text, line_end(text, at))
    before = BREAK.findall(text[:at])
    return here[0] if here else before[-1] if before else "\n"
