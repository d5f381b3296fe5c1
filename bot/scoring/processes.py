"""A long file by several processes: each reads all of it and scores its own people, and the rows meet again here.

Nobody's readings depend on anybody else's, so people are dealt out by their names. Results come back in blocks of
rows, as text, through a pipe that holds little: a process that is ahead waits, and nothing grows with the file.
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
from bot.scoring.order import FIRST_ROW, TICK, Advance
from bot.scoring.output import FORMS
from bot.scoring.scorer import Counts, Scorer
from bot.scoring.tabular import Columns, open_sheet
from core.client import Profile

WORTH_IT_FROM = 200_000  # rows; under that, what each process finds out anew may take longer than it saves
MOST = 4  # processes, if not told: more would wait for the one that writes
CHANGED = "The file was changed while it was read; start again."


class ScoringTask(NamedTuple):
    """What every process is told. path, columns: of the readings. to: a key of FORMS."""

    path: str
    columns: Columns
    profiles: Mapping[str, Profile]
    to: str


Block = tuple[list[int], list[str]]  # rows, counted from the first of the block, and their text


def how_many(rows: int) -> int:
    """Processes for a file of so many rows, when nobody said."""
    return min(MOST, _processors()) if rows >= WORTH_IT_FROM else 1


def _processors() -> int:
    """Those this program may use."""
    return len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count() or 1


def scored_by(processes: int, job: ScoringTask, rows: int, counts: Counts, advance: Advance) -> Iterator[str]:
    """The text of every row of a file in order of time, in the file's order, a block at a time.

    counts: of all processes are added to it at the end.

    Raises: UsageError for a file that has not `rows` rows any more; whatever a process raised.
    """
    between = FORMS[job.to].between
    with _started(processes, job) as pipes:
        for first in range(0, rows, TICK):
            texts: list[str | None] = [None] * min(TICK, rows - first)
            for pipe in pipes:
                block = _received(pipe)
                if isinstance(block, Counts):  # it is at the end already
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
    """The next word of a process; what it raised is raised here."""
    try:
        found: Block | Counts | Exception = pipe.recv()
    except (EOFError, OSError) as error:  # before a word, or in the middle of one
        raise ChildProcessError("a process that scored ended early; is there memory enough?") from error
    if isinstance(found, Exception):
        raise found
    return found


@contextmanager
def _started(processes: int, job: ScoringTask) -> Iterator[list[Connection]]:
    """Pipes to processes at work; whatever happens, none is left behind.

    They are started anew and not forked: what the parent holds (locks, threads, a progress bar) stays with it.
    """
    context = multiprocessing.get_context("spawn")
    pipes, running = [], []
    try:
        for share in range(processes):
            ours, theirs = context.Pipe(duplex=False)
            process = context.Process(target=_work, args=(share, processes, job, theirs), daemon=True)
            with _deaf_to_interrupts():
                process.start()
            theirs.close()  # so that its end is seen here
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
    """Ctrl-C waits for the end of this, and whoever is started in it never hears one: the parent ends its children."""
    if not hasattr(signal, "pthread_sigmask"):  # Windows
        yield
        return
    before = signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGINT})
    try:
        yield
    finally:
        signal.pthread_sigmask(signal.SIG_SETMASK, before)


def _work(share: int, processes: int, job: ScoringTask, pipe: Connection) -> None:
    """One process: the rows of its people, block by block, then its counts."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # where it could not be blocked from the start
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
    scorer, write = Scorer(own), FORMS[job.to].text
    with open_sheet(job.path, *job.columns) as sheet, no_hunt_for_cycles():
        rows = enumerate(sheet.rows(), start=FIRST_ROW)
        while block := list(islice(rows, TICK)):
            first, places, texts = block[0][0], [], []
            for number, (cells, beyond) in block:
                if _share(cells[0].strip(), processes) == share:
                    places.append(number - first)
                    texts.append(write(scorer.lines(number, cells, beyond)))
            yield places, texts
    yield scorer.counts


def _share(person: str, processes: int) -> int:
    return crc32(person.encode()) % processes


@contextmanager
def no_hunt_for_cycles() -> Iterator[None]:
    """No object here points back at another; looking for those that do takes a tenth of the time of a long file."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()
