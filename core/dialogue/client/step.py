"""A client's step under construction, and its result."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Any

from core import schedule
from core.care import NumberVisibility, Status, Units
from core.dialogue.client.effects import Effect, Raise
from core.dialogue.client.facts import ClientFacts
from core.dialogue.client.messages import CoachNotReached, CoachTold
from core.dialogue.client.states import Asking, State, same_question
from core.dialogue.kit.step import StepBuilder
from core.judging.start import start_of
from core.measures import MEASURES
from core.measures.measure import Measure
from core.measures.weight import WEIGHT
from core.quantity import FACTOR, Amount, Dimension, Unit, convert, half_up
from core.reading import Reading
from core.references.emergency_numbers import emergency_number
from core.watching.digest import when_to_tell
from core.watching.flags import Flag, Severity


@dataclass(frozen=True, slots=True)
class Outcome:
    state: State
    effects: tuple[Effect, ...]


def preferred(measure: Measure, units: Units) -> Unit:
    """The unit in which somebody with these units is shown a measure."""
    if measure.unit in FACTOR:
        dimension = FACTOR[measure.unit][0]
        if dimension is Dimension.MASS and units.mass in measure.units:
            return units.mass
        if dimension is Dimension.LENGTH and units.length in measure.units:
            return units.length
    return measure.unit


class ClientStep(StepBuilder[State, ClientFacts, Asking, Effect]):
    """One step under construction: the facts, the new state, the effects so far."""

    __slots__ = ()

    def finish(self) -> Outcome:
        return Outcome(*self.numbered(same=same_question(self.before, self.state)))

    @property
    def today(self) -> date:
        return self.facts.local(self.now).date()

    @property
    def emergency_number(self) -> str:
        """The number of the client's country; "" if the country or its number is unknown."""
        known = emergency_number(self.facts.country)
        return known.number if known is not None else ""

    def say_coach_told(self) -> None:
        """Say that the coach has been told, or when they will be; but only if messages to them arrive."""
        if self.facts.told:
            self.say(CoachTold(self.facts.told, self.told_at()))
        else:
            self.say(CoachNotReached(self.facts.coach_name))

    def told_at(self) -> datetime | None:
        """The client's local time at which the coach hears of the urgent flags of this step; None for at once."""
        flags = [x.flag for x in self.effects if isinstance(x, Raise) and x.flag.severity is Severity.URGENT]
        return self._at_night(min(map(self._told_of, flags), default=self.now))

    def _told_of(self, flag: Flag) -> datetime:
        zone = self.facts.coach_nights
        return self.now if zone is None else when_to_tell(flag, self.now, zone, quiet_nights=True)

    def words_arrive(self) -> datetime | None:
        """The client's local time at which words for the coach arrive; None for at once."""
        zone = self.facts.coach_nights
        return self._at_night(self.now if zone is None else schedule.daytime(self.now, zone))

    def _at_night(self, at: datetime) -> datetime | None:
        return self.facts.local(at) if at > self.now else None

    def unit(self, measure: Measure) -> Unit:
        """This client's preferred unit for a measure."""
        return preferred(measure, self.facts.units)

    def asked_in(self, measure: Measure) -> Unit:
        """The unit a question names, as on the client's watch or tape: seconds where a speed is stored."""
        return Unit.SECOND if measure.unit is Unit.METRE_PER_SECOND else self.unit(measure)

    def shown(self, measure: Measure, value: Any) -> Amount:
        """A value in this client's preferred unit; in the measure's own unit, rounded to its places."""
        unit = self.unit(measure)
        if unit is measure.unit:
            return Amount(half_up(value, measure.places), unit)
        return Amount(convert(value, measure.unit, unit), unit)

    def hidden(self, measure: Measure) -> bool:
        """Whether this number is shown only to the coach."""
        return self.facts.plan.numbers is NumberVisibility.COACH_ONLY and measure.hideable

    def next_slot(self, after: datetime | None = None) -> date | None:
        """The local date of the next check-in."""
        if self.facts.slot is None or self.facts.status is Status.FINISHED:
            return None
        return schedule.next_due(self.facts.slot, self.facts.zone, after or self.now).day

    def due_on(self, key: str, last: datetime) -> date:
        """The first check-in at which a measure last taken at `last` is asked again."""
        days, zone = self.facts.plan.interval(key), self.facts.zone
        fallback = self.facts.local(last).date() + schedule.interval(key, days)
        if self.facts.slot is None:
            return fallback
        until = max(self.now, last) + timedelta(days=days + 14)
        for slot in schedule.instants(self.facts.slot, zone, max(self.now, last), until):
            if self.starts_again(key, slot.day) or schedule.retest_due(key, last, days, slot.day, zone):
                return slot.day
        return fallback

    def begun(self, key: str) -> tuple[Reading, ...]:
        """The readings of a measure that count, of this programme."""
        since = self.facts.plan.baseline_since
        return tuple([r for r in self.facts.of(key) if since is None or r.taken_at >= since])

    def starts_again(self, key: str, day: date) -> bool:
        """Whether the check-in of `day` asks for a further visit of the start of a measure."""
        measure = MEASURES[key]
        if measure.start_visits < 2:
            return False
        start = start_of(measure, self.begun(key))
        if not start.wants_another:
            return False
        return schedule.start_again_due(start.visits[0].taken_at, start.visits[-1].taken_at, day, self.facts.zone)

    def weights(self) -> tuple[Reading, ...]:
        return tuple(r for r in self.facts.history if r.measure == WEIGHT.key)
