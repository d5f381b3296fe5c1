"""Measurement error of function tests, and the change that mattered to people: two questions, kept apart.

Nobody has published the error for people who test themselves at home: every figure is borrowed and names its study
population. A paper's minimal detectable change (MDC95) is quoted as printed; `core.reliability.sem_from_mdc` converts
it to the error of one reading.
"""

from __future__ import annotations

from decimal import Decimal

from core.sources import Seen, Source

GILL = Source(
    key="chair_stand_gill_2022",
    cite="Gill SD et al. (2022). The 30-second chair stand test: reliability and measurement error.",
    population="93 people with mild knee osteoarthritis, three tries 1-2 minutes apart",
    seen=Seen.READ,
    note="practice gains 0.5 to 0.8 stands, gone by the third try; the title is from memory",
)
ZANINI = Source(
    key="chair_stand_zanini_2018",
    cite="Zanini A et al. (2018). The minimal important difference of the 30-second sit-to-stand test in"
    " COPD. Respir Care, respcare.06694.",
    population="96 people with COPD in rehabilitation, anchored to 30 m of the six-minute walk",
    seen=Seen.READ,
    note="the title is from memory",
)
GOLDBERG = Source(
    key="five_chair_stands_goldberg_2012",
    cite="Goldberg A et al. (2012). The five-times-sit-to-stand test: validity, reliability and detectable"
    " change in older females. Aging Clin Exp Res 24(4):339-344.",
    population="29 women, mean 73.6 years",
    seen=Seen.READ,
    doi="10.1007/BF03325265",
)
JONES = Source(
    key="five_chair_stands_jones_2013",
    cite="Jones SE et al. (2013). The five-repetition sit-to-stand test as a functional outcome measure in"
    " COPD. Thorax 68(11):1015-1020.",
    population="239 people with COPD in rehabilitation",
    seen=Seen.READ,
    doi="10.1136/thoraxjnl-2013-203576",
)
CARONNI = Source(
    key="timed_up_and_go_caronni_2024",
    cite="Caronni A et al. (2024). Minimal detectable change of the timed up and go and gait speed.",
    population="109 older neurological inpatients",
    seen=Seen.READ,
    note="the title is from memory",
)
STEFFEN_SENEY = Source(
    key="parkinsonism_steffen_seney_2008",
    cite="Steffen T, Seney M (2008). Test-retest reliability and minimal detectable change on balance and"
    " ambulation tests in people with parkinsonism. Phys Ther 88(6):733-746.",
    population="37 people with parkinsonism",
    seen=Seen.READ,
    doi="10.2522/ptj.20070214",
)
ERS_ATS = Source(
    key="six_minute_walk_ers_ats_2014",
    cite="Holland AE et al. (2014); Singh SJ et al. (2014). Field walking tests in chronic respiratory"
    " disease. Eur Respir J 44(6):1428-1446, 1447-1478.",
    population="adults with chronic respiratory disease",
    seen=Seen.SECOND_HAND,
    doi="10.1183/09031936.00150314",
    note="30 m was read second-hand, its range of 25 to 33 m is from memory",
)
PERERA = Source(
    key="gait_perera_2006",
    cite="Perera S et al. (2006). Meaningful change and responsiveness in common physical performance"
    " measures in older adults. J Am Geriatr Soc 54(5):743-749.",
    population="older adults, some after a stroke",
    seen=Seen.READ,
    doi="10.1111/j.1532-5415.2006.00701.x",
)
SOURCES = (GILL, ZANINI, GOLDBERG, JONES, CARONNI, STEFFEN_SENEY, ERS_ATS, PERERA)

CHAIR_STAND_MDC95 = Decimal("2.5")  # stands, Gill
CHAIR_STAND_MATTERS = Decimal(2)  # stands, Zanini
FIVE_STANDS_SEM = Decimal("0.9")  # s, Goldberg: printed with an MDC95 of 2.5 s
FIVE_STANDS_MATTERS = Decimal("1.7")  # s, Jones
UP_AND_GO_MDC95 = Decimal("0.15")  # of the first time, Caronni
SIX_MINUTE_WALK_MDC95 = Decimal(82)  # m, Steffen and Seney
SIX_MINUTE_WALK_MATTERS = Decimal(30)  # m, ERS/ATS
GAIT_SPEED_MDC95 = Decimal("0.18")  # m/s at usual pace, Steffen and Seney
GAIT_SPEED_MATTERS = Decimal("0.10")  # m/s, Perera
