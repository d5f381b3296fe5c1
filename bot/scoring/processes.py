"""Score a long file with several processes: each reads all of it and scores its own people; the rows are merged here.

Nobody's readings depend on anybody else's, so people are distributed by a hash of what they are filed under. Results
return as blocks of text through a pipe with little capacity: a process that is ahead waits, and memory does not grow
with the file.
"""

from __future__ import annotations

import gc
import multiprocessing
import os
import signal
from collections.abc import Iterator, Mapping
from contextlib import contextmanager, suppress
from itertools import islice
from multiprocessing.connection import Connection
from typing import NamedTuple
from zlib import crc32

from bot.foundation.errors import UsageError
from bot.scoring.dates import Order
from bot.scoring.identity import filed_under
from bot.scoring.order import FIRST_ROW, TICK, Advance
from bot.scoring.output import FORMS
from bot.scoring.scorer import Counts, Scorer
from bot.scoring.tabular import Columns, open_sheet
from core.client import Profile

WORTH_IT_FROM = 200_000  # rows; below that, warming up each process may take longer than it saves
MOST = 4  # processes by default: more would wait for the one that writes
CHANGED = "The file was changed while it was read; start again."


class ScoringTask(NamedTuple):
    """Parameters for every process. path, columns: of the readings. to: a key of FORMS. limits, dates: as of
    `Scorer`."""

    path: str
    columns: Columns
    profiles: Mapping[str, Profile]
    to: str
    limits: str
    dates: Order | None = None


Block = tuple[list[int], list[str]]  # row numbers, relative to the first of the block, and their text


def how_many(rows: int) -> int:
    """Default number of processes for a file of so many rows."""
    return min(MOST, _processors()) if rows >= WORTH_IT_FROM else 1


def _processors() -> int:
    """Processors available to this program."""
    return len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count() or 1


def scored_by(processes: int, job: ScoringTask, rows: int, counts: Counts, advance: Advance) -> Iterator[str]:
    """The text of every row of a chronological file, in file order, one block at a time.

    counts: totals of all processes are added to it at the end.

    Raises: UsageError if the file no longer has `rows` rows; whatever a process raised.
    """
    between = FORMS[job.to].between
    with _started(processes, job) as pipes:
        for first in range(0, rows, TICK):
            texts: list[str | None] = [None] * min(TICK, rows - first)
            for pipe in pipes:
                block = _received(pipe)
                if isinstance(block, Counts):  # it has already finished
                    raise UsageError(CHANGED)
                for place, text in zip(*block, strict=True):
                    texts[place] = text
            found = [text for text in texts if text is not None]
            if len(found) < len(texts):
                raise UsageError(CHANGED)
            yield between.join(found)
            advance(len(texts))
        for pipe in pipes:
            counted = _received(pipe)
            if not isinstance(counted, Counts):  # there are more rows
                raise UsageError(CHANGED)
            counts.add(counted)


def _received(pipe: Connection) -> Block | Counts:
    """Receive the next item from a process; re-raise what it raised."""
    try:
        found: Block | Counts | Exception = pipe.recv()
    except (EOFError, OSError) as error:  # before an item, or in the middle of one
        raise ChildProcessError("a scoring process ended early; is there enough memory?") from error
    if isinstance(found, Exception):
        raise found
    return found


@contextmanager
def _started(processes: int, job: ScoringTask) -> Iterator[list[Connection]]:
    """Pipes to running processes; none is left behind, whatever happens.

    They are spawned, not forked, so that they do not inherit the parent's locks, threads and progress bar.
    """
    context = multiprocessing.get_context("spawn")
    pipes, running = [], []
    try:
        for share in range(processes):
            ours, theirs = context.Pipe(duplex=False)
            process = context.Process(target=_work, args=(share, processes, job, theirs), daemon=True)
            with _deaf_to_interrupts():
                process.start()
            theirs.close()  # so that the end of the process is noticed here
            pipes.append(ours)
            running.append(process)
        yield pipes
    finally:
        for process in running:
            process.terminate()
        for process in running:
            process.join()
        for pipe in pipes:
            pipe.close()


@contextmanager
def _deaf_to_interrupts() -> Iterator[None]:
    """Block Ctrl-C until the end of this block, also in processes started in it: the parent ends its children."""
    if not hasattr(signal, "pthread_sigmask"):  # Windows
        yield
        return
    before = signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGINT})
    try:
        yield
    finally:
        signal.pthread_sigmask(signal.SIG_SETMASK, before)


def _work(share: int, processes: int, job: ScoringTask, pipe: Connection) -> None:
    """The main function of one process: the rows of its people, block by block, then its counts."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # on platforms where it could not be blocked
    with suppress(BrokenPipeError):  # the parent is gone
        try:
            for block in _blocks(share, processes, job):
                pipe.send(block)
        except BrokenPipeError:
            raise
        except Exception as error:
            pipe.send(error)


def _blocks(share: int, processes: int, job: ScoringTask) -> Iterator[Block | Counts]:
    own = {name: who for name, who in job.profiles.items() if _share(name, processes) == share}
    scorer, write = Scorer(own, dates=job.dates, limits=job.limits), FORMS[job.to].text
    shares: dict[str, int] = {}  # by spelling
    with open_sheet(job.path, *job.columns) as sheet, no_hunt_for_cycles():
        rows = enumerate(sheet.rows(), start=FIRST_ROW)
        while block := list(islice(rows, TICK)):
            first, places, texts = block[0][0], [], []
            for number, (cells, beyond) in block:
                mine = shares.get(cells[0])
                if mine is None:
                    mine = shares[cells[0]] = _share(filed_under(cells[0]), processes)
                if mine == share:
                    places.append(number - first)
                    texts.append(write(scorer.lines(number, cells, beyond)))
            yield places, texts
    yield scorer.counts


def _share(person: str, processes: int) -> int:
    return crc32(person.encode()) % processes


@contextmanager
def no_hunt_for_cycles() -> Iterator[None]:
    """Turn off cyclic garbage collection: nothing here has cycles, and it takes a tenth of the time for a long file."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()
