"""The keys of a practice file and what may stand under each."""

import re

from turnout.reading.declare import Answer, Keys, Line, Named, Several, Whole, Words, Written

CAPABILITIES = ("scanning", "positioning", "movement", "timing", "disguise", "technique")
AGES = re.compile(r"U(\d{1,2})(?: ?[-–] ?U(\d{1,2}))?")
SPAN = re.compile(r"(\d{1,3}(?:\.\d)?)(?: ?(?:to|-|–) ?(\d{1,3}(?:\.\d)?))?(?: ?minutes)?")
LENGTH = re.compile(r"(\d{1,3}(?:\.\d{1,2})?) ?([a-z]+)")
BAND = re.compile(r"([0-9]{1,2}) ?%")
DIRECTIONS = ("harder", "easier", "different")
CHANGING = ("add", "remove", "change", "ground", "people", "kit", "balls in play")

WEIGHT = Whole("3, 2 or 1", 1, 3)
GROUND = Named("each place by its name, one a line", Line("what and how large it is", words=True))
PEOPLE = Named(
    "each group, side first, then role", Line("how many, from the fewest to the most, and where", words=True)
)
SENTENCE = Line("a rule sentence", words=True)
IN_PLAY = Line("balls in play at once, where it is not one for all: 1 per pair, 1 per player or a number")
QUESTION = Keys(
    "what to ask and what to look for",
    {"ask": Line("a question to the players"), "look for": Line("what shows that it works")},
)
BALLS = Whole("balls in the bag", 1, 40)
STEP_KIT = Keys("what it needs from this step on", {"balls": BALLS}, needed=("balls",))
KIT = Keys(
    "what it needs",
    {
        "balls": BALLS,
        "bibs": Words("worked out", ("per side",)),
        "cones": Words("worked out", ("auto",)),
    },
)
STEP = Keys(
    "one named change",
    {
        **{way: Line("the step's name") for way in DIRECTIONS},
        "add": Several("sentences it adds", SENTENCE),
        "remove": Several("sentences it takes out, as they stand under rules", SENTENCE),
        "change": Several("sentences that take the place of those of the same kind", SENTENCE),
        "ground": GROUND,
        "people": PEOPLE,
        "kit": STEP_KIT,
        "balls in play": IN_PLAY,
    },
    one_of=DIRECTIONS,
    some_of=CHANGING,
)
ARRANGE = Keys(
    "what a fit may do with it",
    {
        "copies per adult": Whole("areas that one adult can look after", 1, 6),
        "waiting at most": Whole("players out at once in one area", 0, 12),
        "blocks": Written("how long a block of play lasts, at least half a minute", SPAN, "2 to 4 minutes"),
        "minutes": Written("how long the practice lasts", SPAN, "10 to 20"),
        "gap": Written("between two areas", LENGTH, "3 yd"),
        "band": Written("by how much the area per player may leave the written one", BAND, "25 %"),
        "keep square": Several("places whose sides stay equal", Line("a place"), alone=True),
        "size": Words("nothing changes its size", ("fixed",)),
        "bibs may change": Answer("whether players may change sides by the clock, in the middle of play"),
    },
)
PRACTICE = Keys(
    "a practice",
    {
        "practice": Line("its name"),
        "about": Line("what it is, in a sentence or two"),
        "ages": Written("the age groups it suits", AGES, "U10-U16"),
        "develops": Keys(
            "what it is for (3, one at most), what matters (2), what it touches on (1)",
            dict.fromkeys(CAPABILITIES, WEIGHT),
        ),
        "ground": GROUND,
        "people": PEOPLE,
        "also called": Named(
            "other words for sides, roles and places", Several("other words", Line("a word or a few"), alone=True)
        ),
        "balls in play": IN_PLAY,
        "rules": Several("the rule sentences, in order", SENTENCE),
        "steps": Several("named changes: harder, easier or different", STEP),
        "coach": Keys("questions by capability", dict.fromkeys(CAPABILITIES, QUESTION)),
        "kit": KIT,
        "arrange": ARRANGE,
    },
    needed=("practice", "ground", "people", "rules"),
)
