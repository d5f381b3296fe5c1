"""Rate-limiting medicines by generic name: with them, a pulse after exertion says less about the exertion.

The names are those of public lists of beta-blockers (ihimontanafoundation.org and worstpills.org, read: acebutolol,
atenolol, betaxolol, bisoprolol, carvedilol, esmolol, labetalol, metoprolol, nadolol, penbutolol, pindolol,
propranolol, sotalol, timolol); the others are common knowledge (memory), and so are the trade names by which people
call some of them. Nothing here is advice.
"""

from __future__ import annotations

import re

from core.language.text import near, plain

RATE_LIMITING_MEDICINES: dict[str, tuple[str, ...]] = {  # generic name -> stems as people write it, endings left open
    "acebutolol": ("acebutolol", "asebutolol", "أسيبوتولول"),
    "amiodarone": ("amiodaron", "amjodaron", "أميودارون", "اميودارون", "cordarone", "كوردارون"),
    "atenolol": ("atenolol", "atenelol", "attenolol", "atenol", "أتينولول", "اتينولول", "tenormin", "تينورمين"),
    "betaxolol": ("betaxolol", "betaksolol", "بيتاكسولول"),
    "bisoprolol": (
        "bisoprolol", "bisopropol", "bisoprol", "bizoprolol", "bisaprolol", "بيسوبرولول", "بيزوبرولول", "concor",
        "emconcor", "كونكور",
    ),
    "carvedilol": ("carvedilol", "karvedilol", "carvedelol", "karwedilol", "كارفيديلول", "dilatrend", "ديلاترند"),
    "celiprolol": ("celiprolol", "seliprolol", "سيليبرولول"),
    "digoxin": ("digoxin", "digoxina", "digoksyn", "digitoxin", "digossina", "ديجوكسين", "lanoxin", "لانوكسين"),
    "diltiazem": ("diltiazem", "diltiasem", "diltyazem", "ديلتيازيم", "tildiem", "dilzem"),
    "dronedarone": ("dronedaron", "درونيدارون"),
    "esmolol": ("esmolol", "ايسمولول"),
    "flecainide": ("flecainid", "flekainid", "فليكاينيد"),
    "ivabradine": ("ivabradin", "iwabradyn", "ivabradina", "إيفابرادين", "ايفابرادين", "procoralan", "بروكورالان"),
    "labetalol": ("labetalol", "labetolol", "لابيتالول"),
    "metoprolol": (
        "metoprolol", "metropolol", "metaprolol", "metoprol", "ميتوبرولول", "beloc", "betaloc", "seloken",
        "lopressor", "بيتالوك",
    ),
    "nadolol": ("nadolol", "نادولول"),
    "nebivolol": ("nebivolol", "nebivalol", "nebiwolol", "نيبيفولول", "nebilet", "نيبيليت"),
    "penbutolol": ("penbutolol",),
    "pindolol": ("pindolol", "بيندولول"),
    "propranolol": (
        "propranolol", "propanolol", "propranalol", "بروبرانولول", "بروبانولول", "inderal", "sumial", "اندرال",
    ),
    "sotalol": ("sotalol", "سوتالول", "sotalex"),
    "timolol": ("timolol", "تيمولول"),
    "verapamil": ("verapamil", "werapamil", "verapamilo", "فيراباميل", "isoptin", "ايزوبتين"),
    "beta-blocker": (
        "beta blocker", "betablocker", "betablocke", "beta bloqueante", "betabloqueante",
        "betabloqueador", "beta bloquant", "betabloquant", "beta bloker", "betabloker", "beta adrenolityk",
        "beta block", "حاصرات بيتا", "حاصر بيتا", "حاصرات البيتا", "بيتا بلوكر", "بيتابلوكر", "حاصر البيتا",
    ),
}  # fmt: skip

_STEMS: tuple[tuple[str, str], ...] = tuple(
    (plain(stem), name) for name, stems in RATE_LIMITING_MEDICINES.items() for stem in stems
)
_ENDINGS = 3  # extra letters allowed in an inflected name: "bisoprololem", "amiodaronę"
_LONG = 7  # letters from which a typo is tolerated


def rate_limiting_medicine(text: str) -> str | None:
    """The generic name of the first rate-limiting medicine named in a text, or None.

    >>> rate_limiting_medicine("Biorę bisoprololem rano"), rate_limiting_medicine("I take metropolol"), \
rate_limiting_medicine("aspirin")
    ('bisoprolol', 'metoprolol', None)
    """
    words = re.findall(r"[^\W\d_]+", plain(text))
    for i, word in enumerate(words):
        pair = f"{word} {words[i + 1]}" if i + 1 < len(words) else ""
        for stem, name in _STEMS:
            if pair and " " in stem and pair.startswith(stem) and len(pair) <= len(stem) + _ENDINGS:
                return name
            if _is(word.removeprefix("ال"), stem):
                return name
    return None


def _is(word: str, stem: str) -> bool:
    if word.startswith(stem) and len(word) <= len(stem) + _ENDINGS:
        return True
    return len(stem) >= _LONG and (near(word, stem) or near(word[: len(stem)], stem))
