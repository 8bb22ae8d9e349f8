"""Everyday words for moments, for what holds for a while, and for changes."""

from turnout.practice.saying.who_said import Rows

SECS: Rows = (
    ("{n:int} (second|s)", "{n}"),
    ("{n:int} minute", "sixty(t={n})"),
    ("half [a] minute", "30"),
    ("minute [and] half", "90"),
    ("{n:int} [and] half minute", "sixty(t={n}, s=30)"),
    ("minute", "60"),
)
MINS: Rows = (("{n:int} (minute|m)", "{n}"), ("minute", "1"))
EVENT: Rows = (
    ("{w:group} [<also>|have|have just|just] {a:act}", "event.act(who={w}, act={a})"),
    ("{w:you} [<also>|have|have just|just|manage to|be] {a:act}", "event.act(who={w}, act={a})"),
    ("{a:act}", "event.act(who=who.YOU, act={a})"),
    ("player there {a:act}", "event.act(who=who.player there, act={a})"),
    ("(player|they|receiver|he|she) (in there|in it|there) {a:act}", "event.act(who=who.player there, act={a})"),
    ("{w:named} ['s] [have|take|get|make] first touch", "event.act(who={w}, act=act.touches(n=1))"),
    ("(there be|be|) (goal|score) [be score|go in]", "event.act(who=who.YOU, act=act.score)"),
    ("<ball> be (win|win back|regain|intercept|take)", "event.act(who=who.YOU, act=act.win)"),
    ("[<ball>|possession] be (lose|give away|turn over)", "event.act(who=who.YOU, act=act.lose)"),
    ("possession (change|change hands)", "event.act(who=who.YOU, act=act.win)"),
    ("(<ball>|pass|ball) (go|be play|be pass|come|go out|be give) [out] to {w:group}",
     "event.act(who=who.YOU, act=act.pass to(to={w}))"),
    ("<ball> be (receive|play|pass) {p:in}", "event.act(who=who.YOU, act=act.receive in(where={p}))"),
    ("{n:int} pass [be|have be] (complete|make|play|string together)", "event.act(who=who.YOU, act=act.passes(k={n}))"),
    ("<ball> (go|be|run|roll|leave|fly|go flying|be kick|get kick|be hit|be put) (out|off|out of play|dead|out of area|away)",
     "event.ball out"),
    ("(ball|it) out", "event.ball out"),
    ("(every|any) ball (that|which) go out", "event.ball out"),
    ("(out|out of play)", "event.ball out"),
    ("<ball> [have|be] (enter|go in|go into|come in|come into|get in|get into|be in|be play in|be play into|be pass into|"
     "be pass in|arrive in|cross into|be in|reach) {p:place}", "event.ball enters(where={p})"),
    ("<ball> [have|be] (enter|go in|go into|come in|come into|be in|be play in|get in|arrive in) (it|there)",
     "event.ball enters(where=place.it)"),
    ("<ball> [have] (go in|be in|be play in|arrive|come in)", "event.ball enters(where=place.it)"),
    ("<ball> [have|be] (leave|come out of|go out of|get out of|be out of|be play out of) {p:place}",
     "event.ball leaves(where={p})"),
    ("{t:secs} [have] (pass|go|be up|go by|elapse|be go)", "event.seconds pass(s={t})"),
    ("(after|for) {t:secs}", "event.seconds pass(s={t})"),
    ("(nobody|neither side|no side) [have] score (in|for|after|within) {t:secs}", "event.seconds without(s={t})"),
    ("no (goal|score) (in|for|after|within) {t:secs}", "event.seconds without(s={t})"),
    ("there be no (goal|score) (in|for|after|within) {t:secs}", "event.seconds without(s={t})"),
    ("{t:secs} (pass|go|go by) (without|with no) (goal|score)", "event.seconds without(s={t})"),
    ("(turn|round|go) (start|begin)", "event.turn starts"),
    ("(turn|round|go) (end|finish|be over|be up)", "event.turn ends"),
    ("(coach|i) (call|shout|say|blow|whistle|blow up|clap|give signal|blow whistle) [whistle|change|swap|go|now|so|signal]",
     "event.coach calls"),
    ("(my|coach 's|coach) (call|shout|whistle|signal|command)", "event.coach calls"),
)
WHILE: Rows = (
    ("{w:group} (have|have got|be in|be in possession of|keep|be on|get) [<ball>] <ball>", "while.has(who={w})"),
    ("{w:group} (have|have got|keep|be on|get|be in) <ball>", "while.has(who={w})"),
    ("{w:group} be (attack)", "while.has(who={w})"),
    ("<ball> be {p:in}", "while.ball in(where={p})"),
    ("{w:group} be (behind|lose|down|trail)", "while.behind(who={w})"),
    ("{w:group} [be|have get|get] (<in>|into|over|past) {p:place}", "while.in place(who={w}, where={p})"),
    ("<everyone> be (over|past|across|beyond) (halfway|half line|halfway line)",
     "while.in place(who=who.everyone, where=place.attacking half)"),
    ("<everyone> be {p:in}", "while.in place(who=who.everyone, where={p})"),
)
POINTS: Rows = (
    ("{n:int} [bonus|extra] (point|goal)", "{n}"),
    ("[bonus|extra|single] point", "1"),
    ("goal", "1"),
    ("double [point]", "2"),
    ("(triple|treble) [point]", "3"),
    ("{n:int}", "{n}"),
    ("twice [as much]", "2"),
)
CHANGE: Rows = (
    ("{w:mover} <also> {c:bare}", "BIND(who={w}, do={c})"),
    ("{w:mover} {c:bare}", "BIND(who={w}, do={c})"),
    ("{w:mover} (will|be to|must|have to|have got to|can) {c:bare}", "BIND(who={w}, do={c})"),
    ("{w:mover} and {x:mover} [<also>] (swap|change) [<place_swap>]", "SWAP(who={w}, with={x})"),
    ("{w:mover} (swap|change) [<place_swap>] with {x:mover}", "change.exchange(who={w}, with={x})"),
    ("(swap|change) {w:mover} (with|for|and) {x:mover}", "SWAP(who={w}, with={x})"),
    ("{w:mover} (replace|take place of|take over from|go in for|come in for|come on for|take [over]) {x:mover}",
     "change.exchange(who={w}, with={x})"),
    ("(change|swap) {w:named}", "change.exchange(who=who.next group, with={w})"),
    ("new {w:named}", "change.exchange(who=who.next group, with={w})"),
    ("{w:mover} 's ball [{p:out_of}]", "change.starts(who={w}, from={p})"),
    ("<its> ball", "change.starts(who=who.THEY)"),
    ("(ball|it|restart|possession|start) (to|for|with|go to|go to|start with|start from|go over to|be with|restart with) {w:mover}",
     "change.starts(who={w})"),
    ("(other side|opponent) ball", "change.starts(who=who.other side)"),
    ("play (start|restart|begin|go on|be restart) (with|from|by) {w:mover}", "change.starts(who={w})"),
    ("new ball [come|be play|go] [in] (from|by) {w:mover}", "change.new ball(who={w})"),
    ("side (change|swap|turn) (end|direction|round|way)", "change.ends"),
    ("(change|swap) end", "change.ends"),
    ("(turn|round|go) (end|be over|finish|stop)", "change.turn ends"),
    ("(that be it|it be over|that be your go|round over|turn over|end of turn|end of go|your go be over)", "change.turn ends"),
    ("{n:points} (to|for) {w:mover}", "change.points(who={w}, n={n})"),
    ("{w:mover} [<may>] keep [hold of] <ball>", "change.keeps(who={w})"),
    ("play (on|continue)", "change.keeps(who=who.THEY)"),
)
# what follows its subject
BARE: Rows = (
    ("(come|jump|step|go|move|join|drop|get) (in|inside|on|in play) [to {p:place}]", "change.comes in(who=who.WHO, to={p})"),
    ("(come|jump|step|go|move|drop|get) into {p:place}", "change.comes in(who=who.WHO, to={p})"),
    ("(go|come|step|drop|move|get|stay) (out|off|outside|to outside|on outside) [to {p:place}]",
     "change.goes out(who=who.WHO, to={p})"),
    ("(join|go in with|become|be|turn into|go in as|be now|change to|join in with|go with) {x:named}",
     "change.joins(who=who.WHO, to={x})"),
    ("(go|be|step|come|move) {x:in_middle}", "change.joins(who=who.WHO, to={x})"),
    ("(go|come|drop) back [home|to <its> place|where (they|he|she) come from|out to <its> place]", "change.goes back(who=who.WHO)"),
    ("(start|restart|begin|have <ball>|get <ball>|kick off|start with <ball>|start again|get <ball> back|be give <ball>|"
     "take <ball>|restart with <ball>|have first ball|start <ball>) [{p:out_of}]", "change.starts(who=who.WHO, from={p})"),
    ("(play|chuck|throw|pass|serve|roll|put|feed|knock|send|bring|start with|get) [in] [a] new (ball|1) [in] [{p:out_of}]",
     "change.new ball(who=who.WHO, from={p})"),
    ("keep [hold of] <ball>", "change.keeps(who=who.WHO)"),
    ("<earn> {n:points}", "change.points(who=who.WHO, n={n})"),
    ("attack {p:place}", "change.attacks(who=who.WHO, where={p})"),
    ("<may> (enter|go into|come into|go in|come in|join in|follow into|go inside|step into) {p:place}",
     "change.may enter(who=who.WHO, where={p})"),
    ("<may> (enter|go into|come into|go in|come in) it", "change.may enter(who=who.WHO, where=place.it)"),
)
OUT_OF: Rows = (
    ("from {p:place}", "{p}"),
    ("from edge of {p:place_name}", "place.edge(place={p})"),
    ("from behind {p:place_name}", "place.behind(place={p})"),
)
THEN: Rows = (
    ("{c:change}", "{c}"),
    ("{c:change} (and|then|and then|while|with|) {d:then}", "chain(a={c}, b={d})"),
    ("{w:mover} {c:bare} (and|then|and then) {d:bare}", "chain(a=BIND(who={w}, do={c}), b=BIND(who={w}, do={d}))"),
)
TABLES = {
    "secs": SECS, "mins": MINS, "event": EVENT, "state": WHILE, "points": POINTS, "change": CHANGE, "bare": BARE,
    "out_of": OUT_OF, "then": THEN,
}  # fmt: skip
