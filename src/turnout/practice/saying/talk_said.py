"""What coaches add to a rule that says nothing more: talk, the usual price of a breach, what scores nothing anyway."""

from turnout.practice.saying.who_said import Rows

SO = "[so|and|because|cos|but|then|as|that means|meaning|so that]"
NOT = "(do not|no need to|must not|stop|try not to|there be no|no|not be|let not)"
IDLE = (
    "(chase|moan|argue|complain|worry|hang about|stand about|stand around|ball watch|switch off|hide|panic|rush|"
     "cheat|sulk|ask|"
    "look at me|fall asleep|boot it|lump it|hoof it|dawdle|bunch up|crowd|hang around|be greedy|be lazy|be shy|be "
     "afraid|whinge|"
    "wait about|wait around|mess about|forget|slack|walk|stand there|wait for me|come cry|give up|blame anyone|kick "
     "it anywhere)"
)  # fmt: skip
GOOD = (
    "(think|move|look|scan|be quick|be sharp|be ready|be brave|be patient|work hard|work|hurry|support|communicate|"
     "talk|react|"
    "get your head up|play quick|play quickly|concentrate|choose well|pick your moment|be clever|be alert|keep move|"
     "get stuck in|"
    "stay alert|stay switch on|find a way|find space|use it|use them|look for it|look for them|make it count|be "
     "careful|look up|"
    "move it quick|move it quickly|move it|keep it move|spread out|get moving|be smart|be positive|go for it|get on "
     "with it|"
    "look early|think ahead|be quick about it|sprint|show for it|get open|make an angle|keep head up|be awake|make "
     "it quick)"
)  # fmt: skip
TALK: Rows = (
    ("(and|then) go again (straight after|from there|after that)", "free"),
    ("from (there|where it go out|where it go off)", "free"),
    ("same as (saturday|a match|in match|sunday|always)", "free"),
    ("[so|and] [you|they] [must|have to|need to|get to] (be ready|look|think|have a look|know|scan|look up|decide) "
     "before (it|<ball>|pass) (come|arrive|get to you|get there)", "free"),
    ("(lose it|lose <ball>) and [you|they] (start|start again|go|be|go back) [again] (from|to|at) (zero|nowt|"
     "nothing|scratch|nought|beginning|0)", "free"),
    ("(count|call) them [out] [loud|out loud|out]", "free"),
    ("(leave|let) them alone", "free"),
    ("everyone get [a] (go|turn)", "free"),
    ("(then|and then|and) (you|they|we|) (start|start again|carry on|go again|go|back|begin again|keep go|count|"
     "count again) [again|count] (from|at|to) (zero|nowt|nothing|scratch|nought|beginning|0)",
     "free"),
    ("(then|and then|and) [you|they|we|play] (carry on|go again|keep go|keep play|play on|keep going)", "free"),
    (f"{SO} [you|they|we] {NOT} [go|start|be|just|have to|need to] {IDLE} [it|about it|about|around|them|that|"
     f"after it|for it]",
     "free"),
    (f"(so|and so|and|meaning|that mean) [you|they|we] (must|have to|need to|got to|have got to|will have to|"
     f"better|had better|will need to) {GOOD}",
     "free"),
    (f"(so|and) {GOOD}", "free"),
    ("[and|so|but] i do not (want to|want) (hear|see) [any] (moan|argue|complain|that it be not your turn|about "
     "it|whinge|excuse)",
     "free"),
    ("[so|and] [you] (pick|choose) (either|whichever you like|your moment|whichever you want|wisely)", "free"),
    ("[and|so] (off you go|good luck|that be it|that be all|that be rule|that be how it work|that be game|that be "
     "fair|that be fine|up to you|"
     "your choice|you choose|you decide|no exception|no excuse|no argument|no mess|no moan|simple|easy|fair|away "
      "you go|play on from there)", "free"),
    ("(like|as|just like|same as) in [a] (proper|real|normal|) (match|game|saturday)", "free"),
    ("to (make|keep) it (fair|fun|hard|easy|interest|move|quick|honest|simple|realistic|sharp|tidy|flow|go|"
     "competitive)",
     "free"),
    ("(do not matter|it do not matter|no matter) (who|how|where|which) [but somebody|it be|from]", "free"),
)  # fmt: skip
TALK = (*TALK,
    ("[it be|to make it|that be|so it be|make it|play] {n:int} (v|on|vs|against|versus) {m:int} [plus {k:int}] "
     "[the other way|back the other way|game|in there]",
     "free"),
    ("[and|with] (everyone else|others|rest|all others) [be|have|on] (free|unlimited|as many as they like|free "
     "play|as many as they want|free touch|no limit|unlimited touch)",
     "free"),
    ("to (get|receive|collect|win|win back|look for|pick up) <ball> [back]", "free"),
    ("to (help|support|help out|press|defend|attack|make a pass|build|build up|make an extra player|make overload|"
     "get free|make up the numbers|give an option)",
     "free"),
)  # fmt: skip
SWAPPED: Rows = (("(you|passer) (be|go) out [and] (he|she|they|receiver) (come|be|go) in [with <ball>]", "free"),)
PENALTY: Rows = (
    ("[it|that] be (dead|go|over|lose)", "free"),
    ("[it|it be|ball] [go] (to other side|other side ball|other side 's ball|opponent ball|their ball|a turnover|"
     "turnover|possession go over|"
     "opponent 's ball|other lot 's ball|other side get it|other side get <ball>)", "free"),
    ("(you|they) (lose <ball>|give <ball> away|lose possession|hand <ball> over)", "free"),
    ("<ball> (go|be) (over|other side|to other side|turn over|give to other side|to opponent)", "free"),
)  # fmt: skip
NOTHING: Rows = (
    ("[you|they] may do it [but|though] [no number|it do not count|it get nothing|you get nothing|nothing for it]",
     "free"),
    ("[it|ball] (must|have to|got to|gotta) (come|go) [back] (in|inside|through middle|into middle|in the middle|"
     "back inside)",
     "free"),
    ("[just|simply] {a:act} (be nothing|do not count|be not enough|get nothing|count for nothing|get you nothing|"
     "be worth nothing|be no good)",
     "free"),
    ("[just|simply] (run|dribble|pass|go) [over|through] [with] [<ball>] (be nothing|do not count|be not enough)",
     "free"),
)  # fmt: skip
TABLES = {"talk": TALK, "swapped": SWAPPED, "penalty": PENALTY, "nothing": NOTHING}
