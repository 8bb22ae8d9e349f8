"""The one list of prices: what each thing a fit gives up costs, in points.

One point is one per cent of the designed area of a part. The fit takes the cheapest whole: nothing is ranked level by
level, because strict levels lost 24-32 % against one list with prices (own trial). All figures are our own choice and
may be argued about; the tests only hold that the cheaper thing is chosen.

Never for sale, at any price: the run-off, the gaps between areas, a role's range, more waiting than the practice
allows, more bibs than there are in one colour, and the two colour pairs that colour-blind eyes cannot part.
"""

# Who plays where
WAITING = 4.0  # one child waiting one minute of a part
ROLE_OFF = 10.0  # one player more or fewer in a role than the designed mix scaled to this number
UNEVEN = 20.0  # one player of difference between two like sides, beyond the designed difference
UNEVEN_ROLE = 8.0  # the same within one role: 2 v 3 on the edge may make up for 3 v 2 inside
OFF_DESIGN = 6.0  # one player more or fewer in a copy than the practice was made for
COPIES_DIFFER = 8.0  # copies of one player more and one fewer
COPIES_DIFFER_MORE = 25.0  # each further player of difference
SAME_ROLES_SLACK = 30.0  # mixes this close to the best are kept: they may be easier to dress

# Ground
AREA = 1.0  # one per cent of the designed area per player
ASPECT = 1.0  # one per cent of the designed length to width
TURNED = 2.0  # one copy lies the other way round

# Grown-ups
ADULTS_STRETCHED = 400.0  # one copy more than the adults can look after; two more is refused

# The hour
MINUTE_OFF = 6.0  # one minute off the part's share of the hour
MINUTE_OVER = 12.0  # one minute beyond the part's longest, on top
LONGEST_SHARE = 1.5  # and never beyond this times the longest
NOT_WHOLE = 5.0  # blocks, or a part, that are not whole minutes
BLOCKS_DIFFER = 6.0  # blocks of unequal length
BLOCK_OFF = 4.0  # one minute off the middle of the lengths the practice allows
TURN_OFF = 3.0  # times as dear where a rule swaps players by the clock: a block should be one turn
REST_MINUTE = 2.0  # one minute of rest between blocks: it is not played
REST_OFF = 3.0  # half a minute more or less than the usual rest: one minute, half where players swap by the clock
CHANGEOVER_OFF = 1.0  # half a minute more than two minutes between parts; 2.5 minutes costs two more
LEFT_OUT = 1500.0  # a part that may be left out is left out

# Bibs
BIB_CHANGE = 4.0  # one player puts on, takes off or changes a bib
BIBS_DIFFER = 12.0  # the copies wear different colours
OTHER_NAME = 6.0  # a side called after a colour in the bag wears another
HARD_TO_TELL = 15.0  # two sides in colours that are hard to tell apart
