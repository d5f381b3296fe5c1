"""Exclusions from function tests: the clinical lists, in terms of what clients report.

A home check-in cannot detect aortic stenosis, so clients who report a heart condition, heart failure or breathlessness
at rest are referred to a clinician before an exertion test, which is stricter than the clinical lists (ATS 2002;
ERS/ATS 2014). Feeling well and danger signs are asked before every test in any case. Clients who have fallen are not
excluded: the tests are meant for them, with somebody close by (`Protocol.helper`).
"""

from __future__ import annotations

from core.client import Caution
from core.measures.measure import Exclusion

NOT_NOW = "not_now"  # not until a clinician has approved it
ASK_FIRST = "ask_clinician_first"

STANDING = (  # rising, balance, a few steps
    Exclusion(Caution.RECENT_HEART_EVENT, NOT_NOW),
    Exclusion(Caution.BREATHLESS_AT_REST, NOT_NOW),
)
EFFORT = (  # minutes of exertion
    *STANDING,
    Exclusion(Caution.HEART_FAILURE, ASK_FIRST),
    Exclusion(Caution.HEART_CONDITION, ASK_FIRST),
    Exclusion(Caution.PREGNANCY, ASK_FIRST),
)
