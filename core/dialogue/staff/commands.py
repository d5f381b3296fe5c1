"""The commands and buttons of a coach, and those common to all staff. An organiser's are in
`core.dialogue.organiser`."""

from __future__ import annotations

from collections.abc import Mapping

from core.dialogue.kit.commands import N_, Argument, HelpLine, NotListed, OnLineOf, Who
from core.dialogue.kit.messages import KeptAsItWas
from core.dialogue.staff import caseload, digest, naming, plan, practice, rows, settings, undo, writing
from core.dialogue.staff.rows import NEVER, About, Needs, StaffButton, StaffCommand
from core.dialogue.staff.step import Handler, StaffStep
from core.language import Intent
from core.language.lexicon import Request

OF_A_COACH = (
    StaffCommand(
        name="caseload",
        who=Who.COACH,
        words=(),
        argument=Argument.WORDS,
        needs=rows.named,
        act=caseload.caseload,
        menu=N_("See your clients"),
        help=(HelpLine(10, Who.COACH, N_("/caseload – your clients, those who need you first; add a name to search")),),
    ),
    StaffCommand(
        name="invite",
        who=Who.COACH,
        words=(),
        argument=Argument.WORDS,
        needs=rows.templates,
        act=settings.invite,
        menu=N_("Invite a client"),
        help=(HelpLine(40, Who.COACH, N_("/invite NAME – a link for a new client")),),
    ),
    StaffCommand(
        name="client",
        who=Who.COACH,
        words=(),
        argument=Argument.WORDS,
        needs=rows.named,
        act=caseload.client,
        menu=N_("Open a client's card"),
        help=(HelpLine(20, Who.COACH, N_("/client NAME – one client's card: plan, results, flags, note")),),
    ),
    StaffCommand(
        name="digest",
        who=Who.COACH,
        words=(),
        argument=Argument.WORDS,
        needs=rows.digest_or_page,
        act=digest.asked,
        menu=N_("See this week's digest"),
        help=(HelpLine(50, Who.COACH, N_("/digest – the week so far; /digest pdf for a sheet to print")),),
    ),
    StaffCommand(
        name="page",
        who=Who.COACH,
        words=(),
        argument=Argument.WORDS,
        needs=rows.page_of,
        act=caseload.to_print,
        menu=N_("Get a page to read or print"),
        help=(
            HelpLine(55, Who.COACH, N_("/page – all your clients on one page to print; add a name for one of them")),
        ),
    ),
    StaffCommand(
        name="report",
        who=Who.COACH,
        words=(),
        argument=Argument.WORDS,
        needs=rows.quarter,
        act=practice.report,
        menu=N_("Report on a quarter of your practice"),
        help=(HelpLine(57, Who.COACH, N_("/report – a quarter of your practice in pooled figures, to send on")),),
    ),
    StaffCommand(
        name="picture",
        who=Who.COACH,
        words=(),
        argument=Argument.WORDS,
        needs=rows.named,
        act=caseload.picture,
        menu=N_("See a picture of one client"),
        help=(
            HelpLine(23, Who.COACH, N_("/picture NAME waist – a picture of one client; without a measure, a choice")),
        ),
    ),
    StaffCommand(
        name="export",
        who=Who.COACH,
        words=(),
        argument=Argument.WORDS,
        needs=rows.named,
        act=caseload.export,
        menu=N_("Get all readings of one client"),
        help=(HelpLine(56, Who.COACH, N_("/export NAME – all readings of one client as a file")),),
    ),
    StaffCommand(
        name=undo.NAME,
        who=Who.COACH,
        words=(Intent.UNDO,),
        argument=Argument.NONE,
        needs=rows.nothing,  # the client, who is in no argument, is loaded by the engine
        act=undo.undo,
        menu=N_("Undo what you did last"),
        help=(HelpLine(59, Who.COACH, N_("/undo – take back what you did last, where it can be taken back")),),
    ),
    StaffCommand(
        name="write",
        who=Who.COACH,
        words=(),
        argument=Argument.WORDS,
        needs=rows.addressed,
        act=caseload.write,
        menu=N_("Write to a client"),
        help=(HelpLine(30, Who.COACH, N_("/write NAME words – write to a client; the answer comes back here")),),
    ),
)

OF_ALL_STAFF = (
    StaffCommand(
        name="help",
        who=Who.STAFF,
        words=(Intent.HELP,),
        argument=Argument.NONE,
        needs=rows.nothing,
        act=settings.help_,
        menu=N_("What you can do here"),
        help=NotListed("whoever reads it has found it"),
    ),
    StaffCommand(
        name="settings",
        who=Who.STAFF,
        words=(Intent.SETTINGS,),
        argument=Argument.NONE,
        needs=rows.nothing,
        act=settings.settings,
        menu=N_("Day, time, language and units"),
        help=(
            HelpLine(70, Who.COACH, N_("/settings – when the digest comes, nights, place, language")),
            HelpLine(70, Who.ORGANISER, N_("/settings – place and language")),
        ),
    ),
    StaffCommand(
        name="mydata",
        who=Who.STAFF,
        words=(Intent.MY_DATA,),
        argument=Argument.NONE,
        needs=rows.nothing,
        act=settings.my_data,
        menu=NotListed("needed once in a long while; /help names it"),
        help=(HelpLine(80, Who.STAFF, N_("/mydata and /forget – get all I hold about you, or have it deleted")),),
    ),
    StaffCommand(
        name="forget",
        who=Who.STAFF,
        words=(Intent.FORGET,),
        argument=Argument.NONE,
        needs=rows.caseload,
        act=settings.forget,
        menu=NotListed("needed once; /help names it"),
        help=OnLineOf("mydata"),
    ),
    StaffCommand(
        name="start",
        who=Who.STAFF,
        words=(),
        argument=Argument.LINK,
        needs=rows.nothing,
        act=settings.start,
        menu=NotListed("the messenger sends it by itself"),
        help=NotListed("the messenger sends it by itself"),
    ),
)


def _cancel(d: StaffStep, value: str) -> None:
    d.ask(None)
    d.say(KeptAsItWas(), *settings.menu(d))


def _of_a_client(verb: str, act: Handler, decides: int, needs: Needs = rows.card) -> StaffButton:
    """A button on the card, the plan or the news of one client."""
    return StaffButton(verb=verb, who=Who.COACH, about=About.CLIENT, needs=needs, act=act, decides=decides)


def _of_a_coach(verb: str, needs: Needs, act: Handler, decides: int) -> StaffButton:
    return StaffButton(verb=verb, who=Who.COACH, about=About.NOBODY, needs=needs, act=act, decides=decides)


def _of_all_staff(verb: str, needs: Needs, act: Handler, decides: int) -> StaffButton:
    return StaffButton(verb=verb, who=Who.STAFF, about=About.NOBODY, needs=needs, act=act, decides=decides)


BUTTONS = (
    _of_a_client("card", caseload.open_card, NEVER),
    _of_a_client("thread", caseload.thread, NEVER),
    _of_a_client("clear", caseload.dealt_with, NEVER),
    _of_a_client("done", caseload.done, 2),
    _of_a_client("past", caseload.history, NEVER),
    _of_a_client("saw", caseload.mark_flag_seen, NEVER),
    _of_a_client("coyes", caseload.into_cohort(yes=True), NEVER),
    _of_a_client("cono", caseload.into_cohort(yes=False), NEVER),
    _of_a_client("write", caseload.write_to, NEVER, rows.card_or_caseload),
    _of_a_client("pick", caseload.pick, 1),
    _of_a_client("sendto", writing.send_to, 1),
    _of_a_client("unsend", writing.unsend, NEVER),
    _of_a_client("page", caseload.page_pressed, NEVER, rows.page),
    _of_a_client("export", caseload.export_pressed, NEVER),
    _of_a_client("picture", caseload.picture_pressed, NEVER),
    _of_a_client("note", caseload.note, NEVER),
    _of_a_client("unnote", caseload.take_note_back, NEVER),
    _of_a_client("name", naming.name, 2, rows.card_among_all),
    _of_a_client("plan", plan.plan, NEVER),
    _of_a_client("measures", plan.measures, 2),
    _of_a_client("interval", plan.interval, 2),
    _of_a_client("slot", plan.slot, NEVER),
    _of_a_client("slotday", plan.slot_day, 1),
    _of_a_client("slothour", plan.slot_hour, 1),
    _of_a_client("directed", plan.directed, 1),
    _of_a_client("loss", plan.loss, 1),
    _of_a_client("numbers", plan.numbers, 1),
    _of_a_client("bp", plan.pressure_body, 2),
    _of_a_client("programme", plan.programme, 2),
    _of_a_client("cautions", plan.cautions, 2),
    _of_a_client("baseline", plan.baseline, NEVER),
    _of_a_client("hand", plan.hand, 2, rows.card_and_coaches),
    _of_a_client("end", plan.end, NEVER),
    _of_a_client("sure", plan.sure, 1, rows.card_at_the_end),
    _of_a_client("template", plan.template, NEVER),
    _of_a_coach("list", rows.caseload, caseload.listed, NEVER),
    _of_a_coach("templates", rows.templates, plan.templates, NEVER),
    _of_a_coach("droptpl", rows.templates, plan.drop_template, 1),
    _of_a_coach("tpl", rows.templates, settings.with_template, 1),
    _of_a_coach("invite", rows.templates, settings.invite_pressed, NEVER),
    _of_a_coach("revoke", rows.nothing, settings.revoke, NEVER),
    _of_a_coach("digest", rows.flagged, digest.asked, NEVER),
    _of_a_coach("seen", rows.flagged, digest.seen, NEVER),
    _of_a_coach("report", rows.quarter, practice.report, NEVER),
    _of_a_coach("people", rows.caseload, digest.people, NEVER),
    _of_a_coach("sheet", rows.flagged, digest.sheet, NEVER),
    _of_a_coach("nodigest", rows.nothing, settings.no_digest, 0),
    _of_a_coach("deputy", rows.other_coaches, settings.deputy, 2),
    _of_a_coach("wait", rows.other_coaches, settings.wait, 1),
    _of_a_coach("night", rows.nothing, settings.night, 1),
    _of_all_staff("settings", rows.nothing, settings.settings, NEVER),
    _of_all_staff("help", rows.nothing, settings.help_, NEVER),
    _of_all_staff("own", rows.nothing, settings.own, 2),
    _of_all_staff("zone", rows.nothing, settings.zone, 1),
    _of_all_staff("forget", rows.caseload, settings.forget_pressed, 0),
    _of_all_staff("cancel", rows.nothing, _cancel, 0),
)

# What a request in plain words does: the same as this button; about one client, their number follows the verb.
REQUESTED: Mapping[Request, str] = {
    Request.ADD: "measures",
    Request.DROP: "measures",
    Request.PRIVATE: "plan",
    Request.DAY: "slot",
    Request.PAUSE: "card",
    Request.CORRECT: "card",
    Request.HAND_OVER: "hand",
    Request.BASELINE: "baseline",
    Request.RENAME: "name",
    Request.END: "end",
    Request.DONE: "clear",
    Request.LAST: "card",
    Request.ABOUT: "card",
    Request.DONE_THEM: "clear",
    Request.DIGEST_DAY: "own:digest",
    Request.QUIET: "settings",
    Request.EXPORT: "export",
    Request.PAGE: "page",
    Request.PICTURE: "picture",
    Request.PLAN: "plan",
    Request.NOTE: "note",
    Request.HISTORY: "past",
    Request.CARD: "card",
    Request.WRITE: "write",
    Request.THREAD: "thread",
    Request.STAND_IN: "deputy",
    Request.INVITE: "invite",
    Request.REPORT: "report",
    Request.NEEDS_ME: "digest",
    Request.CASELOAD: "list:need:0",
    Request.WEEK: "digest",
}
