"""What somebody does, each act declared once: `*verb` stands for the finite, base and -ing form of a verb."""

import re

from turnout.practice.templates import Entry

# finite for one · finite for many (also the base form) · -ing
VERBS = {
    "completes": ("completes", "complete", "completing"),
    "passes": ("passes", "pass", "passing"),
    "plays": ("plays", "play", "playing"),
    "receives": ("receives", "receive", "receiving"),
    "runs": ("runs", "run", "running"),
    "stops": ("stops", "stop", "stopping"),
    "moves": ("moves", "move", "moving"),
    "keeps": ("keeps", "keep", "keeping"),
    "wins": ("wins", "win", "winning"),
    "loses": ("loses", "lose", "losing"),
    "scores": ("scores", "score", "scoring"),
    "concedes": ("concedes", "concede", "conceding"),
    "has": ("has", "have", "having"),
    "enters": ("enters", "enter", "entering"),
    "leaves": ("leaves", "leave", "leaving"),
    "starts": ("starts", "start", "starting"),
    "tackles": ("tackles", "tackle", "tackling"),
    "shoots": ("shoots", "shoot", "shooting"),
    "heads": ("heads", "head", "heading"),
}


def act(name: str, template: str, meaning: str, *, also: str | None = None) -> Entry:
    """An act: finite (agreeing with its subject), base and -ing from one template; `also` is read, never printed."""
    return Entry(f"act.{name}", "act", inflected(template), meaning, also=inflected(also) if also else ())


def inflected(template: str) -> tuple[tuple[str, str], ...]:
    """The three shapes of an act written with `*verb`."""
    finite = re.sub(r"\*(\w+)", lambda m: "<@: {} | {}>".format(*VERBS[m[1]]), template)
    base = re.sub(r"\*(\w+)", lambda m: VERBS[m[1]][1], template)
    ing = re.sub(r"\*(\w+)", lambda m: VERBS[m[1]][2], template)
    return (("finite", finite), ("base", base), ("ing", ing))


ACTS = (
    act("passes in a row", "*completes {k:int} <k: pass | passes> in a row[ between {among:who/group}]",
        "a run of K passes that count, without the other side winning the ball; counting begins again after it"),
    act("passes", "*completes {k:int} <k: pass | passes>[ between {among:who/group}]", "K passes since the last start"),
    act("pass into", "*passes {where:place.into}", "a pass that is received in the place by the same side"),
    act("pass through", "*passes {where:place.through} to a team-mate",
        "a pass that crosses the line of the place (a gate: between its two cones) and is received by the same side",
        also="*passes {where:place.through}"),
    act("pass over", "*passes over {where:place.bare}",
        "a pass that crosses the place in the air, untouched there, and is received beyond it by the same side"),
    act("pass back", "*passes back to the passer", "the ball goes straight back to whoever passed it"),
    act("pass to", "*passes to {to:who/group}", "a pass received by one of them"),
    act("one-two", "*plays a one-two", "a pass, and the next one straight back to the passer, who has moved"),
    act("receive in", "*receives {where:place.where}", "controls a pass of the own side while in the place"),
    act("run into", "*runs the ball {where:place.into}", "carries the ball over the line of the place"),
    act("run through", "*runs the ball {where:place.through}",
        "carries the ball in at one side of the place and out at another (a gate: between its two cones)"),
    act("stop in", "*stops the ball {where:place.in}", "brings the ball to rest in the place under the foot"),
    act("move from to", "*moves the ball {where:place.from} to {further:place.bare}",
        "the side has the ball in the first place and then in the second without losing it between"),
    act("keep for", "*keeps the ball for {s:int} <s: second | seconds>", "owns the ball that long without losing it"),
    act("win", "*wins the ball[ {where:place.in}]", "the first touch by a side that did not own the ball"),
    act("win and pass", "*wins the ball and *completes a pass",
        "ownership passes to the side: it won the ball and its first pass was received"),
    act("lose", "*loses the ball", "the other side wins it"),
    act("score", "*scores[ {where:place.in}]",
        "any scoring sentence was met; in a goal: the ball goes over its line, between the posts and under the bar"),
    act("concede", "*concedes", "the other side scores"),
    act("shoot", "*shoots", "strikes at a goal the side attacks"),
    act("head", "*heads the ball", "plays the ball with the head"),
    act("touches", "*has {n:int} <n: touch | touches>[ {where:place.in}]", "that many touches in one hold of the ball"),
    act("enter", "*enters {where:place.bare}", "a player of theirs steps into the place"),
    act("leave", "*leaves {where:place.bare}", "a player of theirs steps out of the place"),
    act("start", "*starts", "the first pass of a start is played"),
    act("tackle", "*tackles", "takes the ball from an opponent who holds it"),
)  # fmt: skip
