"""A report made when withheld figures still said how few people they were about no longer says so."""

from __future__ import annotations

import json
from datetime import UTC, date, datetime
from pathlib import Path

from sqlalchemy import MetaData, select

from bot.store import codec, migrate
from bot.store import schema as t
from bot.store.database import Database
from core.watching.cohort import Closing, CohortWeek, Counted, Sum, TooFew

AT = datetime(2026, 3, 30, 6, 30, tzinfo=UTC)
(MODULE,) = (Path(migrate.__file__).parent / "migrations" / "versions").glob("*_told.py")
BEFORE = f"{int(MODULE.name[:4]) - 1:04}"
WEEKS = (CohortWeek(0, 6, 5, None, None), CohortWeek(1, None, None, None, None), CohortWeek(2, 6, 6, 6, 700))
REPORT = Closing(
    "Spring", date(2026, 3, 2), date(2026, 3, 30), 4, 6, 6, 16, 14, WEEKS, (Sum(Counted.MINUTES, None, None),),
    (TooFew("hip"),),
)  # fmt: skip


def as_it_was() -> str:
    """The report as the version before wrote it."""
    made = json.loads(codec.dumps(REPORT))
    for week, people in zip(made["attendance"], (0, 4, 6), strict=True):
        week.update(people=people)
    made["attendance"][1].update(asked=4, kept=1)
    made["sums"][0].update(people=3)
    del made["sums"][0]["weeks"]
    made["changes"][0].update(n=3)
    return json.dumps(made)


def test_nothing_of_an_old_report_says_of_how_few_it_was(empty: Database) -> None:
    migrate.upgrade(empty.engine, BEFORE)
    old = MetaData()
    old.reflect(empty.engine)
    with empty.engine.begin() as conn:
        row = {"name": "Spring", "starts": date(2026, 3, 2), "weeks": 4, "created_at": AT, "language": "en"}
        if conn.dialect.name == "sqlite":
            row["created_at"] = AT.replace(tzinfo=None)
        conn.execute(old.tables["cohorts"].insert().values(id=1, closing=as_it_was(), **row))
        for week, (asked, kept, people) in zip(WEEKS, ((6, 5, 0), (4, 1, 4), (6, 6, 6)), strict=True):
            told = {"asked": asked, "kept": kept, "people": people, "total": week.total, "told_at": row["created_at"]}
            conn.execute(old.tables["cohort_weeks"].insert().values(cohort_id=1, number=week.number, **told))
    migrate.upgrade(empty.engine)
    weeks = empty.read_now(lambda conn: conn.execute(select(t.cohort_weeks).order_by(t.cohort_weeks.c.number)).all())
    assert [CohortWeek(w.number, w.asked, w.kept, w.people, w.total) for w in weeks] == list(WEEKS)
    (closing,) = empty.read_now(lambda conn: conn.execute(select(t.cohorts.c.closing)).scalars().all())
    assert codec.loads_as(Closing, closing) == REPORT
