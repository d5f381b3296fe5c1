"""Four-stage balance: feet together, half heel-to-toe, heel-to-toe (tandem), one leg. Higher is better.

Value   seconds held over all four stages together, 0 to 40 to 0.1 s. A stage counts up to 10 s and the next is tried
        only after 10 s are held, so one number encodes stage and seconds: 27.4 is 7.4 s of tandem.
Scored  by the tandem alone: less than 10 s, that is less than 30 in all, is associated with a raised risk (CDC).
No measurement error was found in a text (retest ICC only 0.58), so a change is shown, never judged.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import takewhile
from typing import TYPE_CHECKING

from core.client import Profile
from core.language import WordRole, lexicon_of, plain
from core.language.amounts import amounts
from core.language.tokens import tokens
from core.measures.cautions import STANDING
from core.measures.measure import (
    Bounds,
    Measure,
    MeasureKind,
    Misunderstood,
    ProfileFact,
    Protocol,
    Scores,
    Understood,
    Why,
    never,
)
from core.measures.parsing import quantity_in
from core.measures.score_function_tests import in_ages, rounded, split
from core.quantity import Better, Dimension, Range, Unit, half_up
from core.reading import Reading
from core.references import four_stage_balance_cdc as cdc

if TYPE_CHECKING:
    from core.language import Lexicon

D = Decimal
STAGES = ("together", "semi_tandem", "tandem", "one_leg")
FULL = D(10)  # s a stage
TANDEM = STAGES.index("tandem")

_hear_total = quantity_in(Unit.SECOND)


def total(holds: Sequence[Decimal]) -> Decimal:
    """Seconds that count, from the seconds of each stage tried: up to 10 each, and nothing after an incomplete stage.

    >>> total([Decimal(10), Decimal(12), Decimal("7.4"), Decimal(10)])
    Decimal('27.4')
    """
    rounded_holds = [min(half_up(hold, 1), FULL) for hold in holds[: len(STAGES)]]
    held = list(takewhile(lambda hold: hold == FULL, rounded_holds))
    return sum(rounded_holds[: len(held) + 1], D(0))


def held_in(stage: int, seconds: Decimal) -> Decimal:
    """Seconds of a stage (from 0) within a total."""
    return max(D(0), min(FULL, seconds - stage * FULL))


def understand(text: str, words: Lexicon, prefer: Unit | None) -> Understood | Misunderstood:
    """Understand either the total, or two to four numbers: the seconds of each stage in order.

    The seconds of a stage that is named are not the total ("tandem 10 s"): the total they lead to is asked back.
    """
    toks = tokens(plain(text), lexicon_of(words))
    found = amounts(toks, Dimension.TIME)
    seconds = all(h.unit in (None, Unit.SECOND) and not (h.foreign or h.minus) for h in found)
    other = any(t.junk or t.text == "?" or t.has(WordRole.RANGE) or t.has(WordRole.CHANGE) for t in toks)
    named = [t.entry.stage for t in toks if t.entry.stage is not None]
    if named and found and seconds and not other:
        return _of_stages(named, [h.value for h in found])
    if 2 <= len(found) <= len(STAGES) and seconds and not other:
        said = any(h.unit is Unit.SECOND for h in found)
        return Understood(total([h.value for h in found]), Unit.SECOND, said_unit=said)
    return _hear_total(text, words, prefer)


def _of_stages(named: Sequence[int], seconds: Sequence[Decimal]) -> Understood | Misunderstood:
    """The seconds of the stages named, each beside its name. Stages before the first named were held in full, or it
    would not have been tried; that is confirmed."""
    if len(seconds) == 1 and seconds[0] > FULL and held_in(named[-1], seconds[0]) > 0:
        return Understood(seconds[0], Unit.SECOND, said_unit=True)  # "27.4 s, tandem": more than a stage has
    first = named[0]
    if len(named) != len(seconds) or list(named) != list(range(first, first + len(named))):
        return Misunderstood(Why.ONE_STAGE)
    meant = Understood(total([*[FULL] * first, *seconds]), Unit.SECOND, said_unit=True)
    return Misunderstood(Why.ONE_STAGE, meant) if first else meant


def score(reading: Reading, profile: Profile) -> Scores:
    """Compare the heel-to-toe seconds with the CDC cut-off."""
    tandem = held_in(TANDEM, rounded(reading, 1))
    steady = not cdc.raised_risk(tandem)
    return (
        in_ages(reading, profile, cdc.AGES, cdc.SOURCE)
        or split(cdc.SOURCE, cdc.TANDEM_UNDER, steady, ("raised_risk", "usual_risk")),
    )


FOUR_STAGE_BALANCE = Measure(
    key="four_stage_balance",
    kind=MeasureKind.FUNCTION,
    unit=Unit.SECOND,
    units=(Unit.SECOND,),
    places=1,
    better=Better.HIGHER,
    bounds=Bounds(possible=Range(D(0), D(40)), usual=Range(D(10), D(40))),
    protocol=Protocol(
        prepare=("something_solid_within_reach", "hard_floor", "footwear_as_last_time", "somebody_close"),
        technique=(
            "feet_side_by_side",
            "instep_at_big_toe",
            "heel_to_toe",
            "one_leg",
            "eyes_open",
            "hold_10_s_each",
            "next_only_after_10_s",
            "add_up_the_seconds",
            "stop_if_unsteady",
        ),
        keep_same=("footwear", "floor"),
        helper=True,
        timers=(10,),
    ),
    understand=understand,
    score=score,
    must_not=STANDING,
    sources=(cdc.SOURCE,),
    needs=frozenset({ProfileFact.CAUTIONS}),
    alarm=never,
    body=None,
)
