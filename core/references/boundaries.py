"""What to do where published sources disagree at a limit, decided in one place.

Each decision is data for readers and a constant or a small function for the references. D7 and D9 are
used by the blood-pressure series and by session load.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from core.quantity import half_up
from core.references.ladder import Edge

D = Decimal


@dataclass(frozen=True, slots=True)
class Decision:
    """question: what had to be decided.  found: what the sources do.  choice: what we do. reason: why."""

    key: str
    question: str
    found: str
    choice: str
    reason: str


DECISIONS: dict[str, Decision] = {
    d.key: d
    for d in (
        Decision(
            "D1",
            "Round the body mass index before or after choosing its class?",
            "The CDC height-and-weight table holds only if it is rounded to one decimal first (125 lb at 69"
            " in is 18.457, printed as healthy). One Dutch public-health example calls 24.968 normal.",
            "Round half up to one decimal, then class. The raw value is kept.",
            "All ten CDC rows pass; unrounded classing fails four of them.",
        ),
        Decision(
            "D2",
            "Which factor turns pounds and inches into a body mass index?",
            "703 at CDC and NIH, 704.5 in an old NIH text; the exact factor is 703.0696.",
            "Convert to kilograms and metres exactly; use no factor.",
            "704.5 turns 24.96 into 25.01 and so changes the class.",
        ),
        Decision(
            "D3",
            "Is a waist of exactly 94 cm (man) or 80 cm (woman) raised?",
            "IDF, NICE and the 2009 joint statement: yes. One copy of the WHO table: no.",
            "Yes.",
            "It errs to caution, and most bodies write it so.",
        ),
        Decision(
            "D4",
            "Is a waist of exactly 102 cm (man) or 88 cm (woman) in the top band?",
            "NICE and the WHO table: only more than that. The 2009 joint statement: from there on.",
            "No: the top band begins above 102 / 88.",
            "It is the printed wording of the two bodies whose bands we show.",
        ),
        Decision(
            "D5",
            "Which band has a waist-to-height ratio of 0.497?",
            "NICE prints 0.4 to 0.49, 0.5 to 0.59 and 0.6 or more, and the rule of thumb 'less than half the height'.",
            "Compare the unrounded ratio with 0.5 and 0.6; never round inches to whole centimetres first.",
            "The rule of thumb decides: 0.497 is less than half.",
        ),
        Decision(
            "D6",
            "Is a blood pressure of exactly 180 or 120 severe?",
            "NICE: yes. AHA/ACC: only above. NHLBI prints both.",
            "Yes.",
            "A safety message should rather come once too often.",
        ),
        Decision(
            "D7",
            "Is the first day of a home blood-pressure series used?",
            "NICE, ESH and Hypertension Canada drop it; ESC 2024 and AHA/ACC do not ask for that; one US"
            " protocol drops two days.",
            "Drop one day; the number is a parameter.",
            "The first day reads high, and the limits we show first are those of NICE.",
        ),
        Decision(
            "D8",
            "How many MUST points has a body mass index of exactly 20.0?",
            "The BAPEN form: more than 20 scores 0, so 20.0 scores 1. One local form: 20 or more scores 0.",
            "One point.",
            "BAPEN made the tool.",
        ),
        Decision(
            "D9",
            "Which standard deviation does monotony of training load use?",
            "The texts read do not say.",
            "The sample one (n - 1), over seven days, rest days as 0.",
            "Seven days are a sample of somebody's weeks; the choice is ours and is printed with the figure.",
        ),
        Decision(
            "D10",
            "Are the lower body mass index limits by family background the general ones less 2.5?",
            "No: overweight moves from 25 to 23, the obesity classes by 2.5 to 27.5, 32.5 and 37.5.",
            "Keep a table of limits.",
            "A subtraction would put overweight at 22.5.",
        ),
    )
}


def bmi_for_class(bmi: Decimal) -> Decimal:
    """D1: the value to compare with class limits. kg/m2 in, kg/m2 to one decimal out."""
    return half_up(bmi, 1)


WAIST_RAISED = Edge.AT  # D3
WAIST_TOP_BAND = Edge.ABOVE  # D4
WAIST_TO_HEIGHT = Edge.AT  # D5, on the unrounded ratio
SEVERE_PRESSURE = Edge.AT  # D6
HOME_DAYS_DROPPED = 1  # D7
MUST_NO_POINTS = Edge.ABOVE  # D8: no points above 20
LOAD_SD_DEGREES_OF_FREEDOM = 1  # D9: divide by n - 1
GENERAL_BMI_LIMITS = (D("18.5"), D(25), D(30), D(35), D(40))
LOWER_BMI_LIMITS = (D("18.5"), D(23), D("27.5"), D("32.5"), D("37.5"))  # D10
