"""The phrases of the language, each declared once: who, places, passes, moments, acts, events and changes.

A phrase maps an inflection to a template. Acts are written with `*verb`; `act` gives them their inflections.
"""

import re

from turnout.practice.templates import Entry

# finite for one · finite for many (also the base form) · -ing
VERBS = {
    "completes": ("completes", "complete", "completing"),
    "passes": ("passes", "pass", "passing"),
    "receives": ("receives", "receive", "receiving"),
    "runs": ("runs", "run", "running"),
    "wins": ("wins", "win", "winning"),
    "loses": ("loses", "lose", "losing"),
    "scores": ("scores", "score", "scoring"),
    "has": ("has", "have", "having"),
    "enters": ("enters", "enter", "entering"),
    "starts": ("starts", "start", "starting"),
    "tackles": ("tackles", "tackle", "tackling"),
    "shoots": ("shoots", "shoot", "shooting"),
}
FOLDS = (("player", "players"),)  # words read alike; agreeing pairs of the templates are added to these


def same(template: str, *inflections: str) -> tuple[tuple[str, str], ...]:
    """One template for several inflections."""
    return tuple((inflection, template) for inflection in inflections)


def act(name: str, template: str, meaning: str, *, also: str | None = None) -> Entry:
    """An act: finite (agreeing with its subject), base and -ing from one template; `also` is read, never printed."""
    return Entry(f"act.{name}", "act", inflected(template), meaning, also=inflected(also) if also else ())


def inflected(template: str) -> tuple[tuple[str, str], ...]:
    """The three shapes of an act written with `*verb`."""
    finite = re.sub(r"\*(\w+)", lambda m: "<@: {} | {}>".format(*VERBS[m[1]]), template)
    base = re.sub(r"\*(\w+)", lambda m: VERBS[m[1]][1], template)
    ing = re.sub(r"\*(\w+)", lambda m: VERBS[m[1]][2], template)
    return (("finite", finite), ("base", base), ("ing", ing))


def who(name: str, template: str, meaning: str, *, also: str | None = None, many: bool = False) -> Entry:
    """A noun phrase; the same words wherever it stands."""
    return Entry(
        f"who.{name}", "who", same(template, "bare", "definite"), meaning, also=same(also, "bare") if also else (),
        many=many,
    )  # fmt: skip


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
    who("its role", "its {role:role.adjective} players", "the players of a role on the side in the When",
        also="its {role:role.adjective}", many=True),
    who("everyone", "everyone", "every player of every side"),
    who("passer", "the passer", "who played the last pass"),
    who("receiver", "the receiver", "who received the last pass"),
    who("winner", "the winner", "who won the ball in this event"),
    who("loser", "the loser", "who lost the ball in this event"),
    who("scorer", "the scorer", "who scored in this event"),
    who("last to touch", "the player who touched it last", "who touched the ball last"),
    *(one_of(whose, how) for whose in ("its", "other") for how in ("nearest", "farthest")),
    who("next group", "the next group", "those whose turn it is: longest served out, longest waiting in"),
)  # fmt: skip

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
    Entry("place.it", "place", (("bare", "it"), ("in", "in it"), ("where", "in it"), ("into", "into it")),
          "the place named just before in the sentence"),
)  # fmt: skip

PASSES = (
    Entry("passes.between", "passes", same("passes between {who:who/group}", "bare"), "from one of them to another"),
    Entry("passes.to", "passes", same("passes to {who:who/group}", "bare"), "received by one of them"),
    Entry("passes.from to", "passes", same("passes from {who:who/group} to {to:who/group}", "bare"),
          "from one of the first to one of the second"),
)  # fmt: skip

WHILE = (
    Entry("while.has", "while", same("{who:who/side} <who: has | have> the ball", "bare"), "that side owns the ball"),
    Entry("while.ball in", "while", same("the ball is {where:place.in}", "bare"), "the ball is in the place"),
)

ACTS = (
    act("passes in a row", "*completes {k:int} <k: pass | passes> in a row[ between {among:who/group}]",
        "a run of K passes that count, without the other side winning the ball; counting begins again after it"),
    act("passes", "*completes {k:int} <k: pass | passes>[ between {among:who/group}]", "K passes since the last start"),
    act("pass into", "*passes {where:place.into}", "a pass that is received in the place by the same side"),
    act("pass through", "*passes {where:place.through} to a team-mate",
        "a pass that crosses the line of the place (a gate: between its two cones) and is received by the same side",
        also="*passes {where:place.through}"),
    act("pass to", "*passes to {to:who/group}", "a pass received by one of them"),
    act("receive in", "*receives {where:place.where}", "controls a pass of the own side while in the place"),
    act("run into", "*runs the ball {where:place.into}", "carries the ball over the line of the place"),
    act("win", "*wins the ball[ {where:place.in}]", "the first touch by a side that did not own the ball"),
    act("win and pass", "*wins the ball and *completes a pass",
        "ownership passes to the side: it won the ball and its first pass was received"),
    act("lose", "*loses the ball", "the other side wins it"),
    act("score", "*scores[ {where:place.in}]",
        "any scoring sentence was met; in a goal: the ball goes over its line, between the posts and under the bar"),
    act("shoot", "*shoots", "strikes at a goal the side attacks"),
    act("touches", "*has {n:int} <n: touch | touches>[ {where:place.in}]", "that many touches in one hold of the ball"),
    act("enter", "*enters {where:place.bare}", "a player of theirs steps into the place"),
    act("start", "*starts", "the first pass of a start is played"),
    act("tackle", "*tackles", "takes the ball from an opponent who holds it"),
)  # fmt: skip

EVENTS = (
    Entry("event.act", "event", same("{who:who/actor} {act:act.finite@who}", "bare"), "somebody does something"),
    Entry("event.ball out", "event", same("the ball goes out", "bare"), "the ball leaves the first place of ground"),
    Entry("event.ball enters", "event", same("the ball enters {where:place.bare}", "bare"), "the ball comes there"),
    Entry("event.ball leaves", "event", same("the ball leaves {where:place.bare}", "bare"), "the ball leaves it"),
    Entry("event.seconds pass", "event", same("{s:int} <s: second | seconds> <s: passes | pass>", "bare"),
          "that long since the last start"),
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
    Entry("change.starts", "change", same("{who:who/group} <who: starts | start>[ {from:place.from}]", "bare"),
          "play starts again with that side, there, when everyone is set"),
)  # fmt: skip

LISTS = (
    Entry("changes.one", "changes", same("{a:change}", "bare"), "one change"),
    Entry("changes.two", "changes", same("{a:change} and {b:change}", "bare"), "two changes, in order"),
    Entry("changes.three", "changes", same("{a:change}, {b:change} and {c:change}", "bare"), "three, in order"),
)

RESTARTS = (
    Entry("restart.kick-in", "restart", same("a kick-in", "bare"), "a pass from the line where it went out"),
    Entry("restart.dribble-in", "restart", same("a dribble-in", "bare"), "carried in from where it went out"),
    Entry("restart.pass", "restart", same("a pass from {who:who/group}", "bare"), "one of them passes it in"),
)

PHRASES = (*WHO, *PLACE, *PASSES, *WHILE, *ACTS, *EVENTS, *CHANGES, *LISTS, *RESTARTS)

# who may stand in a slot, and how to say it
CLASSES: dict[str, tuple[frozenset[str], str]] = {
    "side": (
        frozenset({"a side", "side with the ball", "side without the ball", "other side", "side"}),
        "a side (“a side”, “the other side”, “the side with the ball” or its name)",
    ),
    "lasting": (
        frozenset({"a side", "side with the ball", "side without the ball", "side", "role", "everyone"}),
        "a role, a side or everyone: players a rule can hold all the time",
    ),
    "group": (
        frozenset({
            "a side", "side with the ball", "side without the ball", "other side", "side", "role", "its role",
            "everyone",
        }),
        "a side, the players of a role, or everyone",
    ),
    "actor": (
        frozenset({"a side", "side with the ball", "side without the ball", "side", "role", "everyone"}),
        "who does it first: a side, a role or everyone",
    ),
    "mover": (
        frozenset({
            "passer", "receiver", "winner", "loser", "scorer", "last to touch", "its nearest", "its farthest",
            "other nearest", "other farthest", "next group", "role", "its role", "side",
        }),
        "a player (“the passer”, “its nearest edge player”), a role or the next group",
    ),
}  # fmt: skip
