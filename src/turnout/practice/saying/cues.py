"""What in a sentence speaks for which form: cues in the notation of the phrasings, each with its weight."""

Cues = tuple[tuple[str, float], ...]

CUES: dict[str, Cues] = {
    "when": (
        ("(when|whenever|every time|each time|any time|as soon as|soon as|moment|once|if|should)", 2.0),
        ("(when|if|once|whenever|as soon as|every time) {e:event}", 1.5),
        ("(win|lose|score|regain|concede|intercept|turnover|give away)", 0.8),
        ("(swap|change|replace|join|come in|go in|come out|go out|go off|come on|jump in|drop out|become|follow)", 1.4),
        ("(new ball|another ball|restart|their ball|your ball|other side start|counter)", 1.2),
        ("(whoever|loser|winner|scorer|passer|receiver)", 1.6), ("(stay on|come off|make way|swap over|go to back)",
         2.0),
        ("(go|step|jump|come) in (the middle|middle|for)", 1.2), ("{t:mins}", -1.5), ("{n:int} touch", -2.0),
        ("next group", 1.0), ("<ball> (out|go out|go off)", 0.8), ("follow (your|their|his|its) pass", 3.0),
        ("keep <ball>", 0.4), ("(straight away|immediately|instantly)", 0.4),
    ),
    "score": (
        ("{n:int} point", 2.6), ("(point|worth|bonus)", 1.8), ("(score|goal)", 0.9), ("{n:int} pass", 1.2),
        ("(for|by|if you|when you|every time you) {a:act}", 1.2), ("(dribble|stop it|run it|through gate|end zone|"
         "over line)", 1.0),
        ("in a row", 0.8), ("(gate|target|line)", 0.5), ("to score", 1.2), ("{n:int} touch", -1.5),
        ("(within|in) {t:span} of", 0.7), ("(receive|win it back|keep it for)", 0.5), ("until", -1.0), ("not", -0.5),
    ),
    "score counts": (
        ("(double|worth double|count double|twice|triple|treble)", 2.2), ("(first time|1 touch|header|volley) [goal|"
         "finish|score]", 1.6),
        ("(goal|finish|score) (be worth|count|count as|be) {n:int}", 2.5), ("{n:int} if", 0.8), ("(goal|finish) from",
         1.2),
        ("(outside|inside) box", 0.5), ("assist", 0.8), ("(header|head)", 1.0), ("worth", 0.8),
        ("goal (within|in|inside) {t:span}", 1.0),
    ),
    "score after": (
        ("before (you|they|we|a|any|)  [may] (score|shoot|shot|goal|go to goal|attempt)", 3.0),
        ("(goal|score) [do not|not|only] count (unless|until|after|if|once)", 2.5),
        ("(may not|must not|not) score (until|unless|before|till)", 3.0), ("no (goal|score) (until|unless|before)",
         3.0),
        ("only (score|shoot) (after|once|when|if)", 2.5), ("(need|must|have to|got to) {a:act} (before|to score|"
         "first)", 2.0),
        ("{n:int} pass before", 2.5), ("only count", 0.7), ("first", 0.4), ("before", 0.6),
        ("(have to|must|need to|got to)", 0.5), ("(score|goal|shoot)", 0.5), ("{n:int} pass", 0.4),
    ),
    "score how": (
        ("(only|must|have to|all) [goal] (score|count|finish|be)", 1.0), ("(goal|score|finish) only count (from|"
         "with|if|when)", 2.0),
        ("only (goal|finish|score) from", 2.5), ("(first time|1 touch|header|head) [goal|finish]", 1.5),
        ("(goal|score) must (be|come) (from|off|with|first)", 2.5), ("(must|only|have to) (score|finish) (from|with|"
         "first|inside|outside|in)", 2.2),
        ("only count", 1.0), ("from (a pass|a cross|outside|inside)", 1.0), ("no (goal|shot) from", 1.5), ("assist",
         0.8), ("(goal|finish)", 0.5),
        ("(1 touch|first time) finish only", 2.0),
    ),
    "score when": (
        ("<everyone>", 1.0), ("(over|past|across) [the] halfway", 1.8), ("(goal|score) [only] count (when|if|while|"
         "unless)", 1.4),
        ("everyone [must|have to|have got to|need to|be] [be] (in|over|past|up|across)", 2.5), ("whole side", 1.0), (
         "all (up|in|over)", 1.2),
        ("(goal|score)", 0.4),
    ),
    "only passes": (
        ("only pass", 2.5), ("pass only count", 3.0), ("pass (that|which|to|into|through|between) [{w:who}] count",
         1.5), ("count", 0.8),
        ("pass", 0.5), ("only", 0.6), ("only count", 0.8), ("do not count unless", 0.7),
    ),
    "passes count": (
        ("pass {p:which} [be worth|count] [as|for] {n:int}", 3.0), ("pass (count|be worth)", 1.5), ("(double|twice|"
         "two)", 0.5), ("count", 0.5),
        ("pass", 0.6), ("count (as|for) {n:int}", 0.8), ("(worth|count double)", 0.8),
    ),
    "passes do not": (
        ("pass {p:which} (do not|be not) count", 3.0), ("not count", 1.6), ("pass", 0.5), ("count", 0.4), ("back to",
         0.6),
        ("(count for nothing|be nothing)", 1.0),
    ),
    "touches": (
        ("touch", 1.8), ("{n:int} touch", 2.6), ("(max|maximum|only|limit|no more than)", 0.5), ("(1 touch|2 touch|"
         "3 touch) only", 1.0),
        ("unlimited", 1.0), ("as many as you like", 1.0), ("as many touch", 1.0), ("first touch", -2.5), ("until",
         -1.2), ("(goal|finish)", -0.5),
    ),
    "stay in": (
        ("(stay|keep|remain|lock|stick|stuck|restrict|confine)", 1.8), ("stay (in|inside|on|within)", 1.0), ("(zone|"
         "half|channel|box|third|square)", 0.5),
        ("(leave|come out of|go out of|step out)", 1.0), ("may not leave", 2.5), ("(may not|not|do not) (leave|come "
         "out|come off|cross|step out)", 1.5),
        ("(must not|may not) cross", 1.0), ("own (half|zone|box|end|third)", 0.8), ("out of", -0.8), ("hold <its> "
         "(line|position)", 0.6),
        ("stay on", -0.8), ("(stay|be) put", 0.8),
    ),
    "stay out": (
        ("(stay|keep) (out|off|away)", 3.0), ("(may not|not|must not|nobody|no) [be allow to] (enter|go in|go into|"
         "come in|come into|step in|in|inside|be in|follow)", 2.5),
        ("until", 1.2), ("(safe|protect|shelter)", 0.8), ("(zone|box|square|area)", 0.4), ("(lock out|ban|bar|no go|"
         "off limits)", 2.0),
        ("may not (go|start|come|move|join)", 1.5), ("(only|may only) (enter|go in|come in) (once|when|after)", 2.0), (
         "no defender", 1.5), ("nobody", 0.3),
        ("not", 0.4), ("(out of bounds|keep out|nobody in)", 2.0),
    ),
    "at most": (
        ("(no more than|at most|only|max|maximum of|up to) {n:int} [{w:named}|player|of] [may|allow|in|from|of|be]",
         1.8), ("no more than {n:int}", 1.0),
        ("(at a time|at once|at any time|at the same time)", 1.8), ("(allow|may) [be] in", 0.7), ("only 1", 0.9), (
         "{n:int} touch", -3.0),
        ("(player|defender) (may|allow|can) (in|be in|go in|enter)", 1.2), ("from each side", 0.8), ("1 of (you|"
         "them|theirs|us)", 1.0),
    ),
    "at least": (
        ("at least", 2.0), ("(always|must) (leave|keep) {n:int}", 2.5), ("(stay back|stay behind|stay home|back at "
         "all time|stay at home)", 1.5), ("always {n:int}", 1.5),
        ("never less than", 2.0), ("(never|do not) leave", 0.6), ("always", 0.5), ("behind halfway", 1.0), ("(at "
         "least|minimum) {n:int} pass", -2.0),
    ),
    "no tackle": (
        ("(tackle|dispossess)", 2.8), ("no tackle", 1.5), ("(safe|free)", 0.5), ("(may not|not|nobody|no) [be] "
         "(tackle|press|challenge|take ball off)", 1.5),
        ("(leave alone|untouchable|unopposed|no pressure|passive)", 1.5), ("(shadow|jockey)", 1.0), ("take it off",
         1.0), ("win (it|ball) off", 0.6),
    ),
    "must": (
        ("{t:span} to {a:act}", 3.0), ("(must|have to|got to|need to) {a:act} (in|within|inside)", 2.5), ("(within|"
         "inside|in|under) {t:span}", 1.5), ("{t:span}", 1.4),
        ("(must|have to|got to|have got)", 0.7), ("(shoot|finish|get shot)", 0.8), ("second", 0.6), ("every {t:span}",
         -1.5), ("(or|else|otherwise) (you|it|they) lose", 0.8),
        ("(bonus|point|worth)", -0.8), ("(turn|round|go) last", -1.0),
    ),
    "move along": (
        ("(along|up and down|side to side|sideways)", 2.0), ("(move|slide|shuffle|run|patrol) (along|up and down|on)",
         1.2), ("(edge|line)", 0.5), ("only move", 0.8), ("move", 0.6),
    ),
    "stand still": (
        ("(still|static|rooted|glue|frozen|freeze)", 2.0), ("(may not|do not|not) move", 2.2), ("(stay|stand) "
         "(where|put|on their spot|on your spot|on spot)", 2.2), ("(fix|plant)", 0.8), ("statue", 2.0),
    ),
    "may not": (
        ("(may not|must not|not allow|never|be not to|will not|do not)", 1.8), ("(may not|not) (score|shoot|dribble|"
         "head|pass|run|tackle|win)", 2.0),
        ("no (score|shoot|dribble|goal) (from|by|for|until)", 1.8), ("(nobody|no 1|no one)", 0.8), ("(ban|forbid)",
         0.8), ("neutral", 0.3),
        ("(enter|go in|leave|come in|into|touch first)", -1.0), ("count", -0.8), ("tackle", -1.0),
    ),
    "no passes": (
        ("no (pass|passing|back pass|square pass)", 3.0), ("(may not|not|never) [allow to] (pass|play [it|ball]) "
         "(to|back|between|across|along|into)", 2.5),
        ("to each other", 2.0), ("(from|to) another", 1.0), ("(may not|not)", 0.4), ("pass", 0.5),
    ),
    "only may": (
        ("only {w:named} [may] [be allow to|get to] (score|shoot|pass|tackle|dribble|enter|win|start|go)", 3.0), (
         "only {w:named}", 1.6), ("nobody (but|except|other than)", 2.5), ("(nobody|no player) else", 1.5),
        ("be only (1|player|ones)", 2.0), ("only", 0.6), ("just {w:named}", 0.6),
    ),
    "plays for": (
        ("(play|be|work|go) (with|for) (side|whoever|those|attack|ball|the one)", 3.0), ("(with|for) (whoever|side) "
         "[that|who] [have|be|'s|in|with]", 2.0), ("(neutral|floater|joker|spare player|magic player)", 1.2),
        ("(whoever have|side with|side in|whoever be in) <ball>", 1.2), ("(behind|lose|losing|trail|down)", 1.2), (
         "(extra player|extra man|overload|joker|floater|spare)", 1.5),
        ("(always attack|always on|help whoever|help side)", 1.5), ("on side (with|in|of)", 1.0), ("both side", 0.5),
    ),
    "may come in": (
        ("(may|can|allow|free|get to) [to] (come|step|join|drop|go|move|enter|jump|tuck)", 2.2), ("(come|step|join|"
         "drop|tuck) in", 1.0), ("(while|when|as long as)", 0.5),
        ("(full-back|winger|wide|edge|outside|helper|keeper|midfielder)", 0.5), ("to (help|support|make it|defend|"
         "join)", 1.2), ("(press|cross over|overlap|join attack)", 0.6), ("not", -1.0), ("{n:int} v {m:int}", 0.8),
    ),
    "attacks": (
        ("(attack|defend|go for|shoot at|look after|protect|play towards)", 1.5), ("(attack|defend|look after) "
         "{p:place}", 1.5), ("attack {n:int} [goal]", 1.5), ("(goal|end) each", 1.2),
        ("(score in either|either goal|both goal|score at either)", 1.5), ("{n:int} [little|mini|small] goal", 1.2), (
         "(direction|way|which end|that way)", 1.2), ("(up|down) the (pitch|field)", 0.5),
    ),
    "every minutes": (
        ("(every|each|after) {t:mins}", 4.0), ("{t:mins}", 2.2), ("(swap|change|rotate|new)", 1.0), ("(every|each)",
         0.5), ("(turn|round|game|last) ", -0.4), ("without", -1.0),
    ),
    "every seconds": (
        ("(every|each|after) {t:secs}", 3.5), ("(swap|change|rotate|new)", 0.6), ("{t:secs}", 0.3), ("every", 0.4),
    ),
    "play starts": (
        ("(start|begin|kick off|kick-off)", 2.4), ("(start|begin) (with|from|by|at|on)", 1.6), ("(first ball|ball "
         "first|have ball first)", 1.5), ("(restart|each turn)", 0.5), ("(server|keeper|coach)", 0.4), ("from back",
         0.8),
        ("(goal kick|build from|play out)", 1.0),
    ),
    "first pass": (
        ("(server|keeper|coach|defender|i) (play|pass|serve|feed|roll|throw) [it|ball] (in|to|into|across|out)", 2.6),
         ("(start|begin) with [a] (pass|ball|serve)", 3.0), ("(serve|feed|serves|roll it)", 1.6),
        ("(play|pass) (it|ball|one) (in|to|into|across)", 1.4), ("(start|begin|live|off)", 0.8), ("(server|coach)",
         0.6), ("to start", 1.2),
    ),
    "turn minutes": (
        ("{t:mins} (turn|game|round|go|match|each|per|a)", 3.0), ("(last|for) {t:mins}", 2.5), ("(turn|game|round|"
         "go|match) (be|last) {t:mins}", 2.0), ("{t:mins}", 1.6), ("(turn|round|game)", 0.5), ("(every|swap|change)",
         -0.8),
    ),
    "turn seconds": (
        ("{t:secs} (turn|round|go|each|per|on|a)", 2.5), ("(last|for) {t:secs}", 2.0), ("{t:secs}", 0.6), ("(turn|"
         "round|go)", 0.8), ("(have|got|get) {t:secs}", 0.8), ("work for", 1.0),
    ),
    "turn points": (
        ("first [side] to {n:int}", 4.0), ("(play|game|up) to {n:int}", 3.0), ("{n:int} (goal|point) (win|ends|wins)",
         2.0), ("win", 0.5), ("game over", 1.0), ("first to", 2.0), ("(best of|race to)", 2.0),
    ),
    "ball back": (
        ("(kick-in|kick in|throw-in|throw in|dribble-in|dribble in|pass in|kick-ins|throw-ins|pass-in|roll in)", 3.2),
         ("<ball> (go|be) (out|off|out of play)", 1.8), ("(out of play|off pitch|over side|touchline|sideline)", 1.2),
        ("(throw|kick|dribble|pass) it [back] in", 2.0), ("(throw|corner)", 0.8), ("(come back in|back in|brought "
         "back)", 1.0), ("out", 0.3), ("new ball", -0.5),
    ),
    "free pass": (
        ("first pass", 3.0), ("(free|unopposed|uncontested)", 1.0), ("opening pass", 3.0), ("(may not|not|nobody) "
         "(press|pounce|close)", 0.8), ("first (ball|1)", 0.6),
    ),
    "everyone set": (
        ("(everyone|everybody|all|both side|you) [be|are|'s] (set|ready|in place|in position|back|in shape)", 3.0), (
         "(wait|do not start|not restart|not go) [until|till|for]", 1.5), ("restart", 1.0), ("(set|ready|in "
         "position)", 1.0),
    ),
    "no repeat": (
        ("same {g:place_name}", 2.5), ("same (gate|goal|one|1|place|zone)", 2.5), ("(twice|2 time) [in a row|"
         "running]", 2.0), ("(different|another|new|fresh) (gate|goal|one|1|zone)", 2.2), ("(straight back|repeat|"
         "same)", 1.0), ("(twice|in row|running)", 0.5),
    ),
    "offside": (("offside", 6.0),),
    "no heading": (("(no head|no header|head [the] ball|header)", 2.4), ("(head|header)", 1.6), ("(may not|not|no|"
     "nobody) [use|allow to] (head|header)", 1.5), ("(worth|count|goal|point)", -1.2)),
    "on the ground": (
        ("(on|along) (ground|floor|deck|carpet|grass|the ground|the floor)", 3.5), ("(knee|head|waist|shin) (height|"
         "high)", 3.0), ("(in air|aerial|loft|high ball|lift|chip|off floor|off ground)", 1.6), ("(keep it down|"
         "stay down|keep it low)", 1.5),
    ),
}  # fmt: skip
PRIOR = {"when": 0.5, "score": 0.3, "stay in": 0.1, "stay out": 0.1}
