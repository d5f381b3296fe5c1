"""Citations by key: proper names and numbers, the same in every language."""

from __future__ import annotations

import pkgutil
from functools import lru_cache
from importlib import import_module

from core.sources import Seen, Source

PACKAGES = ("core.references", "core.measures")
MODULES = ("core.judging.assess", "core.judging.training_load")


@lru_cache(maxsize=1)
def all_sources() -> dict[str, Source]:
    """Every source named anywhere in the core, by key."""
    found: dict[str, Source] = {}
    names = list(MODULES)
    for package in PACKAGES:
        names.extend(f"{package}.{m.name}" for m in pkgutil.iter_modules(import_module(package).__path__))
    for name in names:
        for value in vars(import_module(name)).values():
            if isinstance(value, Source):
                found.setdefault(value.key, value)
    return found


def cited(key: str) -> str:
    """A citation in one line, with its population; the bare key if there is no such source."""
    source = all_sources().get(key)
    if source is None:
        return key.replace("_", " ")
    memory = "" if source.seen is not Seen.MEMORY else " [from memory]"
    return f"{source.cite.rstrip('.')}. {source.population[:1].upper()}{source.population[1:]}.{memory}"
