"""Pain and sleep rated from 0 to 10: how far a rating scatters, and the smallest changes that matter. Points."""

from __future__ import annotations

from decimal import Decimal

from core.reliability import sem_from_mdc
from core.sources import Seen, Source

D = Decimal

PAIN_SOURCE = Source(
    key="pain_rating_2021",
    cite="Minimal detectable change and minimal clinically important difference of the 0-10 pain rating in specific"
    " back pain (2021). Schmerz; doi 10.1055/a-1304-3677",
    population="1,232 people in hospital for back pain, Germany",
    seen=Seen.READ,
    doi="10.1055/a-1304-3677",
    note="Read in its abstract: detectable change 1.77, important difference 2 overall, more where pain is severe.",
)
PAIN_CHANGE_SOURCE = Source(
    key="pain_change_salaffi_2004",
    cite="Salaffi F and others (2004). Minimal clinically important changes in chronic musculoskeletal pain. Eur J Pain"
    " 8(4):283-291",
    population="825 people with chronic pain of joints and muscles",
    seen=Seen.READ,
    doi="10.1016/j.ejpain.2003.09.004",
    note="Read in its abstract: 1 point is slightly better, 2 points or a third is much better.",
)
SLEEP_CHANGE_SOURCE = Source(
    key="sleep_change_zisapel_2003",
    cite="Zisapel N, Nir T (2003). Determination of the minimal clinically significant difference on a patient visual"
    " analog sleep quality scale. J Sleep Res 12(4):291-298",
    population="428 people of 55 and older with insomnia",
    seen=Seen.READ,
    doi="10.1046/j.0962-1105.2003.00365.x",
    note="Read in its abstract: 10 mm of a 100 mm line is an important change; here 1 point of 10.",
)
SOURCES = (PAIN_SOURCE, PAIN_CHANGE_SOURCE, SLEEP_CHANGE_SOURCE)

PAIN_MDC = D("1.77")
PAIN_SEM = sem_from_mdc(PAIN_MDC)
PAIN_CHANGE = D(2)
SLEEP_CHANGE = D(1)
