"""May one more pooled figure be told, beside those that were? Whoever hears several can subtract them.

A figure is a sum over cells: whose answer, of which day. It is told only if

1. it is about five people or more;
2. what it has more than any figure that was told, and what that has more than it, is nothing or about five or more;
3. afterwards no combination of told figures, added and subtracted in whatever multiples, is about fewer than five.

This holds over time: a figure that was told counts for ever, also when somebody in it has left or is erased, and the
figures of all groups with an answer in common are looked at together.

How the third is checked. Figures are rows, cells are columns. A combination that is about the people in U alone is one
that is nothing everywhere else; there is one exactly if the rows have a smaller rank without the columns of U (what
vanishes outside U is as large as the one rank less the other). Only people whose answers stand in other figures than
everybody else's can be singled out, and those who stand in the same figures only together, so few U need looking at. If
they are too many to try, nothing is told.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from datetime import date

LEAST_PEOPLE = 5  # a figure for fewer reveals too much about each
MOST_TRIES = 2_000  # ours: groups of people tried for one figure; beyond that it is withheld
_PRIME = 2**61 - 1  # ranks are computed modulo a prime: a coincidence is one in 10^17

Cell = tuple[str, date]  # whose answer, of which day
Figure = frozenset[Cell]


def people_in(figure: Iterable[Cell]) -> frozenset[str]:
    """Everybody a figure is about."""
    return frozenset(who for who, _ in figure)


def may_be_told(told: Iterable[Figure], figure: Figure) -> bool:
    """Whether a figure of one quantity may be told beside all those of this quantity that were."""
    if len(people_in(figure)) < LEAST_PEOPLE:
        return False
    rows = _connected(frozenset(told) - {figure}, figure)
    pairs = ((figure, other) for other in rows[1:] if not figure.isdisjoint(other))
    return all(_far_enough(*pair) for pair in pairs) and not _singles_out(rows)


def _far_enough(one: Figure, other: Figure) -> bool:
    """Whether each has nothing more than the other, or answers of five people."""
    return all(not more or len(people_in(more)) >= LEAST_PEOPLE for more in (one - other, other - one))


def _connected(told: Iterable[Figure], figure: Figure) -> list[Figure]:
    """The figure, and those that share an answer with it or with one of them: no other can be of use to anybody."""
    found, rest, reached = [figure], list(told), set(figure)
    while True:
        near = [other for other in rest if not reached.isdisjoint(other)]
        if not near:
            return found
        found += near
        rest = [other for other in rest if other not in near]
        reached.update(*near)


def _singles_out(rows: Sequence[Figure]) -> bool:
    """Whether a combination of figures is about one to four people."""
    if len(rows) == 1:
        return False
    columns: dict[Cell, int] = Counter()  # which rows a cell is in, as bits
    for number, row in enumerate(rows):
        for cell in row:
            columns[cell] |= 1 << number
    standing: dict[str, set[int]] = {}  # in which columns somebody's answers are
    for (who, _), column in columns.items():
        standing.setdefault(who, set()).add(column)
    alike = Counter(frozenset(where) for where in standing.values())
    whole = _rank({column for where in alike for column in where}, len(rows))
    for tries, apart in enumerate(_few([where for where, n in alike.items() if n < LEAST_PEOPLE], alike)):
        if tries >= MOST_TRIES:
            return True
        if _rank({column for where in alike if where not in apart for column in where}, len(rows)) < whole:
            return True
    return False


def _few(kinds: Sequence[frozenset[int]], alike: Counter[frozenset[int]]) -> Iterator[tuple[frozenset[int], ...]]:
    """Every choice of kinds of people, all of a kind or none, that are fewer than five together; the largest first."""

    def choices(start: int, left: int) -> Iterator[tuple[frozenset[int], ...]]:
        for n in range(start, len(kinds)):
            if alike[kinds[n]] <= left:
                for more in choices(n + 1, left - alike[kinds[n]]):
                    yield (kinds[n], *more)
                yield (kinds[n],)

    return choices(0, LEAST_PEOPLE - 1)


def _rank(columns: Iterable[int], rows: int) -> int:
    """The rank of a matrix of zeros and ones, given by its columns as bits."""
    basis: dict[int, list[int]] = {}  # by the row of its leading one
    for column in sorted(columns):
        vector = [column >> n & 1 for n in range(rows)]
        for lead, known in basis.items():
            if factor := vector[lead]:
                vector = [(a - factor * b) % _PRIME for a, b in zip(vector, known, strict=True)]
        lead = next((n for n, value in enumerate(vector) if value), -1)
        if lead >= 0:
            scale = pow(vector[lead], -1, _PRIME)
            basis[lead] = [value * scale % _PRIME for value in vector]
    return len(basis)
