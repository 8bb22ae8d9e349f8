"""The sentence forms, each declared once. The number is the form's number in the language reference."""

from turnout.practice.phrases import PHRASES
from turnout.practice.templates import Entry


def form(number: int, name: str, template: str, meaning: str, example: str, also: str | None = None) -> Entry:
    """One sentence form."""
    return Entry(
        name, "rule", (("bare", template),), meaning, example, (("bare", also),) if also else (), number=number
    )


FORMS = (
    form(1, "score", "{who:who/lasting} <who: scores | score> {n:int} for {act:act.ing}"
         "[ within {s:int} <s: second | seconds> of {after:act.ing}].",
         "adds N to the side of WHO when WHO does ACT", "A side scores 1 for completing 6 passes in a row."),
    form(5, "only passes", "Only {passes:passes} count.",
         "a pass of another kind neither adds to a run nor ends it", "Only passes between inside players count."),
    form(7, "touches", "{who:who/lasting} <who: has | have> {n:int} <n: touch | touches>[ {where:place.in}].",
         "at most N touches in one hold of the ball; a further touch loses the ball to the other side there",
         "Edge players have 2 touches."),
    form(8, "stay in", "{who:who/lasting} <who: stays | stay> {where:place.in}"
         "[ while {while_:while} || until {until:event}].",
         "they do not leave the place, as long as it holds", "Amber stay in the west half while blue have the ball."),
    form(9, "stay out", "{who:who/lasting} <who: stays | stay> out of {where:place.bare}[ until {until:event}].",
         "they do not enter the place until the event, counted from each start",
         "Blue stay out of the north end until the ball enters it."),
    form(11, "no tackle", "Nobody tackles[ {whom:who/lasting}][ {where:place.in}][ until {until:event}].",
         "nobody takes the ball from a player who holds it there", "Nobody tackles edge players."),
    form(13, "move along", "{who:who/lasting} <who: moves | move> only along {where:place.bare}.",
         "they keep to that line or place", "Edge players move only along the edge of the square."),
    form(13, "stand still", "{who:who/lasting} <who: stands | stand> still.",
         "they keep their spot until a change moves them", "Edge players stand still."),
    form(16, "plays for", "{who:who/lasting} <who: plays | play> for {side:who/side}.",
         "they count as players of that side while it holds", "Neutrals play for the side with the ball."),
    form(18, "attacks", "{who:who/side} <who: attacks | attack> {where:place.bare}"
         "[ and <who: defends | defend> {also:place.bare}].",
         "the direction of a side", "Amber attack the north end and defend the south end."),
    form(19, "when", "When {event:event}, {then:changes}.",
         "points are booked first, then the changes from left to right, then the restart",
         "When a side scores, its inside players and its edge players change over."),
    form(20, "every minutes", "Every {t:int} <t: minute | minutes>, {then:changes}.",
         "on the clock; play stops and restarts", "Every 3 minutes, the next group changes places with the neutrals.",
         also="Every {t:int} <t: minute | minutes> {then:changes}."),
    form(20, "every seconds", "Every {t:int} <t: second | seconds>, {then:changes}.",
         "on the clock; play stops and restarts", "Every 90 seconds, the next group changes places with the neutrals.",
         also="Every {t:int} <t: second | seconds> {then:changes}."),
    form(21, "play starts", "Play starts with {who:who/group}[ at {where:place.bare}].",
         "every start unless a When says otherwise", "Play starts with amber inside players."),
    form(23, "ball back", "The ball comes back in with {how:restart}.",
         "how play restarts after the ball went out: the other side, at the nearest point",
         "The ball comes back in with a kick-in."),
    form(24, "no repeat", "Nobody uses the same {where:place.same} twice in a row.",
         "a side or pair that has just scored at one of these places scores next at another; the same again counts "
         "nothing", "Nobody uses the same gate twice in a row."),
)  # fmt: skip

ENTRIES: tuple[Entry, ...] = (*FORMS, *PHRASES)
BY_ID: dict[str, Entry] = {entry.id: entry for entry in ENTRIES}
