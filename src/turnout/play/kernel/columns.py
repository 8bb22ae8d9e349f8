"""Every column of every kernel array, with its unit. Index arrays only with these names."""

# fmt: off
# P: players, float (players, P_COLUMNS)
X, Y, VX, VY = 0, 1, 2, 3              # place m, velocity m/s
TX, TY, PACE = 4, 5, 6                 # where to, m; how fast, m/s
HX, HY = 7, 8                          # facing, unit vector
T_SEE, T_DECIDE, T_REACT = 9, 10, 11   # s: next look, next off-ball decision, may answer the last kick from
T_STOOD = 12                           # s: standing since
SPOT_X, SPOT_Y = 13, 14                # m: place to take up at a restart
EDGE_AT, EDGE_SPAN = 15, 16            # edge players: share round the edge of the own stretch's middle, half width
STALE = 17                             # s: how old the picture of near opponents is
REACH_LEFT, TACKLE_LEFT = 18, 19       # what is left of the exponential draw before a touch / a tackle
T_NO_TOUCH = 20                        # s: cannot play the ball before
SINCE_ROLE = 21                        # s: in this role since
FX, FY = 22, 23                        # wanted facing, unit vector
FRESH = 24                             # what is left of the reserve for hard running, 0 to 1
T_RUN = 25                             # s: on a run of his own until (third man, check away and back)
PEAK = 26                              # m/s: fastest so far
PUSH_X, PUSH_Y = 27, 28                # m: how bodies in the way push this one aside
IN_REACH = 29                          # s: within reach of the ball at the holder's feet
ASIDE, SLOWED = 30, 31                 # sine of the turn of the run round bodies ahead; share of the pace given up
P_COLUMNS = 32

# I: players, int (players, I_COLUMNS)
ROLE, TEAM, JOURNEY, CHASING, SLOT, SERVED = 0, 1, 2, 3, 4, 5
WIDE = 6                               # directional games: holds the left (1), right (-1), the rear (2) or nothing (0)
I_COLUMNS = 7
OUT_OF_PLAY = 8                        # TEAM of those who wait in a line

# A: abilities, float (players, A_COLUMNS)
TOP, ALPHA, ACCEL = 0, 1, 2            # m/s, 1/s, m/s2
AIM_SD, WEIGHT_SD = 3, 4               # rad, share of speed
CONTROL_S, CLEAN = 5, 6                # s, chance of a clean first touch on an easy ball
SCAN = 7                               # looks per s
THINK_S, REACT_S = 8, 9                # s with the ball; s to answer an opponent's kick
NOISE = 10                             # spread of decision values
KICK_TOP = 11                          # m/s
TACKLES = 12                           # share of the full tackling rate
DISGUISE_S, RELEASE_S = 13, 14         # s added to opponents' reaction; s from decision to kick
SPOT_NOISE, MOVE_S, MOVE_PACE = 15, 16, 17  # positioning noise; s between off-ball decisions; share of top speed
CRUISE = 18                            # m/s: pace that can be kept up; faster uses the reserve
FOOT, WEAK = 19, 20                    # 1 right, -1 left footed; how much wider kicks with the other foot go
REACH_M = 21                           # m: how far a keeper's hands reach to the side
READS = 22                             # 0 runs hard at everything, 1 takes the time he has to be there
A_COLUMNS = 23

# B: ball and moment, float
BX, BY, BVX, BVY = 0, 1, 2, 3          # m, m/s
ROLL_BELOW = 4                         # m/s: the ball rolls once it is slower than this
T_KICKED, T_READY, T_KICK_AT = 5, 6, 7 # s: last kick; holder may act from; holder kicks at
AIM_X, AIM_Y, KICK_V = 8, 9, 10        # m, m/s: agreed spot and speed of the coming or flying pass
T_HELD, T_CHOOSE, T_TOUCH = 11, 12, 13 # s: held since; next decision on the ball; last carrying touch
CARRY_X, CARRY_Y = 14, 15              # m: where the holder runs with the ball
SPOT_BX, SPOT_BY, T_DEAD = 16, 17, 18  # m, s: restart spot; dead since
T_POSSESSION, T_STARTED = 19, 20       # s: possession opened; last start
NOW, T_PRESS, T_PLAN, SQ = 21, 22, 23, 24  # s; s: next choice of pressers; s: next planning of chases; m: root of area
OUT_GROW = 25                          # m: strip round the field that is not out (edge players)
T_WON_0 = 26                           # s: when each of two sides last won the ball
T_CLOCK = 30                           # s: next look at the clock sentences
IN_VX, IN_VY = 28, 29                  # m/s: the ball as it came to whoever plays it first time
BZ, BVZ = 32, 33                       # m, m/s: height of the ball over the ground
KICK_VZ = 34                           # m/s: lift of the coming kick
T_LOST_0 = 35                          # s: when each of two sides last lost the ball in play
PRESS_X, PRESS_Y = 37, 38              # m: where a flying pass is going to be received
STOP_X, STOP_Y = 39, 40                # m: where the ball is to be brought back in; 1e9: where it is
T_SHAPED = 41                          # s: the holder has shaped to pass since
DANGER = 42                            # how near the holder is to a goal against his side, 0 to 1
# acts
T_SCORED = 60                          # s: last score or start
KICK_X, KICK_Y = 61, 62                # m: where the ball was last kicked from
LINK_X, LINK_Y = 63, 64                # m: where the last pass that arrived was played from
POINTS_0 = 65                          # points of each of two sides
T_CALLED = 67                          # s: the coach calls next
WAS_BX, WAS_BY, WAS_HELD = 68, 69, 70  # m, s: the ball a step ago, and since when it was held
B_SIZE = 71
MARK_0 = B_SIZE                        # s: from here on, when each mark was last set, for each of two sides

# G: moment, int (players by number, -1 for nobody)
HOLDER, LAST, LAST_TEAM, PASSER, TARGET, PHASE = 0, 1, 2, 3, 4, 5
FREE, OWNER, TOUCHES, FIRST_TIME, BALL_TEAM, PASS_ON = 6, 7, 8, 9, 10, 11
START_TEAM, SPILLED_BY, TACKLED, POSSESSION, TAKER = 12, 13, 14, 15, 16
IN_PLACES, LOG_N, SPELL_TEAM, SPELL_PASSES, SPELL_FREE = 17, 18, 19, 20, 21
WAS_PASSER, WAS_RECEIVER, WAS_WINNER, WAS_LOSER, WAS_SCORER = 23, 24, 25, 26, 27
WANT_STOP, STOP_TEAM, STOP_ROW, POSSESSION_PASSES, START_ROW = 28, 29, 30, 31, 32
PRESSER_0, SECOND_0 = 33, 35           # first and second presser of each of two sides from here
SHOT, SHOOTER = 37, 38                 # 1 while the ball of a shot is on its way; who shot
HELD = 39                              # 1: the keeper has it in his hands
LAST_GATE, LAST_MAN = 40, 41           # gate last played through; defender between ball and goal
THROUGH, PRESSED = 42, 43              # gate the flying pass has gone through, -1 none; 1: it was played under pressure
UNIT = 44                              # which ball it is
NEXT_GATE = 45                         # several balls: the gate these players make for, nobody else's; -1 none
# acts
RULED = 60                             # 1: sentences say which scores count and how much
LINK_FROM, LINK_TO = 61, 62            # of the last pass that arrived, while nobody else has had the ball; -1 none
RUN_BEFORE, PASSES_BEFORE = 63, 64     # the run and the passes before the pass that has just arrived
KICK_FIRST = 65                        # 1: the ball was kicked with the first touch
OVERS, FLOWN, LANDED = 66, 67, 68      # 1: passes over places matter; bits of places flown over, come down in
OVER_PLACES = 70                       # places a pass over pays, a bit each
FIRST_PAYS = 71                        # 1: scoring with the first touch matters
BACKS = 69                             # 1: passes back and one-twos matter
DEEDS = 72                             # 1: carrying through, stopping, moving and keeping the ball matter
CAME_IN, RESTED = 73, 74               # side he carried it in at, 3 bits a place; places he stopped it in
KEEPS = 75                             # 1: keeping the ball pays
TURNCOATS = 76                         # 1: some play for a side that is not simply the one with the ball
HEADS, KICK_HEAD = 78, 79              # 1: heading matters; 1: the ball was last headed
COMING_IN = 77                         # 1: the ball starts off the field and has not come in yet
G_SIZE = 80
PLAY, DEAD = 0, 1

# R: roles, float (roles, R_COLUMNS)
R_SIDE, R_NEUTRAL, R_EDGE = 0, 1, 3
R_STRETCH = 4                          # edge: 0 own share of it, 1 all of it, 2 stand still
R_LOW, R_HIGH = 5, 6
R_FIXED = 9                            # 1: stands still
R_HOME = 10                            # region row: home
R_FENCE = 11
R_IN, R_OUT = 12, 13                   # role taken on coming in, on going out; -1 none
R_LIMITS, R_LIMIT_0, R_LIMIT_MOST = 14, 15, 7  # how many stay-in and stay-out rows there are for the role; which
R_KEEPS = 22                           # place row of the goal the role keeps, -1 none; home is then the goal's area
R_WAITS = 23                           # 1: waits in a line outside the field
WITH_BALL, WITHOUT_BALL, SIDE_BEHIND = 1.0, 2.0, 3.0  # acts: of R_NEUTRAL, whom such a role plays for
R_COLUMNS = 24
# goals: places where a side scores, int (goals, 3): place, side or -1, how
GOAL_PLACE, GOAL_SIDE, GOAL_HOW = 0, 1, 2
COME_THERE, SHOOT_THERE, PLAY_THROUGH = 0, 1, 2

# Z: places, float (places, Z_COLUMNS); kind 0 rectangle, 1 circle, 2 line (goal or gate: one half width is 0)
Z_KIND, Z_X, Z_Y, Z_HX, Z_HY, Z_HIGH = 0, 1, 2, 3, 4, 5
Z_COLUMNS = 6
RECTANGLE, CIRCLE, LINE = 0, 1, 2
OUTSIDE, ROUND = 10, 20                # acts: added to a kind: anywhere but inside it; the line round it

# L: limits on roles, int (limits, L_COLUMNS): a bit per role; what; place; while; until
L_ROLES, L_WHAT, L_PLACE, L_WHILE, L_WHILE_SIDE, L_WHILE_PLACE = 0, 1, 2, 3, 4, 5
L_UNTIL, L_UNTIL_PLACE, L_UNTIL_VALUE, L_LIFTED, L_VALUE = 6, 7, 8, 9, 10
L_COLUMNS = 11
# acts
L_NOW, L_PLACES, L_THOSE, L_WHOSE = 12, 13, 14, 15  # a bit for each side it binds now; places, roles; 1: other side
L_COLUMNS = 16
STAY_IN, STAY_OUT, NO_TACKLE, TOUCH_LIMIT, NO_REPEAT = 0, 1, 2, 3, 4
ALWAYS, WHILE_WITH, WHILE_WITHOUT, WHILE_SIDE, WHILE_BALL_IN = 0, 1, 2, 3, 4
WHILE_BEHIND, WHILE_THERE, WHILE_BEHIND_HAS = 20, 21, 22  # acts
UNTIL_NONE, UNTIL_BALL_ENTERS, UNTIL_SECONDS, UNTIL_TOUCHES = 0, 1, 2, 3
UNTIL_MARK = 20                        # acts

# T: when/then rows, int (rows, ROW_COLUMNS)
ROW_WHEN, ROW_WHO_SIDE, ROW_WHO_ROLES, ROW_PLACE, ROW_COUNT, ROW_TO_ROLES, ROW_DO = 0, 1, 2, 3, 4, 5, 6
ROW_A, ROW_A_SIDE, ROW_A_ROLES, ROW_A_WHOSE, ROW_B, ROW_B_SIDE, ROW_B_ROLES, ROW_B_WHOSE = 7, 8, 9, 10, 11, 12, 13, 14
ROW_WHERE, ROW_EDGE, ROW_VALUE, ROW_SENTENCE, ROW_EVERY_MS, ROW_FIRST = 15, 16, 17, 18, 19, 20
ROW_AFTER, ROW_WITHIN_MS = 21, 22       # only within so long of: 0 nothing, 1 winning the ball, 2 a start
# acts
ROW_MARK, ROW_BOTH = 23, 24             # mark the row waits for, -1 none; 1: the one it sets is set for both sides
ROW_PLACES = 25                         # places, a bit each
ROW_HOW, ROW_WHILE, ROW_WHILE_SIDE = 26, 27, 28
ROW_BEHIND = 29                         # 1: only by the side that is behind
ROW_A_COUNT = 30                        # how many of the first who, 0 all
ROW_SETS, ROW_MEMORY = 31, 32           # mark the row sets; where a deed that takes time keeps what it knows
ROW_COLUMNS = 33
# events
E_PASS, E_WIN, E_WIN_PASS, E_LOSE, E_SCORE, E_OUT, E_RECEIVE, E_RUN_IN, E_ROW, E_CLOCK, E_TOUCHES, E_START = (
    0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11)
E_PASSES, E_PASS_INTO, E_TACKLE, E_ENTER, E_BALL_ENTERS, E_BALL_LEAVES, E_SECONDS = 12, 13, 14, 15, 16, 17, 18
E_GOAL, E_THROUGH, E_SHOOT = 19, 20, 21
# acts
E_OVER, E_BACK, E_ONE_TWO, E_RUN_THROUGH, E_STOP_IN, E_MOVE, E_KEEP, E_CONCEDE, E_HEAD, E_LEAVE = (
    40, 41, 42, 43, 44, 45, 46, 47, 48, 49)
E_WITHOUT, E_TURN_STARTS, E_TURN_ENDS, E_CALL = 50, 51, 52, 53
E_NONE = -1                            # no event: a row the kernel looks up by itself (who starts)
# what rows do
D_POINTS, D_EXCHANGE, D_CHANGE_OVER, D_IN, D_OUT, D_ROTATE, D_STARTS = 0, 1, 2, 3, 4, 5, 6
# acts: points added, a mark set, and what scores count: worth so much, after an event, made in a way, while it holds
D_ADD, D_MARK, D_COUNTS, D_AFTER, D_HOW, D_WHEN = 20, 21, 22, 23, 24, 25
MADE_FIRST, MADE_HEAD, MADE_INSIDE, MADE_OUTSIDE, MADE_WITHIN, MADE_PASS_BY, MADE_PASS_FROM = 1, 2, 3, 4, 5, 6, 7
# who in rows
W_NONE, W_ACTOR_SIDE, W_OTHER_SIDE, W_SIDE, W_ROLE, W_PASSER, W_RECEIVER, W_WINNER, W_LOSER, W_NEAREST, W_FARTHEST = (
    0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10)
W_SCORER, W_LAST, W_NEXT_GROUP, W_EVERYONE = 11, 12, 13, 14
W_BEHIND, W_THERE, W_OTHER_ROLE, W_SOME, W_WAITED, W_ITS_ROLE = 30, 31, 32, 33, 34, 35  # acts

# plans: how much a side leans to a scoring place, float (places, 4): attack of side 0, 1, guard of side 0, 1; 1 plain
GUARD_0 = 2
# units: one ball and its players, int (balls, 2): first player, one past the last
# F: passes in a run, int (filters, F_COLUMNS): from and to roles (a bit per role), kind, place, what such a pass adds
# to the run; -1: only such passes count. No rows: every pass adds 1
F_FROM, F_TO, F_KIND, F_PLACE, F_ADDS = 0, 1, 2, 3, 4
F_COLUMNS = 5
ANY_PASS, PASS_INTO, PASS_THROUGH, PASS_OVER, PASS_BACK = 0, 1, 2, 3, 4
# edges: slots round edges, float (slots, 3): place, share of the way round, half span
SLOT_PLACE, SLOT_AT, SLOT_SPAN = 0, 1, 2
# sums per player S (players, S_COLUMNS)
S_TOUCHES, S_PASSES, S_COMPLETED, S_RECEIVED, S_CUT_OUT, S_TACKLES, S_DISTANCE, S_FAST, S_HARD, S_STILL, S_TIME = (
    0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10)
S_OFF_BALL, S_PRESSED, S_PEAK = 11, 12, 13      # S_PRESSED: passes played under pressure
S_PRESSED_OK, S_SHOTS, S_GOALS, S_SAVES, S_BLOCKS, S_LOFTED, S_LOOKS = 14, 15, 16, 17, 18, 19, 20
S_HELD_S, S_HELD_PRESSED_S, S_LOST_HELD = 21, 22, 23   # s with the ball; with an opponent near; lost in tackles
S_PEAK_BALL, S_PUSH, S_BRAKE = 24, 25, 26                # m/s with the ball; m/s2: hardest push, hardest braking
S_LOOKS_PRESSED, S_NEAR_S, S_WALK_S = 27, 28, 29         # looks with an opponent within 2 m; s so; s slower than 2 m/s
S_COLUMNS = 30
# sums per role U (roles, U_COLUMNS)
U_TIME, U_TOUCHES, U_PASSES, U_RECEIVED, U_DISTANCE = 0, 1, 2, 3, 4
U_MOST = 5                             # most touches in one hold that ended with a kick
U_COLUMNS = 6
# sums per side V (sides, V_COLUMNS)
V_SPELLS, V_RUN_SUM, V_REGAINS, V_POSSESSIONS, V_SCORES, V_POINTS, V_POSSESSION_S, V_FIRST, V_FIRST_LOST = (
    0, 1, 2, 3, 4, 5, 6, 7, 8)
V_FREE, V_FREE_LOST, V_SUCCESS, V_POSS_PASSES = 9, 10, 11, 12
V_SHOTS, V_ON_TARGET, V_GOALS, V_SOLO_GOALS = 13, 14, 15, 16   # solo: by whoever won the ball in play, no pass between
V_COLUMNS = 17
# sums of the practice Q
Q_TIME, Q_ROLLING, Q_STOPS, Q_STARTS, Q_SKIPPED = 0, 1, 2, 3, 4
Q_SIZE = 5
# causes of a lost spell
CUT_OUT, TACKLED_AWAY, OUT, DEFLECTED_OUT, MISCONTROLLED, LIMIT_BROKEN, SCORED, STOPPED = 0, 1, 2, 3, 4, 5, 6, 7
CAUSES = 8
RUN_CAP = 40

# LOG: float (events, 10): t, kind, player, other, side, x, y, value; of a pass the spot aimed at
LOG_COLUMNS = 10
LOG_AIM_X, LOG_AIM_Y = 8, 9
LOG_T, LOG_KIND, LOG_PLAYER, LOG_OTHER, LOG_SIDE, LOG_X, LOG_Y, LOG_VALUE = 0, 1, 2, 3, 4, 5, 6, 7
LOG_START, LOG_PASS, LOG_CONTROL, LOG_CUT_OUT, LOG_TACKLE, LOG_OUT = 0, 1, 2, 3, 4, 5
LOG_SCORE, LOG_CHANGE, LOG_SPILL, LOG_OWNER, LOG_HOME, LOG_STOP = 6, 7, 8, 9, 10, 11
LOG_SHOT, LOG_SAVE, LOG_BLOCK = 12, 13, 14
LOG_ADDED, LOG_HEADER = 15, 16          # acts: points added by a change; a ball headed
# fmt: on
