"""Everyday words for who plays for whom, directions, changes, starts, turns and laws."""

from turnout.practice.saying.talk_said import TABLES as TALK
from turnout.practice.saying.who_said import Rows

WITH = "(on for|there for|to|with|for|on|on side of|alongside)"
STANDING: Rows = (
    ("[{x:you}] <may> use {w:named} <when> (you|they) (have|be on|be in) <ball>", "plays for(who={w}, side=who.side "
     "with the ball)"),
    ("{w:named} be (yours|with you|on your side|your player) <when> (you|they) (have|be on|be in) <ball> [and] "
     "[theirs (when|if) they (have|do) [it|<ball>]]", "plays for(who={w}, side=who.side with the ball)"),
    ("{w:named} [always|only] (play|be|be there|work|help|go|be play) (with|for|on) (both|either) side",
     "plays for(who={w}, side=who.side with the ball)"),
    (f"{{w:named}} [always|only] (play|be|work|help|go|be play|belong) [always|only] {WITH} {{s:group}}",
     "USES(who={w}, side={s})"),
    ("{w:named} [always|only] (help|support|join|assist|help out|back up) {s:group}", "plays for(who={w}, side={s})"),
    ("{w:named} be [always] (on side|in side) [that have|with|in] <ball>",
     "plays for(who={w}, side=who.side with the ball)"),
    ("{w:named} be [always] (attack|in possession|on ball|attacker)",
     "plays for(who={w}, side=who.side with the ball)"),
    ("{w:named} always attack", "plays for(who={w}, side=who.side with the ball)"),
    ("{s:group} (may|get to|) (use|play with|have|get) {w:named} [as an extra player|as extra|as well|too]",
     "USES(who={w}, side={s})"),
    ("<when> you be (lose|behind|down) you (get|have|may use) {w:extra}", "plays for(who={w}, side=who.side behind)"),
    ("<while> {s:state} {w:group} <may> (come in|join in|step in|drop in|come inside|go inside|enter|come)",
     "may come in(who={w}, where=place.INNER(who={w}), while_={s})"),
    ("<while> {s:state} {w:group} <may> (come in|come into|join in|step in|drop in|enter|go in|come inside|go "
     "into|come in to|go inside) {p:place}",
     "may come in(who={w}, where={p}, while_={s})"),
    ("{w:group} <may> (come in|come into|join in|step in|drop in|enter|go in|come inside|come|go into|come in to|go "
     "inside|drop into) "
     "{p:inner} {c:cond}", "LONG(form=may come in, who={w}, where={p}, by={c})"),
    ("{w:group} <may> (come in|join in|step in|drop in|come inside|go inside|enter|come) {c:cond}",
     "LONG(form=may come in, who={w}, where=place.INNER(who={w}), by={c})"),
    ("{w:named} (attack|go for|go toward|shoot at|score in|play toward|be attack|aim for|be go for|be shoot at) "
     "{p:place}",
     "attacks(who={w}, where={p})"),
    ("{w:named} attack {p:place} and (defend|protect|guard|look after) {q:place}",
     "attacks(who={w}, where={p}, also={q})"),
    ("{w:named} (defend|protect|guard|look after) {q:place} and attack {p:place}",
     "attacks(who={w}, where={p}, also={q})"),
)  # fmt: skip
EXTRA: Rows = (("{w:named}", "{w}"), ("(extra player|extra 1|spare player)", "place.EXTRA"))
INNER: Rows = (("{p:place}", "{p}"), ("[and] (help|support|join in|play|make it {n:int} v {m:int})", "place.INNER"))
WHEN: Rows = (
    ("(winner|win side|score side|side that score|scorer) stay on [and] (other side|loser|lose side|others) (swap|"
     "change) with {g:wait_side}",
     "WHEN(event=event.act(who=who.a side, act=act.score), then=change.exchange(who=who.other side, with=who.next "
      "group))"),
    ("(winner|win side) stay on [and] (loser|lose side) (off|out|come off|go off) [and] [{g:next} [straight] (on|in|"
     "come on|come in|up|go on)]",
     "WHEN(event=event.act(who=who.a side, act=act.score), then=change.exchange(who=who.other side, with=who.next "
      "group))"),
    ("(on|upon|by|straight after|immediately after) {a:act} {t:then}",
     "WHEN(event=event.act(who=who.YOU, act={a}), then={t})"),
    ("{e:given} mean [that] {t:then}", "WHEN(event={e}, then={t})"),
    ("(every|each|after every) {t:mins} {w:named} (change|rotate)",
     "EVERY(t={t}, then=change.exchange(who=who.next group, with={w}))"),
    ("{w:named} (change|rotate) (every|each|after every) {t:mins}",
     "EVERY(t={t}, then=change.exchange(who=who.next group, with={w}))"),
    ("(whichever|any) {w:named} {a:act} [must] {c:bare}",
     "WHEN(event=event.act(who={w}, act={a}), then=BIND(who=who.PERSON, do={c}))"),
    ("{t:then} after (a goal|goal|every goal|each goal)",
     "WHEN(event=event.act(who=who.a side, act=act.score), then={t})"),
    ("(side|colour|whoever|whichever side|whichever colour|whichever of them) [that|who] [be|first] (lose <ball>|"
     "give <ball> away|give away <ball>) [then|have to|must|be the ones who] "
     "(defend|become defender|become {x:named}|go in|hunt|chase|be defender|be {x:named}|swap|go in middle|go in to "
      "defend|take over as {x:named}|swap with {x:named}|go defend)", "ROTATE"),
    ("<when> [a|your] (side|colour|you|they) (lose <ball>|give <ball> away) [you|they|that side|it|that colour] "
     "[then|have to|must] (defend|become defender|become {x:named}|hunt|chase|be {x:named}|swap with {x:named})",
     "ROTATE"),
    ("lose <ball> and [your side|your colour|you] [have to|must] (go in to defend|go in|go in middle|be in middle|"
     "go defend|defend|become defender|become {x:named}|hunt|chase|be {x:named}|swap with {x:named})",
     "ROTATE"),
    ("<when> {e:event} or {f:event} [then] {t:then}", "EITHER(e={e}, f={f}, then={t})"),
    ("<when> {w:subject} [have] {a:act} or {b:act} [then] {t:then}", "DOING(who={w}, a={a}, b={b}, then={t})"),
    ("{t:then} <when> {e:event} or {f:event}", "EITHER(e={e}, f={f}, then={t})"),
    ("{t:then} <when> {w:subject} [have] {a:act} or {b:act}", "DOING(who={w}, a={a}, b={b}, then={t})"),
    ("(win|win it|win your 1 v 1|win 1 v 1|win your go|win your game) and [you] (stay on|stay in|keep on) [and] "
     "[loser (go to back [of queue|of line]|go off|"
     "come off|join the queue|go out|make way)]", "WHEN(event=event.act(who=who.a side, act=act.score), "
     "then=change.exchange(who=who.other side, with=who.next group))"),
    ("passer follow <its> pass [out|in] [and] [receiver (come|go) (in|inside|into middle)]", "FOLLOW"),
    ("receiver (come|go) (in|inside) and passer (go|come) (out|outside)", "FOLLOW"),
    ("<when> {e:event} [then] {t:then}", "WHEN(event={e}, then={t})"),
    ("{t:then} <when> {e:event}", "LATE(event={e}, then={t})"),
    ("{w:named} (who|that) {a:act} [then] {c:bare}",
     "WHEN(event=event.act(who={w}, act={a}), then=BIND(who=who.PERSON, do={c}))"),
    ("(loser|lose side) (off|out|come off|go off) [and] [{g:next} (on|in|come on|come in|up|go on)]",
     "WHEN(event=event.act(who=who.a side, act=act.score), then=change.exchange(who=who.other side, with=who.next "
     "group))"),
    ("after {a:act} {t:then}", "WHEN(event=event.act(who=who.YOU, act={a}), then={t})"),
    ("after (goal|every goal|each goal) {t:then}", "WHEN(event=event.act(who=who.YOU, act=act.score), then={t})"),
    ("{e:given} [and|then|and then] {t:then}", "WHEN(event={e}, then={t})"),
    ("on {e:call} {t:then}", "WHEN(event={e}, then={t})"),
    ("{t:then} on {e:call}", "WHEN(event={e}, then={t})"),
    ("(winner|winner of (1 v 1|it|that)|win side) stay [on|in] [and] (loser|lose side) (swap with {g:wait_side}|"
     "come off|go off|go out|off|swap|change|come out|"
     "go to back|make way|sit out|out)", "WHEN(event=event.act(who=who.a side, act=act.score), "
     "then=change.exchange(who=who.other side, with=who.next group))"),
    ("(winner|whoever score|scorer|side that score|win side) stay on", "WHEN(event=event.act(who=who.a side, "
     "act=act.score), "
     "then=change.exchange(who=who.other side, with=who.next group))"),
    ("(winner|whoever score|scorer|side that score|win side) stay on [and] {w:next_in} (come on|come in|replace "
     "loser|take on winner|go on)",
     "WHEN(event=event.act(who=who.a side, act=act.score), then=change.exchange(who=who.other side, with=who.next "
     "group))"),
    ("(loser|lose side|side that concede|whoever concede|conceding side) (swap with {g:wait_side}|go off|come off|"
     "swap|be off|off|go out|change|make way|swap with next group)",
     "WHEN(event=event.act(who=who.a side, act=act.score), then=change.exchange(who=who.other side, with=who.next "
     "group))"),
    ("(whoever|player who|1 who|if you|side that|side who|side) {a:act} [and|you|they|then] {c:bare}",
     "WHEN(event=event.act(who=who.YOU, act={a}), then=BIND(who=who.PERSON, do={c}))"),
    ("(follow <its> pass|follow pass|player follow <its> pass|pass and follow|everyone follow <its> pass)", "FOLLOW"),
    ("(every|each|after every|after each) {t:mins} [we|you|they] {c:then}", "EVERY(t={t}, then={c})"),
    ("{c:then} (every|each|after every|after each) {t:mins}", "EVERY(t={t}, then={c})"),
    ("(every|each|after every) {s:secs} {c:then}", "EVERY(s={s}, then={c})"),
    ("{c:then} (every|each|after every) {s:secs}", "EVERY(s={s}, then={c})"),
    ("{t:mins} (then|and then|and) {c:then}", "EVERY(t={t}, then={c})"),
)  # fmt: skip
NEXT: Rows = (("{w:player}", "{w}"),)
GIVEN: Rows = (
    ("{w:you} {a:act}", "event.act(who={w}, act={a})"),
    ("(every|any|each) ball (that|which|) go out", "event.ball out"),
    ("(every|any|each) time <ball> go out", "event.ball out"),
    ("(every|each) goal", "event.act(who=who.YOU, act=act.score)"),
    ("{a:act}", "event.act(who=who.YOURS, act={a})"),
    ("{w:named} {a:act}", "event.act(who={w}, act={a})"),
    ("(score|scored) on", "event.act(who=who.YOU, act=act.concede)"),
    ("<ball> (go|) (out|off|dead)", "event.ball out"),
    ("(goal|after a goal)", "event.act(who=who.YOU, act=act.score)"),
)  # fmt: skip
CALL: Rows = (
    ("[my|the|coach 's|your] (call|shout|whistle|signal|command) [of (change|swap|go)]", "event.coach calls"),
    ("(a goal|every goal|each goal)", "event.act(who=who.a side, act=act.score)"),
    ("(a turnover|turnover|a regain|regain)", "event.act(who=who.a side, act=act.win)"),
)  # fmt: skip
SERVE = "(pass|play|serve|feed|roll|give|put|throw|knock|send|hit|pass out|play out)"
START: Rows = (
    ("(play|we play|do) {t:mins} (a|per|each|) (turn|game|go|round)", "TURN(t={t})"),
    ("(play|we play|do) {s:secs} (a|per|each|) (turn|go|round)", "TURN(s={s})"),
    (f"{{w:server_who}} {SERVE} [<ball>|it|ball] in [from side|from the end|to start]", "first pass(who={w})"),
    (f"{{w:server_who}} {SERVE} [<ball>|it|ball] in [from side] to {{x:group}}", "first pass(who={w}, to={x})"),
    ("(turn|game|round) (finish|end|be over) (once|when|as soon as) (side|someone|1 side) (have|get|reach|score) "
     "{n:int} [goal|point]",
     "turn points(n={n})"),
    ("first side to (reach|get|score|get to) {n:int} [goal|point] [win|win it]", "turn points(n={n})"),
    ("{w:named} start [it|<ball>|game|play] (by|with|off by) [a] pass [<ball>|it] (to|into) {x:group}",
     "first pass(who={w}, to={x})"),
    ("{w:named} start (every|each) (attack|go|turn|move|phase|time|game|practice)", "play starts(who={w})"),
    ("it [always] start (from|with|by) {w:group}", "play starts(who={w})"),
    ("(play|game|it|we|practice|everything|ball|round|turn|each turn|each go|every go|every turn|each round|every "
     "attack|each attack) "
     "[always] (start|begin|be start|kick off|restart) [off] (with|from|by|at|on) {w:group} [{p:at}]", "play "
      "starts(who={w}, where={p})"),
    ("[always] (start|begin|kick off) (with|from) {w:named} [{p:at}]", "play starts(who={w}, where={p})"),
    ("{w:named} (start|begin|kick off|start off|get start|start play|get it start|have first ball|start with <ball>|"
     "get first ball|"
     "start it|have <ball> first|have <ball> to start|go first|start game|begin play) [with <ball>] [{p:at}]",
      "play starts(who={w}, where={p})"),
    ("<ball> (start|begin) with {w:group} [{p:at}]", "play starts(who={w}, where={p})"),
    ("(play|game|it|we|practice|round|turn|each turn|each go) (start|begin|restart) with [a] (pass|ball|serve) "
     "[from|by] {w:group} "
     "[(to|into) {x:group}]", "first pass(who={w}, to={x})"),
    (f"[start with|start when|it start when|start by] {{w:named}} {SERVE} [in|out|across] [<ball>|it] [in|out|"
     f"across] (to|into) {{x:group}} [to start|first|to begin|to get it start|"
     "to start it|to kick off]", "first pass(who={w}, to={x})"),
    (f"{{w:named}} {SERVE} [in|out|across] [<ball>|it|first ball|first pass] [in|out|across] (to start|to begin|"
     f"to kick off|to get it start|first|to get us start)",
     "first pass(who={w})"),
    ("{w:named} (start|begin|kick off) with [a] (pass|ball|serve) (to|into) {x:group}", "first pass(who={w}, to={x})"),
    ("{w:named} play first pass [to {x:group}]", "first pass(who={w}, to={x})"),
    ("first pass (be|come) from {w:named} [to {x:group}]", "first pass(who={w}, to={x})"),
    ("(turn|game|round|go|match|duel|bout|contest|each duel|each bout|each turn|each game|each round|each go|each "
     "match|every turn|every round|shift|play) (last|be|go on for|run for|take|for) {t:mins} [each|long]",
     "TURN(t={t})"),
    ("(turn|game|round|go|match|duel|bout|contest|each duel|each bout|each turn|each game|each round|each go|"
     "every turn|every round|shift|play) (last|be|go on for|run for|take|for) {s:secs} [each|long]",
     "TURN(s={s})"),
    ("[you get|you have|we do|we will do|we play|it be|they get] {t:mins} (per|each|a|for each|for a|) (turn|game|"
     "round|go|match|shift)",
     "TURN(t={t})"),
    ("{s:secs} then (it be dead|it be over|it be finish|stop|time be up|we go again|next go) [and|then] [we go "
     "again|next go]",
     "TURN(s={s})"),
    ("{t:mins} then (it be dead|it be over|it be finish|stop|time be up|we go again|next go) [and|then] [we go "
     "again|next go]",
     "TURN(t={t})"),
    ("(each|every) (wave|group|turn|pair|go|attack) [of {n:int}] (attack|play|go|have|work|be on|get|have get) "
     "[for] {s:secs} [at most|max|tops|at the most|maximum]",
     "TURN(s={s})"),
    ("(each|every) (wave|group|turn|pair|go) [of {n:int}] (attack|play|go|have|work|be on|get) [for] {t:mins} [at "
     "most|max|tops|maximum]",
     "TURN(t={t})"),
    ("[you get|you have|we do|we will do|we play|it be|they get|they have] {s:secs} (per|each|a|for each|for a|) "
     "(turn|round|go|shift)",
     "TURN(s={s})"),
    ("first [side] to {n:int} [goal|point|pass] [win|win it]", "turn points(n={n})"),
    ("(play|game|turn|we play|we be play|we go|play be|game be|it be) [up|first] to {n:int} [goal|point]",
     "turn points(n={n})"),
    ("(turn|game|round) (end|finish|be over) (at|after|on|when someone get|when a side get) {n:int} [goal|point]",
     "turn points(n={n})"),
    ("{n:int} (goal|point) (win|win it|end it|end the turn|wins the game)", "turn points(n={n})"),
)  # fmt: skip
AT: Rows = (("(at|in|from|on) {p:place}", "{p}"), ("(on|at) edge of {p:place_name}", "place.edge(place={p})"))
BACK: Rows = (
    ("<ball> [always] (come|go) [back] in (by|with|via|from) (dribble|dribble-in)", "ball "
     "back(how=restart.dribble-in)"),
    ("<ball> [always] (come|go) [back] in (by|with|via|from) (throw|throw-in)", "ball back(how=restart.throw-in)"),
    ("<ball> [always] (come|go) [back] in (by|with|via|from) (kick|kick-in)", "ball back(how=restart.kick-in)"),
    ("(restart|restart play) with {r:restart}", "ball back(how={r})"),
    ("<ball> (go out|out) [you|they|we] {r:restart}", "ball back(how={r})"),
    ("[all|every] restart (be|be by|be with|be from|come from|be take as) {r:restart}", "ball back(how={r})"),
    ("<when> <ball> (leave play|go out of play|go out) it be {r:restart}", "ball back(how={r})"),
    ("[it be|we use|we have|we will have|use] {r:restart} [only|not {x:restart}|no {x:restart}|instead of "
     "{x:restart}|rather than {x:restart}]",
     "ball back(how={r})"),
    ("<ball> (out|go out|go off) {r:restart}", "ball back(how={r})"),
    ("<ball> [always] (come|start) [back] [in] from {w:group}", "ball back(how=restart.pass(who={w}))"),
    ("{r:restart} (only|instead of {x:restart}|not {x:restart}|rather than {x:restart}|no {x:restart}|when <ball> "
     "go out|"
     "if <ball> go out|for everything|from the side|when it be out|all round|if it be out)", "ball back(how={r})"),
    ("(no|not) {x:restart} [just|only|we|use|it be] {r:restart} [instead|only]", "ball back(how={r})"),
    ("<when> [it|<ball>] (go|be|) (out|off|out of play) [then] [it|you|we|they|the other side|that|play] [be|get|"
     "use|take|have|come back in with|"
     "restart with|start again with|bring it back in with|come back with] {r:restart}", "ball back(how={r})"),
    ("(play|<ball>|we|it) (come back [in|into play]|restart|be bring back in|start again|go again) [with|by|from|"
     "via|on] {r:restart} "
     "[when <ball> go out]", "ball back(how={r})"),
    ("{r:restart}", "ball back(how={r})"),
    ("<when> [it|<ball>] (go|be) (out|off|out of play) (kick|pass) it [back] in", "ball back(how=restart.kick-in)"),
    ("<when> [it|<ball>] (go|be) (out|off|out of play) dribble it [back] in", "ball back(how=restart.dribble-in)"),
    ("<when> [it|<ball>] (go|be) (out|off|out of play) throw it [back] in", "ball back(how=restart.throw-in)"),
)  # fmt: skip
RESTART: Rows = (
    ("(kick <ball> [back] in|kick back in|kick-in|kick in|kick-ins|pass-in|pass-ins|pass in|kick)", "restart.kick-in"),
    ("(dribble <ball> [back] in|dribble back in|dribble-in|dribble in|dribble-ins|drive in|dribble it in)",
     "restart.dribble-in"),
    ("(throw <ball> [back] in|throw back in|throw-in|throw in|throw-ins|throw)", "restart.throw-in"),
    ("(pass|ball|restart|new pass|throw) from {w:group}", "restart.pass(who={w})"),
)  # fmt: skip
LAWS: Rows = (
    ("[you|they] <maynot> score (in|through) {g:place_name} (you|they) have just score [in|through]", "no "
     "repeat(where=place.named(place={g}))"),
    ("it be offside (from|past|beyond|over) (halfway|halfway line|half line)", "offside"),
    ("(<ball>|ball|everything|pass) (on|along) (floor|ground|deck|grass)", "on the ground"),
    ("(free|unopposed) first pass then (they|you|defender) may (go|press|tackle|win it|come)", "free pass"),
    ("offside (on|be on)", "offside"),
    ("(<ball> <maynot> be head|header <maynot> be (use|play))", "no heading"),
    ("<ball> <must> (stay|be keep|be|remain) (below (knee|waist|head) height|on ground|on floor|on deck|along "
     "ground)",
     "on the ground"),
    ("{x:presser} <maynot> (challenge|tackle|press|intercept|touch|contest) first pass", "free pass"),
    ("first pass (go unchallenged|go unopposed|may be play unopposed|may not be contest)", "free pass"),
    ("[usual|normal] offside [law|rule] (apply|be on|be in force)", "offside"),
    ("(side|you|they|player) <maynot> score (twice|2 time) (running|in row|in a row) in same {g:place_name}",
     "no repeat(where=place.named(place={g}))"),
    ("(side|you|they|player) <maynot> score (in|through) same {g:place_name} (twice|2 time) [running|in row]",
     "no repeat(where=place.named(place={g}))"),
    ("[you|they] <must> find (different|new|another) {g:place_name} (each|every|next) time",
     "no repeat(where=place.named(place={g}))"),
    ("first pass <maynot> be (touch|press|tackle|intercept|cut out|challenge)", "free pass"),
    ("everyone [be|must be|have to be] (set|in position|ready|in place|back in position) before (we|play|you|it|"
     "anyone|) (restart|start|go|begin) [again]",
     "everyone set"),
    ("(do not|no|we do not|nobody) (start|restart|restarting|go|begin) again until everyone be (ready|set|in "
     "place|in position|back)",
     "everyone set"),
    ("[you|they] <must> find (different|new|another) {g:place_name} (each|every|next) time",
     "no repeat(where=place.named(place={g}))"),
    ("offside [rule] [only] [be|apply|be on|count] [only] (from|past|beyond|over) (halfway|halfway line|half line)",
     "offside"),
    ("[you|they] <maynot> (use|go through|go back through|score through|dribble through|pass through|play "
     "through) {g:place_name} (you|they) (have just|just) (come|go|be|use|score) [through|in|at]",
     "no repeat(where=place.named(place={g}))"),
    ("first pass be free [in rondo] [so (they|you) may not (pounce|press|win it|tackle|go|intercept) until (2|"
     "second) [1|pass]]",
     "free pass"),
    ("first pass [after a restart|after start|after a start|each time|in rondo|of every go|every time|in|out] (be|"
     "have to be) (free|unopposed|uncontested|unchallenged|safe)",
     "free pass"),
    ("first pass [in rondo] be free so (they|you) may not (pounce|press|win it|tackle|go|intercept) until (2|"
     "second) [1|pass]",
     "free pass"),
    ("(free|unopposed|uncontested) first pass", "free pass"),
    ("(give them|let them have) first pass [free]", "free pass"),
    ("(nobody|no one|no) [<may>] (press|tackle|intercept|challenge|pressure) [on|] first pass", "free pass"),
    ("<maynot> (press|tackle|intercept|touch|win|challenge) first pass", "free pass"),
    ("(you|they) <maynot> (press|tackle|intercept|touch|win|challenge) first pass", "free pass"),
    ("(do not|no) (start|restart|play|restarting|starting) until everyone be (ready|set|in place|in position|back)",
     "everyone set"),
    ("(wait|play restart|restart|we restart|play start again|we go again|start again) [until|when|once|only when] "
     "everyone be (ready|set|in place|in position|back [in place|in position])",
     "everyone set"),
    ("(nobody|no player|no side) [<may>] (use|go through|score in|pass through) same {g:place_name} (twice|2 "
     "time) [in row|running|in a row|on row]",
     "no repeat(where=place.named(place={g}))"),
    ("[you|they] <maynot> (use|go through|score in|pass through|score through|go in|play through|go back through|"
     "do) same {g:place_name} (twice|2 time) [in row|running|in a row|straight away]",
     "no repeat(where=place.named(place={g}))"),
    ("not same {g:place_name} (twice|2 time) [in row|running]", "no repeat(where=place.named(place={g}))"),
    ("[go through|use|score in|play through] (different|new) {g:place_name} (each|every) time",
     "no repeat(where=place.named(place={g}))"),
    ("[you|they] <must> (use|go through|go to|score in) (different|new|another) {g:place_name} (each|every|next) time",
     "no repeat(where=place.named(place={g}))"),
    ("offside (rule apply|apply|be on|count|be play|in play|be in play|rule be on|be in force|rule be in force|be "
     "enforce|in force)",
     "offside"),
    ("(we be play|we play|play|normal|with|usual) offside [rule|apply]", "offside"),
    ("[only] offside [rule] [only] (apply|count|be|be on|be give|be call|matter|apply only|be only|count only|be "
     "only on) [only] "
     "(beyond|past|after|from) {p:place}", "offside(where={p})"),
    ("offside [rule] (only apply|only count|be only on|apply only|only matter|be only|count only|be only give|"
     "only be) (in|inside) (final|last|attack) third",
     "offside(where=place.middle third)"),
    ("you (may only be|be only) offside (beyond|past) {p:place}", "offside(where={p})"),
    ("no offside (before|until|short of|till) {p:place}", "offside(where={p})"),
    ("(no head|no header|head be not allow|header be not allow|no head <ball>|(you|nobody) <maynot> head <ball>|"
     "do not head <ball>|<maynot> head [<ball>]|nobody <may> head <ball>|no use of head|no ball with head)",
     "no heading"),
    ("(<ball> [must] (stay|be|keep|be keep) (on floor|on ground|below knee height|on deck|on carpet|on grass)|keep "
     "(<ball>|pass|everything) (on floor|on ground|on deck|on carpet|down on floor|on grass)|"
     "pass (must be|be|on|must stay|stay|must be keep|have to be|have to stay|all) [all] (on floor|on ground|along "
      "floor|along ground|on deck|on grass)|"
     "(no|nothing) (high ball|aerial ball|ball in air|lofted pass|high pass|pass in air|above knee height|over knee "
      "height|in air|off floor|lift pass)|"
     "everything (on floor|on ground|along floor|along ground|on deck)|(floor|ground) pass only|[all|only] pass "
      "along (floor|ground)|<maynot> (lift|loft|chip) <ball>|[you|nobody] <maynot> (lift|loft|chip) <ball>)", "on "
      "the ground"),
)  # fmt: skip
LAWS = tuple((said.replace("((", "( ("), told) for said, told in LAWS)

TABLES = {
    **TALK, "standing": (*STANDING, *WHEN, *START, *BACK, *LAWS), "extra": EXTRA, "inner": INNER, "next_in": NEXT,
     "wait_side": (("(side|player|group|lot|1) [that|who] [be] (wait|off|rest|on side|in line)", "who.next group"), (
      "next (side|"
     "group|lot|1)", "who.next group")), "given": GIVEN,
    "call": CALL, "at": AT, "restart": RESTART,
    "rule": (("{r:scoring}", "{r}"), ("{r:limit}", "{r}"), ("{r:standing}", "{r}")),
    "rules": (
        ("{r:whole}", "{r}"), ("{r:whole} [and|but|then|while|or else] {s:rules}", "both(a={r}, b={s})"),
        ("{t:talk} {s:rules}", "{s}"), ("{o:order}", "{o}"), ("<when> (you|they) be {w:named} {s:more}",
         "ABOUT(who={w}, rule={s})"),
        ("<when> (you|they) be {w:on_edge} {s:more}", "ABOUT(who={w}, rule={s})"),
    ),
    "order": (
        ("(shoot|finish) (within|in|inside) {t:span}", "must(who=who.a side, act=act.shoot, s={t})"),
        ("(stay|keep|remain) {p:in} {c:cond}", "LONG(form=stay in, who=who.everyone, where={p}, by={c})"),
        ("(stay|keep) (out of|out|off|away from) {p:place} {c:cond}",
         "LONG(form=stay out, who=who.everyone, where={p}, by={c})"),
        ("do not (go in|go into|enter|come in|step in|step into|go inside) {p:place} {c:cond}",
         "LONG(form=stay out, who=who.everyone, where={p}, by={c})"),
        ("do not (leave|come out of|go out of) {p:place} {c:cond}",
         "LONG(form=stay in, who=who.everyone, where=IN(p={p}), by={c})"),
        ("do not tackle {w:named} [{p:in}] {c:until}", "NOTACKLE(whom={w}, where={p}, by={c})"),
        ("do not tackle {p:in} {c:until}", "NOTACKLE(where={p}, by={c})"),
    ),
    "whole": (
        ("{r:rule}", "{r}"), ("{r:rule} {t:talk}", "{r}"), ("{r:rule} [and|but|then|so] {s:more}", "MORE(a={r}, "
         "b={s})"),
        ("{r:rule} [and|but|then|so] {s:more} [and|but|then] {u:more}", "MORE(a=MORE(a={r}, b={s}), b={u})"),
        ("{r:rule} [and|but|then|so] {s:more} {t:talk}", "MORE(a={r}, b={s})"),
        ("{r:limit} [or|else|otherwise|or else|and if not] {t:penalty}", "{r}"),
        ("{r:scoring} [and|but] {t:nothing}", "{r}"), ("{r:limit} [and|but] {t:nothing}", "{r}"),
        ("{r:limit} [and] {w:named} [be] (free|unlimited)", "{r}"),
        ("{r:standing} [and|so] {t:swapped}", "{r}"), ("{t:talk} {r:rule}", "{r}"),
    ),
}  # fmt: skip
