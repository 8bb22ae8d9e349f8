"""The games of twenty minutes that young players were measured in, by age and numbers, keepers among the numbers."""

from turnout.study.outside.plays import Play

MATCH_MIN = 20.0
# The study did not record its pitches: an association's usual ones. Numbers a side -> (across, up the page) and goals.
FORMATS = {
    5: ((30.0, 40.0), "goals 12 x 6 ft"),
    8: ((52.5, 68.0), "goals 16 x 7 ft"),
    11: ((68.0, 105.0), "goals 24 x 8 ft"),
}


def match(players: int, age: int) -> Play:
    """So many a side, one of them the keeper."""
    size_m, game = FORMATS[players]
    return Play(game, players - 1, players - 1, size_m, age, seconds=60 * MATCH_MIN)


MATCHES = {f"u{age}-{players}v{players}": match(players, age) for players, age in ((5, 10), (8, 10), (8, 13), (11, 13))}
