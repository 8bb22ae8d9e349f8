"""One meaning, one form: sentences that say in one form what another form is for are turned into that one."""

from turnout.practice.model import Phrase

# "may not enter P" and "may not leave P" are limits on place
INSTEAD = {"act.enter": "stay out", "act.leave": "stay in"}


def canonical(phrase: Phrase) -> Phrase:
    """The tree in its canonical form; most are already."""
    act = phrase.get("act")
    if phrase.form != "may not" or not isinstance(act, Phrase) or act.form not in INSTEAD:
        return phrase
    rest = [(name, value) for name, value in phrase.slots if name == "until"]
    return Phrase(INSTEAD[act.form], (("who", phrase["who"]), ("where", act["where"]), *rest))
