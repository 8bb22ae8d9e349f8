"""Which colours may face each other. Names are a coach's words; 'own' stands for the players' own shirts.

Refused: red with green and orange with green, which colour-blind eyes cannot part (worst-case difference 7 and 1;
checks col-02). Allowed at a price: pairs with a worst-case difference of 13 to 19 in the same computation.
"""

_SAME = {
    "amber": "orange",
    "tangerine": "orange",
    "scarlet": "red",
    "crimson": "red",
    "maroon": "red",
    "vermillion": "red",
    "lime": "green",
    "emerald": "green",
    "navy": "blue",
    "royal": "blue",
    "violet": "purple",
    "lilac": "purple",
    "light blue": "sky",
    "gold": "yellow",
    "grey": "white",
    "gray": "white",
}
_NEVER = {frozenset(pair) for pair in (("red", "green"), ("orange", "green"))}
_HARD = {
    frozenset(pair)
    for pair in (
        ("yellow", "white"),
        ("orange", "pink"),
        ("blue", "purple"),
        ("sky", "green"),
        ("green", "blue"),
        ("orange", "yellow"),
        ("orange", "purple"),
        ("orange", "red"),
    )
}

Verdict = str


def plain(colour: str) -> str:
    """The plain colour behind a coach's word: 'Navy' is blue, 'fluo yellow' is yellow."""
    name = " ".join(colour.lower().split())
    if name in _SAME:
        return _SAME[name]
    last = name.split(" ")[-1] if name else name
    return _SAME.get(last, last)


def verdict(first: str, second: str, own: str | None = None) -> Verdict:
    """'never', 'hard' or 'good' for two sides in these colours; `own` is the colour of the own shirts, None if mixed.

    Two sides in one colour, or in own shirts of the bib's colour, are 'never'. Mixed shirts against a bib are 'good'.
    """
    if first == second:
        return "never"
    one, other = (plain(own or "own") if colour == "own" else plain(colour) for colour in (first, second))
    pair = frozenset((one, other))
    if len(pair) == 1 or pair in _NEVER:
        return "never"
    return "hard" if pair in _HARD else "good"
