"""Everyday words made alike: small letters, contractions told in full, number words as digits, word endings dropped."""

import re
from dataclasses import dataclass
from functools import cache

from turnout.practice.names import WORD

CONTRACTIONS = {
    "can't": "can not", "cannot": "can not", "won't": "will not", "shan't": "will not", "cant": "can not",
    "dont": "do not", "isnt": "be not", "arent": "be not", "gotta": "got to", "wanna": "want to", "gonna": "going to",
    "'em": "them", "em": "them", "let's": "let us", "ain't": "be not", "youre": "you be", "mustnt": "must not",
    "whoever's": "whoever be", "who's": "who be", "that's": "that be", "it's": "it be", "there's": "there be",
    "he's": "he be", "she's": "she be", "what's": "what be", "where's": "where be", "nobody's": "nobody be",
    "everyone's": "everyone be", "everybody's": "everyone be", "ball's": "ball be",
}  # fmt: skip
ENDINGS = (("n't", "not"), ("'re", "be"), ("'ve", "have"), ("'ll", "will"), ("'d", "would"), ("'m", "be"), ("'s", "'s"))
SMALL = (
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen "
    "seventeen eighteen nineteen"
)
ROUND = "twenty thirty forty fifty sixty seventy eighty ninety"
UNITS, TENS = SMALL.split(), ROUND.split()
NUMBERS = {"single": 1} | {word: value for value, word in enumerate(UNITS)} | {
    word: 10 * value for value, word in enumerate(TENS, start=2)
}  # fmt: skip
# irregular forms and words that mean the same to a coach, each told by one of them
ALIKE = {
    "be": "is are am being been was were s",
    "have": "has had having", "do": "does did done doing", "go": "goes went gone going", "get": "gets got gotten "
     "getting",
    "come": "comes came coming", "win": "wins won winning", "lose": "loses lost losing", "give": "gives gave given",
    "keep": "keeps kept keeping hold holds held holding", "make": "makes made making", "take": "takes took taken "
     "taking",
    "run": "runs ran running", "leave": "leaves left leaving", "shoot": "shoots shot shots shooting",
    "stand": "stands stood", "begin": "begins began begun beginning", "find": "finds found", "hit": "hits hitting",
    "say": "says said", "throw": "throws threw thrown", "put": "puts putting", "steal": "steals stole stolen",
    "bring": "brings brought", "drive": "drives drove driven", "let": "lets letting", "stick": "sticks stuck sticking",
    "side": "sides team teams squad squads", "player": "players lad lads kid kids boy boys girl girls man men person "
    "people guy guys ones child children", "point": "points pt pts", "second": "seconds sec secs",
    "minute": "minutes min mins", "swap": "swaps swapped swapping switch switches switched switching exchange "
    "exchanges trade trades rotate rotates rotated rotating",
    "goal": "goals", "pass": "passes passed passing", "may": "can could", "must": "should",
    "everyone": "everybody", "nobody": "no-one noone", "someone": "somebody anybody anyone anybody",
    "until": "till til 'til untill", "row": "bounce trot spin", "mate": "mates team-mate team-mates teammate teammates "
    "partner partners", "tackle": "tackles tackled tackling challenge challenges challenged challenging",
    "nearest": "closest", "farthest": "furthest", "opponent": "opponents opposition opposing opposite-side",
    "behind": "beyond-line", "dribble": "dribbles dribbled dribbling carry carries carried carrying",
    "max": "maximum", "min": "minimum", "keeper": "keepers goalkeeper goalkeepers goalie goalies gk",
    "other": "others", "halfway": "half-way", "regain": "regains regained recover recovers recovered recapture",
    "first": "1st", "half": "halves", "third": "3rd", "mini": "minis", "whenever": "everytime", "anywhere": "anyplace",
    "inside": "insides", "double": "doubles", "restart": "restarts", "concede": "concedes conceded conceding",
}  # fmt: skip
SAME = {word: told for told, words in ALIKE.items() for word in (told, *words.split())}
APART = {
    "one-two",
    "kick-in",
    "throw-in",
    "dribble-in",
    "kick-ins",
    "throw-ins",
    "dribble-ins",
    "give-and-go",
    "roll-in",
}
APART |= {"pass-in", "pass-ins", "kick-off", "team-mate", "team-mates", "no-one", "half-way", "roll-ins", "one-twos"}
ARTICLES = frozenset({"a", "an", "the"})
MARKS = re.compile(r"[^\w']+|_")


@dataclass(frozen=True)
class Token:
    """One word made alike, and from which written word it came."""

    word: str
    at: int  # number of the written word


@cache
def stem(word: str) -> str:
    """A word without its ending, so that passes, passing and passed are one; not always a word itself."""
    if word in SAME:
        return SAME[word]
    if len(word) < 4 or word.isdigit():
        return word
    cut = re.sub(r"ies$", "y", word)
    if cut == word:
        cut = re.sub(r"(?<=sh|ch|ss)es$|(?<=[xz])es$|(?<![sui])s$", "", word)
    bare = re.sub(r"(?<=..)(?:ing|ed)$", "", cut)
    if bare != cut and not re.search(r"[aeiouy]", bare):
        bare = cut
    if bare != cut and re.search(r"([^aeiouslz])\1$", bare):
        bare = bare[:-1]
    short = bare[:-1] if len(bare) > 3 and bare.endswith("e") else bare
    return SAME.get(bare) or SAME.get(short) or short


def spread(word: str) -> list[str]:
    """The words a written word stands for: can't -> can not, two-touch -> two touch."""
    if word in CONTRACTIONS:
        return CONTRACTIONS[word].split()
    if word in APART:
        return [word]
    for ending, told in ENDINGS:
        if word.endswith(ending) and len(word) > len(ending):
            return [*spread(word[: -len(ending)]), told]
    if found := re.fullmatch(r"(\d+)vs?(\d+)", word):
        return [found[1], "v", found[2]]
    return [part for whole in word.split("-") for part in ([whole] if whole else [])]


def words_alike(text: str) -> list[str]:
    """A text of fixed words as stems, articles dropped: how patterns are written."""
    return [token.word for token in alike([w.casefold().replace("’", "'") for w in WORD.findall(text)])]


def alike(written: list[str]) -> list[Token]:
    """Written words (small letters) as tokens: spread, numbers as digits, stems, no marks and no articles."""
    loose: list[Token] = []
    for at, word in enumerate(written):
        parts = spread(word) if word[0].isalnum() else []
        loose += [Token(part, at) for part in parts]
    return [Token(stem(token.word), token.at) for token in numbered(owned(loose)) if token.word not in ARTICLES]


def owned(tokens: list[Token]) -> list[Token]:
    """Has got, have got, 's got as has; no one as nobody."""
    found: list[Token] = []
    for token in tokens:
        if token.word == "one" and found and found[-1].word == "no":
            found[-1] = Token("nobody", found[-1].at)
        elif token.word == "got" and found and stem(found[-1].word) in ("have", "be", "'s"):
            found[-1] = Token("have", found[-1].at)
        else:
            found.append(token)
    return found


def numbered(tokens: list[Token]) -> list[Token]:
    """Number words as digits: twenty five -> 25, a couple of -> 2."""
    found: list[Token] = []
    for token in tokens:
        value = NUMBERS.get(token.word)
        before = found[-1] if found else None
        if value is None:
            found.append(token)
        elif before and before.word.isdigit() and tens_before(before, tokens, token) and 0 < value < 10:
            found[-1] = Token(str(int(before.word) + value), before.at)
        else:
            found.append(Token(str(value), token.at))
    return found


def tens_before(before: Token, tokens: list[Token], token: Token) -> bool:
    """Whether the number just before was said in tens, so that this one adds to it."""
    place = tokens.index(token)
    return place > 0 and tokens[place - 1].word in TENS and int(before.word) % 10 == 0
