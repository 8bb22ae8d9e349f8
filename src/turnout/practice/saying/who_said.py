"""Everyday words for players."""

Rows = tuple[tuple[str, str], ...]

ROLE: Rows = (
    ("{side_name}", "who.side(side={side_name})"),
    ("{side_name} (player|side|shirt|bib)", "who.side(side={side_name})"),
    ("(side|player) in {side_name}", "who.side(side={side_name})"),
    ("(every|each|all|any|all of|all our) {side_name}", "who.side(side={side_name})"),
    ("{role_name}", "who.role(role={role_name})"),
    ("{role_name} player", "who.role(role={role_name})"),
    ("(every|each|all|any|both|all of|both of|those) {role_name} [player]", "who.role(role={role_name})"),
    ("{side_name} ['s] {role_name} [player]", "who.role(side={side_name}, role={role_name})"),
    ("{coach_who}", "{coach_who}"),
    ("(every|each|all|any|both|all of|both of|those) {coach_who}", "{coach_who}"),
)  # fmt: skip
GROUP: Rows = (
    ("{named}", "{named}"),
    ("<everyone>", "who.everyone"),
    ("side", "who.a side"),
    ("(each|either|every|both|any|whichever) side", "who.a side"),
    ("(side|player|whoever|whichever side|lot|those|1|whichever of you|everyone) (with|on|in|that have|who have|"
     "have|be in|be on|'s got|have got|that be in|that have got|that get|get|be keep|keep|in control of|who be in) "
     "[current] <ball>", "who.side with the ball"),
    ("side [that be|who be] attack", "who.side with the ball"),
    ("attack side", "who.side with the ball"),
    ("(side|player|whoever|lot|those|1) (without|out of|that do not have|who do not have|not in|that have not got|"
     "who have not got|that be not on|not on|off) <ball>", "who.side without the ball"),
    ("(defend|press) side", "who.side without the ball"),
    ("[<its>] (other side|opponent|other lot|opposing side|oppo)", "who.other side"),
    ("(losing|trail|behind) side", "who.side behind"),
    ("side lose", "who.side behind"),
    ("lose side", "who.side behind"),
    ("(side|whoever|whichever side|lot|those) [that|who] [be] (behind|down|trail|lose|a goal down|1 down)",
     "who.side behind"),
    ("side with (fewer|less|fewest|least) (goal|point)", "who.side behind"),
    ("<its> {role} [player]", "who.its role(role={role})"),
    ("(other side|opponent|other lot) ['s] {role} [player]", "who.other role(role={role})"),
)  # fmt: skip
PLAYER: Rows = (
    ("(passer|player who (pass|play) [it|ball]|whoever (pass|play) [it|ball]|1 who (pass|play) [it|ball]|player make "
     "pass|player who make pass)", "who.passer"),
    ("(receiver|player who (receive|get) [it|ball|pass]|whoever (receive|get) [it|ball|pass]|player they pass to|"
     "player you pass to|player receive [it|ball])", "who.receiver"),
    ("(winner|player who win (it|ball) [back]|whoever win (it|ball) [back]|1 who win (it|ball) [back])", "who.winner"),
    ("(player|1|whoever) [you|they] (pass|play it|give it) to", "who.receiver"),
    ("(player|1|whoever) [who|that] [be|have] (lose|give) <ball> [away]", "who.loser"),
    ("(player|1|whoever) [who|that] [be|have] (win|nick|steal|take|intercept) <ball> [back|off (them|him|you)]",
     "who.winner"),
    ("(loser|player who lose (it|ball)|whoever lose (it|ball)|1 who lose (it|ball)|player who give <ball> away|"
     "whoever give <ball> away|player who give away <ball>|1 who give <ball> away|player at fault|"
     "player [that|who] make mistake|player who have lose (it|ball))", "who.loser"),
    ("{w:named} (who|that) win <ball> [back]", "who.winner"),
    ("{w:named} (who|that) (lose <ball>|give <ball> away)", "who.loser"),
    ("(scorer|goalscorer|player who score [goal]|whoever score [goal]|1 who score [goal])", "who.scorer"),
    ("(last player|player|whoever) (to touch|who touch|touch) (it|ball) last", "who.last to touch"),
    ("(last player|last 1|player who be last) to touch (it|ball)", "who.last to touch"),
    ("<its> (nearest|closest) {role} [player]", "who.its nearest(role={role})"),
    ("(nearest|closest) of <its> {role} [player]", "who.its nearest(role={role})"),
    ("<its> (farthest|furthest) [away] {role} [player]", "who.its farthest(role={role})"),
    ("their (farthest|furthest) [away] {role} [player]", "who.other farthest(role={role})"),
    ("nearest {role} [player] (on|of) (<its> side|that side)", "who.its nearest(role={role})"),
    ("farthest {role} [player] (on|of) (<its> side|that side)", "who.its farthest(role={role})"),
    ("(other side|opponent) ['s] nearest {role} [player]", "who.other nearest(role={role})"),
    ("(other side|opponent) ['s] farthest {role} [player]", "who.other farthest(role={role})"),
    ("player who have wait longest", "who.longest waiting"),
    ("(whoever|player|1) [who|that] have (be wait|wait|be off|be out|sit out) [the] longest", "who.longest waiting"),
    ("(next|new|wait|rest|fresh|spare) (group|pair|lot|player|side|line|set|wave|trio|batch|few)", "who.next group"),
    ("next (group|pair|lot|player|side|set|wave|1|2|3) (wait|in line|in queue|off line|up|on)", "who.next group"),
    ("(side|player|group|pair|lot) (wait|off|rest|sit out|that be wait|who be wait|on side|that be off|in line|"
     "sat out)",
     "who.next group"),
    ("{int} {role} [player]", "who.some(n={int}, role={role})"),
    ("{int} {side_name} {role} [player]", "who.some(n={int}, side={side_name}, role={role})"),
)  # fmt: skip
YOU: Rows = (
    ("(you|we)", "who.YOURS"),
    ("<you>", "who.YOU"),
    ("either [of you]", "who.YOU"),
    ("<its> side", "who.YOU"),
    ("[<its>] mate", "who.YOU"),
)  # fmt: skip
MOVER: Rows = (
    ("{named}", "{named}"),
    ("{player}", "{player}"),
    ("[<its>] (other side|opponent|other lot)", "who.other side"),
    ("<its> {role} [player]", "who.its role(role={role})"),
    ("(other side|opponent) ['s] {role} [player]", "who.other role(role={role})"),
    ("side [that|who] (score|have score)", "who.DOERS"),
    ("(you|we|he|she|that player|1|player)", "who.PERSON"),
    ("(them|him|her)", "who.THEM"),
    ("(side|player|those|1) [that|who] [have] (concede|let it in|let goal in|let 1 in)", "who.CONCEDERS"),
    ("conceding side", "who.CONCEDERS"),
    ("they", "who.THEY"),
    ("(that side|side|it|whoever do|scoring side)", "who.DOERS"),
)  # fmt: skip
WHO: Rows = (
    ("{group}", "{group}"),
    ("{player}", "{player}"),
)  # fmt: skip

TABLES = {
    "named": ROLE, "group": GROUP, "player": PLAYER, "you": YOU, "mover": MOVER, "who": WHO,
    "role": (("{role_name}", "{role_name}"), ("{coach_role}", "{coach_role}")),
    "same": (("(they|he|she|you|) [all]", "who.SAME"),),
    "subject": (("{group}", "{group}"), ("{you}", "{you}")),
}  # fmt: skip
