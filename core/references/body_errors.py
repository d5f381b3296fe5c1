"""How far repeated measurements of one person differ, and which changes matter. Units as named."""

from __future__ import annotations

from decimal import Decimal

from core.sources import Seen, Source

D = Decimal

GIRTH_SOURCE = Source(
    key="barrios_2016",
    cite="Barrios P and others (2016). Self-measured girths with a paper tape. BMC Med Res Methodol 16:49",
    population="41 mothers, mean age 38, measuring themselves",
    seen=Seen.READ,
    note="Technical error 0.2 to 1.9 cm over all sites; we use the worst.",
)
WAIST_CHANGE_SOURCE = Source(
    key="verweij_2012",
    cite="Verweij LM and others (2012). Measurement error of waist circumference. Public Health Nutr",
    population="review; waists of 60 to 135 cm",
    seen=Seen.READ,
    note="Prints 3 and 5 percent as relevant; 3 percent lies inside the error of self-measurement.",
)
RATIO_SOURCE = Source(
    key="girth_ratio_error",
    cite="Our arithmetic from the technical error of self-measured girths, at waist 95, hip 105, height 170",
    population="as for the girths",
    seen=Seen.DERIVED,
)
PULSE_SOURCE = Source(
    key="resting_pulse_repeat",
    cite="Weekly repeats of resting pulse, Med Sci Sports (1972): 2.0 to 6.7 bpm; day-by-day home pulse,"
    " Kikuya and others, Hypertension (2008): about 5 bpm",
    population="middle-aged men; 2,455 people in Ohasama",
    seen=Seen.MEMORY,
    note="The range was read, the 5 is from memory and lies in its upper half. Check before relying on it.",
)
PRESSURE_SOURCE = Source(
    key="kato_2010",
    cite="Kato N and others (2010). Day-by-day variability of home blood pressure, Ohasama. Am J Hypertens",
    population="1,215 people, morning readings over four weeks",
    seen=Seen.READ,
    note="Within-person SD 8.6 systolic, 5.8 diastolic.",
)
ENERGY_SOURCE = Source(
    key="rating_error",
    cite="Our own choice: one standard error is about one smallest important difference (Wyrwich 2004), and"
    " fatigue ratings from 0 to 10 print 0.8 to 1.3 for that (Khanna 2008)",
    population="fatigue in rheumatoid arthritis; nobody measured it for a single energy rating",
    seen=Seen.OURS,
)
ENERGY_CHANGE_SOURCE = Source(
    key="rating_important_difference",
    cite="Khanna 2008 (0.8 to 1.3), Pouchot 2008 (about 2), Schwartz 2002 (2.4): important differences of"
    " fatigue rated from 0 to 10",
    population="307 and 61 people with rheumatoid arthritis, 103 with cancer",
    seen=Seen.READ,
    note="Borrowed from fatigue: 1 point is the low end, 2 the usual size. None was found for energy itself.",
)
SOURCES = (
    GIRTH_SOURCE,
    WAIST_CHANGE_SOURCE,
    RATIO_SOURCE,
    PULSE_SOURCE,
    PRESSURE_SOURCE,
    ENERGY_SOURCE,
    ENERGY_CHANGE_SOURCE,
)

GIRTH_SEM = D("1.9")  # cm
WAIST_CHANGE = D("0.05")  # of the waist
WAIST_TO_HIP_SEM = D("0.024")  # 95/105 * sqrt((1.9/95)^2 + (1.9/105)^2)
WAIST_TO_HEIGHT_SEM = D("0.011")  # 1.9/170
PULSE_SEM = D(5)  # bpm
SYSTOLIC_SEM = D("8.6")  # mmHg
SYSTOLIC_SPREAD = D("3.1") / D("8.6")  # the SEM's SD between people (3.1), as a fraction of it
DIASTOLIC_SEM = D("5.8")  # mmHg
RATING_SEM = D(1)  # points
RATING_SPREAD = SYSTOLIC_SPREAD  # ours: nobody has published how much moods differ in this; as pressures do
RATING_CHANGE = D(2)  # points
