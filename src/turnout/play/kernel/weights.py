"""Every behaviour weight and ball constant of the kernel: column, default, sensible range, where it comes from.

What holds a value is read off its source: 'free' (no published figure was found: a range, set to sense and to the fit
rows), 'loose' (a published sign or band bounds it), otherwise pinned.
"""

from typing import NamedTuple

import numpy as np


class Weight(NamedTuple):
    """One number of the simulator: value, the range it may be fitted in, unit, source or 'free'."""

    value: float
    low: float
    high: float
    unit: str
    source: str

    @property
    def held(self) -> str:
        """What holds the value: 'pinned', 'loose' or 'free'."""
        return next((word for word in ("free", "loose") if self.source.startswith(word)), "pinned")


TABLE: dict[str, Weight] = {
    "DT": Weight(0.025, 0.0125, 0.05, "s", "numerical"),
    "SLIDE": Weight(4.1202, 3.0, 5.2, "m/s2", "hawkeye-sample: 0.42 g; play takes tonight's surface"),
    "ROLL": Weight(1.0, 0.3, 3.0, "m/s2", "the 3G of values.csv; play takes tonight's surface"),
    "DRAG": Weight(0.024, 0.02, 0.028, "1/m", "goff2010: air 1.2 kg/m3, Cd 0.45, size 5"),
    "ROLL_SHARE": Weight(0.6275, 0.6, 0.66, "-", "with the next: a shell with drag, fitted to physics.py"),
    "ROLL_SHARE_DRAG": Weight(0.0105, 0.0, 0.02, "s/m", "drag while it slides, fitted to physics.py"),
    "REACH": Weight(0.72, 0.5, 0.9, "m", "free: a foot stretched out"),
    "HAZARD_RECEIVER": Weight(22.0, 8.0, 40.0, "1/s", "free: the man it is meant for is set"),
    "HAZARD_MATE": Weight(9.0, 4.0, 20.0, "1/s", "free"),
    "HAZARD_CUT": Weight(8.0, 4.0, 12.0, "1/s", "loose, spearman2018: 3.99 x defender factor 1.72 = 6.9 for adults"),
    "FAST_BALL": Weight(9.0, 6.0, 14.0, "m/s", "free: above this a ball is harder to stop"),
    "TACKLE_RATE": Weight(0.33, 0.2, 1.0, "1/s", "free: holding must cost"),
    "TACKLE_REACH": Weight(1.05, 0.8, 1.5, "m", "free"),
    "TACKLE_CLEAN": Weight(0.55, 0.3, 0.8, "-", "free: share that leaves the tackler with the ball"),
    "RUN_AT": Weight(1.0, 0.0, 2.0, "s/m", "free: a ball carried at speed is farther from the foot"),
    "SHIELD": Weight(0.45, 0.2, 0.8, "-", "free: body between"),
    "READ": Weight(0.8, 0.0, 0.9, "-", "free: how much a lost man delays the answer to a pass"),
    "SHAPE": Weight(1.0, 0.0, 1.0, "-", "free: how much of the passer's preparation an opponent makes use of"),
    "SET_S": Weight(0.6, 0.3, 1.5, "s", "free: at a man so long a tackler gets set; his rate rises with it"),
    "EYES": Weight(0.6, 0.26, 0.8, "-", "free: cosine of 53 degrees, while a pass is coming"),
    "RUN_ON": Weight(2.2, 0.3, 3.0, "-", "free: worth of running the ball over the root of the area"),
    "HASTE": Weight(0.5, 0.0, 2.0, "-", "free: how much more a player under pressure doubts what is best"),
    "CONE": Weight(0.26, 0.0, 0.6, "-", "free: cosine of 75 degrees"),
    "SEE_S": Weight(0.2, 0.1, 0.4, "s", "free: between two looks"),
    "HOLD": Weight(0.5, 0.2, 1.2, "-", "free: worth of keeping it at the feet, unpressed"),
    "HOLD_PRESS": Weight(1.2, 0.1, 2.0, "-", "free"),
    "HOLD_TIRE": Weight(0.12, 0.02, 0.4, "1/s", "free"),
    "LOSS": Weight(0.4, 0.2, 1.5, "-", "free: what a lost ball costs beside a kept one"),
    "DANGER": Weight(2.0, 0.0, 4.0, "-", "free: how much dearer a ball lost right before the own goal is"),
    "OPEN": Weight(0.10, 0.02, 0.3, "1/m", "free: worth of a receiver's room"),
    "PROGRESS": Weight(0.55, 0.1, 1.5, "-", "free: worth of half the ground gained"),
    "SCORE": Weight(0.9, 0.3, 2.5, "-", "free: worth of a point now"),
    "COUNTS": Weight(0.12, 0.0, 0.4, "-", "free: a pass that counts over one that does not"),
    "BACK": Weight(0.05, 0.0, 0.2, "-", "free: straight back to the passer"),
    "LANE_SLACK": Weight(0.42, 0.2, 0.8, "m", "free: doubt in judging a lane"),
    "LANE_RUN": Weight(0.45, 0.3, 0.9, "-", "free: share of top speed a cutter is credited with"),
    "SUP_GAP": Weight(0.33, 0.1, 0.6, "1/m", "free"),
    "SUP_OPP": Weight(0.25, 0.05, 0.5, "1/m", "free"),
    "SUP_MATE": Weight(0.45, 0.1, 0.6, "1/m", "free"),
    "SUP_BALL": Weight(0.25, 0.1, 0.8, "1/m", "free: not nearer than 3.9 m to the ball"),
    "SUP_FAR": Weight(0.055, 0.01, 0.2, "1/m", "free: not farther than a firm pass"),
    "SUP_FORWARD": Weight(1.3, 0.2, 2.0, "-", "free: directional games"),
    "INSIDE": Weight(0.24, 0.05, 0.25, "-", "free: support keeps this share of the area's side off the line"),
    "INSIDE_MOST": Weight(2.8, 1.0, 3.0, "m", "free: at most; a missed pass nearer the line is out"),
    "BRISK": Weight(9, 5.0, 9.0, "m/s", "free: whoever can run faster does not support faster"),
    "SUP_MOVE": Weight(0.13, 0.03, 0.2, "1/m", "free: moving has a price"),
    "SUP_STAY": Weight(0.12, 0.0, 0.4, "-", "free"),
    "MARK_MATE": Weight(0.36, 0.1, 0.8, "1/m", "free: 4.7 m between team-mates"),
    "MARK_BALL": Weight(0.10, 0.02, 0.3, "1/m", "free"),
    "MARK_MOVE": Weight(0.03, 0.01, 0.2, "1/m", "free"),
    "MARK_GOAL": Weight(1.4, 0.3, 3.0, "-", "free: guarding the place that scores"),
    "TIGHT": Weight(1.6, 0.4, 2.0, "m", "free: how near a marker stands to a man who stands"),
    "CUSHION": Weight(0.8, 0.0, 1.5, "s", "free: the faster he moves the farther off"),
    "PRESS_PACE": Weight(0.88, 0.6, 1.0, "-", "free: a presser's pace, share of top speed"),
    "PRESS_MPS": Weight(6, 2.0, 6.0, "m/s", "free: a presser's pace at arm's length; faster from farther"),
    "PRESS_OFF": Weight(0.75, 0.4, 1.5, "m", "free: how near the presser stops"),
    "EASE": Weight(0.12, 0.08, 0.25, "s", "free: time constant of a change of speed"),
    "BRAKE": Weight(5.95, 4.0, 7.0, "m/s2", "loose, harper2022: braking at least as hard as driving; cap 7"),
    "TURN": Weight(4.5, 3.0, 6.0, "m/s2", "free: sideways push"),
    "TURN_RATE": Weight(5.0, 3.0, 8.0, "rad/s", "free: turning the body"),
    "WALK": Weight(2.6, 1.6, 3.4, "m/s", "free: to a restart"),
    "SET_OFF": Weight(4.0, 2.5, 6.0, "m", "free: opponents stand off a restart"),
    "FREE_HOLD": Weight(0.35, 0.1, 0.8, "-", "free: a free first pass is not waited out"),
    "DRIBBLE": Weight(0.85, 0.6, 0.95, "-", "loose, carling2010: 0.80 +- 0.05 of top at the peak"),
    "BOUNCE": Weight(0.6, 0.45, 0.71, "-", "turf-rebound-page: the 3G of values.csv; play takes tonight's surface"),
    "BELIEF": Weight(0.5, 0.0, 1.0, "-", "free: share of tonight's surface the passer allows for"),
    "BODY": Weight(0.24, 0.15, 0.35, "m", "free: half a body; a ball that meets it is blocked"),
    "FREE": Weight(2.6, 2.0, 4.0, "m", "free: with nobody nearer there is no pressure"),
    "PRESSURE": Weight(1.0, 0.2, 1.5, "-", "loose, open-match-data pass-04: wider kicks under pressure"),
    "FIRM": Weight(0.6, 0.0, 1.0, "-", "loose, open-match-data pass-02: adults play the same pass harder"),
    "FIRST_PRESS": Weight(1.0, 0.0, 3.0, "-", "free: a ball not yet under control is easier to take"),
    "WIDE": Weight(0.1, 0.0, 0.8, "-", "free: holding the width in directional games"),
    "REAR": Weight(1.3, 0.5, 4.0, "-", "free: the man behind the ball"),
    "CLOSED": Weight(0.15, 0.0, 0.8, "-", "free: chance that a receiver with an opponent on him loses it"),
    "SWITCH": Weight(0.05, 0.0, 0.2, "1/m", "free: worth of room beyond 4 m, the far man"),
    "LOFT": Weight(0.8, 0.0, 1.0, "-", "free: how sure a lofted pass is beside one on the ground"),
    "SHOOT": Weight(3.0, 1.0, 6.0, "-", "free: worth of a goal beside a kept ball"),
    "SHOOT_LOSS": Weight(1.0, 0.1, 2.0, "-", "free: what a missed shot costs"),
    "ASSIST": Weight(2.5, 0.0, 3.0, "-", "free: worth of the shot a pass opens"),
    "CHANCE": Weight(2.5, 0.0, 4.0, "-", "free: worth of a spot from which the goal looks wide"),
    "DIVE": Weight(2.6, 1.5, 4.0, "m/s", "free: how fast a keeper's hands get to the side"),
    "LAST_OUT": Weight(0.4, 0.2, 0.6, "-", "free: the last man's share of the way from goal to ball"),
    "COUNTER_S": Weight(3.0, 0.0, 6.0, "s", "free: two press for so long after a loss"),
    "DOUBLE_S": Weight(2.0, 0.5, 5.0, "s", "free: a carrier who has kept it so long meets a second presser"),
    "SWARM": Weight(2.2, 0.0, 4.0, "m", "free: a second presser this near the ball goes for it"),
    "DELAY": Weight(1.6, 0.75, 3.0, "m", "free: an outnumbered last presser stands off so far"),
    "TIRE": Weight(0.02, 0.0, 0.05, "1/m", "free: reserve used per metre beyond the cruising pace"),
    "RECOVER_S": Weight(45.0, 20.0, 120.0, "s", "free: time constant of recovery"),
    "TIRED": Weight(0.15, 0.05, 0.3, "-", "free: top speed lost with an empty reserve"),
    "RUN": Weight(0.5, 0.0, 1.0, "-", "free: how often a third man runs on a pass"),
}

# fmt: off
(
    K_DT, K_SLIDE, K_ROLL, K_DRAG, K_ROLL_SHARE, K_ROLL_SHARE_DRAG, K_REACH, K_HAZARD_RECEIVER, K_HAZARD_MATE,
    K_HAZARD_CUT, K_FAST_BALL, K_TACKLE_RATE, K_TACKLE_REACH, K_TACKLE_CLEAN, K_RUN_AT, K_SHIELD, K_READ,
    K_SHAPE, K_SET_S, K_EYES, K_RUN_ON, K_HASTE, K_CONE, K_SEE_S, K_HOLD, K_HOLD_PRESS, K_HOLD_TIRE, K_LOSS,
    K_DANGER, K_OPEN, K_PROGRESS, K_SCORE, K_COUNTS, K_BACK, K_LANE_SLACK, K_LANE_RUN, K_SUP_GAP, K_SUP_OPP,
    K_SUP_MATE, K_SUP_BALL, K_SUP_FAR, K_SUP_FORWARD, K_INSIDE, K_INSIDE_MOST, K_BRISK, K_SUP_MOVE,
    K_SUP_STAY, K_MARK_MATE, K_MARK_BALL, K_MARK_MOVE, K_MARK_GOAL, K_TIGHT, K_CUSHION, K_PRESS_PACE,
    K_PRESS_MPS, K_PRESS_OFF, K_EASE, K_BRAKE, K_TURN, K_TURN_RATE, K_WALK, K_SET_OFF, K_FREE_HOLD, K_DRIBBLE,
    K_BOUNCE, K_BELIEF, K_BODY, K_FREE, K_PRESSURE, K_FIRM, K_FIRST_PRESS, K_WIDE, K_REAR, K_CLOSED, K_SWITCH,
    K_LOFT, K_SHOOT, K_SHOOT_LOSS, K_ASSIST, K_CHANCE, K_DIVE, K_LAST_OUT, K_COUNTER_S, K_DOUBLE_S, K_SWARM,
    K_DELAY, K_TIRE, K_RECOVER_S, K_TIRED, K_RUN,
) = range(90)
# fmt: on


def weights(**changes: float) -> np.ndarray:
    """The weight vector (weights,), with named changes; raises KeyError on a name that is not in the table."""
    values = {name: weight.value for name, weight in TABLE.items()}
    for name, value in changes.items():
        if name not in values:
            raise KeyError(name)
        values[name] = value
    return np.array(list(values.values()), dtype=np.float64)
