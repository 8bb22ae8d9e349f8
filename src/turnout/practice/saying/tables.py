"""Every phrasing by its type, from the tables that declare them."""

from turnout.practice.saying import acts_said, change_said, place_said, play_said, rule_said, score_said, who_said
from turnout.practice.saying.who_said import Rows

TABLES: dict[str, Rows] = {
    **who_said.TABLES, **place_said.TABLES, **acts_said.TABLES, **change_said.TABLES, **score_said.TABLES,
    **rule_said.TABLES, **play_said.TABLES,
}  # fmt: skip
# a run of passes or winning the ball comes before a goal; the other acts end in one
BEFORE = ("act.passes", "act.passes in a row", "act.win", "act.win and pass", "act.pass to", "act.one-two",
 "act.keep for",
          "act.receive in", "act.pass back", "act.pass through", "act.pass over", "act.move from to")  # fmt: skip
ENDS = ("act.run into", "act.RUN", "act.run through", "act.stop in", "act.pass into", "act.pass through")
# what may follow about the same players: the rows that begin with whom they are about
MORE = ("{w:group}", "{w:named}", "{w:subject}")
TABLES["more"] = tuple(
    ("{w:same}" + said[said.index("}") + 1 :], told)
    for said, told in (*TABLES["limit"], *TABLES["standing"])
    if said.startswith(MORE) and "{x:" not in said
)  # fmt: skip
TABLES["more"] += (
    ("no tackle them", "NOTACKLE(whom=who.SAME)"),
    ("(nobody|no player) <may> tackle them", "NOTACKLE(whom=who.SAME)"),
    ("(you|opponent|other side) <maynot> tackle them", "NOTACKLE(whom=who.SAME)"),
    (
        "{w:same} <maynot> (pass|play) [<ball>|it] to (each other|one another|1 another)",
        "no passes(passes=passes.between(who=who.SAME))",
    ),
    ("{w:same} <maynot> be (tackle|challenge|press) [{p:in}]", "NOTACKLE(whom=who.SAME, where={p})"),
)
TABLES["earlier"] = tuple(row for row in TABLES["act"] if row[1].split("(")[0] in BEFORE)
TABLES["finish_act"] = tuple(row for row in TABLES["act"] if row[1].split("(")[0] in ENDS)
TABLES["finish"] = (("{finish_act}", "{finish_act}"),)
