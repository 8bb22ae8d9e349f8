"""The keys of a session file and what may stand under each."""

import re

from turnout.reading.declare import Answer, Keys, Line, Several, Whole, Written

LONGEST_MIN = 180
AGE = re.compile(r"[Uu]([0-9]{1,2})")
EXPECTED = re.compile(r"([0-9]{1,2})(?: ?(?:-|–|to) ?([0-9]{1,2}))?")
SUCCESS = re.compile(r"([0-9]{1,3}) ?(?:-|–|to) ?([0-9]{1,3}) ?%")

PART = Keys(
    "one part of the hour",
    {
        "practice": Line("the practice's key: its file's name, or its folder's"),
        "minutes": Whole("how long it lasts", 1, LONGEST_MIN),
        "steps": Several("steps of the practice to take, by name", Line("a step's name"), alone=True),
        "success": Written("the share of attempts that should come off", SUCCESS, "40-55 %"),
        "may be left out": Answer("whether the fit may drop it when time is short"),
    },
    needed=("practice", "minutes"),
)
SESSION = Keys(
    "a session",
    {
        "session": Line("its name"),
        "for": Written("the age group", AGE, "U12"),
        "aim": Line("what the hour is for"),
        "minutes": Whole("how long the hour is", 10, LONGEST_MIN),
        "expected": Written("how many will come", EXPECTED, "11-15"),
        "parts": Several("the parts, in order", PART),
    },
    needed=("session", "for", "minutes", "parts"),
)
