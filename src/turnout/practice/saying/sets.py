"""Sets of words that mean one thing wherever they stand, in the notation of the phrasings."""

SETS: dict[str, str] = {
    "ball": "([that|this|whole] ball|it|possession|football|posession)",
    "may": "(may|be allow to|be free to|get to|be welcome to|be able to|may go and|be let)",
    "maynot": "(may not|must not|be not [be] allow to|not allow to|be not to|do not get to|be never allow to|never|"
    "may never|do not|will not|be not able to|be bar from|be ban from|be not permit to|be forbid [to|from]|"
    "be not let|have not to|not to|be not suppose to|have got to not|would not)",
    "must": "(must|have [got] to|got to|need to|be to|have always to|must always|have get to|ought to)",
    "when": "(when|if|once|whenever|as soon as|soon as|[every|each|any] time|any time|moment|minute|after|second that|"
    "should|on every occasion [that]|as|in case|provide|provide that|straight after)",
    "while": "(while|whilst|when|whenever|as long as|so long as|if|once|during|anytime|any time|only when|only if|"
     "only while)",
    "until": "(until|before)",
    "only": "(only|just|nothing but|solely)",
    "worth": "(be worth|be|count|count as|count for|equal|earn|earn you|get|get you|give you|make|mean|bring|score|"
    "score you|worth|win you|win|be good for|earn your side|get your side|give your side|give them|go down as|be "
     "score as)",
    "scores": "(be worth|be|equal|earn|earn you|get|get you|give you|make|mean|bring|score|score you|worth|win you|"
     "win|be good for|count as|count for|count|"
    "earn your side|get your side|give your side|give them|earn them|get them|be score as)",
    "earn": "(be award|get yourself|have yourself|get themselves|get|score|earn|win|have|take|be give|pick up|claim|"
     "be award|bag|receive|gain|collect)",
    "others": "(they|side|someone|player|that side|any side)",
    "you": "(they|he|she|someone|player|whoever|1|who|that|side that|side who|player who|1 who|those who|"
    "that side|that player|everyone who|their side)",
    "its": "(its|their|your|his|her|our|own)",
    "row": "(in [a] row|on [the] row|without (lose <ball>|interrupt|interruption)|without a break|consecutively|"
     "straight|back to back|on spin|"
    "without interrupt|in one go|without give <ball> away|without (other side|opponent|them|anyone|someone) (touch|"
     "get|win|take|intercept|nick) <ball>|without other side get <ball>|"
    "without opponent touch <ball>|without an intercept|without be intercept|unbroken|uninterrupt|in succession|"
    "without other side win <ball>|without it break down|one after other)",
    "in": "(in|inside|within|into|on|at|over in|out in|up in|back in|anywhere in|in on)",
    "into": "(into|in|inside|over|to|across|up to|onto|on to|in to|out to|as far as|over into|beyond|past)",
    "through": "(through|thru|between)",
    "everyone": "(<its> whole side|<its> side|all of <its> side|all <its> side|everyone|all player|all of them|all "
     "of you|whole side|all side|everyone play|every player)",
    "goal": "(goal|score|finish)",
    "counts": "(count|be allow|stand|be good|be give|be valid|matter|be worth anything)",
    "only_counts": "(only count|count only|be only good|only stand|only be allow|be only allow|be only give|"
    "only be give|only be worth anything|only be valid|do not count unless|only matter|be only worth anything)",
    "also": "(then|also|straight away|immediately|instantly|too|as well)",
    "place_swap": "(place|role|spot|position|job|duty|round|over|around|shirt|bib|it over|about|in)",
}  # fmt: skip
