"""A counter that can be awaited, so that drivers wait for a change instead of sleeping."""

import asyncio


class Signal:
    """Counts changes. `bump` is cheap if nobody waits, as in a benchmark."""

    def __init__(self) -> None:
        self.version = 0
        self._waiting: set[asyncio.Future[None]] = set()

    def bump(self) -> None:
        self.version += 1
        if self._waiting:
            for future in self._waiting:
                if not future.done():
                    future.set_result(None)
            self._waiting.clear()

    async def beyond(self, since: int, timeout: float) -> int:
        """The count once it is above `since`, or its value after `timeout` seconds."""
        if self.version <= since:
            future = asyncio.get_running_loop().create_future()
            self._waiting.add(future)
            try:
                await asyncio.wait_for(future, timeout)
            except TimeoutError:
                pass
            finally:
                self._waiting.discard(future)
        return self.version
