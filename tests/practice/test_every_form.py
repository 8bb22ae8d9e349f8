"""Every form and phrase, one sentence each: read, printed back as it stands, and what it means in the table."""

import pytest

from turnout.practice.meaning import rule_rows
from turnout.practice.model import Rule, Source
from turnout.practice.names import Names
from turnout.practice.printing import print_rule
from turnout.practice.rules import RuleError, parse_rule
from turnout.practice.table import Act, Event, How, Passes, Where, While, Who

NAMES = Names(
    ("amber", "blue", "neutral"), ("inside", "edge", "wide", "server"),
    ("square", "north end", "lane", "far lane", "goal"), ones=("server",),
)  # fmt: skip
EVERYONE, SIDE = Who("everyone"), Who("a side")
EDGE, INSIDE, WIDE = (Who("role", role=role) for role in ("edge", "inside", "wide"))
AMBER, NEUTRAL = Who("side", side="amber"), Who("side", side="neutral")
SQUARE, NORTH = Where("square"), Where("north end")


def rows(text: str):  # type: ignore[no-untyped-def]
    return rule_rows(Rule(parse_rule(text, NAMES), text, Source("toy", 1, 1, text)))


FORMS = [
    ("A score with the first touch counts 2.", "score counts",
     {"how": How("first touch"), "value": 2, "kind": "weight"}),
    ("A score with the head counts 3.", "score counts", {"how": How("head")}),
    ("A score from outside the square counts 2.", "score counts", {"how": How("outside", SQUARE)}),
    ("A score from a pass by wide players counts 2.", "score counts", {"how": How("pass by", who=WIDE)}),
    ("A score from a pass from the lane counts 2.", "score counts", {"how": How("pass from", Where("lane"))}),
    ("A score within 8 seconds of winning the ball counts 2.", "score counts",
     {"how": How("within", after=Act("win"), seconds=8.0)}),
    ("A score counts only after a side completes 3 passes.", "score after",
     {"event": Event("act", SIDE, Act("passes", 3)), "within_s": None, "kind": "guard"}),
    ("A score counts only after the ball enters the square within 6 seconds.", "score after",
     {"event": Event("ball enters", where=SQUARE), "within_s": 6.0, "breach": "the score counts nothing"}),
    ("A score counts only from inside the square.", "score how", {"how": How("inside", SQUARE)}),
    ("A score counts only when amber are in the square.", "score when", {"while_": While("in place", AMBER, SQUARE)}),
    ("A score counts only when a side is behind.", "score when", {"while_": While("behind", SIDE)}),
    ("Only passes into the north end count.", "only passes count", {"passes": Passes("into", where=NORTH)}),
    ("Only passes over the square count.", "only passes count", {"passes": Passes("over", where=SQUARE)}),
    ("Passes between edge players count 2.", "passes count", {"passes": Passes("between", EDGE), "value": 2}),
    ("Passes back to the passer do not count.", "passes count", {"passes": Passes("back"), "value": 0}),
    ("Edge players stay out of the square while amber have the ball.", "stay out",
     {"while_": While("has the ball", AMBER)}),
    ("Edge players stay behind the goal.", "stay in", {"where": Where("goal", "behind")}),
    ("At most 1 edge player may be in the square.", "at most", {"who": EDGE, "value": 1, "each": False}),
    ("At most 2 amber edge players may be in the square.", "at most", {"who": Who("role", "amber", "edge")}),
    ("At most 2 amber players may be in the square.", "at most", {"who": AMBER}),
    ("At most 3 players of each side may be in the square.", "at most", {"who": EVERYONE, "each": True}),
    ("At least 1 player of each side must stay in the square.", "at least", {"value": 1, "each": True}),
    ("Nobody tackles in the square until the player there has 2 touches.", "no tackle",
     {"until": Event("act", Who("player there"), Act("touches", 2)), "where": SQUARE}),
    ("Amber must shoot within 8 seconds of starting.", "must",
     {"act": Act("shoot"), "within_s": 8.0, "after": Act("start")}),
    ("Amber must shoot within 8 seconds.", "must", {"within_s": 8.0, "after": None}),
    ("Neutrals may not score.", "may not", {"who": NEUTRAL, "act": Act("score")}),
    ("Neutrals may not pass back to the passer until 5 seconds pass.", "may not",
     {"act": Act("pass back"), "until": Event("seconds pass", seconds=5.0)}),
    ("No passes from edge players to neutrals.", "no passes", {"passes": Passes("from to", EDGE, NEUTRAL)}),
    ("Only inside players may score.", "only may", {"who": INSIDE, "act": Act("score")}),
    ("Neutrals play for the side that is behind.", "plays for", {"target": Who("side behind")}),
    ("Edge players may come in to the square while the ball is in the north end.", "may come in",
     {"where": SQUARE, "while_": While("ball in", where=NORTH), "kind": "permit"}),
    ("Play starts with a pass from neutrals to amber.", "first pass", {"who": NEUTRAL, "target": AMBER}),
    ("A turn lasts 2 minutes.", "turn lasts", {"value": 120, "kind": "turn"}),
    ("A turn lasts 90 seconds.", "turn lasts", {"value": 90}),
    ("A turn ends at 3 points.", "turn points", {"value": 3}),
    ("The ball comes back in with a throw-in.", "ball in", {"value": "throw-in"}),
    ("The first pass after a start is free.", "free pass", {"kind": "law"}),
    ("Play restarts when everyone is set.", "everyone set", {}),
    ("Offside applies.", "offside", {"where": None}),
    ("Offside applies beyond the square.", "offside", {"where": SQUARE}),
    ("No heading.", "no heading", {}),
    ("Passes stay on the ground.", "on the ground", {}),
]  # fmt: skip


@pytest.mark.parametrize(("text", "do", "fields"), FORMS, ids=[text for text, _, _ in FORMS])
def test_a_form_reads_prints_and_means(text: str, do: str, fields: dict) -> None:
    (row,) = rows(text)
    assert print_rule(parse_rule(text, NAMES), NAMES) == text
    assert row.do == do
    assert {name: getattr(row, name) for name in fields} == fields


ACTS = [
    ("passes over the square", Act("pass over", where=SQUARE)),
    ("passes back to the passer", Act("pass back")),
    ("plays a one-two", Act("one-two")),
    ("runs the ball through the north end", Act("run through", where=NORTH)),
    ("stops the ball in the north end", Act("stop in", where=NORTH)),
    ("moves the ball from the lane to the far lane",
     Act("move from to", where=Where("lane"), further=Where("far lane"))),
    ("keeps the ball for 8 seconds", Act("keep for", seconds=8.0)),
    ("concedes", Act("concede")),
    ("heads the ball", Act("head")),
    ("leaves the square", Act("leave", where=SQUARE)),
]  # fmt: skip


@pytest.mark.parametrize(("words", "act"), ACTS, ids=[words for words, _ in ACTS])
def test_an_act_in_a_when(words: str, act: Act) -> None:
    text = f"When a side {words}, the other side starts."
    (row,) = rows(text)
    assert row.when == Event("act", SIDE, act) and print_rule(parse_rule(text, NAMES)) == text


@pytest.mark.parametrize(
    ("event", "expected"),
    [
        ("10 seconds pass without a score", Event("seconds without", seconds=10.0)),
        ("1 second passes", Event("seconds pass", seconds=1.0)),
        ("the turn starts", Event("turn starts")),
        ("the turn ends", Event("turn ends")),
        ("the coach calls", Event("coach calls")),
        ("a player loses the ball", Event("act", Who("a player"), Act("lose"))),
        ("the side that is behind scores", Event("act", Who("side behind"), Act("score"))),
    ],
)
def test_an_event(event: str, expected: Event) -> None:
    text = f"When {event}, the other side starts."
    assert rows(text)[0].when == expected and print_rule(parse_rule(text, NAMES)) == text


@pytest.mark.parametrize(
    ("change", "do", "fields"),
    [
        ("the winner goes back", "goes back", {"who": Who("winner")}),
        ("the loser joins the edge players", "joins", {"who": Who("loser"), "target": EDGE}),
        ("2 edge players come in", "comes in", {"who": Who("some", role="edge", count=2)}),
        ("1 amber edge player comes in", "comes in", {"who": Who("some", "amber", "edge", count=1)}),
        ("its nearest inside player may enter the north end", "may enter",
         {"who": Who("nearest", role="inside", whose="its"), "where": NORTH, "kind": "permit"}),
        ("the other side's inside players start from behind the goal", "starts",
         {"who": Who("other role", role="inside", whose="other"), "where": Where("goal", "behind")}),
        ("the server plays in a new ball from the lane", "new ball",
         {"who": Who("role", role="server"), "where": Where("lane")}),
        ("a side keeps the ball", "keeps the ball", {"who": SIDE}),
        ("amber attack the lane", "now attacks", {"who": AMBER, "where": Where("lane")}),
        ("the sides change ends", "change ends", {"kind": "direction"}),
        ("the other side scores 2", "add points", {"who": Who("other side"), "value": 2, "kind": "points"}),
        ("the player who has waited longest comes in", "comes in", {"who": Who("longest waiting")}),
        ("the turn ends", "turn ends", {"kind": "turn"}),
    ],
)  # fmt: skip
def test_a_change(change: str, do: str, fields: dict) -> None:
    text = f"When a side scores, {change}."
    (row,) = rows(text)
    assert print_rule(parse_rule(text, NAMES), NAMES) == text
    assert row.do == do and {name: getattr(row, name) for name in fields} == fields


def test_four_changes_keep_their_order() -> None:
    first = "When a side scores, the scorer goes out, its nearest edge player comes in, "
    text = first + "the sides change ends and the turn ends."
    assert [row.do for row in rows(text)] == ["goes out", "comes in", "change ends", "turn ends"]
    assert [row.order for row in rows(text)] == [(1, 1), (1, 2), (1, 3), (1, 4)]


@pytest.mark.parametrize(
    ("written", "canonical"),
    [
        ("Neutrals may not enter the square.", "Neutrals stay out of the square."),
        ("Neutrals may not enter the square until the ball enters it.",
         "Neutrals stay out of the square until the ball enters it."),
        ("Edge players may not leave the north end.", "Edge players stay in the north end."),
        ("A score counts only while amber have the ball.", "A score counts only when amber have the ball."),
        ("When a side scores, the loser becomes edge.", "When a side scores, the loser joins the edge players."),
        ("Servers have 1 touch.", "The server has 1 touch."),
        ("A side scores 1 for receiving in its end zone.", "A side scores 1 for receiving in the attacking end."),
        ("Amber stay in their own half.", "Amber stay in the defending half."),
        ("A side scores 1 for passing through the north end.",
         "A side scores 1 for passing through the north end to a team-mate."),
    ],
)  # fmt: skip
def test_other_words_are_written_back_in_one(written: str, canonical: str) -> None:
    assert print_rule(parse_rule(written, NAMES), NAMES) == canonical
    assert print_rule(parse_rule(canonical, NAMES), NAMES) == canonical


@pytest.mark.parametrize(
    ("text", "read", "words"),
    [
        ("The scorer may not score.", "the scorer", "“may not” needs"),
        ("Everyone plays for amber.", "everyone", "“play for” needs"),
        ("Only everyone may score.", "everyone", "“only … may” needs"),
        ("When a side scores, the loser joins everyone.", "everyone", "needs the players of a role"),
        ("When a side scores, everyone goes back.", "everyone", "“goes back” needs"),
        ("When a side scores, the passer scores 1.", "the passer", "points needs a side"),
        ("Amber attack the attacking end.", "the attacking end", "name it"),
        ("Nobody tackles until the player there has 2 touches.", "the player there", "named earlier"),
        ("A score counts only when the scorer is in the square.", "the scorer", "needs a role"),
    ],
)
def test_who_cannot_stand_there(text: str, read: str, words: str) -> None:
    with pytest.raises(RuleError) as caught:
        parse_rule(text, NAMES)
    assert caught.value.read == read and words in caught.value.expected


def test_one_player_of_a_role_is_said_in_the_singular() -> None:
    keepers = Names(("amber", "blue"), ("keeper", "wide"), ("square",), ones=("keeper", "wide"), shared=("keeper",))
    texts = ("Keepers may not tackle.", "The amber keeper has 1 touch.", "The wide player stays in the square.")
    starting = ("its keeper starts", "the other side's keeper starts")
    for text in (*texts, *(f"When a side scores, {start}." for start in starting)):
        assert print_rule(parse_rule(text, keepers), keepers) == text
