"""Everyday words for limits, standing rules, changes, starts and laws."""

from turnout.practice.saying.who_said import Rows

HAVE = "(have|get|be on|be limit to|only have|only get|be allow|be only allow|play|only allow|limit to|allow|take|"
HAVE += (
    "must play|play with|use|be give|may have|may take|may only have|may only take|may use|may only use|be restrict to|"
)
HAVE += "have got|have only got|be allow only|have only|have just|must not take more than|may not take more than|"
HAVE += "may not have more than|have no more than|get no more than|have at most|have up to|may have up to|be)"
N = "[up to|max|max of|no more than|only|just|at most|a limit of|limit of] {n:int} touch"
END = (
    "[max|only|limit|at most|football|each|at a time|on <ball>|apiece|per player|tops|at the most|game|and no "
    "more|a time|"
)
END += "play|maximum|on ball|before pass|and that be it|and that be all|rule]"
PLAIN = "(only|just|max|maximum|at most|up to)"
UNTIL = "[(until|before) {u:event}]"
TOUCHES: Rows = (
    (f"{N} {END} (once|when|while|whenever) (you|they) be {{p:in}}", "touches(who=who.everyone, n={n}, where={p})"),
    (f"{{w:named}} [must] (pass|play|lay|give) [it|<ball>] [off|back] [in] (with|in|off) {N} {END}",
     "touches(who={w}, n={n})"),
    (f"{N} {END} {{w:on_edge}}", "touches(who={w}, n={n})"),
    (f"{N} {END} {{w:on_edge}} [and] {{m:int}} [touch] {{q:in}}", "touches(who={w}, n={n}) + "
     "touches(who=who.everyone, n={m}, where={q})"),
    ("{w:group} <must> (play|hit|lay) [it|<ball>|it off] first time", "touches(who={w}, n=1)"),
    ("(nobody|no player) [<may>] (get|have|take|use) more than {n:int} touch", "touches(who=who.everyone, n={n})"),
    (f"{N} {END} (for|by) (someone|everyone|all of you|you all)", "touches(who=who.everyone, n={n})"),
    (f"{N} {END} <when> (you|they) be {{w:named}}", "touches(who={w}, n={n})"),
    (f"(play|we play|we be play|it be|this be|all|everyone play|this be all|we be on|you be on|let us play|today "
     f"be) {N} {END}",
     "touches(who=who.everyone, n={n})"),
    (f"{{w:named}} on {N} {END}", "touches(who={w}, n={n})"),
    (f"{N} {END} in (own|your own|your|back|defend|defensive) third [and] {{m:int}} [touch] in (middle|middle "
     f"third|middle 1) [and|] [{{r:free_in}}]",
     "touches(who=who.everyone, n={n}, where=IN(p=place.defending third)) + touches(who=who.everyone, n={m}, "
     "where=IN(p=place.middle third))"),
    (f"{{w:subject}} {HAVE} {N} {END} [{{p:in}}] {END}", "touches(who={w}, n={n}, where={p})"),
    (f"{{w:named}} {N} {END} [{{p:in}}]", "touches(who={w}, n={n}, where={p})"),
    (f"{N} {END} (for|by|from) {{w:group}} [{{p:in}}]", "touches(who={w}, n={n}, where={p})"),
    (f"{N} {END} [{{p:in}}]", "touches(who=who.ALL, n={n}, where={p})"),
    (f"{{p:in}} [it be|you have|you get|be|you be on|you be only allow|you be allow|they have|everyone have|we "
     f"play] {N} {END}",
     "touches(who=who.everyone, n={n}, where={p})"),
    (f"{{p:in}} {{w:named}} {HAVE} {N} {END}", "touches(who={w}, n={n}, where={p})"),
    (f"{{p:place}} be {N} {END}", "touches(who=who.everyone, n={n}, where=IN(p={p}))"),
    (f"everyone be on {N} {END}", "touches(who=who.everyone, n={n})"),
    ("no more than {n:int} touch [for|by] {w:group} [{p:in}]", "touches(who={w}, n={n}, where={p})"),
    (f"{{w:group}} {HAVE} {N} and {{x:group}} [{HAVE}] [up to|max|only|just] {{m:int}} [touch]",
     "touches(who={w}, n={n}) + touches(who={x}, n={m})"),
    (f"{{w:group}} [{HAVE}] {{n:int}} [touch] [and] {{x:group}} [{HAVE}] {{m:int}} touch",
     "touches(who={w}, n={n}) + touches(who={x}, n={m})"),
    (f"{N} {END} {{p:in}} [and] [up to|max|only|just] {{m:int}} [touch] {{q:in}}",
     "touches(who=who.everyone, n={n}, where={p}) + touches(who=who.everyone, n={m}, where={q})"),
    (f"{N} {END} {{p:in}} [and|] {{q:free_in}}", "touches(who=who.everyone, n={n}, where={p})"),
    (f"{N} {END} {{p:in}} [and] {{m:int}} [touch] {{q:in}} [and|] {{r:free_in}}",
     "touches(who=who.everyone, n={n}, where={p}) + touches(who=who.everyone, n={m}, where={q})"),
    (f"{{w:group}} {HAVE} {N} {END} {{p:in}} [and|] {{q:free_in}}", "touches(who={w}, n={n}, where={p})"),
)  # fmt: skip
FREE_IN: Rows = (
    ("free (after that|from there|afterwards|after)", "free"),
    ("(free|free touch|unlimited) in opponent", "free"),
    ("(free|unlimited|as many as (you|they) like|all in|no limit|unlimited touch|free play|as many as you want|"
     "any number|what you like|free touch) (outside|elsewhere|anywhere else|everywhere else|{p:in}|outside it|"
     "in theirs|in others|once you be in {q:place}|once you be out of it)", "free"),
    ("(anywhere else|elsewhere|everywhere else|outside it|outside|{p:in}) [it be|you have] (free|unlimited|"
     "as many as you like|as many as they like|as many as you want|free play)", "free"),
)  # fmt: skip
STAY: Rows = (
    ("(nobody|no player) (be to|may|must) (go|enter|step|stand) [in|into|inside|in to] {p:place}", "stay "
     "out(who=who.everyone, where={p})"),
    ("no (go|come|step) (in|into|inside) {p:place} <when> (you|they) be {w:named}", "stay out(who={w}, where={p})"),
    ("{w:named} [must|have to] (wait|stay put|hold off|stay back|wait outside) until {u:event}", "stay out(who={w}, "
     "where=place.INNER(who={w}), until={u})"),
    ("{w:named} [must|have to] stay (outside|out)", "stay out(who={w}, where=place.INNER(who={w}))"),
    ("{w:named} <maynot> (come in|go in|enter|come inside|step in|go inside|step inside)", "stay out(who={w}, "
     "where=place.INNER(who={w}))"),
    ("(nobody|no player) (stand|wait|be|go) {p:in} {c:cond}", "LONG(form=stay out, who=who.everyone, "
     "where=BARE(p={p}), by={c})"),
    ("{w:group} [must|have to] stay wide {p:in}", "stay in(who={w}, where={p})"),
    ("{w:group} [must|have to|have got to|always|need to|be to|should|] (stay|be lock|keep|remain|be stuck|be fix|"
     "be keep|play|"
     "stick|be restrict|be confine|be limit|be only allow|hold <its> position|be place|live|wait|be to stay) {p:in} "
     "{c:cond}", "LONG(form=stay in, who={w}, where={p}, by={c})"),
    ("{w:group} [must] (stay|be lock|be stuck|stick|be restrict|be confine|be limit) to {p:place} {c:cond}",
     "LONG(form=stay in, who={w}, where=IN(p={p}), by={c})"),
    ("{w:group} <maynot> (leave|come out of|go out of|step out of|move out of|get out of|go outside|step outside|"
     "come off|"
     "leave from) {p:place} {c:cond}", "LONG(form=stay in, who={w}, where=IN(p={p}), by={c})"),
    ("{w:group} (play|stay) only {p:in}", "stay in(who={w}, where={p})"),
    ("{w:group} [must|have to|have got to|always|] (stay|keep|remain|be|be keep|be lock|hold) (out of|off|outside|"
     "away from|out) "
     "{p:place} {c:cond}", "LONG(form=stay out, who={w}, where={p}, by={c})"),
    ("{w:group} <maynot> (enter|go back into|come back into|drop back into|go back in|go in|go into|come in|come "
     "into|step into|set foot in|go inside|be in|come inside|run into|"
     "drop into|go in to|get into|step in|follow into|get in|cross into|go near|move into|invade) {p:place} {c:cond}",
     "LONG(form=stay out, who={w}, where={p}, by={c})"),
    ("{w:group} be (not allow|not let|lock out|ban|bar|keep out|shut out) (in|into|of|from|inside|) {p:place} {c:cond}",
     "LONG(form=stay out, who={w}, where={p}, by={c})"),
    ("{w:group} <maynot> (enter|go in|come in|go inside|come inside|step in) until {u:event}",
     "LONG(form=stay out, who={w}, where=place.INNER(who={w}), by=UNTIL(event={u}))"),
    ("no {w:named} (allow|) (in|inside|into) {p:place} {c:cond}", "LONG(form=stay out, who={w}, where={p}, by={c})"),
    ("(nobody|no one|no player) (<may>|be allow|go|be|) (enter|in|go in|go into|come into|inside|be in|into|in "
     "to) {p:place} {c:cond}",
     "LONG(form=stay out, who=who.everyone, where={p}, by={c})"),
    ("{w:group} (only <may>|<may> only) (enter|go in|go into|come into|come in|be in|go inside) {p:place} (once|"
     "after|when|if) "
     "{u:event}", "LONG(form=stay out, who={w}, where={p}, by=UNTIL(event={u}))"),
    ("{w:group} (only <may>|<may> only) (enter|come in|go|come|go in|start|move|set off|join in) (once|after|when|"
     "if) {u:event}",
     "LONG(form=stay out, who={w}, where=place.INNER(who={w}), by=UNTIL(event={u}))"),
    ("{w:group} <maynot> (go|start|move|set off|join in|run|chase|leave|come) until {u:event}",
     "LONG(form=stay out, who={w}, where=place.INNER(who={w}), by=UNTIL(event={u}))"),
)  # fmt: skip
STAY = (*STAY,
    ("{w:group} <maynot> (cross|go past|go over|go beyond|pass|go across|come over|come past) (halfway|halfway "
     "line|half line)",
     "stay out(who={w}, where=place.attacking half)"),
    ("{w:group} be not allow (past|over|beyond|across) (halfway|halfway line|half line)",
     "stay out(who={w}, where=place.attacking half)"),
    ("<while> {s:state} {w:group} [must|have to] (stay|keep) {p:in}", "stay in(who={w}, where={p}, while_={s})"),
    ("<while> {s:state} {w:group} [must|have to] (stay|keep) (out of|out|off|away from) {p:place}",
     "stay out(who={w}, where={p}, while_={s})"),
)  # fmt: skip
COND: Rows = (
    ("", "NOCOND"),
    ("before ball (get there|be there|arrive|come|do|get in)", "UNTIL(event=event.ball enters(where=place.it))"),
    ("(until|before|till after) {u:event}", "UNTIL(event={u})"),
    ("(before|until) ball (do|be|get there|go in|arrive|be in)", "UNTIL(event=event.ball enters(where=place.it))"),
    ("<while> {s:state}", "WHILE(state={s})"),
)  # fmt: skip
COUNT: Rows = (
    ("no side <may> have more than {n:int} [player] {p:in}", "at most(n={n}, each=each.side, where={p})"),
    ("(at no time|never) <may> (more than {n:int}|more than {n:int} player) {e:each} be {p:in}",
     "at most(n={n}, each={e}, where={p})"),
    ("{n:int} [{s:side_name}] {r:role} {p:in} (at once|at a time|at any time|at any 1 time|at the same time)",
     "at most(n={n}, side={s}, role={r}, where={p})"),
    ("{n:int} {s:side_name} {p:in} (at once|at a time|at any time|at any 1 time|at the same time)",
     "at most(n={n}, side={s}, where={p})"),
    ("(only|no more than|at most|up to|max|max of|just|never more than|not more than) {n:int} [{s:side_name}] "
     "{r:role} [player] {e:each} "
     "[<may>|be|be allow|go|be ever|to|] [be|go|come|allow|in there] {p:in} [at once|at a time|at any time|at any "
      "one time|"
     "at the same time|together|at 1 time]", "at most(n={n}, side={s}, role={r}, each={e}, where={p})"),
    ("(only|no more than|at most|up to|max|max of|just|never more than|not more than) {n:int} {s:side_name} [player] "
     "[<may>|be|be allow|go|to|] [be|go|come|allow] {p:in} [at once|at a time|at any time|at the same time|together|"
      "at 1 time]",
     "at most(n={n}, side={s}, where={p})"),
    ("(only|no more than|at most|up to|max|max of|just|never more than|not more than) {n:int} [player] {e:each} "
     "[<may>|be|be allow|go|to|] "
     "[be|go|come|allow|enter] {p:in} [at once|at a time|at any time|at the same time|together|at 1 time]",
     "at most(n={n}, each={e}, where={p})"),
    ("(max|max of|at most|only|no more than) {n:int} {p:in} {e:each} [at a time|at once]",
     "at most(n={n}, each={e}, where={p})"),
    ("(at least|min|min of|always|a minimum of|always at least) {n:int} [player] {e:each} [must|have to|always|need "
     "to] [always] (stay|remain|"
     "be|keep|be leave|stay back) {p:in}", "at least(n={n}, each={e}, where={p})"),
    ("(at least|min|min of|always|always at least) {n:int} [{s:side_name}] {r:role} [player] [must|have to|"
     "always] (stay|remain|be|keep) {p:in}",
     "at least(n={n}, side={s}, role={r}, where={p})"),
    ("(there must [always] be|there have to be|there have always to be|we need|must have|have always) [at least] "
     "{n:int} [player] {e:each} [back] {p:in}",
     "at least(n={n}, each={e|each.side}, where={p})"),
    ("at least {n:int} (of you|of them|player) [must|have to|have got to|need to] [always] (stay|be|remain|keep) "
     "{p:in}",
     "at least(n={n}, each=each.side, where={p})"),
    ("(keep|leave) at least {n:int} back {p:in}", "at least(n={n}, each=each.side, where={p})"),
    ("(always|) (keep|leave) [at least] {n:int} [player|back] {e:each} {p:in}", "at least(n={n}, each={e}, where={p})"),
    ("(always|at least) [keep|leave] {n:int} [player] (stay|stay back|back|leave back) behind halfway [<while>|"
     "when] [attack] [but somebody]",
     "at least(n={n}, each=each.side, where=IN(p=place.defending half))"),
)  # fmt: skip
EACH: Rows = (
    ("(of|from|per|for|in) (each|every|either) side", "each.side"), ("(a|per|each) side", "each.side"), ("", "NOEACH"),
    ("(from|of|on) (both|the 2|same|1|any 1|either) side", "each.side"),
)  # fmt: skip
TACKLE: Rows = (
    ("no tackle (someone|player) {p:in}", "NOTACKLE(where={p})"),
    ("(nobody|no player) (close|press|pressure) {w:named} [down]", "NOTACKLE(whom={w})"),
    ("{p:place} be [a] no tackle [zone|area]", "NOTACKLE(where=IN(p={p}))"),
    ("no tackle zone {p:in}", "NOTACKLE(where={p})"),
    ("(nobody|no player) [<may>|must|be to] tackle {w:group} [{p:in}] {c:until}",
     "NOTACKLE(whom={w}, where={p}, by={c})"),
    ("(nobody|no player) [<may>|must] tackle [you|them|anyone|a player|player] {p:in} {c:until}",
     "NOTACKLE(where={p}, by={c})"),
    ("(you|they|{x:anybody}) <maynot> tackle [anyone|] {p:in} {c:until}", "NOTACKLE(where={p}, by={c})"),
    ("(you|they|{x:anybody}) <maynot> tackle {w:named} [{p:in}] {c:until}", "NOTACKLE(whom={w}, where={p}, by={c})"),
    ("{w:named} <maynot> be (tackle|dispossess|press) [{p:in}] {c:until}", "NOTACKLE(whom={w}, where={p}, by={c})"),
    ("<maynot> be tackle {p:in} {c:until}", "NOTACKLE(where={p}, by={c})"),
    ("(you|they) <maynot> be tackle {p:in} {c:until}", "NOTACKLE(where={p}, by={c})"),
    ("no tackle [on|of|] {w:named} [{p:in}] {c:until}", "NOTACKLE(whom={w}, where={p}, by={c})"),
    ("no tackle {p:in} {c:until}", "NOTACKLE(where={p}, by={c})"),
    ("no tackle {c:until}", "NOTACKLE(by={c})"),
    ("(nobody|no player) [<may>] tackle player {p:in}", "NOTACKLE(where={p})"),
    ("{x:presser} <maynot> (press|pressure|close down|pounce|close <ball> down) until {u:event}",
     "NOTACKLE(by=UNTIL(event={u}))"),
    ("no (press|pressing|pressure) until {u:event}", "NOTACKLE(by=UNTIL(event={u}))"),
    ("no (press|pressing|pressure) {p:in}", "NOTACKLE(where={p})"),
    ("(nobody|no player) <may> tackle {w:named} while (he|she|they) be {p:in}", "NOTACKLE(whom={w}, where={p})"),
    ("(you|they|player) be (safe|untouchable) {p:in} {c:until}", "NOTACKLE(where={p}, by={c})"),
    ("{w:named} be (safe|free|untouchable|protect) [from tackle|from be tackle] [{p:in}] {c:until}",
     "NOTACKLE(whom={w}, where={p}, by={c})"),
    ("leave {w:named} alone {p:in} {c:until}", "NOTACKLE(whom={w}, where={p}, by={c})"),
)  # fmt: skip
ANYBODY: Rows = (("(defend side|defender|anyone|side without <ball>|other side|opponent)", "who.everyone"),)
UNTILS: Rows = (("", "NOCOND"), ("(until|before) {u:event}", "UNTIL(event={u})"))
MUST: Rows = (
    ("{w:subject} have [only] {t:span} (from|after) {b:doing} to {a:act}", "must(who={w}, act={a}, s={t}, after={b})"),
    ("{w:subject} have [only] {t:span} to {a:act} (once|when|after) (you|they) [have] {b:act}", "must(who={w}, "
     "act={a}, s={t}, after={b})"),
    ("(<when>|have|have just|from moment) [it be|you|they|{x:you}] {b:doing} {w:subject} <must> {a:act} (within|"
     "in|inside) {t:span}",
     "must(who={w}, act={a}, s={t}, after={b})"),
    ("(<when>|have|from moment) [it be|you|they] {b:doing} [there be|you have|they have|it be] [only] {t:span} to "
     "{a:act}",
     "must(who=who.YOU, act={a}, s={t}, after={b})"),
    ("(<when>|have|from moment) [it be|you|they] {b:doing} {w:group} have [only] {t:span} to {a:act}",
     "must(who={w}, act={a}, s={t}, after={b})"),
    ("{b:act} and (you|they) have {t:span} to {a:act}", "must(who=who.YOU, act={a}, s={t}, after={b})"),
    ("{w:subject} <must> {a:act} (within|in|inside|in under) {t:span}", "must(who={w}, act={a}, s={t})"),
    ("{w:subject} <must> {a:act} (within|in|inside|in under) {t:span} (of|after|from) {b:doing}",
     "must(who={w}, act={a}, s={t}, after={b})"),
    ("{w:subject} (have|have got|get|be give|have only|only have|have only got|have just) {t:span} [in which] to "
     "{a:act} ",
     "must(who={w}, act={a}, s={t})"),
    ("{w:subject} (have|have got|get|be give|have only|only have|have only got) {t:span} to {a:act} (of|after|"
     "from|once|when) [you|they] {b:doing}",
     "must(who={w}, act={a}, s={t}, after={b})"),
    ("[only|just] {t:span} [for {w:named}] to {a:act}", "must(who={w|who.YOU}, act={a}, s={t})"),
    ("[only|just] {t:span} to {a:act} (after|from|once|when) [you|they] {b:doing}",
     "must(who=who.YOU, act={a}, s={t}, after={b})"),
    ("<when> [you|they] {b:act} [you|they] (have [got]|<must>) {t:span} to {a:act}",
     "must(who=who.YOU, act={a}, s={t}, after={b})"),
    ("<when> [you|they] {b:act} [you|they] <must> {a:act} (within|in|inside) {t:span}",
     "must(who=who.YOU, act={a}, s={t}, after={b})"),
    ("<when> {w:named} {b:act} they (have [got]) {t:span} to {a:act}", "must(who={w}, act={a}, s={t}, after={b})"),
    ("<when> {w:named} {b:act} they <must> {a:act} (within|in|inside) {t:span}",
     "must(who={w}, act={a}, s={t}, after={b})"),
)  # fmt: skip
MOVE: Rows = (
    ("{w:group} <may> (move|slide|shuffle|go) (along|up and down|side to side on|side to side along) (their|its|"
     "own) (line|edge|side)",
     "move along(who={w}, where=place.EDGE)"),
    ("{w:group} [<may>|must] [only] (move|run|go|slide|work|patrol|travel|shuffle) only (along|up and down|on|"
     "side to side on|across) {p:line}",
     "move along(who={w}, where={p})"),
    ("{w:group} <may> only (move|run|go|slide|work|patrol|travel|shuffle) (along|up and down|on|side to side on|"
     "across) {p:line}",
     "move along(who={w}, where={p})"),
    ("{w:group} only (move|run|go|slide|work|patrol|travel|shuffle) (along|up and down|on|side to side on|across) "
     "{p:line}",
     "move along(who={w}, where={p})"),
    ("{w:group} (stand|stay|must stand|must stay|keep|have to stand|have to stay) (still|put|where they be|on "
     "their spot|rooted)",
     "stand still(who={w})"),
    ("{w:group} (<maynot>|do not) move [about|around|from their spot]", "stand still(who={w})"),
    ("{w:group} be (fix|static|root to spot|stationary)", "stand still(who={w})"),
)  # fmt: skip
LINE: Rows = (
    ("{p:place}", "{p}"), ("(edge|outside|side|line) of {p:place_name}", "place.edge(place={p})"),
    ("[their|its|own] (line|edge|side)", "place.EDGE"),
)  # fmt: skip
MAYNOT: Rows = (
    ("nobody (but|except|other than|apart from) {w:named} {a:act}", "only may(who={w}, act={a})"),
    ("{p:place} be (only for {w:named}|just for {w:named}|for {w:named} only)", "only may(who={w}, "
     "act=act.enter(where=BARE(p={p})))"),
    ("(nobody|no player) [else] [allow|be allow|be|may go|may be|go] {p:in} (except|but|apart from|other than) "
     "{w:named}", "only may(who={w}, act=act.enter(where=BARE(p={p})))"),
    ("{w:group} <maynot> {a:act} {c:until}", "LONG(form=may not, who={w}, act={a}, by={c})"),
    ("(nobody|no player) <may> {a:act} {c:until}", "LONG(form=may not, who=who.everyone, act={a}, by={c})"),
    ("no (score|shoot|goal) (from|by|for) {w:named} {c:until}", "LONG(form=may not, who={w}, act=act.score, by={c})"),
    ("no goal (from|by|for) {w:named}", "may not(who={w}, act=act.score)"),
    ("no shoot {c:until}", "LONG(form=may not, who=who.everyone, act=act.shoot, by={c})"),
    ("no pass {p:which}", "no passes(passes={p})"),
    ("no {w:named} to {x:named} [pass]", "no passes(passes=passes.from to(who={w}, to={x}))"),
    ("(you|they) <maynot> pass {p:which}", "no passes(passes={p})"),
    ("{w:named} <maynot> (pass|play) [<ball>|it] to (each other|another {x:named}|1 another|one another)",
     "no passes(passes=passes.between(who={w}))"),
    ("{w:group} <maynot> pass (along|) (own side|same side) to each other",
     "no passes(passes=passes.between(who={w}))"),
    ("{w:named} to {x:named} (pass|) (be not allow|not allow|be out)",
     "no passes(passes=passes.from to(who={w}, to={x}))"),
    ("pass {p:which} (be not allow|be ban|be forbid|not allow)", "no passes(passes={p})"),
    ("(only|just) {w:group} <may> {a:act}", "only may(who={w}, act={a})"),
    ("(only|just) {w:group} (be allow to|get to|can) {a:act}", "only may(who={w}, act={a})"),
    ("only {w:named} (be allow|allow|may be|may go|be let) (in|inside|into) {p:place}",
     "only may(who={w}, act=act.enter(where={p}))"),
    ("{w:named} be (only 1|only player|only ones) (who|that|) (<may>|allow to|can|to) {a:act}",
     "only may(who={w}, act={a})"),
    ("nobody (but|except|other than|apart from) {w:named} <may> {a:act}", "only may(who={w}, act={a})"),
    ("{a:act} be [for] {w:named} only", "only may(who={w}, act={a})"),
)  # fmt: skip
TABLES = {
    "limit": (*TOUCHES, *STAY, *COUNT, *TACKLE, *MUST, *MOVE, *MAYNOT), "free_in": FREE_IN, "cond": COND, "each": EACH,
    "anybody": ANYBODY, "presser": (("(you|they|defender|side without <ball>|other side|opponent)", "who.everyone"), (
     "{w:named}", "{w}")), "until": UNTILS, "line": LINE,
}  # fmt: skip
