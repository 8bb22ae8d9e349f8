"""What the desk knows: one evening, its answer, and the forecasts as they come in. Changes are numbered."""

import threading
from collections.abc import Iterator
from dataclasses import dataclass, field
from threading import Lock

from turnout.evening.fits import FittedEvening, fit_evening
from turnout.evening.forecasts import SECONDS, Stop, forecast_part, nobody
from turnout.evening.load import Evening, with_facts
from turnout.study.model import Forecast

QUICK_S = 600.0  # simulated seconds of the first answer: enough for a range, soon enough to wait for (own choice)


@dataclass(frozen=True)
class Answer:
    """The answer to one state of the evening; `forecasts`, `played` (to the end) and `replays` grow."""

    revision: int
    fitted: FittedEvening
    forecasts: dict[int, Forecast] = field(default_factory=dict)
    played: set[int] = field(default_factory=set)
    replays: dict[int, dict[str, str]] = field(default_factory=dict)
    recording: Lock = field(default_factory=Lock)

    @property
    def whole(self) -> bool:
        """Whether every part has been played to the end."""
        return len(self.played) == len(self.fitted.fitted.parts)


class Desk:
    """One evening, open on the desk. Every change makes a new answer with the next number."""

    def __init__(self, evening: Evening, *, seconds: float = SECONDS, quick_s: float = QUICK_S):
        self.seconds, self.quick_s = seconds, quick_s
        self.closed = threading.Event()
        self._lock = threading.Lock()
        self._playing = threading.Lock()
        self._answer = Answer(1, fit_evening(evening))

    @property
    def answer(self) -> Answer:
        """The answer to the evening as it stands."""
        return self._answer

    def change(self, *, players: str | None = None, space: str | None = None, minutes: str | None = None) -> Answer:
        """Fit anew with what was typed; raises BadInput and leaves everything as it was."""
        with self._lock:
            old = self._answer
            evening = with_facts(old.fitted.evening, players=players, space=space, minutes=minutes)
            if evening != old.fitted.evening:
                self._answer = Answer(old.revision + 1, fit_evening(evening))
            return self._answer

    def play(self, answer: Answer, stop: Stop) -> Iterator[tuple[int, Forecast]]:
        """The forecast of every part: a quick one first, then the settled one. Ends early when the evening changes."""

        def over() -> bool:
            return stop() or self.closed.is_set() or self._answer is not answer

        for seconds, done in ((self.quick_s, answer.forecasts), (self.seconds, answer.played)):
            for index, part in enumerate(answer.fitted.fitted.parts):
                if index in done:
                    continue
                with self._playing:  # one at a time: the processor is the coach's own
                    if over():
                        return
                    made = forecast_part(answer.fitted, part, seconds=seconds, tell=nobody, stop=over)
                    if over():
                        return
                answer.forecasts[index] = made
                if done is answer.played:
                    answer.played.add(index)
                yield index, made
