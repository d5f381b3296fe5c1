"""Attachments of a message: a picture or a file, with its caption.

matplotlib is imported only when something is drawn.
"""

from __future__ import annotations

import io
from collections.abc import Callable, Mapping
from typing import Any

from bot.foundation.reader import Rendered
from bot.rendering import caseload_sheet, charts, closing, last_report, pages
from bot.rendering.closing_csv import closing_csv
from bot.rendering.phrases import cohort_figures
from bot.rendering.voice import Voice
from core.dialogue.client import messages as m
from core.dialogue.client import report_messages as rm
from core.dialogue.organiser import messages as om
from core.dialogue.staff import messages as sm
from core.dialogue.staff import talk_messages as tm

MakeAttachment = Callable[[Any, Voice], Rendered]


def picture(said: m.Picture, v: Voice) -> Rendered:
    return Rendered(
        photo=charts.draw(said.spec, v.reader),
        photo_name=charts.file_name(said.spec),
        caption=charts.caption(said.spec, v),
    )


def link_picture(said: sm.LinkPicture, v: Voice) -> Rendered:
    """The link as a QR code, to show on a screen or to print."""
    import segno  # takes longer than the rest of startup

    buffer = io.BytesIO()
    segno.make(said.link, error="m").save(buffer, kind="png", scale=10, border=4)
    caption = v.say("The same link to scan with a phone, for {name}.", name=v.name(said.for_name))
    return Rendered(photo=buffer.getvalue(), photo_name="invitation.png", caption=caption)


def sheet(said: sm.Sheet, v: Voice) -> Rendered:
    """A caseload sheet, as a picture or as a file to print."""
    if said.pdf:
        name = v.plain("sheet-{day}.pdf", day=said.day.isoformat())
        return Rendered(document=(name, caseload_sheet.pdf(said, v.reader)), caption=caseload_sheet.caption(said, v))
    return Rendered(
        photo=caseload_sheet.picture(said, v.reader), photo_name="caseload.png", caption=caseload_sheet.caption(said, v)
    )


def caseload_page(said: sm.CaseloadPage, v: Voice) -> Rendered:
    """A caseload as a file to open in a browser."""
    people = v.say_n("{n} person, to read or to print.", "{n} people, to read or to print.", len(said.sections))
    caption = v.lines(v.say("The caseload on one page: {day}", day=v.full_date(said.day)), people)
    return Rendered(document=(f"caseload-{said.day}.html", pages.caseload_page(said, v.reader)), caption=caption)


def client_page(said: sm.ClientPage, v: Voice) -> Rendered:
    """One client likewise. The file's name does not say whose it is."""
    caption = v.say("{name} on one page, to read or to print.", name=v.name(said.section.card.name))
    return Rendered(document=(f"client-{said.day}.html", pages.client_page(said, v.reader)), caption=caption)


def client_file(said: tm.ClientFile, v: Voice) -> Rendered:
    """All readings of one client. The file's name does not say whose they are."""
    name = v.name(said.name)
    if said.form == "fhir":
        caption = v.say("The readings of {name} for another system (FHIR R4). The file does not name them.", name=name)
        return Rendered(document=(f"readings-{said.day}.json", said.content.encode()), caption=caption)
    caption = v.say("The readings of {name} as a table. Side notes are left out.", name=name)
    return Rendered(document=(f"readings-{said.day}.csv", said.content.encode()), caption=caption)


def client_picture(said: tm.ClientPicture, v: Voice) -> Rendered:
    """One measure of a client."""
    return Rendered(
        photo=charts.draw(said.spec, v.reader),
        photo_name=charts.file_name(said.spec),
        caption=v.lines(v.bold(v.name(said.name)), charts.caption(said.spec, v)),
    )


def practice_page(said: sm.PracticePage, v: Voice) -> Rendered:
    """A quarter of a practice as a page."""
    caption = v.say("The same on a page, to print or to send on. It names no client.")
    file = f"practice-{said.year}q{said.number}.html"
    return Rendered(document=(file, pages.practice_page(said, v.reader)), caption=caption)


def report_picture(said: rm.LastReportPicture, v: Voice) -> Rendered:
    """The last report for the client, as a picture or as a PDF."""
    if said.pdf:
        caption = v.say("Your report, to print or to show.")
        return Rendered(
            document=(f"report-{said.report.ended}.pdf", last_report.pdf(said.report, v.reader)), caption=caption
        )
    caption = last_report.caption(said.report, v)
    return Rendered(photo=last_report.picture(said.report, v.reader), photo_name="report.png", caption=caption)


def report_for_coach(said: rm.ReportForCoach, v: Voice) -> Rendered:
    """The last report for the coach, as a page or as a PDF to send on."""
    report = said.report
    if said.pdf:
        caption = v.say("The report of {name}, fit to be sent on with their consent.", name=v.name(report.name))
        return Rendered(
            document=(f"report-{report.ended}.pdf", last_report.pdf_for_coach(report, v.reader)), caption=caption
        )
    caption = last_report.caption(report, v)
    return Rendered(document=(f"report-{report.ended}.html", pages.report_page(report, v.reader)), caption=caption)


def closing_picture(said: om.ClosingPicture, v: Voice) -> Rendered:
    """The closing report as a picture."""
    caption = v.lines(
        v.say("{name}, at a glance", name=v.bold(v.name(said.report.name))), *cohort_figures.took_part(v, said.report)
    )
    return Rendered(photo=closing.picture(said.report, v.reader), photo_name="closing.png", caption=caption)


def closing_file(said: om.ClosingFile, v: Voice) -> Rendered:
    """The closing report as a file: to print, or to process further."""
    caption = v.say("The closing report of {name}", name=v.name(said.report.name))
    if said.kind == "page":
        return Rendered(document=("closing.html", pages.closing_page(said.report, v.reader)), caption=caption)
    if said.kind == "csv":
        return Rendered(document=("closing.csv", closing_csv(said.report)), caption=caption)
    return Rendered(document=("closing.pdf", closing.pdf(said.report, v.reader)), caption=caption)


ATTACHMENTS: Mapping[type, MakeAttachment] = {
    m.Picture: picture,
    sm.LinkPicture: link_picture,
    sm.Sheet: sheet,
    sm.CaseloadPage: caseload_page,
    sm.ClientPage: client_page,
    sm.PracticePage: practice_page,
    tm.ClientFile: client_file,
    tm.ClientPicture: client_picture,
    rm.LastReportPicture: report_picture,
    rm.ReportForCoach: report_for_coach,
    om.ClosingPicture: closing_picture,
    om.ClosingFile: closing_file,
}


def attachment_for(kind: type) -> MakeAttachment | None:
    return ATTACHMENTS.get(kind)
