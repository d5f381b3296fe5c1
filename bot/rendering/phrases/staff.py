"""Messages to a coach or organiser: arriving, inviting, the caseload, changes, settings. They read numbers and reasons;
the reading level required of clients' texts does not apply."""

from __future__ import annotations

from bot.rendering.phrases import phrase
from bot.rendering.phrases.life import MEAN_IT
from bot.rendering.voice import N_, Html, Voice
from core.dialogue.commands import STAFF
from core.dialogue.kit.commands import Who
from core.dialogue.staff import messages as sm
from core.watching.digest import CaseRow
from core.watching.flags import Severity

NOT_A_DOCTOR = N_(
    "I do not diagnose and I am no emergency service. What is urgent reaches you here, but nobody watches this chat for"
    " you. Local advice and the client's own clinician come first."
)


def _commands(v: Voice, coach: bool) -> Html:
    return v.lines(*(v.say(line) for line in STAFF.help(Who.COACH if coach else Who.ORGANISER)))


@phrase(sm.StaffWelcome)
def staff_welcome(said: sm.StaffWelcome, v: Voice) -> str:
    if said.coach:
        what = v.say(
            "Welcome, {name}. I remind your clients of their weekly check-in, take their readings, tell change from"
            " chance, and bring you once a week what needs a person.",
            name=v.name(said.name),
        )
    else:
        what = v.say(
            "Welcome, {name}. Here you run groups that start together. You see how a group does, never anybody's"
            " readings.",
            name=v.name(said.name),
        )
    return v.paragraphs(what, _commands(v, said.coach), v.say(NOT_A_DOCTOR))


@phrase(sm.StaffHelp)
def staff_help(said: sm.StaffHelp, v: Voice) -> str:
    lead = v.say("Type a client's name, a command, or press a button.") if said.coach else v.say("You can use these:")
    return v.paragraphs(lead, _commands(v, said.coach), v.say(NOT_A_DOCTOR))


@phrase(sm.StaffNotSure)
def staff_not_sure(said: sm.StaffNotSure, v: Voice) -> str:
    if said.coach:
        return v.say(
            "I did not follow, and nobody else has got this. Type a client's name to see their card, or /help for all"
            " you can do."
        )
    return v.say("I did not follow. Send /help for all you can do.")


@phrase(sm.StaffGreeting)
def staff_greeting(said: sm.StaffGreeting, v: Voice) -> str:
    return v.say("Hello. What would you like to see?")


@phrase(sm.NotYours)
def not_yours(said: sm.NotYours, v: Voice) -> str:
    return v.say("There is nobody like that in your caseload.")


@phrase(sm.UsedForCare)
def used_for_care(said: sm.UsedForCare, v: Voice) -> str:
    return v.say(
        "This chat is one of staff, so it cannot be a client's as well. Please open that link from another account."
    )


# --- inviting ---------------------------------------------------------------------------------------------------


@phrase(sm.AskInvitee)
def ask_invitee(said: sm.AskInvitee, v: Voice) -> str:
    lead = v.say("Whom is the invitation for? Send their name.")
    return v.sentences(lead, v.say("Or choose a plan of yours first.")) if said.templates else lead


@phrase(sm.InvitationMade)
def invitation_made(said: sm.InvitationMade, v: Voice) -> str:
    return v.paragraphs(
        v.say("An invitation for <b>{name}</b>. Send them this link:", name=v.name(said.for_name)),
        Html(said.link),  # on its own line, and without direction marks that would be copied with it
        v.say("It works once, until this day: {day}.", day=v.day(said.until)),
    )


@phrase(sm.InvitationRevoked)
def invitation_revoked(said: sm.InvitationRevoked, v: Voice) -> str:
    if not said.for_name:
        return v.say("That link was used or taken back before. Nothing has changed.")
    return v.say(
        "Done. This one link for {name} does not work any more. Others for the same name still do.",
        name=v.name(said.for_name),
    )


@phrase(sm.TemplatesKept)
def templates_kept(said: sm.TemplatesKept, v: Voice) -> str:
    if not said.templates:
        return v.say("You have no templates. You can save one from a client's plan.")
    return v.say("Your templates: {names}.", names=v.listed([v.name(t) for t in said.templates]))


@phrase(sm.TemplateDropped)
def template_dropped(said: sm.TemplateDropped, v: Voice) -> str:
    return v.say("The template is gone: {name}.", name=v.name(said.template))


# --- the caseload -----------------------------------------------------------------------------------------------


@phrase(sm.NoClientsYet)
def no_clients_yet(said: sm.NoClientsYet, v: Voice) -> str:
    return v.say("You have no clients here yet. Send /invite and a name, and I make a link for them.")


@phrase(sm.NobodyFound)
def nobody_found(said: sm.NobodyFound, v: Voice) -> str:
    return v.say("Nobody in your caseload is called “{name}”.", name=v.name(said.query))


@phrase(sm.WhichClient)
def which_client(said: sm.WhichClient, v: Voice) -> str:
    return v.say("Whom do you mean? {names}", names=v.listed([v.name(n) for n in dict.fromkeys(said.names)]))


@phrase(sm.CaseloadList)
def caseload_list(said: sm.CaseloadList, v: Voice) -> str:
    order = v.say("those who need you first") if said.order == "need" else v.say("by name")
    head = v.say_n("<b>{n} client</b>, {order}", "<b>{n} clients</b>, {order}", said.total, order=order)
    if said.pages > 1:
        page = v.say("page {page} of {pages}", page=v.number(said.page + 1), pages=v.number(said.pages))
        head = v.listed([head, page])
    return v.paragraphs(head, v.lines(*(_row(v, row) for row in said.rows)))


MARKS = {Severity.URGENT: "‼️", Severity.THIS_WEEK: "❗", Severity.NOTE: "•"}
STATUS: dict[str, str] = {
    "invited": N_("invited"),
    "enrolling": N_("still answering the first questions"),
    "paused": N_("takes a break"),
    "left": N_("has left"),
    "finished": N_("the programme is over"),
}


def _row(v: Voice, row: CaseRow) -> Html:
    """One client in a list: a mark for the most serious flag, the name, and one fact."""
    from bot.rendering.phrases.coach import in_short

    order = list(Severity)
    worst = min((f for f in row.flags), key=lambda f: (order.index(Severity(f.severity)), f.seen), default=None)
    mark = MARKS[Severity(worst.severity)] if worst is not None else "–"
    name = v.bold(v.name(row.name))
    if worst is not None:
        about: str = in_short(v, worst.code)
        if row.status == "left":
            about = v.listed([about, v.say("care has ended")])
    elif row.status in STATUS:
        about = v.say(STATUS[row.status])
    elif row.answered is not None:
        about = v.say("last check-in: {day}", day=v.day(row.answered))
    else:
        about = v.say("no check-in yet")
    return v.sentences(Html(mark), v.say("{name}: {about}", name=name, about=about))


# --- the thread and the note ------------------------------------------------------------------------------------


@phrase(sm.ThreadSaid)
def thread_said(said: sm.ThreadSaid, v: Voice) -> str:
    if not said.words:
        return v.say("You and {name} have not written to each other yet.", name=v.name(said.name))
    lines = []
    for at, from_client, text in said.words:
        who = v.name(said.name) if from_client else v.say("You")
        lines.append(
            v.say(
                "<b>{who}</b>, {day}, {time}: {words}",
                who=who,
                day=v.local_day(at),
                time=v.local_time(at),
                words=v.typed(text, 280),
            )
        )
    return v.lines(*lines)


@phrase(sm.AskWhom)
def ask_whom(said: sm.AskWhom, v: Voice) -> str:
    return v.say("To whom? Choose, or type the name.")


@phrase(sm.AskWords)
def ask_words(said: sm.AskWords, v: Voice) -> str:
    return v.say(
        "What should I say to {name}? Your next message goes to them as it is, if you send it within ten minutes.",
        name=v.name(said.name),
    )


@phrase(sm.WordsSent)
def words_sent(said: sm.WordsSent, v: Voice) -> str:
    if said.reachable:
        return v.say("Sent to {name}. The answer comes here.", name=v.name(said.name))
    return v.say(
        "Kept for {name}, but messages to them do not arrive at the moment. Please reach them another way.",
        name=v.name(said.name),
    )


@phrase(sm.AskNote)
def ask_note(said: sm.AskNote, v: Voice) -> str:
    lead = v.say(
        "What should the note on {name} say? I do not show it to them, but it is in their data when they ask for it,"
        " and it goes along if you hand them over.",
        name=v.name(said.name),
    )
    return v.paragraphs(lead, v.say("Now it says: {note}", note=v.typed(said.note, 1000))) if said.note else lead


@phrase(sm.NoteSaved)
def note_saved(said: sm.NoteSaved, v: Voice) -> str:
    return v.say("The note on {name} is saved.", name=v.name(said.name))


# --- changes ----------------------------------------------------------------------------------------------------

CHOSEN: dict[str, str] = {
    "measures": N_("Done: the measures of {name} are changed, and they are told."),
    "interval": N_("Done: how often {name} is asked is changed, and they are told."),
    "slot": N_("Done: the day and time of {name} are changed, and they are told."),
    "directed_weighing": N_(
        "Done: {name} may weigh as often as their clinician asked, and is told. I do not slow them down, I take a"
        " number alone for a weight, and a fast gain reaches you at once."
    ),
    "directed_weighing_off": N_("Done: {name} is back to a weigh-in every few weeks."),
    "numbers": N_("Done: where the numbers of {name} go is changed, and they are told."),
    "cautions": N_("Done: the cautions of {name} are changed."),
    "baseline": N_("Done: from the next reading on, {name} is compared with a new start."),
    "planned_loss": N_("Done. What is planned for {name} is noted: it decides which loss of weight is a flag."),
    "programme": N_("Done: the programme of {name} has its weeks, and they are told."),
    "programme_open": N_("Done: the programme of {name} has no set end, and they are told."),
    "pressure_body": N_("Done: the blood pressure limits for {name} are changed."),
}


@phrase(sm.PlanChosen)
def plan_chosen(said: sm.PlanChosen, v: Voice) -> str:
    return v.say(CHOSEN.get(said.what, CHOSEN["measures"]), name=v.name(said.name))


@phrase(sm.AskMeasures)
def ask_measures(said: sm.AskMeasures, v: Voice) -> str:
    return v.say(
        "Which measures for {name}? Tick them, then press Done. Energy is asked every week anyway.",
        name=v.name(said.name),
    )


@phrase(sm.AskInterval)
def ask_interval(said: sm.AskInterval, v: Voice) -> str:
    return v.say_n(
        "How long between retests for {name}? It is {n} day now.",
        "How long between retests for {name}? It is {n} days now.",
        said.days,
        name=v.name(said.name),
    )


@phrase(sm.AskCautions)
def ask_cautions(said: sm.AskCautions, v: Voice) -> str:
    return v.say(
        "What should I bear in mind for {name}? Tick it, then press Done. It decides which measures are asked and how"
        " they are read.",
        name=v.name(said.name),
    )


@phrase(sm.AskPressureBody)
def ask_pressure_body(said: sm.AskPressureBody, v: Voice) -> str:
    return v.say("Whose blood pressure limits should I use for {name}?", name=v.name(said.name))


@phrase(sm.AskProgramme)
def ask_programme(said: sm.AskProgramme, v: Voice) -> str:
    name = v.name(said.name)
    ask = v.say("How many weeks is the programme of {name}? At its end you both get a report.", name=name)
    now = v.say_n("Now it is {n} week.", "Now it is {n} weeks.", said.now) if said.now else ""
    return v.sentences(ask, now)


@phrase(sm.AskSlotFor)
def ask_slot_for(said: sm.AskSlotFor, v: Voice) -> str:
    return v.say(
        "On which day should {name} check in? Choose, or type day and time, such as Tuesday 7:30.",
        name=v.name(said.name),
    )


@phrase(sm.AskBaseline)
def ask_baseline(said: sm.AskBaseline, v: Voice) -> str:
    return v.say(
        "A new baseline for {name}: all comparisons start again with their next readings, and older ones are history."
        " This cannot be taken back. Do it?",
        name=v.name(said.name),
    )


@phrase(sm.AskTemplateName)
def ask_template_name(said: sm.AskTemplateName, v: Voice) -> str:
    return v.say(
        "What should the template be called? It takes the plan of {name}, without what is theirs alone.",
        name=v.name(said.name),
    )


@phrase(sm.TemplateSaved)
def template_saved(said: sm.TemplateSaved, v: Voice) -> str:
    return v.say(
        "The template is saved: {name}. You can choose it when you invite somebody.", name=v.name(said.template)
    )


@phrase(sm.NoOtherCoach)
def no_other_coach(said: sm.NoOtherCoach, v: Voice) -> str:
    return v.say("There is no other coach here to hand anybody to. Whoever runs this server can invite one.")


@phrase(sm.AskHandOver)
def ask_hand_over(said: sm.AskHandOver, v: Voice) -> str:
    return v.say("To whom do you hand {name} over?", name=v.name(said.name))


@phrase(sm.HandOverSure)
def hand_over_sure(said: sm.HandOverSure, v: Voice) -> str:
    return v.say(
        "Hand {name} over to {to}? Both are told. You will no longer see the card, the answers or the note, from that"
        " moment on.",
        name=v.name(said.name),
        to=v.name(said.to),
    )


@phrase(sm.HandedOver)
def handed_over(said: sm.HandedOver, v: Voice) -> str:
    return v.say("{name} is with {to} now. Both are told.", name=v.name(said.name), to=v.name(said.to))


@phrase(sm.TakenOver)
def taken_over(said: sm.TakenOver, v: Voice) -> str:
    return v.say("{by} handed {name} over to you.", by=v.name(said.by), name=v.name(said.name))


@phrase(sm.AskEnd)
def ask_end(said: sm.AskEnd, v: Voice) -> str:
    return v.say(
        "End the care of {name}? They are told, nothing more is asked, and they leave your caseload. Their answers stay"
        " theirs.",
        name=v.name(said.name),
    )


@phrase(sm.CareEnded)
def care_ended(said: sm.CareEnded, v: Voice) -> str:
    return v.say("{name} is no longer in your caseload, and knows.", name=v.name(said.name))


# --- settings ---------------------------------------------------------------------------------------------------


@phrase(sm.StaffSettings)
def staff_settings(said: sm.StaffSettings, v: Voice) -> str:
    from bot.rendering.places import place_name

    digest: str = ""
    if said.digest:
        digest = v.say("Digest: {weekday}, {time}", weekday=v.weekday(said.weekday), time=v.time(said.at))
    return v.lines(
        v.say("This is how it is set for you. Press what you want to change."),
        digest,
        v.say("Place: {place}", place=v.name(place_name(said.zone_name, v.reader.language))),
        v.say("From 22:00 to 7:00 only what cannot wait reaches you.")
        if said.night
        else v.say("Urgent news reaches you at any hour."),
    )


@phrase(sm.AskDigestSlot)
def ask_digest_slot(said: sm.AskDigestSlot, v: Voice) -> str:
    return v.say("When should the digest come? Choose a day, or type day and time, such as Monday 8:00.")


@phrase(sm.AskStaffZone)
def ask_staff_zone(said: sm.AskStaffZone, v: Voice) -> str:
    return v.say("Which town's clock do you live by? Send its name, such as Lisbon.")


@phrase(sm.DigestSlotChanged)
def digest_slot_changed(said: sm.DigestSlotChanged, v: Voice) -> str:
    from bot.rendering.places import place_name

    return v.say(
        "Your digest comes every week: {weekday}, {time} ({place}). The next one: {day}.",
        weekday=v.weekday(said.weekday),
        time=v.time(said.at),
        place=v.name(place_name(said.zone_name, v.reader.language)),
        day=v.day(said.next),
    )


@phrase(sm.DigestStopped)
def digest_stopped(said: sm.DigestStopped, v: Voice) -> str:
    return v.say("No digest comes any more. What is urgent still reaches you, and /digest shows the week at any time.")


@phrase(sm.NightChanged)
def night_changed(said: sm.NightChanged, v: Voice) -> str:
    if said.night:
        return v.say("From 22:00 to 7:00 only what cannot wait reaches you. The rest comes at 7:00.")
    return v.say("Urgent news reaches you at any hour.")


@phrase(sm.StaffForgetSure)
def staff_forget_sure(said: sm.StaffForgetSure, v: Voice) -> str:
    if said.clients:
        return v.say_n(
            "You still look after {n} client. Please hand them over or end their care first, from their card, so that"
            " nobody is left alone. Then send /forget again.",
            "You still look after {n} clients. Please hand them over or end their care first, from their cards, so"
            " that nobody is left alone. Then send /forget again.",
            said.clients,
        )
    return v.paragraphs(
        v.say(
            "Do you want me to delete all I hold about you: your name, settings, templates and notes? It cannot be"
            " undone."
        ),
        v.say(MEAN_IT, words=v.plain("Yes, delete it all")),
    )


@phrase(sm.StaffForgotten)
def staff_forgotten(said: sm.StaffForgotten, v: Voice) -> str:
    return v.say("Done. I have deleted all of it. Take good care.")


@phrase(sm.SeenNoted)
def seen_noted(said: sm.SeenNoted, v: Voice) -> str:
    if not said.names:  # all that the digest told is over
        return v.say("Noted as seen.")
    return v.say_n("Noted as seen, for {n} client.", "Noted as seen, for {n} clients.", len(said.names))


@phrase(sm.NothingToDraw)
def nothing_to_draw(said: sm.NothingToDraw, v: Voice) -> str:
    return v.say("There is nothing to draw: nobody who is flagged has two readings of it yet.")
