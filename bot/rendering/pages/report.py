"""The last report of a programme as a page for the coach, with bands, errors and sources."""

from __future__ import annotations

from bot.foundation.reader import Reader
from bot.rendering.pages.paper import Sources, printed
from bot.rendering.pages.results import view
from bot.rendering.pages.words import said_by_templates
from bot.rendering.phrases import programme
from bot.rendering.voice import voice
from core.dialogue.client.report import Report
from core.dialogue.client.results import Result


def report_page(report: Report, reader: Reader) -> bytes:
    """A report as HTML, UTF-8."""
    v, sources = voice(reader), Sources()
    told = (*report.changed, *report.unsure)
    rest = tuple(one for one in report.results if one not in told)
    numbered = iter(range(1, len(report.results) + 1))

    def part(title: str, results: tuple[Result, ...]) -> tuple[str, tuple[object, ...]]:
        return title, tuple(view(one, v, sources, f"result-{next(numbered)}") for one in results)

    parts = (
        part(v.plain("Changed beyond chance"), report.changed),
        part(v.plain("Cannot be told yet"), report.unsure),
        part(v.plain("Also measured"), rest),
    )
    care = v.say("Measured at home, with guidance. It shows a course; it is no diagnosis.")
    return printed(
        "report.html",
        v,
        words=said_by_templates(v),
        title=v.plain("The programme of {name}", name=v.name(report.name)),
        summary=[line for line in (programme.span(v, report), programme.attendance(v, report), care) if line],
        parts=[(title, found) for title, found in parts if found],
        goals=[programme.goal(v, one) for one in report.goals],
        goals_title=v.plain("Goals"),
        keep=programme.keep(v, report),
        keep_title=v.plain("What to keep doing"),
        sources=sources,
    )
