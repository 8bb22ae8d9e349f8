"""The reference of the language, written from the declarations: every form and phrase with its meaning.

`python -m turnout.practice.reference` prints it; docs/practice-language.md holds what it prints.
"""

from turnout.practice.forms import FORMS
from turnout.practice.ground_words import SHAPES
from turnout.practice.people_words import SHAPES as PEOPLE_SHAPES
from turnout.practice.phrases import PHRASES
from turnout.practice.saying.examples import LOOSELY, NOT_READ
from turnout.practice.templates import Agree, Entry, Maybe, Part, Slot, Word, parts

SLOT_WORDS = {
    "who": "WHO", "place": "PLACE", "passes": "PASSES", "while": "WHILE", "act": "ACT", "event": "EVENT",
    "change": "CHANGE", "changes": "CHANGES", "restart": "RESTART", "side": "SIDE", "role": "ROLE",
    "place_name": "NAME", "how": "HOW", "each": "of each side",
}  # fmt: skip
TITLES = {
    "who": "WHO: a side, players of a role, or one player", "place": "PLACE", "passes": "PASSES: a kind of pass",
    "how": "HOW: how a score came about", "while": "WHILE: a condition of the moment",
    "act": "ACT: what somebody does", "event": "EVENT",
    "change": "CHANGE: what happens then", "changes": "CHANGES: one to four, in order",
    "restart": "RESTART: how the ball comes back", "each": "Of each side",
}  # fmt: skip
PLACE_MEANINGS = {
    "rectangle": "west to east first, then south to north; yd, m, ft or paces; for each player (“at least”, “at most” "
    "hold the fit to it) its size follows from the designed numbers of those who are inside",
    "circle": "across is its diameter",
    "strip": "inside or beyond one end or side of a place; it keeps its depth",
    "square": "a rectangle of equal sides; a place after the first stands at the centre or in a corner of another, "
    "inside an end of it, or at a point",
    "polygon": "its corners in order round it, east and north; the first place is moved so that its middle is (0, 0)",
    "same": "as large as another place, with so much room between them",
    "channel": "a strip inside a side, in the word for one that runs along the play",
    "thirds": "three places of one size, first to last, and the list of them",
    "halves": "two places of one size, and the list of them; quarters are four in a row",
    "goal": "width and height, on the line of that end",
    "small goal": "its width, and a height if it is not 1 m; several on one end stand so far from the middle",
    "gate": "two cones so far apart, on a side or at a point (yards east and north of the middle of the field); "
    "“from south to north” after a point turns it",
}
PEOPLE_MEANINGS = (
    "designed number, the fewest and the most, and where they are at home",
    "a number without a range is fixed; on an edge they stand round the place",
    "a number that follows another group's",
    "the keeper of that goal",
    "many small sides: six (two to ten) of two players each",
    "a line of those who wait; “waiting for attackers: …” is the line for that role",
    "some sides of a place: north, south, east, west, long, short, or left and right of the way the side attacks",
    "a point east and north of the middle of the field",
    "one home with the ball, another without it",
)
FIXED = (
    "A side owns the ball from its first completed pass after a start or a regain until the other side completes one.",
    "“Its” and “the other side” are told from the side in the When; where there is none, from the side with the ball. "
    "The loser is who lost the ball in this event.",
    "On one event: points are booked, then the changes are made from left to right, then play restarts.",
    "A change that would take a role out of its range is skipped, alone.",
    "Groups of unequal size change over as many as the smaller has, longest served first; the rest go first next time.",
    "A pass that does not count neither adds to a run nor ends it.",
    "“Until” holds from each start to the event.",
    "A breach of a limit gives the ball to the other side there; nobody steps into or out of a place against a "
    "sentence, and a score or pass that a sentence does not let count counts nothing.",
    "The ball is out when it leaves the first place under ground; an edge player's strip is not out.",
    "Where no sentence says how play goes on after that, the other side kicks in at the nearest point.",
    "A home is a fence: players start there and stay there (on an edge: along the line, within 1 m outside it) unless "
    "a sentence lets or sends them elsewhere. “From” a place is a start only.",
    "Of two limits on one player, the sentence about fewer players holds.",
    "A goal that a side attacks is worth 1 to it, unless a sentence says what scoring there is worth.",
    "A goal or gate is a line: it keeps its metres when the practice changes size and moves with its side; a point "
    "moves in proportion to the first place. Without a word on it a line at a point lies from west to east.",
    "A small goal is 1 m high where no height is written.",
    "Whoever is at home in a goal is its keeper and starts half a metre in front of it.",
    "Many small sides share out their players evenly: 13 in pairs are one three and five pairs. Each has its own ball "
    "unless “balls in play” says otherwise, and brings its own ball back in by a dribble-in unless a sentence says so.",
    "A place told from a side (“the attacking half”) is the place of the side the sentence is about; told of “a side” "
    "or “everyone” it is each side's own.",
    "A line that waits for a role: the next group is as many as that role needs, longest waiting first, filled up from "
    "those who have just come off.",
    "A turn ends when a sentence ends it; then the next group plays, and everybody else stands at home.",
    "“May not enter” is written as “stay out of”, “may not leave” as “stay in”.",
    "A score by an act nobody was allowed counts nothing.",
    "Those who wait stand in a line off the field, behind the middle of that side, or beside a goal that stands there.",
)
LOOSE = """
## How loosely one may write

A sentence is first read as it stands above. Where that fails it is read as a coach would say it: capitals, plurals,
number words and short forms (“can't”, “two-touch”) are free, clauses may stand in another order, “if”, “once” and
“whenever” are When, talk is passed over (“lads”, “so be quick”), and two rules may stand in one sentence. Words for
players and places hold only where exactly one role or place of the practice fits: “the outside players” where one role
is on the edge, “the floater” where somebody is neutral, “the middle” where one place lies there. A name of the practice
goes before such a word, and `also called` adds words of your own.

It is read only if every word has its place and exactly one meaning is left; no word that turns a meaning (not, only,
except, unless, until, before, other, at least, a number) is ever passed over. `turnout check --tidy` writes it back as
it is printed, two rules as two sentences. What is not read is answered with up to three forms, filled with what was
said; “…” stands where nothing was.
"""
INTRO = """# The practice language

Written by `python -m turnout.practice.reference` from the declarations in `turnout/practice/forms.py` and
`phrases.py`; a test keeps it equal to them. What stands in [ ] may be left out; of two sides of a | one stands there.
Side names, roles and places are the practice's own; an article before them is free, a plural too.
"""


def reference() -> str:
    """The whole reference as Markdown."""
    told = [INTRO, "## Sentences\n", *(form_lines(form) for form in FORMS)]
    for kind, title in TITLES.items():
        told += [f"\n## {title}\n", *(phrase_line(entry) for entry in PHRASES if entry.type == kind)]
    told += ["\n## Ground: one place a line\n", *(f"- {line}" for line in ground_lines())]
    told += ["\n## People: one group a line\n", *(f"- {line}" for line in people_lines())]
    told += [LOOSE, *(f"- {said} → *{printed}*" for said, printed in LOOSELY)]
    told += ["\nNot read:\n", *(f"- {said} — {why}" for said, why in NOT_READ)]
    told += ["\n## Meanings fixed once\n", *(f"- {line}" for line in FIXED)]
    return "\n".join(told) + "\n"


def ground_lines() -> list[str]:
    """How a place is written, from the declared shapes."""
    return [f"{shape_words} — {PLACE_MEANINGS[kind]}" for kind, shape_words in SHAPES.items()] + [
        "“north gate, east gate” — a list of places: in a sentence, any of them"
    ]


def people_lines() -> list[str]:
    """How a group is written, from the declared shapes."""
    told = [f"{shown} — {meaning}" for shown, meaning in zip(PEOPLE_SHAPES, PEOPLE_MEANINGS, strict=True)]
    return [*told, "balls in play: “1 per pair”, “1 per player” or “3” — beside `people`; without it one ball for all"]


def form_lines(form: Entry) -> str:
    """One form: number, template, meaning, example."""
    return f"- **{form.number}** `{shape(form)}`  \n  {form.meaning}.  \n  *{form.example}*"


def phrase_line(entry: Entry) -> str:
    """One phrase: template and meaning."""
    return f"- `{shape(entry)}` — {entry.meaning}"


def shape(entry: Entry) -> str:
    """The first template of an entry as a reader sees it."""
    return words(parts(entry.templates[0][1])).replace(" ,", ",").replace(" .", ".").replace("[ ", "[")


def words(template: tuple[Part, ...]) -> str:
    """A template in words, slots in capitals, acts in their plain or -ing form."""
    return " ".join(word_of(piece) for piece in template)


def word_of(piece: Part) -> str:
    """One part of a template in words."""
    if isinstance(piece, Word):
        return piece.text
    if isinstance(piece, Agree):
        return piece.one if piece.ref == "@" else piece.many
    if isinstance(piece, Maybe):
        return f"[{' | '.join(words(option) for option in piece.options)}]"
    return slot_word(piece)


def slot_word(slot: Slot) -> str:
    """A slot in capitals with its preposition: 'in PLACE', 'ACTing'."""
    if slot.type == "int":
        return slot.name.upper()
    word = SLOT_WORDS[slot.type]
    if slot.type == "act" and slot.inflection == "ing":
        return f"{word}ing"
    before = (
        {"in": "in ", "where": "in ", "into": "into ", "from": "from ", "through": "through "}
        if slot.type == "place"
        else {}
    )
    return before.get(slot.inflection, "") + word


if __name__ == "__main__":
    print(reference(), end="")
