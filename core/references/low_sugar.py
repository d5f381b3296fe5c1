"""Low blood sugar: what public guidance says to take at once, and when to call for help."""

from __future__ import annotations

from core.sources import Seen, Source

SOURCE = Source(
    key="nhs_low_blood_sugar",
    cite="NHS, Treating hypoglycaemia, nhs.uk: about 15 g of fast sugar, measured again after 10 to 15 minutes",
    population="people whose blood sugar is low and who can swallow",
    seen=Seen.READ,
    note="An older state of the page; a leaflet of NHS Shropshire says five to six tablets and 10 minutes.",
)
SOURCES = (SOURCE,)

GLUCOSE_TABLETS = (3, 5)  # "between three and five dextrose tablets"
BETTER_WITHIN = 15  # minutes; "10-15 minutes"
