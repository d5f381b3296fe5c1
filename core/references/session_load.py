"""Sources of session load and weekly monotony; see `core.judging.training_load`."""

from __future__ import annotations

from core.sources import Seen, Source

SESSION_LOAD = Source(
    key="session_load_foster_2001",
    cite="Foster C et al. (2001). A new approach to monitoring exercise training. J Strength Cond Res 15(1):109-115.",
    population="people in training, asked about 30 minutes after the session",
    seen=Seen.READ,
    note="effort on the plain 0-10 scale; asked from 1 minute to 14 days later it was stable",
)
MONOTONY = Source(
    key="monotony_foster_1998",
    cite="Foster C (1998). Monitoring training in athletes with reference to overtraining syndrome."
    " Med Sci Sports Exerc 30(7):1164-1168.",
    population="athletes",
    seen=Seen.SECOND_HAND,
    note="which SD is meant is not said (D9); the warning level of about 2.0 is from memory",
)
COUNTING = Source(
    key="sessions_counted",
    cite="Counting the sessions of a week; common practice.",
    population="anyone who exercises by a plan",
    seen=Seen.COMMON_PRACTICE,
)
SOURCES = (SESSION_LOAD, MONOTONY, COUNTING)
