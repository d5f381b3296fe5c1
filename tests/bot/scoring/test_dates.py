"""A file's dates are read in the one order all of them agree on; otherwise somebody is asked."""

import io
from datetime import date, timedelta
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.foundation.errors import UsageError
from bot.scoring import score
from bot.scoring.dates import Order, iso, order_of

DAY, MONTH = Order.DAY_FIRST, Order.MONTH_FIRST


def order(*cells: str, asked: Order | None = None) -> tuple[Order, str]:
    return order_of(enumerate(cells, 2), "past.csv", asked)


WRITTEN = {
    "1.2.2026": "2026-02-01",
    "01/02/2026": "2026-02-01",
    "1-2-26": "2026-02-01",
    "2026-02-01": "2026-02-01",
    "1. 2. 2026": "2026-02-01",
    " 01.02.2026 7:30 ": "2026-02-01T07:30:00",
    "1/2/2026, 19:05:30": "2026-02-01T19:05:30",
    "2026/2/1 07:30": "2026-02-01T07:30:00",
    "31.2.2026": None,
    "1.2/2026": None,
    "1.2.202": None,
    "yesterday": None,
    "1.2.2026 noon": None,
}


@pytest.mark.parametrize(("text", "found"), WRITTEN.items(), ids=WRITTEN)
def test_with_the_day_first(text: str, found: str | None) -> None:
    assert iso(text, DAY) == found


def test_where_the_order_is_not_known_only_a_year_in_front_is_read() -> None:
    assert iso("1.2.2026", None) is None
    assert iso("2026.2.1", None) == "2026-02-01"


@given(st.dates(date(2000, 1, 1), date(2099, 12, 31)), st.sampled_from(Order), st.sampled_from("./-"), st.booleans())
def test_whatever_is_written_in_an_order_is_read_back_in_it(day: date, how: Order, mark: str, short: bool) -> None:
    first, second = (day.day, day.month) if how is DAY else (day.month, day.day)
    assert iso(f"{first}{mark}{second}{mark}{day.year % 100 if short else day.year:02}", how) == day.isoformat()


@given(st.lists(st.dates(date(2020, 1, 1), date(2026, 12, 31)), min_size=1), st.sampled_from(Order))
def test_an_order_is_never_guessed(days: list[date], how: Order) -> None:
    """It is told only where the other one is impossible, or makes no difference."""
    cells = [f"{d.day}.{d.month}.{d.year}" if how is DAY else f"{d.month}/{d.day}/{d.year}" for d in days]
    other = MONTH if how is DAY else DAY
    read_otherwise = [iso(cell, other) for cell in cells]
    try:
        found, _ = order(*cells)
    except UsageError:
        assert None not in read_otherwise and read_otherwise != [d.isoformat() for d in days]
    else:
        assert [iso(cell, found) for cell in cells] == [d.isoformat() for d in days]


def test_one_date_decides_and_is_named() -> None:
    assert order("1.2.2026", "2026-02-02", "13.2.2026") == (
        DAY,
        "Dates are read day first, as row 4 shows (13.2.2026).",
    )
    assert order("02/13/2026")[0] is MONTH


def test_dates_that_fit_both_orders_are_asked_about() -> None:
    with pytest.raises(UsageError, match=r"fit two orders, like 1.2.2026 in row 3.*--dates day-first"):
        order("2.2.2026", "1.2.2026")
    assert order("1.2.2026", asked=MONTH) == (MONTH, "Dates are read month first, as asked.")


def test_dates_in_two_orders_are_refused_and_both_rows_named() -> None:
    with pytest.raises(UsageError, match=r"row 2 \(13.2.2026\).*row 4 \(2/14/2026\)"):
        order("13.2.2026", "1.2.2026", "2/14/2026", asked=DAY)


def test_an_order_asked_for_that_cannot_be_is_refused() -> None:
    with pytest.raises(UsageError, match="can only be day-first"):
        order("13.2.2026", asked=MONTH)


def test_where_nothing_depends_on_it_nothing_is_said() -> None:
    assert order("2026-02-01", "", "soon", "3.3.2026")[1] == ""


def test_score_asks_too(tmp_path: Path) -> None:
    (tmp_path / "readings.csv").write_text("person,taken_at,measure,value\nada,1.2.2026,waist,94\n")
    with pytest.raises(UsageError, match="--dates"):
        score(tmp_path / "readings.csv", None, "csv", io.StringIO(), io.StringIO())


def test_score_reads_them_too_in_the_order_of_time(tmp_path: Path) -> None:
    start = date(2026, 1, 5)
    days = [start + timedelta(weeks=8 * n) for n in range(3)]
    file = tmp_path / "readings.csv"
    rows = [f"ada,{d.day}.{d.month}.{d.year},waist,{94 - 5 * n}\n" for n, d in enumerate(days)]
    file.write_text("person,taken_at,measure,value\n" + "".join(reversed(rows)))
    out, err = io.StringIO(), io.StringIO()
    score(file, None, "csv", out, err)
    assert err.getvalue().startswith("Dates are read day first, as row 2 shows (27.4.2026). 3 rows scored")
    assert [line.split(",")[7] for line in out.getvalue().splitlines()[1:4]] == ["94", "94", ""]
