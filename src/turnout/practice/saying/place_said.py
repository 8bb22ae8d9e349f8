"""Everyday words for places, passes and ways to score."""

from turnout.practice.saying.who_said import Rows

PLACE: Rows = (
    ("{place_name}", "place.named(place={place_name})"),
    ("(each|either|any|every|any of|one of|1 of|either of|any 1 of|own) {place_name}",
     "place.named(place={place_name})"),
    ("{coach_place}", "{coach_place}"),
    ("[<its>] {coach_places}", "{coach_places}"),
    ("(wide|small|little|mini|big|side|any 1|any of) {list_name}", "place.named(place={list_name})"),
    ("(wide|small|little|mini|big|side|any 1|any of) {coach_places}", "{coach_places}"),
    ("any 1 {place_name}", "place.named(place={place_name})"),
    ("<its> {list_name}", "place.named(place={list_name})"),
    ("(each|either|any|every|any of|one of|1 of|either of) {coach_place}", "{coach_place}"),
    ("(attack|final|last|top|front) third", "place.attacking third"),
    ("(middle|central|midfield) third", "place.middle third"),
    ("(defend|defensive|own|back|<its> own|<its> defensive|<its> defend|your|their) third", "place.defending third"),
    ("(own|<its> own|<its> defend|defend|defensive|your|our) half", "place.defending half"),
    ("(attack|<its> attack|opponent ['s]|opponent|other side 's|other|opposing|far) half", "place.attacking half"),
    ("(<its> own|own|defend|<its> defend) (end|end zone|zone|line|end line)", "place.defending end"),
    ("[end] zone (they|you|it) [be] (protect|defend|guard|look after)", "place.defending end"),
    ("(attack|<its> attack) (end|end zone|line|end line)", "place.attacking end"),
    ("(end|zone|line|end zone) (they|you|it) (attack|be attack|go for|aim for)", "place.attacking end"),
)  # fmt: skip
# what a side goes for: of two ends the one it attacks
AIM: Rows = (
    ("(their|other side 's) half", "place.attacking half"),
    ("{coach_end}", "{coach_end}"),
    ("(other side 's|opponent 's|opponent|their|other) (end|end zone|goal line|end line)", "place.attacking end"),
    ("{place}", "{place}"),
)  # fmt: skip
IN: Rows = (
    ("<in> {place}", "{place}"),
    ("on (edge|outside|perimeter) of {place_name}", "place.edge(place={place_name})"),
    ("(on|along) (edge|outside|line|<its> line|<its> edge|<its> side)", "place.EDGE"),
    ("behind {place_name}", "place.behind(place={place_name})"),
    ("in (there|it|here)", "place.it"),
    ("there", "place.it"),
)  # fmt: skip
WHERE: Rows = (
    ("<in> {p:aim}", "{p}"),
    ("{in}", "{in}"),
    ("outside [of] {place_name}", "place.outside(place={place_name})"),
)  # fmt: skip
PASSES: Rows = (
    ("[that be|that go|play] between {a:who}", "passes.between(who={a})"),
    ("[that be|that go] from {a:who} to {a2:who}", "passes.from to(who={a}, to={a2})"),
    ("{a:who} to {a2:who}", "passes.from to(who={a}, to={a2})"),
    ("[that] [be|go|play] [straight] (to|into|find|in to|hit|reach|get to) {a:who}", "passes.to(who={a})"),
    ("[that] [be|go|play|be play|end|be receive|get receive] (into|in|inside) {p:place}", "passes.into(where={p})"),
    ("[that] [be|go|play|be play|travel|come] <through> {p:place}", "passes.through(where={p})"),
    ("[that] [be|go|play|travel] (over|across) {p:place}", "passes.over(where={p})"),
    ("[straight] back to (passer|(player|1|whoever|lad) [who|that] (give|pass|play) (it|ball) [to (you|them|him)]|"
     "same player|"
     "player it come from|where it come from)", "passes.back"),
    ("[from] 1 {a:named} [straight|directly|direct] to (another|other|next|another {b:named})",
     "passes.between(who={a})"),
    ("[from] (1|one) {a:named} to (another|other|next)", "passes.between(who={a})"),
    ("[from] {a:named} to (another|other|each other|one another|1 another|another {b:named})",
     "passes.between(who={a})"),
)  # fmt: skip
HOW: Rows = (
    ("(with|off|on|from) [<its>] (first|1) touch", "how.first touch"),
    ("first time", "how.first touch"),
    ("(with|using|off|from) [<its>] (head|header)", "how.head"),
    ("(from|inside|from inside|from within|in|within) {p:place}", "how.inside(where={p})"),
    ("(from outside|outside|from out of|from anywhere outside) [of] {p:place}", "how.outside(where={p})"),
    ("(within|in|inside|less than|under) {t:span} (of|after|from) {a:doing}", "how.within(s={t}, after={a})"),
    ("(from|off|after|with|direct from|follow|follow on from|that come from) [a] (pass|assist|lay off|layoff|set|"
     "ball|assist pass) (by|from|off|of) {w:who}",
     "how.pass by(who={w})"),
    ("(set up|assist|lay on|make|lay off|tee up) by {w:who}", "how.pass by(who={w})"),
    ("(from|off|after) [a] (pass|cross|ball) (from|out of|play from) {p:place}", "how.pass from(where={p})"),
    ("from {w:who} ('s) pass", "how.pass by(who={w})"),
)  # fmt: skip
# a kind of goal: said before or instead of “goal”
GOALS: Rows = (
    ("(1 touch|first time|1-touch|first touch) (goal|finish|score|strike|shot)", "how.first touch"),
    ("(header|head goal|headed goal|goal with head)", "how.head"),
    ("[<any>] <goal> [be] [score] {how}", "{how}"),
    ("(shoot|strike|1|anything|something|everything) {how}", "{how}"),
)  # fmt: skip
GOALS = tuple((said.replace("[<any>] ", "[any|all|every] "), told) for said, told in GOALS)

TABLES = {
    "place": PLACE, "aim": AIM, "in": IN, "where": WHERE, "which": PASSES, "how": HOW, "goals": GOALS,
}  # fmt: skip
