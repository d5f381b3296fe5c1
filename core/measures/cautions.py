"""Who must not take a function test: the clinical lists, put in terms of what a client has told us.

A home check-in cannot find an aortic stenosis. So whoever has told us of a heart condition, heart failure or
breathlessness at rest is sent to a clinician before a test of effort, which is stricter than the clinical
lists (ATS 2002; ERS/ATS 2014). Feeling well today and red flags are asked before every test, apart from this.
Whoever has fallen is not left out: the tests are made for them, with somebody close (`Protocol.helper`).
"""

from __future__ import annotations

from core.client import Caution
from core.measures.measure import Exclusion

NOT_NOW = "not_now"  # not until a clinician has agreed to it
ASK_FIRST = "ask_clinician_first"

STANDING = (  # rising, balance, a few steps
    Exclusion(Caution.RECENT_HEART_EVENT, NOT_NOW),
    Exclusion(Caution.BREATHLESS_AT_REST, NOT_NOW),
)
EFFORT = (  # minutes of it
    *STANDING,
    Exclusion(Caution.HEART_FAILURE, ASK_FIRST),
    Exclusion(Caution.HEART_CONDITION, ASK_FIRST),
    Exclusion(Caution.PREGNANCY, ASK_FIRST),
)
