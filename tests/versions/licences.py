"""The licence of everything that is installed to run or test the bot, and whether we can live with it.

python -m tests.versions.licences     lists them
"""

from __future__ import annotations

import re
from importlib.metadata import PackageNotFoundError, metadata

from tests.versions.declared import HASHES_OF_A_WORKER, hashes, holds_here, name_of, pins, read

# As packages put it, in full or as an expression, and our word for it; the first that fits.
KNOWN = (
    (r"apache", "Apache-2.0"),
    (r"bsd|3-clause|2-clause", "BSD"),
    (r"\bmit\b|mit license|expat", "MIT"),
    (r"mozilla|mpl", "MPL-2.0"),
    (r"lesser|lgpl", "LGPL"),
    (r"gpl|general public", "GPL"),
    (r"python software foundation|psf", "PSF-2.0"),
    (r"unicode|public domain|0bsd|zero-clause|cc0|unlicense", "public domain"),
    (r"isc", "ISC"),
    (r"zlib|hpnd|historical permission", "permissive"),
    (r"matplotlib", "PSF-2.0"),
)
LENIENT = frozenset({"Apache-2.0", "BSD", "MIT", "PSF-2.0", "public domain", "ISC", "permissive", "MPL-2.0"})
# Used as a library of its own, unchanged: then these ask for nothing but that it can be exchanged.
LINKED = {"python-telegram-bot": "LGPL", "psycopg": "LGPL", "psycopg-binary": "LGPL"}


def licence_of(name: str) -> str:
    """What a package says of its licence, in one of our words; "" where it is not installed here."""
    try:
        said = metadata(name)
    except PackageNotFoundError:
        return ""
    classifiers = [line for line in said.get_all("Classifier") or [] if line.startswith("License ::")]
    for text in (said.get("License-Expression"), *classifiers, said.get("License")):
        for pattern, word in KNOWN:
            if text and re.search(pattern, text[:500], re.IGNORECASE):
                return word
    return "unknown"


def listed() -> dict[str, str]:
    """Every package that is pinned for this machine, and its licence."""
    return {name_of(pin): licence_of(pin.name) for pin in pins() if holds_here(pin)}


def of_a_worker() -> set[str]:
    """The names of what a worker is run with."""
    return {name_of(one) for pin in hashes(HASHES_OF_A_WORKER) for one in read(pin)}


if __name__ == "__main__":
    worker = of_a_worker()
    for name, licence in sorted(listed().items()):
        print(f"{name:32} {licence or 'not installed':16} {'' if name in worker else 'to test with'}")
