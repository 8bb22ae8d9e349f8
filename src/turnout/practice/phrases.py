"""The phrases of the language, each declared once: who, places, passes, how, moments, events and changes.

A phrase maps an inflection to a template; `acts` holds what somebody does.
"""

from turnout.practice.acts import ACTS
from turnout.practice.templates import Entry

FOLDS = (("player", "players"),)  # words read alike; agreeing pairs of the templates are added to these


def same(template: str, *inflections: str) -> tuple[tuple[str, str], ...]:
    """One template for several inflections."""
    return tuple((inflection, template) for inflection in inflections)


def who(name: str, template: str, meaning: str, *, also: str | None = None, many: bool = False) -> Entry:
    """A noun phrase; the same words wherever it stands."""
    return Entry(
        f"who.{name}", "who", same(template, "bare", "definite"), meaning, also=same(also, "bare") if also else (),
        many=many,
    )  # fmt: skip


def role_of(name: str, lead: str, meaning: str) -> Entry:
    """`its edge players` and `the other side's edge players`."""
    return who(name, f"{lead} {{role:role.adjective}} players", meaning, also=f"{lead} {{role:role.adjective}}",
               many=True)  # fmt: skip


def one_of(whose: str, how: str) -> Entry:
    """`its nearest edge player` and its three like."""
    lead, meaning = ("its", "the side in the When") if whose == "its" else ("the other side's", "the other side")
    measured = f"of {meaning}, the one {how} {'to' if how == 'nearest' else 'from'} the ball"
    return who(f"{whose} {how}", f"{lead} {how} {{role:role.adjective}} player", measured)


WHO = (
    who("a side", "a side", "whichever side does it"),
    who("side with the ball", "the side with the ball", "the side that owns the ball"),
    who("side without the ball", "the side without the ball", "the side that does not own the ball"),
    who("other side", "the other side", "the side that is not the one in the When, else not the one with the ball"),
    who("side behind", "the side that is behind", "the side with fewer points; nobody while the points are level"),
    who("their side", "their side", "the side of the players the sentence is about"),
    Entry(
        "who.side", "who", (("bare", "{side:side.noun}"), ("definite", "{side:side.definite}")),
        "every player of a side, or the one role of a side that has one role",
        also=(("bare", "{side:side.noun} players"),), many=True,
    ),
    Entry(
        "who.role", "who",
        (("bare", "[{side:side.adjective}] {role:role.adjective} players"),
         ("definite", "the [{side:side.adjective}] {role:role.adjective} players")),
        "the players of a role, of one side if a side is named",
        also=(("bare", "[{side:side.adjective}] {role:role.adjective}"),), many=True,
    ),
    role_of("its role", "its", "the players of a role on the side in the When"),
    role_of("other role", "the other side's", "the players of a role on the other side"),
    who("some", "{n:int} [{side:side.adjective}] {role:role.adjective} <n: player | players>",
        "so many players of the role, those first who have waited longest"),
    who("everyone", "everyone", "every player of every side"),
    who("a player", "a player", "any one player; points go to the player's side"),
    who("player there", "the player there", "whoever holds the ball in the place named just before"),
    who("passer", "the passer", "who played the last pass"),
    who("receiver", "the receiver", "who received the last pass"),
    who("winner", "the winner", "who won the ball in this event"),
    who("loser", "the loser", "who lost the ball in this event"),
    who("scorer", "the scorer", "who scored in this event"),
    who("last to touch", "the player who touched it last", "who touched the ball last"),
    *(one_of(whose, how) for whose in ("its", "other") for how in ("nearest", "farthest")),
    who("longest waiting", "the player who has waited longest", "the one who has been off the field for longest"),
    who("next group", "the next group", "those whose turn it is: longest served out, longest waiting in; where a line "
        "waits for a role, as many as that role needs"),
)  # fmt: skip

# told from the side the sentence is about: it attacks the first and defends the last
RELATIVE = (
    ("attacking end", "what the side attacks; told of “everyone”: what the side with the ball attacks", "end zone"),
    ("defending end", "what the side defends", "own end"),
    ("attacking half", "the half of the first place nearer to what the side attacks", "far half"),
    ("defending half", "the half of the first place farther from what the side attacks", "own half"),
    ("attacking third", "the third of the first place nearest to what the side attacks", "final third"),
    ("middle third", "the third between the attacking and the defending third", ""),
    ("defending third", "the third of the first place farthest from what the side attacks", "own third"),
)


def relative(name: str, meaning: str, other: str) -> Entry:
    """A place told from the side the sentence is about; `other`: what it is called after 'its' or 'their'."""
    templates = in_place("the " + name)
    also = [pair for lead in ("its", "their") for pair in in_place(f"{lead} {other}")] if other else []
    return Entry(f"place.{name}", "place", templates, meaning, also=tuple(also))


def in_place(words: str) -> tuple[tuple[str, str], ...]:
    """Words for a place in every inflection a sentence may want."""
    leads = {"bare": "", "in": "in ", "where": "in ", "into": "into ", "from": "from "}
    return tuple((inflection, f"{lead}{words}") for inflection, lead in leads.items())


PLACE = (
    Entry(
        "place.named", "place",
        (("bare", "{place:place_name.the}"), ("in", "in {place:place_name.the}"),
         ("where", "in {place:place_name.the}"),
         ("into", "into {place:place_name.the}"), ("from", "from {place:place_name.the}"),
         ("through", "through {place:place_name.any}"), ("same", "{place:place_name.one}")),
        "inside the place, or through a gate or goal; for a list of places, any of them",
    ),
    Entry(
        "place.edge", "place",
        (("bare", "the edge of {place:place_name.the}"), ("in", "on the edge of {place:place_name.the}"),
         ("where", "on the edge of {place:place_name.the}"), ("into", "onto the edge of {place:place_name.the}"),
         ("from", "from the edge of {place:place_name.the}")),
        "the line around the place, within 1 m outside it",
    ),
    Entry("place.outside", "place", (("where", "outside {place:place_name.the}"),), "anywhere but inside the place"),
    Entry("place.behind", "place",
          (("in", "behind {place:place_name.the}"), ("where", "behind {place:place_name.the}"),
           ("from", "from behind {place:place_name.the}")),
          "off the field on the far side of the place (of a goal: behind its line)"),
    Entry("place.it", "place",
          (("bare", "it"), ("in", "in it"), ("where", "in it"), ("into", "into it"), ("from", "from it"),
           ("through", "through it")),
          "the place named just before in the sentence"),
    *(relative(*told) for told in RELATIVE),
)  # fmt: skip

PASSES = (
    Entry("passes.between", "passes", same("passes between {who:who/group}", "bare"), "from one of them to another"),
    Entry("passes.to", "passes", same("passes to {who:who/group}", "bare"), "received by one of them"),
    Entry("passes.from to", "passes", same("passes from {who:who/group} to {to:who/group}", "bare"),
          "from one of the first to one of the second"),
    Entry("passes.into", "passes", same("passes {where:place.into}", "bare"), "received in the place"),
    Entry("passes.through", "passes", same("passes {where:place.through}", "bare"),
          "crossing the line of the place: a gate between its cones, an area from one side to another"),
    Entry("passes.over", "passes", same("passes over {where:place.bare}", "bare"),
          "crossing the place in the air, untouched there, received beyond it"),
    Entry("passes.back", "passes", same("passes back to the passer", "bare"), "straight back to whoever passed it"),
)  # fmt: skip

HOW = (
    Entry("how.first touch", "how", same("with the first touch", "bare"), "the receiver's first touch scores"),
    Entry("how.head", "how", same("with the head", "bare"), "the last touch is a header"),
    Entry("how.inside", "how", same("from inside {where:place.bare}", "bare"), "the last touch is made in the place"),
    Entry("how.outside", "how", same("from outside {where:place.bare}", "bare"),
          "the last touch is made outside the place"),
    Entry("how.within", "how", same("within {s:int} <s: second | seconds> of {after:act.ing}", "bare"),
          "no later than that after the same side did it"),
    Entry("how.pass by", "how", same("from a pass by {who:who/group}", "bare"),
          "one of them played the pass before the score"),
    Entry("how.pass from", "how", same("from a pass {where:place.from}", "bare"),
          "the pass before the score came from the place"),
)  # fmt: skip

WHILE = (
    Entry("while.has", "while", same("{who:who/told} <who: has | have> the ball", "bare"), "that side owns the ball"),
    Entry("while.ball in", "while", same("the ball is {where:place.in}", "bare"), "the ball is in the place"),
    Entry(
        "while.behind",
        "while",
        same("{who:who/told} <who: is | are> behind", "bare"),
        "that side has fewer points than the other",
    ),
    Entry(
        "while.in place",
        "while",
        same("{who:who/lasting} <who: is | are> {where:place.in}", "bare"),
        "every one of them is in the place (in a guard on scores, “everyone” is every player of the scoring side)",
    ),
)

EVENTS = (
    Entry("event.act", "event", same("{who:who/actor} {act:act.finite@who}", "bare"), "somebody does something"),
    Entry("event.ball out", "event", same("the ball goes out", "bare"), "the ball leaves the first place of ground"),
    Entry("event.ball enters", "event", same("the ball enters {where:place.bare}", "bare"), "the ball comes there"),
    Entry("event.ball leaves", "event", same("the ball leaves {where:place.bare}", "bare"), "the ball leaves it"),
    Entry("event.seconds pass", "event", same("{s:int} <s: second | seconds> <s: passes | pass>", "bare"),
          "that long since the last start"),
    Entry("event.seconds without", "event",
          same("{s:int} <s: second | seconds> <s: passes | pass> without a score", "bare"),
          "that long since the last score or start"),
    Entry("event.turn starts", "event", same("the turn starts", "bare"), "a turn begins"),
    Entry("event.turn ends", "event", same("the turn ends", "bare"), "a turn is over"),
    Entry("event.coach calls", "event", same("the coach calls", "bare"), "the coach calls; in play once a minute"),
)  # fmt: skip

CHANGES = (
    Entry("change.exchange", "change",
          same("{who:who/mover} <who: changes | change> places with {with:who.definite/mover}", "bare"),
          "they exchange roles (and bibs, when the sides differ); points stay with the side"),
    Entry("change.over", "change", same("{who:who/group} and {with:who/group} change over", "bare"),
          "as many as the smaller group has exchange roles, longest served first; the rest go first next time"),
    Entry("change.comes in", "change", same("{who:who/mover} <who: comes | come> in[ to {to:place.bare}]", "bare"),
          "takes the role inside; skipped alone when that would take a role out of its range"),
    Entry("change.goes out", "change", same("{who:who/mover} <who: goes | go> out[ to {to:place.bare}]", "bare"),
          "takes the role outside; skipped alone when that would take a role out of its range"),
    Entry("change.goes back", "change", same("{who:who/mover} <who: goes | go> back", "bare"),
          "returns to the home of the role it started the turn in"),
    Entry("change.joins", "change", same("{who:who/mover} <who: joins | join> {to:who.definite/company}", "bare"),
          "takes that role; skipped alone when that would take a role out of its range",
          also=same("{who:who/mover} <who: becomes | become> {to:who.definite/company}", "bare")),
    Entry("change.may enter", "change", same("{who:who/mover} may enter {where:place.bare}", "bare"),
          "may be in the place from then on, until the next start"),
    Entry("change.starts", "change", same("{who:who/starter} <who: starts | start>[ {from:place.from}]", "bare"),
          "play starts again with that side, there, when everyone is set"),
    Entry("change.new ball", "change",
          same("{who:who/starter} <who: plays | play> in a new ball[ {from:place.from}]", "bare"),
          "a new ball is passed in by one of them at once; nobody waits to be set"),
    Entry("change.keeps", "change", same("{who:who/starter} <who: keeps | keep> the ball", "bare"),
          "play goes on with that side in possession where the ball is"),
    Entry("change.attacks", "change", same("{who:who/side} <who: attacks | attack> {where:place.bare}", "bare"),
          "from then on that side attacks the place"),
    Entry("change.ends", "change", same("the sides change ends", "bare"),
          "each side attacks from then on what the other attacked, and defends what it defended"),
    Entry("change.points", "change", same("{who:who/side} <who: scores | score> {n:int}", "bare"),
          "N points are added to that side"),
    Entry("change.turn ends", "change", same("the turn ends", "bare"), "the turn is over; the next group plays"),
)  # fmt: skip

LISTS = (
    Entry("changes.one", "changes", same("{a:change}", "bare"), "one change"),
    Entry("changes.two", "changes", same("{a:change} and {b:change}", "bare"), "two changes, in order"),
    Entry("changes.three", "changes", same("{a:change}, {b:change} and {c:change}", "bare"), "three, in order"),
    Entry(
        "changes.four", "changes", same("{a:change}, {b:change}, {c:change} and {d:change}", "bare"), "four, in order"
    ),
)

RESTARTS = (
    Entry("restart.kick-in", "restart", same("a kick-in", "bare"), "a pass from the line where it went out"),
    Entry("restart.dribble-in", "restart", same("a dribble-in", "bare"), "carried in from where it went out"),
    Entry("restart.throw-in", "restart", same("a throw-in", "bare"), "thrown in from where it went out"),
    Entry("restart.pass", "restart", same("a pass from {who:who/group}", "bare"), "one of them passes it in"),
)

# words that say of how many a number is told
EACH = (Entry("each.side", "each", same("of each side", "bare"), "counted for each side by itself"),)

PHRASES = (*WHO, *PLACE, *PASSES, *HOW, *WHILE, *ACTS, *EVENTS, *CHANGES, *LISTS, *RESTARTS, *EACH)

# who may stand in a slot, and how to say it
SIDES = frozenset({"a side", "side with the ball", "side without the ball", "other side", "side behind", "side"})
GROUPS = SIDES | {"role", "its role", "other role", "everyone"}
LASTING = (SIDES - {"other side"}) | {"role", "everyone"}
PLAYERS = frozenset({
    "passer", "receiver", "winner", "loser", "scorer", "last to touch", "its nearest", "its farthest",
    "other nearest", "other farthest", "longest waiting", "some",
})  # fmt: skip
CLASSES: dict[str, tuple[frozenset[str], str]] = {
    "side": (SIDES, "a side (“a side”, “the other side”, “the side with the ball” or its name)"),
    "told": (SIDES | {"their side"}, "a side (“their side”, “the other side”, “the side with the ball” or its name)"),
    "lasting": (LASTING, "a role, a side or everyone: players a rule can hold all the time"),
    "scorer": (LASTING | {"a player"}, "a role, a side, a player or everyone"),
    "some": (frozenset({"side", "role", "side with the ball", "side without the ball", "side behind"}),
             "the players of a role, or a side"),
    "group": (GROUPS, "a side, the players of a role, or everyone"),
    "actor": (LASTING | {"a player", "player there"}, "who does it first: a side, a role, a player or everyone"),
    "mover": (
        (PLAYERS | GROUPS | {"next group"}) - {"everyone", "a side"},
        "a player (“the passer”, “its nearest edge player”), a role, a side or the next group",
    ),
    "company": (
        frozenset({"role", "its role", "other role", "side"}), "the players of a role, or a side with one role"
    ),
    "starter": (GROUPS | PLAYERS | {"next group"}, "a side, the players of a role, or a player"),
}  # fmt: skip
