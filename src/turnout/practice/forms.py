"""The sentence forms, each declared once. The number is the form's number in the language reference."""

from turnout.practice.phrases import PHRASES
from turnout.practice.templates import Entry


def form(number: int, name: str, template: str, meaning: str, example: str, *also: str) -> Entry:
    """One sentence form; `also` are templates that are read and never printed."""
    others = tuple(("bare", other) for other in also)
    return Entry(name, "rule", (("bare", template),), meaning, example, others, number=number)


SCORING = (
    form(1, "score", "{who:who/scorer} <who: scores | score> {n:int} for {act:act.ing}"
         "[ within {s:int} <s: second | seconds> of {after:act.ing}].",
         "adds N to the side of WHO when WHO does ACT", "A side scores 1 for completing 6 passes in a row."),
    form(2, "score counts", "A score {how:how} counts {n:int}.",
         "a score made so is worth N in place of what its own sentence says",
         "A score with the first touch counts 2."),
    form(3, "score after", "A score counts only after {event:event}[ within {s:int} <s: second | seconds>].",
         "a score counts only if this has happened since the last start, no longer before it than said; “a side” is "
         "the side that scores", "A score counts only after a side completes 3 passes."),
    form(4, "score how", "A score counts only {how:how}.", "a score made otherwise counts nothing",
         "A score counts only from inside the north end."),
    form(4, "score when", "A score counts only when {while_:while}.",
         "a score at another moment counts nothing; “everyone” is every player of the side that scores",
         "A score counts only when everyone is in the attacking half.",
         "A score counts only while {while_:while}."),
    form(5, "only passes", "Only {passes:passes} count.",
         "a pass of another kind neither adds to a run nor ends it", "Only passes between inside players count."),
    form(6, "passes count", "{passes:passes} count {n:int}.", "such a pass adds N to a run",
         "Passes between edge players count 2."),
    form(6, "passes do not", "{passes:passes} do not count.", "such a pass neither adds to a run nor ends it",
         "Passes between neutrals do not count."),
)  # fmt: skip
LIMITS = (
    form(7, "touches", "{who:who/lasting} <who: has | have> {n:int} <n: touch | touches>[ {where:place.in}].",
         "at most N touches in one hold of the ball; a further touch loses the ball to the other side there",
         "Edge players have 2 touches."),
    form(8, "stay in", "{who:who/lasting} <who: stays | stay> {where:place.in}"
         "[ while {while_:while} || until {until:event}].",
         "they do not leave the place, as long as it holds", "Amber stay in the west half while blue have the ball."),
    form(9, "stay out", "{who:who/lasting} <who: stays | stay> out of {where:place.bare}"
         "[ while {while_:while} || until {until:event}].",
         "they do not enter the place, as long as it holds; until is counted from each start",
         "Blue stay out of the north end until the ball enters it."),
    form(10, "at most", "At most {n:int}[ {side:side.adjective} {role:role.adjective} || {side:side.adjective}"
         " || {role:role.adjective}] <n: player | players>[ {each:each}] may be {where:place.in}.",
         "while so many of them are there no further one goes in", "At most 1 inside player may be in the north end."),
    form(10, "at least", "At least {n:int}[ {side:side.adjective} {role:role.adjective} || {side:side.adjective}"
         " || {role:role.adjective}] <n: player | players>[ {each:each}] must stay {where:place.in}.",
         "while only so many of them are there none of those goes out",
         "At least 1 player of each side must stay in the defending half."),
    form(11, "no tackle", "Nobody tackles[ {whom:who/lasting}][ {where:place.in}][ until {until:event}].",
         "nobody takes the ball from a player who holds it there", "Nobody tackles edge players."),
    form(12, "must", "{who:who/lasting} must {act:act.base} within {s:int} <s: second | seconds>"
         "[ of {after:act.ing}].",
         "later than that after it (without “of”: after each start) the ball is the other side's, there",
         "Amber must shoot within 8 seconds of starting."),
    form(13, "move along", "{who:who/lasting} <who: moves | move> only along {where:place.bare}.",
         "they keep to that line or place", "Edge players move only along the edge of the square."),
    form(13, "stand still", "{who:who/lasting} <who: stands | stand> still.",
         "they keep their spot until a change moves them", "Edge players stand still."),
    form(14, "may not", "{who:who/lasting} may not {act:act.base}[ until {until:event}].",
         "if they do, it counts nothing and the ball is the other side's, there", "Neutrals may not score."),
    form(14, "no passes", "No {passes:passes}.", "such a pass gives the ball to the other side, where it was played",
         "No passes between edge players."),
    form(15, "only may", "Only {who:who/some} may {act:act.base}.",
         "if anybody else does, it counts nothing and the ball is the other side's, there",
         "Only inside players may score."),
)  # fmt: skip
STANDING = (
    form(16, "plays for", "{who:who/some} <who: plays | play> for {side:who/side}.",
         "they count as players of that side while it holds; of the side that is behind: of nobody while points are "
         "level",
         "Neutrals play for the side with the ball."),
    form(17, "may come in", "{who:who/some} may come in to {where:place.bare}"
         "[ while {while_:while} || until {until:event}].",
         "their home is no fence towards that place as long as it holds; when it ends they go home",
         "Edge players may come in to the square while the other side has the ball."),
    form(18, "attacks", "{who:who/side} <who: attacks | attack> {where:place.bare}"
         "[ and <who: defends | defend> {also:place.bare}].",
         "the direction of a side", "Amber attack the north end and defend the south end."),
)  # fmt: skip
CHANGING = (
    form(19, "when", "When {event:event}, {then:changes}.",
         "points are booked first, then the changes from left to right, then the restart",
         "When a side scores, its inside players and its edge players change over."),
    form(20, "every minutes", "Every {t:int} <t: minute | minutes>, {then:changes}.",
         "on the clock; play stops and restarts", "Every 3 minutes, the next group changes places with the neutrals.",
         "Every {t:int} <t: minute | minutes> {then:changes}."),
    form(20, "every seconds", "Every {t:int} <t: second | seconds>, {then:changes}.",
         "on the clock; play stops and restarts", "Every 90 seconds, the next group changes places with the neutrals.",
         "Every {t:int} <t: second | seconds> {then:changes}."),
)  # fmt: skip
STARTING = (
    form(21, "play starts", "Play starts with {who:who/group}[ at {where:place.bare}].",
         "every start unless a When says otherwise", "Play starts with amber inside players."),
    form(21, "first pass", "Play starts with a pass from {who:who/group}[ to {to:who/group}].",
         "at every start one of them passes the ball in; to whom it likes where nobody is named",
         "Play starts with a pass from neutrals to amber."),
    form(22, "turn minutes", "A turn lasts {t:int} <t: minute | minutes>.",
         "a turn ends that long after it began; the next group plays", "A turn lasts 2 minutes."),
    form(22, "turn seconds", "A turn lasts {t:int} <t: second | seconds>.",
         "a turn ends that long after it began; the next group plays", "A turn lasts 90 seconds."),
    form(22, "turn points", "A turn ends at {n:int} <n: point | points>.",
         "a turn ends when a side has so many points in it; the next group plays", "A turn ends at 3 points."),
    form(23, "ball back", "The ball comes back in with {how:restart}.",
         "how play restarts after the ball went out: the other side, at the nearest point",
         "The ball comes back in with a kick-in."),
    form(24, "free pass", "The first pass after a start is free.",
         "nobody tackles or cuts out the ball before the first pass of a start is received",
         "The first pass after a start is free."),
    form(24, "everyone set", "Play restarts when everyone is set.",
         "every restart waits until all are within two metres of where they belong",
         "Play restarts when everyone is set."),
    form(24, "no repeat", "Nobody uses the same {where:place.same} twice in a row.",
         "a side or pair that has just scored at one of these places scores next at another; the same again counts "
         "nothing", "Nobody uses the same gate twice in a row."),
    form(25, "offside", "Offside applies[ beyond {where:place.bare}].",
         "a pass may not go to a team-mate who, when it is played, is nearer to the attacked end than the ball and the "
         "last opponent but one (in the attacking half; with “beyond”: only past that place)", "Offside applies."),
    form(25, "no heading", "No heading.", "whoever heads the ball gives it to the other side, there", "No heading."),
    form(25, "on the ground", "Passes stay on the ground.",
         "a pass that leaves the ground by more than half a metre gives the ball to the other side, where it was "
         "played",
         "Passes stay on the ground."),
)  # fmt: skip
FORMS = (*SCORING, *LIMITS, *STANDING, *CHANGING, *STARTING)

ENTRIES: tuple[Entry, ...] = (*FORMS, *PHRASES)
BY_ID: dict[str, Entry] = {entry.id: entry for entry in ENTRIES}
