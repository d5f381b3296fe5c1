"""One update of the local messenger, waiting to be fetched or delivered."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any


@dataclass(slots=True, frozen=True, eq=False)
class Update:
    """One update. `lane` is the queue within which order is guaranteed: a chat's messages, or one person's presses."""

    id: int
    kind: str
    payload: dict[str, Any]
    lane: tuple[str, int]
    expires: int

    def wire(self) -> dict[str, Any]:
        return {"update_id": self.id, self.kind: self.payload}
