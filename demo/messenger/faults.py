"""Faults that tests can switch on, each for some methods, by probability or for the next few requests.

    delay          the answer is delayed by `ms`; the request is executed at once
    server_error   `code` (default 502) instead of an answer; nothing is executed
    reset          the connection is reset; nothing is executed
    too_many       429 with `retry_after`; nothing is executed
    silence        never an answer; nothing is executed
    lost_answer    executed, and then the connection is reset instead of an answer
    repeat         a confirmed update is repeated at the head of a batch
    shuffle        a batch of updates arrives in a different order
    late           an update is held back until `behind` later ones have been delivered (or nothing else is left)

Randomness comes from one seeded generator, so runs are reproducible.
"""

import random
from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Any

from demo.messenger.update import Update

REQUEST_KINDS = ("delay", "server_error", "reset", "too_many", "silence", "lost_answer")
UPDATE_KINDS = ("repeat", "shuffle", "late")


@dataclass(slots=True)
class Fault:
    """An active fault. `methods` are lower case, None for all; `left` counts down, None for unlimited."""

    kind: str
    methods: frozenset[str] | None
    probability: float
    left: int | None
    detail: dict[str, Any]


class Faults:
    """The active faults, and how often each has struck."""

    def __init__(self, seed: int = 0) -> None:
        self._random = random.Random(seed)
        self._requests: list[Fault] = []
        self._updates: list[Fault] = []
        self.struck: Counter[str] = Counter()

    def add(
        self,
        kind: str,
        *,
        methods: Iterable[str] | None = None,
        probability: float = 1.0,
        times: int | None = None,
        **detail: Any,
    ) -> None:
        """Switch a fault on: for `methods` (None: all), with `probability`, at most `times` times.

        detail: ms for delay, code for server_error, retry_after for too_many, behind for late.
        Raises: ValueError for a kind that is not in the list above.
        """
        if kind not in REQUEST_KINDS + UPDATE_KINDS:
            raise ValueError(f"no fault is called {kind!r}")
        only = None if methods is None else frozenset(method.lower() for method in methods)
        fault = Fault(kind, only, probability, times, detail)
        (self._requests if kind in REQUEST_KINDS else self._updates).append(fault)

    def clear(self) -> None:
        """Switch all faults off; the counts stay."""
        self._requests.clear()
        self._updates.clear()

    def for_request(self, method: str) -> list[Fault]:
        """The faults that strike this request; the caller applies them."""
        return self._striking(self._requests, method) if self._requests else []

    def late(self) -> int:
        """How many later updates a new one must wait for; 0 for none."""
        struck = self._striking([fault for fault in self._updates if fault.kind == "late"], "")
        return max((int(fault.detail.get("behind", 1)) for fault in struck), default=0)

    def tampered(self, batch: list[Update], confirmed: Sequence[Update]) -> list[Update]:
        """`batch` as modified by the faults."""
        if not self._updates:
            return batch
        for fault in self._striking([fault for fault in self._updates if fault.kind != "late"], ""):
            if fault.kind == "repeat" and confirmed:
                batch = [self._random.choice(confirmed), *batch]
            elif fault.kind == "shuffle":
                batch = self._random.sample(batch, len(batch))
        return batch

    def _striking(self, faults: list[Fault], method: str) -> list[Fault]:
        struck = []
        for fault in faults:
            if fault.left == 0 or (fault.methods is not None and method not in fault.methods):
                continue
            if fault.probability < 1 and self._random.random() >= fault.probability:
                continue
            if fault.left is not None:
                fault.left -= 1
            self.struck[fault.kind] += 1
            struck.append(fault)
        return struck
