"""Numbers, space, time and kit to a fitted session."""

from turnout.fit.altered import with_adults, with_minutes, with_players, with_space
from turnout.fit.fitting import fit_range, fit_session
from turnout.fit.model import Copy, Fitted, FittedPart

__all__ = [
    "Copy",
    "Fitted",
    "FittedPart",
    "fit_range",
    "fit_session",
    "with_adults",
    "with_minutes",
    "with_players",
    "with_space",
]
