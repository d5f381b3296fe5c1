"""Pages of pooled figures: a cohort's closing report, and a quarter of a practice. They name nobody but the coach."""

from __future__ import annotations

from collections.abc import Sequence

from bot.foundation.reader import Reader
from bot.rendering.pages.paper import Sources, printed
from bot.rendering.pages.svg import Figure, bars, interval
from bot.rendering.pages.words import said_by_templates
from bot.rendering.phrases import cohort_figures, names, practice
from bot.rendering.voice import Voice, voice
from core.dialogue.staff.messages import PracticePage
from core.watching.cohort import Closing, Paired, TooFew


def closing_page(report: Closing, reader: Reader) -> bytes:
    """A cohort's closing report as HTML, UTF-8."""
    v = voice(reader)
    days = v.say("{first} to {last}", first=v.full_date(report.starts), last=v.full_date(report.last))
    attendance = bars(report.attendance, v, "attendance") if report.attendance else None
    sums = [cohort_figures.summed(v, one) for one in report.sums]
    title = v.name(report.name)
    return _page(title, [days, *cohort_figures.took_part(v, report), *sums], attendance, report.changes, v)


def practice_page(said: PracticePage, reader: Reader) -> bytes:
    """A practice report as HTML, UTF-8."""
    v = voice(reader)
    title = v.plain("Practice of {coach}: {quarter}", coach=v.name(said.coach), quarter=practice.quarter(v, said))
    return _page(title, practice.figures(v, said.report), None, said.report.changes, v)


def _page(
    title: str, summary: Sequence[str], attendance: Figure | None, changes: Sequence[Paired | TooFew], v: Voice
) -> bytes:
    drawn = [
        (names.measure(v, one.measure), cohort_figures.changed(v, one), interval(one, v, f"change-{n}"))
        for n, one in enumerate(changes, 1)
        if isinstance(one, Paired)
    ]
    return printed(
        "pooled.html",
        v,
        words=said_by_templates(v),
        title=title,
        summary=[line for line in summary if line],
        rule=v.say("No figure stands for fewer than five people, and none for anybody alone."),
        attendance_title=v.plain("Check-ins kept of those asked, week by week"),
        attendance=attendance,
        changes_title=v.plain("Mean change in the same people, with its 95 % interval"),
        changes=drawn,
        missing=[cohort_figures.changed(v, one) for one in changes if isinstance(one, TooFew)],
        sources=Sources(),
    )
