"""Everyday words for what scores and what counts."""

from turnout.practice.saying.who_said import Rows

FOR = (
    "(for|by|if|when|every time|each time|whenever|once|to|any time|as soon as|for each time|for every time|if you can)"
)
WITHIN = "[(within|in|inside|in under|in less than) {t:span} [of|after|from] [{b:doing}]]"
SCORE: Rows = (
    ("{a:act} {u:timed} and (<its> side|that side) [have] (<earn>|<worth>) {n:points}", "TIMED(who=who.YOU, n={n}, "
     "act={a}, by={u})"),
    ("(score|goal) be by {a:finish}", "score(who=who.YOU, n=1, act={a})"),
    ("{w:group} score (when it|if it|whenever it|by|when they) {a:finish}", "score(who={w}, n=1, act={a})"),
    ("<when> <ball> (get|go|reach|come) [to] {w:named} [that be|it be] {n:points_said}", "score(who=who.YOU, n={n}, "
     "act=act.pass to(to={w}))"),
    ("[you|they] [may] score in any {p:place} [you like|you want|they like]", "score(who=who.YOU, n=1, "
     "act=act.score(where={p}))"),
    ("(you|they) have score (when|once|if) (you|they) {a:act}", "TIMED(who=who.YOU, n=1, act={a}, by=LIMIT)"),
    ("(whichever side|first side|side) [to] {a:act} first (<earn>|<worth>) {n:points}", "TIMED(who=who.YOU, n={n}, "
     "act={a}, by=LIMIT)"),
    ("lose <ball> [and] (you|they) have {t:span} to win <ball> [back] (for|to get|to earn) {n:points_said}",
     "score(who=who.YOU, n={n}, act=act.win, s={t}, after=act.lose)"),
    ("<when> <others> [manage to|can] {a:act} {u:timed} [then] they [have] score", "TIMED(who=who.YOU, n=1, "
     "act={a}, by={u})"),
    ("<when> <others> [manage to|can] {a:act} {u:timed} [then] they <earn> {n:points}", "TIMED(who=who.YOU, n={n}, "
     "act={a}, by={u})"),
    ("<when> {w:you} [manage to|can] {a:act} {u:timed} (you|your side|that side|it) [have] score",
     "TIMED(who=who.YOU, n=1, act={a}, by={u})"),
    ("{a:act} {u:timed} and (you|they|your side) [have] score", "TIMED(who=who.YOU, n=1, act={a}, by={u})"),
    ("{a:act} {u:timed} [and] (that be|it be|you get|make) {n:int} [to (you|your side)|for you]",
     "TIMED(who=who.YOU, n={n}, act={a}, by={u})"),
    ("{a:act} {u:timed} [and] (you be|they be) {n:points} up", "TIMED(who=who.YOU, n={n}, act={a}, by={u})"),
    ("(goal|score|point) be {a:act}", "TIMED(who=who.YOU, n=1, act={a}, by=LIMIT)"),
    ("{n:points} (to|for) {w:named} [for|if they] {a:act}", "score(who={w}, n={n}, act={a})"),
    ("{a:act} <worth> {n:points} (to|for) {w:named}", "score(who={w}, n={n}, act={a})"),
    ("[you|they] [<earn>|score] {n:points} {p:for_each} (you|they) (go|get) <through> with [a] pass",
     "score(who=who.YOU, n={n}, act=act.pass through(where={p}))"),
    ("[you|they] [<earn>|score] {n:points} {p:for_each} (you|they) (go|get) <through>",
     "ALONE(who=who.YOU, n={n}, act=act.run through(where={p}))"),
    ("(every|each) {p:place} (you|they) pass <through> <worth> {n:points}",
     "score(who=who.YOU, n={n}, act=act.pass through(where={p}))"),
    ("(every|each) {p:place} (you|they) (dribble|run|drive) <through> <worth> {n:points}",
     "score(who=who.YOU, n={n}, act=act.run through(where={p}))"),
    ("(every|each) {p:place} <worth> {n:points} (if|when) (you|they) (dribble|run|drive) [<ball>] <through> it",
     "score(who=who.YOU, n={n}, act=act.run through(where={p}))"),
    ("(every|each) {p:place} <worth> {n:points} (if|when) (you|they) pass <through> it",
     "score(who=who.YOU, n={n}, act=act.pass through(where={p}))"),
    ("[{w:you}] [may|may only|only] score in (either|any|each|any of|either of|any 1 of) [2|3|4] {p:place}",
     "score(who=who.YOU, n=1, act=act.score(where={p}))"),
    ("[{w:you}] <must> (dribble|run it|carry it|drive|run) [<ball>] <into> {p:coach_end} [<maynot> {b:act}]",
     "score(who=who.YOU, n=1, act=act.RUN(where={p}))"),
    (f"{{n:points}} [be] {FOR} [{{w:you}}] {{a:act}} or {{b:act}}",
     "score(who=who.YOU, n={n}, act={a}) + score(who=who.YOU, n={n}, act={b})"),
    ("<goal> [be score|score] {h:how} <worth> {n:points}", "score counts(how={h}, n={n})"),
    ("[{w:you}] score {h:how} (and|then|and it|and that|it|and you|and they) (<worth>|<earn>) {n:points}",
     "score counts(how={h}, n={n})"),
    ("pass {p:which} (count|count as|count for|be worth) {n:times}", "passes count(passes={p}, n={n})"),
    ("{a:act} {u:timed} <scores> {n:points} [for|to] [{w:group}]", "TIMED(who={w|who.YOU}, n={n}, act={a}, by={u})"),
    ("(whoever|side|player|1|pair) [that|who] {a:act} {u:timed} [first] (<earn>|<worth>) {n:points}",
     "TIMED(who=who.YOU, n={n}, act={a}, by={u})"),
    ("{a:act} {u:timed} (for|to get|to earn|to win) {n:points_said}", "TIMED(who=who.YOU, n={n}, act={a}, by={u})"),
    ("[it be|that be|there be|you get|get] {n:points_said} [be] (for|every time|each time|if|when|whenever|any "
     "time) [{w:you}] [manage to|can|<also>] {a:act} {u:timed}",
     "TIMED(who=who.YOU, n={n}, act={a}, by={u})"),
    ("[it be|that be|there be|you get|get|{w:you} <earn>] {n:points} [be|be award|be give] (for each|for every|"
     "per|each|every) {a:act} [you|they] [make|put together|get|complete|string together]",
     "TIMED(who=who.YOU, n={n}, act={a}, by=LIMIT)"),
    (f"{{n:points}} [be|be award|be give|be score|be earn|be win] {FOR} [{{w:you}}] [manage to|can|<also>] "
     f"{{a:act}} {{u:timed}}",
     "TIMED(who=who.YOU, n={n}, act={a}, by={u})"),
    (f"{{n:points}} [be|be award|be give|be score|be earn|be win] {FOR} {{w:group}} [manage to|can] {{a:act}} "
     f"{{u:timed}}",
     "TIMED(who={w}, n={n}, act={a}, by={u})"),
    (f"{{n:points}} (to|for) {{w:group}} {FOR} [they|it] {{a:act}} {{u:timed}}",
     "TIMED(who={w}, n={n}, act={a}, by={u})"),
    (f"[{{w:you}}] <earn> {{n:points}} {FOR} [{{x:you}}] [manage to|can] {{a:act}} {{u:timed}}",
     "TIMED(who=who.YOU, n={n}, act={a}, by={u})"),
    (f"{{w:group}} <earn> {{n:points}} {FOR} [{{x:you}}] [manage to|can] {{a:act}} {{u:timed}}",
     "TIMED(who={w}, n={n}, act={a}, by={u})"),
    ("{a:act} {u:timed} (to|and|and you|and they|then you|you|and that|that|then it|and it) (<earn>|<worth>) "
     "{n:points}",
     "TIMED(who=who.YOU, n={n}, act={a}, by={u})"),
    ("<when> {w:you} [manage to|can] {a:act} {u:timed} [then] [you|it|that|there] (<earn>|<worth>|"
     "be) {n:points}",
     "TIMED(who=who.YOU, n={n}, act={a}, by={u})"),
    ("<when> {w:group} [manage to|can] {a:act} {u:timed} [then] [they|it|that] (<earn>|<worth>) {n:points}",
     "TIMED(who={w}, n={n}, act={a}, by={u})"),
    ("<when> {w:you} [manage to|can] {a:act} {u:timed} [then] [that|it] {n:points_said}",
     "TIMED(who=who.YOU, n={n}, act={a}, by={u})"),
    ("{a:act} {u:timed} {n:points_said}", "TIMED(who=who.YOU, n={n}, act={a}, by={u})"),
    ("[{w:you}] [<only>] score [only] (by|when you|if you|when they|if they|every time you|each time you) "
     "{a:finish} {u:timed}",
     "TIMED(who=who.YOU, n=1, act={a}, by={u})"),
    ("{w:group} [<only>] score [only] (by|when they|if they|when) {a:finish} {u:timed}",
     "TIMED(who={w}, n=1, act={a}, by={u})"),
    ("[{w:you}] <may> [<only>] score by {a:finish}", "score(who=who.YOU, n=1, act={a})"),
    ("to (score|get a point|earn a point|win a point|get point) [{w:you}] [<must>] {a:finish}",
     "score(who=who.YOU, n=1, act={a})"),
    ("[{w:you}] [<must>] {a:finish} (to|in order to) (score|get a point|earn a point|win a point)",
     "score(who=who.YOU, n=1, act={a})"),
    ("{w:group} [<must>] {a:finish} (to|in order to) (score|get a point|earn a point|win a point)",
     "score(who={w}, n=1, act={a})"),
    ("goal be (score|when|when you) [by] {a:finish}", "score(who=who.YOU, n=1, act={a})"),
    ("[a] (goal|score) be {a:finish}", "score(who=who.YOU, n=1, act={a})"),
    ("way to score be [to|by] {a:finish}", "score(who=who.YOU, n=1, act={a})"),
    ("(1|a) (goal|point) (per|each|every) {a:finish}", "score(who=who.YOU, n=1, act={a})"),
    ("(every|each) {a:act} <worth> {n:points}", "score(who=who.YOU, n={n}, act={a})"),
    ("(every|each) {a:act} [be] {n:points_said}", "score(who=who.YOU, n={n}, act={a})"),
    ("[you|they] [<earn>|score] {n:points} {p:for_each} (you|they) [can] (pass|play) [<ball>] <through> [to (your|"
     "their|a|own|) mate]",
     "score(who=who.YOU, n={n}, act=act.pass through(where={p}))"),
    ("[{w:you}] [<earn>|score] {n:points} {p:for_each} (you|they) (dribble|run|go|drive) [<ball>] <through>",
     "score(who=who.YOU, n={n}, act=act.run through(where={p}))"),
)  # fmt: skip
FOR_EACH: Rows = (("(for each|for every|per|each|every|for) {p:place}", "{p}"),)
TIMED: Rows = (
    ("(within|in|inside|in under|in less than) {t:span} (of|after|from) {b:doing}", "LIMIT(s={t}, after={b})"),
    ("(within|in|inside|in under|in less than) {t:span}", "LIMIT(s={t})"),
    ("", "LIMIT"),
)  # fmt: skip
BACK_TO: Rows = (
    (
        "straight back to (passer|(player|1|whoever) [who|that] (give|pass|play) (it|ball) [to (you|them|"
        "him)]|same player)",
        "passes.back",
    ),
)
TIMES: Rows = (("{n:int} [pass]", "{n}"), ("(double|twice)", "2"), ("(triple|treble)", "3"))
POINTS_SAID: Rows = (
    ("{n:int} [bonus|extra] (point|goal)", "{n}"), ("[bonus|extra] point", "1"), ("double", "2"), ("goal", "1"),
)  # fmt: skip
# what a side may do to score; a run of passes or a regain is rather what must come before a goal
COUNTS: Rows = (
    ("[{w:you}] only score (if|when) [you|they|it be] [finish|score|shoot|do it] {h:how}", "score how(how={h})"),
    ("{h:goals} <worth> {n:points} and {k:goals} [<worth>] {m:points}", "score counts(how={h}, n={n}) + score "
     "counts(how={k}, n={m})"),
    ("<when> it be {h:goals} [it|that] <worth> {n:points}", "score counts(how={h}, n={n})"),
    ("<when> {w:named} (set it up|make it|lay it on|assist|assist it|set <goal> up|set up goal|play the final "
     "pass|make pass) [it|that] <worth> {n:points}",
     "score counts(how=how.pass by(who={w}), n={n})"),
    ("<goal> (count|be worth|count as|be) {n:points} (if|when) {w:named} (set them up|set it up|make it|make them|"
     "assist|lay it on)",
     "score counts(how=how.pass by(who={w}), n={n})"),
    ("[every|all|each|any] <goal> <must> be {h:goals}", "score how(how={h})"),
    ("{h:goals} <worth> {n:points}", "score counts(how={h}, n={n})"),
    ("{n:points_said} (for|if it be|when it be|if you score|if you score it|when you score|if they score|if) {h:goals}",
     "score counts(how={h}, n={n})"),
    ("{n:points_said} (if you|when you|if they|for) score [it|1] {h:how}", "score counts(how={h}, n={n})"),
    ("score {h:how} (and|then|and it|and that|it|and you|and they) (<worth>|<earn>) {n:points}",
     "score counts(how={h}, n={n})"),
    ("<when> [you|they] [score] [it|1] {h:how} [it|that|then it|you|they] (<worth>|<earn>) {n:points}",
     "score counts(how={h}, n={n})"),
    ("{h:goals} {n:points_said}", "score counts(how={h}, n={n})"),
    ("<goal> (count|be worth) {n:points} (if|when) [it|they] [be] [score] {h:how}", "score counts(how={h}, n={n})"),
    ("{h:goals} <only_counts>", "score how(how={h})"),
    ("<goal> <only_counts> [if|when|with|if they be|when they be] [it|they|you] [be|come|score] {h:how}",
     "score how(how={h})"),
    ("(only|just) {h:goals} <counts>", "score how(how={h})"),
    ("(all|every|each|) <goal> <must> [be|come|be score] {h:how}", "score how(how={h})"),
    ("[{w:you}] <may> only score {h:how}", "score how(how={h})"),
    ("[{w:you}] only <may> score {h:how}", "score how(how={h})"),
    ("[{w:you}] <must> score {h:how}", "score how(how={h})"),
    ("{h:goals} only", "score how(how={h})"),
    ("no (goal|score|finish) (except|unless|but) {h:how}", "score how(how={h})"),
    ("only {w:named} ('s|) assist count", "score how(how=how.pass by(who={w}))"),
    ("<goal> <only_counts> <while> {s:state}", "score when(while_={s})"),
    ("<goal> [<counts>] only [<counts>] <while> {s:state}", "score when(while_={s})"),
    ("<goal> (count|stand) only (when|if|while) {s:state}", "score when(while_={s})"),
    ("<goal> do not (count|stand) unless {s:state}", "score when(while_={s})"),
    ("no <goal> [count|stand] unless {s:state}", "score when(while_={s})"),
    ("[{w:you}] <may> [only] score [only] (when|if|once|while) {s:all_up}", "score when(while_={s})"),
    ("[{w:you}] <maynot> score (unless|until) {s:all_up}", "score when(while_={s})"),
    ("{s:all_up_must} (for|before|to) [<goal>|it|you|they] [to|can|may] [count|score|stand|a goal count|a goal]",
     "score when(while_={s})"),
)  # fmt: skip
ALL_UP: Rows = (
    ("<everyone> [be|have get|get|come] [up] (in|over|into|across|past|inside) {p:place}",
     "while.in place(who=who.everyone, where=place.named(place={p}))"),
    ("{s:state}", "{s}"),
)  # fmt: skip
ALL_UP_MUST: Rows = (
    ("[you|they] <must> (have|get) <everyone> [up] (over|past|across|beyond) (halfway|half line|halfway line)",
     "while.in place(who=who.everyone, where=place.attacking half)"),
    ("<everyone> (must|have to|have got to|need to) be (over|past|across|beyond) (halfway|half line|halfway line|half)",
     "while.in place(who=who.everyone, where=place.attacking half)"),
    ("<everyone> (must|have to|have got to|need to) be {p:in}", "while.in place(who=who.everyone, where={p})"),
)  # fmt: skip
AFTER: Rows = (
    ("before [you|they] [<may>] (score|shoot|have a shoot|finish|go for goal) [you|they] (need|must have|must make|"
     "have to make|have to have) [at least] {n:int} pass", "score after(event=event.act(who=who.YOU, "
     "act=act.passes(k={n})))"),
    ("(it take|we want|i want|there must be|there have to be|we need) [at least] {n:int} pass before [you|they|a|"
     "any|] [<may>] (goal count|goal|score|shoot|finish|go for goal)",
     "score after(event=event.act(who=who.YOU, act=act.passes(k={n})))"),
    ("<ball> (must|have to|need to|got to|have got to) (go|travel|be play|come|be) (through|into|in) {p:place} "
     "(before|to) [you|they|it] [may] (score|shoot|go for goal)",
     "score after(event=event.ball enters(where={p}))"),
    ("<goal> (<only_counts>|only <counts>|count only) (after|once|if|when|following) {e:past}",
     "score after(event={e})"),
    ("<goal> [will] (count|stand|be allow|be give) only (after|once|if|when) {e:past}", "score after(event={e})"),
    ("no (score|goal) (count|stand|be allow|be give) (until|before|unless|without) {e:past}", "score after(event={e})"),
    ("<goal> do not (count|stand) (until|unless|before) {e:past}", "score after(event={e})"),
    ("[{w:you}] <maynot> (score|shoot at goal) (until|before|unless) {e:past}", "score after(event={e})"),
    ("no (score|goal) (until|before|unless|without) {e:past}", "score after(event={e})"),
    ("[{w:you}] <may> only score [a goal] (after|once|if|when) {e:past}", "score after(event={e})"),
    ("[{w:you}] only <may> score [a goal] (after|once|if|when) {e:past}", "score after(event={e})"),
    ("[{w:you}] <must> {a:earlier} (before|to|in order to) [you|they] [may] (score|score a goal|go for goal|go to "
     "goal|shoot|have a shoot|finish|a goal count|goal|go for a goal|attack goal|attack a goal)",
     "score after(event=event.act(who=who.YOU, act={a}))"),
    ("{w:group} <must> {a:earlier} (before|to) [they|it] [may] (score|score a goal|go for goal|go to goal|shoot|"
     "have a shoot|finish|a goal count|goal|go for a goal|attack goal|attack a goal)",
     "score after(event=event.act(who={w}, act={a}))"),
    ("(must|have to|got to|have got to|need to) {a:earlier} (before|to) [you|they|it] [may] (score|score a goal|"
     "go for goal|go to goal|shoot|have a shoot|finish|a goal count|goal|go for a goal|attack goal|attack a goal)",
     "score after(event=event.act(who=who.YOU, act={a}))"),
    ("{a:earlier} (before|then) (you|they|) [<may>] (score|score a goal|go for goal|go to goal|shoot|have a shoot|"
     "finish|a goal count|goal|go for a goal|attack goal|attack a goal)",
     "score after(event=event.act(who=who.YOU, act={a}))"),
    ("[at least|min|minimum] {n:int} pass before (you|they|) [<may>] (score|score a goal|go for goal|go to goal|"
     "shoot|have a shoot|finish|a goal count|goal|go for a goal|attack goal|attack a goal)",
     "score after(event=event.act(who=who.YOU, act=act.passes(k={n})))"),
    ("(before|to) (you|they|) [<may>] score [you|they] <must> {a:earlier}",
     "score after(event=event.act(who=who.YOU, act={a}))"),
    ("[{w:you}] (need|need to have|must have|must make|have to make|need to make|require) [at least] {n:int} pass "
     "(before|to|until) [you|they|we|] [<may>] (score|shoot|a goal|go for goal|have a shoot|finish|go to goal)",
     "score after(event=event.act(who=who.YOU, act=act.passes(k={n})))"),
    ("<ball> (must|have to|need to|have got to|got to) (go|be pass|be play|get|come) (to|into|through|via) "
     "{w:named} (before|to) [you|they|we] [<may>] (score|shoot|go for goal|finish)",
     "score after(event=event.act(who=who.YOU, act=act.pass to(to={w})))"),
    ("[{w:you}] <must> have {a:act} (before|to) [you|they|it] [may] score",
     "score after(event=event.act(who=who.YOU, act={a}))"),
)  # fmt: skip
PAST: Rows = (("{e:event}", "{e}"), ("[after] {a:act}", "event.act(who=who.YOU, act={a})"))
PASSES: Rows = (
    ("{a:role} to {b:role} [pass] (do not|be not) count", "passes do not(passes=ALIKE(a={a}, b={b}))"),
    ("{p:back_to} (do not|be not) count", "passes do not(passes={p})"),
    ("<only> pass {p:which} <counts> [towards {n:int}|to total]", "only passes(passes={p})"),
    ("pass <only_counts> [if|when] [they|it] [be] {p:which}", "only passes(passes={p})"),
    ("pass count only [if|when] [they|it] [be] {p:which}", "only passes(passes={p})"),
    ("pass {p:which} (be|) (only ones|only 1) that count", "only passes(passes={p})"),
    ("pass [only] <counts> only {p:which}", "only passes(passes={p})"),
    ("pass {p:which} (do not|be not) (count|be count|count towards total|add)", "passes do not(passes={p})"),
    ("(do not count|ignore) pass {p:which}", "passes do not(passes={p})"),
    ("pass {p:which} (count for nothing|be nothing|be worth nothing|count nothing)", "passes do not(passes={p})"),
)  # fmt: skip
TABLES = {
    "scoring": (*PASSES, *COUNTS, *AFTER, *SCORE), "for_each": FOR_EACH, "timed": TIMED, "points_said": POINTS_SAID,
     "times": TIMES, "back_to": BACK_TO,
    "all_up": ALL_UP, "all_up_must": ALL_UP_MUST, "past": PAST,
}  # fmt: skip
