"""Helplines by country: for thoughts of suicide, and for worries about eating.

READ: seen on the page named. SECOND_HAND: seen in a page that reports the source. MEMORY: common knowledge, not looked
up; to be checked before a country is served.
Numbers change: an operator should look at this table once a year.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from core.sources import Seen, Source


class Topic(StrEnum):
    CRISIS = "crisis"
    EATING = "eating"


@dataclass(frozen=True, slots=True)
class Helpline:
    """number: as dialled; "" if only the charity's site is known. site: of the charity."""

    name: str
    number: str
    site: str
    source: str
    seen: Seen


SOURCE = Source(
    key="helplines",
    cite="Helplines as their own sites and the press print them; each row names where it was seen",
    population="anybody in the country",
    seen=Seen.MEMORY,
    note="Some rows are from memory: check them before a country is served, and all of them once a year.",
)
SOURCES = (SOURCE,)

READ, SECOND_HAND, MEMORY = Seen.READ, Seen.SECOND_HAND, Seen.MEMORY

FIND_ONE = "findahelpline.com"
"""A directory of helplines for all countries (from memory): what to name where the table holds none."""

KNOWN = "common knowledge"
_988 = "en.wikipedia.org, Suicide and Crisis Lifeline"

CRISIS: dict[str, Helpline] = {  # by ISO 3166 code
    "GB": Helpline("Samaritans", "116 123", "samaritans.org", "samaritans.org, ten years of freephone", READ),
    "IE": Helpline("Samaritans", "116 123", "samaritans.org", "independent.ie on the Dublin branch", SECOND_HAND),
    "US": Helpline("988 Suicide & Crisis Lifeline", "988", "988lifeline.org", _988, SECOND_HAND),
    "CA": Helpline("Suicide Crisis Helpline", "988", "988.ca", _988, SECOND_HAND),
    "ES": Helpline("Línea 024", "024", "", "theolivepress.es, 9 May 2022", SECOND_HAND),
    "DE": Helpline(
        "TelefonSeelsorge", "0800 111 0 111", "telefonseelsorge.de", "progress.guide on Germany", SECOND_HAND
    ),
    "AT": Helpline("Telefonseelsorge", "142", "telefonseelsorge.at", "katholisch.at/telefonseelsorge", READ),
    "CH": Helpline("Die Dargebotene Hand", "143", "143.ch", "143.ch, which names the service", READ),
    "FR": Helpline("3114", "3114", "3114.fr", "francetvinfo.fr, February 2022", SECOND_HAND),
    "PL": Helpline("Centrum Wsparcia", "800 70 2222", "centrumwsparcia.pl", KNOWN, MEMORY),
    "BE": Helpline("Zelfmoordlijn 1813", "1813", "zelfmoord1813.be", KNOWN, MEMORY),
    "AU": Helpline("Lifeline", "13 11 14", "lifeline.org.au", KNOWN, MEMORY),
    "NZ": Helpline("1737", "1737", "1737.org.nz", KNOWN, MEMORY),
}

EATING: dict[str, Helpline] = {
    "GB": Helpline(
        "Beat", "", "beateatingdisorders.org.uk", "doczz.net, booklet for carers, on what Beat is", SECOND_HAND
    ),
    "IE": Helpline("Bodywhys", "", "bodywhys.ie", KNOWN, MEMORY),
    "US": Helpline("ANAD", "", "anad.org", KNOWN, MEMORY),
    "CA": Helpline("NEDIC", "", "nedic.ca", KNOWN, MEMORY),
    "DE": Helpline("Bundesfachverband Essstörungen", "", "bundesfachverbandessstoerungen.de", KNOWN, MEMORY),
    "CH": Helpline("AES", "", "aes.ch", KNOWN, MEMORY),
    "FR": Helpline("Fédération Française Anorexie Boulimie", "", "ffab.fr", KNOWN, MEMORY),
    "AU": Helpline("Butterfly Foundation", "", "butterfly.org.au", KNOWN, MEMORY),
}

HELPLINES: dict[Topic, dict[str, Helpline]] = {Topic.CRISIS: CRISIS, Topic.EATING: EATING}


def helpline(topic: Topic, country: str) -> Helpline | None:
    """A helpline of a country; None if we know none: then say how to find one (`FIND_ONE`, or a doctor)."""
    return HELPLINES[topic].get(country.upper())
