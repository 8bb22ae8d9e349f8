"""Everyday words for what somebody does."""

from turnout.practice.saying.who_said import Rows

GET = "(complete|make|string|string together|keep|put together|get|play|link|do|manage|connect|hit|reach|have|rack up|"
GET += "knock|knock about|knock round|go for|build|share|put|string up|find|achieve|get to)"
WIN = "(win|regain|nick|steal|pinch|rob|intercept)"
LOSE = "(lose|give away|give up|cough up|surrender|turn over|concede|hand over|waste|lose control of|get rob of)"
RUN = "(dribble|drive|run|take|bring|walk|run with|dribble with|drive with|travel with|get|go with|move with|drib)"
ACT: Rows = (
    ("(get|have|make) [a] pass (through|between) {p:place} [to [<its>] mate]", "act.pass through(where={p})"),
    ("(get to|reach) {n:int} pass", "act.passes(k={n})"),
    ("pass receive {p:where}", "act.receive in(where={p})"),
    ("(get|have) <ball> under (your|their|his|her) foot (in|on|over|inside) {p:aim}", "act.stop in(where={p})"),
    ("(through|between) {p:place} to [<its>] mate", "act.pass through(where={p})"),
    ("(drive|dribble|run|go|get) (over|into|across) {p:aim} with <ball>", "act.RUN(where={p})"),
    ("{n:int} [of them] in [a] row", "act.passes in a row(k={n})"),
    ("(run|sequence|string|spell|streak) of {n:int} pass", "act.passes in a row(k={n})"),
    ("{w:named} be (find|reach|hit)", "act.pass to(to={w})"),
    ("pass (go|be play|travel) <through> {p:place} [and reach [<its>] mate|to [<its>] mate]",
     "act.pass through(where={p})"),
    ("(cross|get over|go over|step over|run over|go across) {p:aim} with <ball>", "act.RUN(where={p})"),
    ("(dribble|run) <through> {p:place}", "act.run through(where={p})"),
    (f"{GET} [at least|a minimum of|min|min of] {{n:int}} [of them] <row>", "act.passes in a row(k={n})"),
    ("touch <ball>", "act.touches(n=1)"),
    ("(have|take|get) second touch", "act.touches(n=2)"),
    ("pass [<ball>] to [a] mate (in|inside) {p:aim}", "act.pass into(where={p})"),
    ("(get|have) [<its>] shoot (off|away|in)", "act.shoot"),
    ("(get|take|grab) <ball> (back|off them|off you|off him|off other side) [{p:where}]", "act.win(where={p})"),
    ("string {n:int} pass together", "act.passes in a row(k={n})"),
    ("string together {n:int} pass", "act.passes in a row(k={n})"),
    ("keep <ball> for {n:int} pass", "act.passes in a row(k={n})"),
    (f"{GET} [at least|a minimum of|min|min of] {{n:int}} [clean|good|complete|tidy|of them|completed] pass <row> "
     f"[between {{w:who}}]",
     "act.passes in a row(k={n}, among={w})"),
    (f"{GET} [at least|a minimum of|min|min of] {{n:int}} (consecutive|straight|unbroken|successive|"
     f"uninterrupted) [clean|complete] pass [between {{w:who}}]",
     "act.passes in a row(k={n}, among={w})"),
    (f"{GET} [at least|a minimum of|min|min of] {{n:int}} [clean|good|complete|tidy] pass [together|in|between "
     f"(you|them)] [between {{w:who}}]",
     "act.passes(k={n}, among={w})"),
    ("{n:int} [clean|good|complete|consecutive] pass <row>", "act.passes in a row(k={n})"),
    ("{n:int} (consecutive|straight|unbroken|successive) pass", "act.passes in a row(k={n})"),
    ("{n:int} [clean|good|complete] pass [together]", "act.passes(k={n})"),
    ("pass [<ball>] (into|in to|inside) {p:aim} [to a mate]", "act.pass into(where={p})"),
    ("(play|get|knock|slide|hit|find|thread|make) [a|<ball>|pass|ball] (into|in to) {p:aim}",
     "act.pass into(where={p})"),
    ("(find|hit|pick out|reach) [a] mate (in|inside) {p:aim}", "act.pass into(where={p})"),
    ("(pass|play a pass|hit|knock|thread|slide|put|find) [pass|<ball>|a ball] <through> {p:place} "
     "[to (mate|your mate|their mate|his mate|own side|a player|<its> mate)]", "act.pass through(where={p})"),
    ("(pass|play|chip|lift|clip|hit) [pass|<ball>] over {p:place}", "act.pass over(where={p})"),
    ("(pass|play|give|lay|set|bounce|knock) [<ball>|it] [straight] back to (passer|player who pass it|"
     "player who give it|whoever pass it|whoever give it [to you])", "act.pass back"),
    ("(pass|play|give|hit|find|get|use|knock|lay|reach|go|feed|slide|play it out|play out|pass out|link with|"
     "get it|pick out|make pass) [<ball>|a pass|off] [out] (to|into|in to|with|) {w:group}", "act.pass to(to={w})"),
    ("(play|make|do|complete|have|work|) (one-two|1-2|1 2|wall pass|give-and-go|give and go|bounce pass)",
     "act.one-two"),
    ("(get|have|put) (one-two|1 2|wall pass|give-and-go) [in|together]", "act.one-two"),
    ("(receive|get|collect|take|control|have|pick up|be find|take in) [<ball>|a pass|pass|a ball] {p:where}",
     "act.receive in(where={p})"),
    ("receive <ball> {p:where}", "act.receive in(where={p})"),
    ("be (find|play in|pick out) {p:where}", "act.receive in(where={p})"),
    (f"{RUN} [<ball>|ball] <into> {{p:aim}}", "act.RUN(where={p})"),
    (f"{RUN} [<ball>|ball] (through|between) {{p:place}}", "act.run through(where={p})"),
    ("(go|get|come|run) <through> {p:place} with <ball>", "act.run through(where={p})"),
    ("(get|go|run|come) <into> {p:aim} with <ball>", "act.RUN(where={p})"),
    ("(stop|put your foot on|put foot on|trap|park|ground|put down|stand on|kill|place|put|control and stop|plant) "
     "<ball> "
     "[dead|still|under your foot|with [your] sole|dead still|under your sole|under control] "
     "(in|on|over|inside|into|beyond) {p:aim} [with your sole|with sole|under foot|dead]", "act.stop in(where={p})"),
    ("(move|switch|swap|get|work|transfer|take|shift|play|go) <ball> [across] from {p:place} to {q:place}",
     "act.move from to(where={p}, further={q})"),
    ("(switch|swap|get|work|go) [<ball>] from {p:place} to {q:place}", "act.move from to(where={p}, further={q})"),
    ("(keep|retain|hang on to|hold onto|keep hold of|look after) <ball> [for] {t:span}", "act.keep for(s={t})"),
    (f"{WIN} <ball> [back|off (them|him|you)] [and|then] (complete|make|play|find|get|string) [first|1|a|another] pass",
     "act.win and pass"),
    (f"{WIN} <ball> [back] [and|then] (pass [it|ball]|find pass|find a pass|get pass away|find a mate|pass to a "
     f"mate|complete one)",
     "act.win and pass"),
    (f"{WIN} <ball> [back|cleanly|off (them|him|you)] [{{p:where}}]", "act.win(where={p})"),
    ("win back <ball> [{p:in}]", "act.win(where={p})"),
    ("(intercept|regain) [{p:where}]", "act.win(where={p})"),
    (f"{LOSE} <ball> [away|back]", "act.lose"),
    ("(give <ball> away|be dispossess|give <ball> up|turn <ball> over|lose out|have <ball> (take|nick) [off you])",
     "act.lose"),
    ("(score|score a goal|get a goal|find net|put it in net|get one)", "act.score"),
    ("score [a goal] (in|into|at|on) {p:place}", "act.score(where={p})"),
    ("(put|get|finish|knock|slot|pass) <ball> in {p:place_name}", "act.score(where=place.named(place={p}))"),
    ("(concede|let 1 in|let in a goal|be score on|ship a goal|be score against|let a goal in)", "act.concede"),
    ("(shoot|have a shot|have a shoot|have shoot|get a shoot away|get shoot off|get a shoot in|take a shoot|"
     "get a shoot|get <ball> shoot|get a shoot off|get shoot away|finish|hit a shoot|have a go)", "act.shoot"),
    ("(head <ball>|head|use <its> head|play <ball> with head)", "act.head"),
    ("(have|take|use|get) {n:int} touch [of <ball>|on <ball>] [{p:in}]", "act.touches(n={n}, where={p})"),
    ("(have|take|get) [<its>] (first touch|touch)", "act.touches(n=1)"),
    ("get on end of [a] pass {p:where}", "act.receive in(where={p})"),
    ("(enter|step into|set foot in|go in|go into|come in|come into|go inside|be in|run into|move into|drop into|"
     "go in to|get into|step in|step inside|wander into|cross into|follow into|get in|come inside|invade|follow "
      "player into) {p:place}",
     "act.enter(where={p})"),
    ("(leave|come out of|go out of|step out of|move out of|get out of|step outside|go outside|stray from|come off|"
     "wander out of|step off|be out of|come outside) {p:place}", "act.leave(where={p})"),
    ("start", "act.start"),
    ("(tackle|win tackle|make a tackle|put in a tackle)", "act.tackle"),
)  # fmt: skip
DOING: Rows = (
    ("{act}", "{act}"),
    ("(start|restart|kick-off|whistle|go)", "act.start"),
    ("[ball be|be] lose <ball>", "act.lose"),
    ("<ball> be (win|win back|regain)", "act.win"),
    ("(win|winning) [back]", "act.win"),
    ("lose", "act.lose"),
)  # fmt: skip
TABLES = {"act": ACT, "doing": DOING}
