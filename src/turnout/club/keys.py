"""The keys of a squad's file and of tonight's, and what may stand under each. What must not be kept has no key."""

import re

from turnout.practice.keys import PRACTICE
from turnout.reading.declare import Answer, Either, Keys, Line, Named, Several, Whole, Words, Written
from turnout.session.keys import AGE, LONGEST_MIN, SESSION

LEVELS = ("new", "learning", "settled", "strong")
SURFACES = ("3G", "grass", "wet grass", "hall")
MOST_PLAYERS = 40
START = re.compile(r"([01]?[0-9]|2[0-3])[:.]([0-5][0-9])")

LABEL = Line("a label or first name, at most 20 letters")
COUNT = Whole("how many", 0, 500)
HERE = Whole("how many", 2, MOST_PLAYERS)
AGE_GROUP = Written("the age group", AGE, "U12")
LEVEL = Words("how the group plays", LEVELS, any_case=True)
SQUAD = Keys(
    "a squad",
    {
        "squad": Line("its name"),
        "age": AGE_GROUP,
        "level": LEVEL,
        "players": Several("labels or first names, and nothing else about anybody", LABEL),
    },
    needed=("squad", "players"),
)
KIT = Keys(
    "what is in the bag",
    {
        "bibs": Named("bibs by colour", COUNT),
        "cones": Named("cones by colour", COUNT),
        "balls": Whole("balls", 1, 60),
        "own shirts": Line("the colour of the players' own shirts, or mixed"),
    },
)
FACTS = Keys(
    "one evening's facts",
    {
        "players": Either("who came", (HERE, Several("labels or first names of the squad", LABEL))),
        "squad": Line("the squad's file beside this one, by its name"),
        "level": LEVEL,
        "age": AGE_GROUP,
        "space": Line("a share of a pitch or a size: third of 3G, 32 x 30 m, hall 33 x 18 m", words=True),
        "kit": KIT,
        "adults": Whole("adults who are there", 0, 20),
        "first aider": Answer("whether one of them is a first aider"),
        "surface": Words("what is played on", SURFACES, any_case=True),
        "country": Line("whose tables count"),
        "start": Written("when it begins", START, "18:00"),
        "minutes": Whole("how long there is", 10, LONGEST_MIN),
    },
    needed=("players", "space"),
)
TONIGHT = Keys("a tonight file", {"tonight": FACTS}, needed=("tonight",))
FILES = {"practice": PRACTICE, "session": SESSION, "tonight": TONIGHT, "squad": SQUAD}  # by the key a file begins with
