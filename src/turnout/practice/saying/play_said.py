"""Everyday words for who plays for whom, directions, changes, starts, turns and laws."""

from turnout.practice.saying.who_said import Rows

WITH = "(with|for|on|on side of|alongside)"
STANDING: Rows = (
    (f"{{w:named}} [always|only] (play|be|work|help|go|be play) {WITH} {{s:group}}", "plays for(who={w}, side={s})"),
    ("{w:named} [always|only] (help|support|join|assist|help out|back up) {s:group}", "plays for(who={w}, side={s})"),
    ("{w:named} be [always] (on side|in side) [that have|with|in] <ball>", "plays for(who={w}, side=who.side with the ball)"),
    ("{w:named} be [always] (attack|in possession|on ball|attacker)", "plays for(who={w}, side=who.side with the ball)"),
    ("{w:named} always attack", "plays for(who={w}, side=who.side with the ball)"),
    ("{s:group} (may|get to|) (use|play with|have|get) {w:named} [as an extra player|as extra|as well|too]",
     "USES(who={w}, side={s})"),
    ("<when> you be (lose|behind|down) you (get|have|may use) {w:extra}", "plays for(who={w}, side=who.side behind)"),
    ("{w:group} <may> (come in|come into|join in|step in|drop in|enter|go in|come inside|come|go into|come in to|go inside|drop into) "
     "{p:inner} {c:cond}", "LONG(form=may come in, who={w}, where={p}, by={c})"),
    ("{w:group} <may> (come in|join in|step in|drop in|come inside|go inside|enter|come) {c:cond}",
     "LONG(form=may come in, who={w}, where=place.INNER(who={w}), by={c})"),
    ("{w:named} (attack|go for|go toward|shoot at|score in|play toward|be attack|aim for|be go for|be shoot at) {p:place}",
     "attacks(who={w}, where={p})"),
    ("{w:named} attack {p:place} and (defend|protect|guard|look after) {q:place}", "attacks(who={w}, where={p}, also={q})"),
    ("{w:named} (defend|protect|guard|look after) {q:place} and attack {p:place}", "attacks(who={w}, where={p}, also={q})"),
)
EXTRA: Rows = (("{w:named}", "{w}"), ("(extra player|extra 1|spare player)", "place.EXTRA"))
INNER: Rows = (("{p:place}", "{p}"), ("[and] (help|support|join in|play|make it {n:int} v {m:int})", "place.INNER"))
WHEN: Rows = (
    ("<when> {e:event} [then] {t:then}", "WHEN(event={e}, then={t})"),
    ("{t:then} <when> {e:event}", "WHEN(event={e}, then={t})"),
    ("{e:given} [and|then|and then] {t:then}", "WHEN(event={e}, then={t})"),
    ("on {e:call} {t:then}", "WHEN(event={e}, then={t})"),
    ("{t:then} on {e:call}", "WHEN(event={e}, then={t})"),
    ("(winner|winner of (1 v 1|it|that)|win side) stay [on|in] [and] (loser|lose side) (come off|go off|go out|off|swap|change|come out|"
     "go to back|make way|sit out|out)", "WHEN(event=event.act(who=who.a side, act=act.score), "
     "then=change.exchange(who=who.other side, with=who.next group))"),
    ("(winner|whoever score|scorer|side that score|win side) stay on", "WHEN(event=event.act(who=who.a side, act=act.score), "
     "then=change.exchange(who=who.other side, with=who.next group))"),
    ("(winner|whoever score|scorer|side that score|win side) stay on [and] {w:next_in} (come on|come in|replace loser|take on winner|go on)",
     "WHEN(event=event.act(who=who.a side, act=act.score), then=change.exchange(who=who.other side, with=who.next group))"),
    ("(loser|lose side|side that concede|whoever concede|conceding side) (go off|come off|swap|be off|off|go out|change|make way|swap with next group)",
     "WHEN(event=event.act(who=who.a side, act=act.score), then=change.exchange(who=who.other side, with=who.next group))"),
    ("(whoever|player who|1 who|if you) {a:act} [and|you|they|then] {c:bare}",
     "WHEN(event=event.act(who=who.YOU, act={a}), then=BIND(who=who.PERSON, do={c}))"),
    ("(follow <its> pass|follow pass|player follow <its> pass|pass and follow|everyone follow <its> pass)", "FOLLOW"),
    ("(every|each|every other|after every|after each) {t:mins} {c:then}", "EVERY(t={t}, then={c})"),
    ("{c:then} (every|each|after every|after each) {t:mins}", "EVERY(t={t}, then={c})"),
    ("(every|each|after every) {s:secs} {c:then}", "EVERY(s={s}, then={c})"),
    ("{c:then} (every|each|after every) {s:secs}", "EVERY(s={s}, then={c})"),
    ("{t:mins} (then|and then|and) {c:then}", "EVERY(t={t}, then={c})"),
)
NEXT: Rows = (("{w:player}", "{w}"),)
GIVEN: Rows = (
    ("{a:act}", "event.act(who=who.YOU, act={a})"),
    ("{w:named} {a:act}", "event.act(who={w}, act={a})"),
    ("(score|scored) on", "event.act(who=who.YOU, act=act.concede)"),
    ("<ball> (go|) (out|off|dead)", "event.ball out"),
    ("(goal|after a goal)", "event.act(who=who.YOU, act=act.score)"),
)
CALL: Rows = (
    ("[my|the|coach 's] (call|shout|whistle|signal|command)", "event.coach calls"),
    ("(a goal|every goal|each goal)", "event.act(who=who.a side, act=act.score)"),
    ("(a turnover|turnover|a regain|regain)", "event.act(who=who.a side, act=act.win)"),
)
SERVE = "(pass|play|serve|feed|roll|give|put|throw|knock|send|hit|pass out|play out)"
START: Rows = (
    ("(play|game|it|we|practice|everything|ball|round|turn|each turn|each go|every go|every turn|each round|every attack|each attack) "
     "[always] (start|begin|be start|kick off|restart) [off] (with|from|by|at|on) {w:group} [{p:at}]", "play starts(who={w}, where={p})"),
    ("[always] (start|begin|kick off) (with|from) {w:named} [{p:at}]", "play starts(who={w}, where={p})"),
    ("{w:named} (start|begin|kick off|start off|get start|start play|get it start|have first ball|start with <ball>|get first ball|"
     "start it|have <ball> first|have <ball> to start|go first|start game|begin play) [with <ball>] [{p:at}]", "play starts(who={w}, where={p})"),
    ("<ball> (start|begin) with {w:group} [{p:at}]", "play starts(who={w}, where={p})"),
    (f"(play|game|it|we|practice|round|turn|each turn|each go) (start|begin|restart) with [a] (pass|ball|serve) [from|by] {{w:group}} "
     "[(to|into) {x:group}]", "first pass(who={w}, to={x})"),
    (f"[start with|start when|it start when|start by] {{w:named}} {SERVE} [in|out|across] [<ball>|it] [in|out|across] (to|into) {{x:group}} [to start|first|to begin|to get it start|"
     "to start it|to kick off]", "first pass(who={w}, to={x})"),
    (f"{{w:named}} {SERVE} [in|out|across] [<ball>|it|first ball|first pass] [in|out|across] (to start|to begin|to kick off|to get it start|first|to get us start)",
     "first pass(who={w})"),
    ("{w:named} play first pass [to {x:group}]", "first pass(who={w}, to={x})"),
    ("first pass (be|come) from {w:named} [to {x:group}]", "first pass(who={w}, to={x})"),
    ("(turn|game|round|go|match|each turn|each game|each round|each go|each match|every turn|every round|shift|play) (last|be|go on for|run for|take|for) {t:mins} [each|long]",
     "TURN(t={t})"),
    ("(turn|game|round|go|match|each turn|each game|each round|each go|every turn|every round|shift|play) (last|be|go on for|run for|take|for) {s:secs} [each|long]",
     "TURN(s={s})"),
    ("{t:mins} (per|each|a|for each|for a|) (turn|game|round|go|match|shift)", "TURN(t={t})"),
    ("{s:secs} (per|each|a|for each|for a|) (turn|round|go|shift)", "TURN(s={s})"),
    ("first [side] to {n:int} [goal|point|pass] [win|win it]", "turn points(n={n})"),
    ("(play|game|turn|we play|we go|play be|game be) [up|first] to {n:int} [goal|point]", "turn points(n={n})"),
    ("(turn|game|round) (end|finish|be over) (at|after|on|when someone get|when a side get) {n:int} [goal|point]", "turn points(n={n})"),
    ("{n:int} (goal|point) (win|win it|end it|end the turn|wins the game)", "turn points(n={n})"),
)
AT: Rows = (("(at|in|from|on) {p:place}", "{p}"), ("(on|at) edge of {p:place_name}", "place.edge(place={p})"))
BACK: Rows = (
    ("{r:restart} (only|instead of {x:restart}|not {x:restart}|rather than {x:restart}|no {x:restart}|when <ball> go out|"
     "if <ball> go out|for everything|from the side|when it be out|all round|if it be out)", "ball back(how={r})"),
    ("(no|not) {x:restart} [just|only|we|use|it be] {r:restart} [instead|only]", "ball back(how={r})"),
    ("<when> [it|<ball>] (go|be|) (out|off|out of play) [then] [it|you|we|they|the other side|that|play] [be|get|use|take|have|come back in with|"
     "restart with|start again with|bring it back in with|come back with] {r:restart}", "ball back(how={r})"),
    ("(play|<ball>|we|it) (come back [in|into play]|restart|be bring back in|start again|go again) [with|by|from|via|on] {r:restart} "
     "[when <ball> go out]", "ball back(how={r})"),
    ("{r:restart}", "ball back(how={r})"),
    ("<when> [it|<ball>] (go|be) (out|off|out of play) (kick|pass) it [back] in", "ball back(how=restart.kick-in)"),
    ("<when> [it|<ball>] (go|be) (out|off|out of play) dribble it [back] in", "ball back(how=restart.dribble-in)"),
    ("<when> [it|<ball>] (go|be) (out|off|out of play) throw it [back] in", "ball back(how=restart.throw-in)"),
)
RESTART: Rows = (
    ("(kick-in|kick in|kick-ins|pass-in|pass-ins|pass in|kick)", "restart.kick-in"),
    ("(dribble-in|dribble in|dribble-ins|drive in|dribble it in)", "restart.dribble-in"),
    ("(throw-in|throw in|throw-ins|throw)", "restart.throw-in"),
    ("(pass|ball|restart|new pass|throw) from {w:group}", "restart.pass(who={w})"),
)
LAWS: Rows = (
    ("first pass [after a restart|after start|after a start|each time|in rondo|of every go|every time|in|out] (be|have to be) (free|unopposed|uncontested|unchallenged|safe)", "free pass"),
    ("first pass [in rondo] be free so (they|you) may not (pounce|press|win it|tackle|go|intercept) until (2|second) [1|pass]", "free pass"),
    ("(free|unopposed|uncontested) first pass", "free pass"),
    ("(give them|let them have) first pass [free]", "free pass"),
    ("(nobody|no one|no) [<may>] (press|tackle|intercept|challenge|pressure) [on|] first pass", "free pass"),
    ("<maynot> (press|tackle|intercept|touch|win|challenge) first pass", "free pass"),
    ("(you|they) <maynot> (press|tackle|intercept|touch|win|challenge) first pass", "free pass"),
    ("(do not|no) (start|restart|play|restarting|starting) until everyone be (ready|set|in place|in position|back)", "everyone set"),
    ("(wait|play restart|restart|we restart|play start again|we go again|start again) [until|when|once|only when] everyone be (ready|set|in place|in position|back [in place|in position])", "everyone set"),
    ("(nobody|no player|no side) [<may>] (use|go through|score in|pass through) same {g:place_name} (twice|2 time) [in row|running|in a row|on row]",
     "no repeat(where=place.named(place={g}))"),
    ("[you|they] <maynot> (use|go through|score in|pass through|score through|go in|play through|go back through|do) same {g:place_name} (twice|2 time) [in row|running|in a row|straight away]",
     "no repeat(where=place.named(place={g}))"),
    ("not same {g:place_name} (twice|2 time) [in row|running]", "no repeat(where=place.named(place={g}))"),
    ("(different|new) {g:place_name} (each|every) time", "no repeat(where=place.named(place={g}))"),
    ("[you|they] must (use|go through|go to|score in) (different|new|another) {g:place_name} (each|every|next) time",
     "no repeat(where=place.named(place={g}))"),
    ("offside (rule apply|apply|be on|count|be play|in play|be in play|rule be on|be in force|rule be in force|be enforce|in force)", "offside"),
    ("(we be play|we play|play|normal|with|usual) offside [rule|apply]", "offside"),
    ("[only] offside [rule] [only] (apply|count|be|be on|be give|be call|matter|apply only|be only|count only|be only on) [only] "
     "(beyond|past|after|from) {p:place}", "offside(where={p})"),
    ("offside [rule] (only apply|only count|be only on|apply only|only matter|be only|count only|be only give|only be) (in|inside) (final|last|attack) third",
     "offside(where=place.middle third)"),
    ("you (may only be|be only) offside (beyond|past) {p:place}", "offside(where={p})"),
    ("no offside (before|until|short of|till) {p:place}", "offside(where={p})"),
    ("(no head|no header|head be not allow|header be not allow|no head <ball>|(you|nobody) <maynot> head <ball>|do not head <ball>|<maynot> head [<ball>]|nobody <may> head <ball>|no use of head|no ball with head)", "no heading"),
    ("(<ball> [must] (stay|be|keep|be keep) (on floor|on ground|below knee height|on deck|on carpet|on grass)|keep (<ball>|pass|everything) (on floor|on ground|on deck|on carpet|down on floor|on grass)|"
     "pass (must be|be|on|must stay|stay|must be keep|have to be|have to stay|all) [all] (on floor|on ground|along floor|along ground|on deck|on grass)|"
     "(no|nothing) (high ball|aerial ball|ball in air|lofted pass|high pass|pass in air|above knee height|over knee height|in air|off floor|lift pass)|"
     "everything (on floor|on ground|along floor|along ground|on deck)|(floor|ground) pass only|[all|only] pass along (floor|ground)|<maynot> (lift|loft|chip) <ball>|[you|nobody] <maynot> (lift|loft|chip) <ball>)", "on the ground"),
)
LAWS = tuple((said.replace("((", "( ("), told) for said, told in LAWS)

TABLES = {
    "standing": (*STANDING, *WHEN, *START, *BACK, *LAWS), "extra": EXTRA, "inner": INNER, "next_in": NEXT, "given": GIVEN,
    "call": CALL, "at": AT, "restart": RESTART,
    "rule": (("{r:scoring}", "{r}"), ("{r:limit}", "{r}"), ("{r:standing}", "{r}")),
    "rules": (
        ("{r:rule}", "{r}"), ("{r:rule} [and|but|then|while|or else] {s:rules}", "both(a={r}, b={s})"),
    ),
}  # fmt: skip
