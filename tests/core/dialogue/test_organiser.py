"""An organiser's conversation: a cohort set up in six short answers, managed, closed; anybody else is only told that it
is not theirs."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, time
from decimal import Decimal
from typing import Any

import pytest

from core.care import Slot
from core.dialogue.commands import STAFF, STAFF_BUTTONS
from core.dialogue.engines import staff
from core.dialogue.kit.commands import Who
from core.dialogue.kit.events import Press
from core.dialogue.kit.messages import KeptAsItWas, NotForThisRole
from core.dialogue.organiser import cohorts
from core.dialogue.organiser import messages as om
from core.dialogue.organiser.commands import BUTTONS
from core.dialogue.staff import cohort_effects as fx
from core.dialogue.staff import effects as sfx
from core.dialogue.staff.cohort_states import PlanningCohort
from core.dialogue.staff.facts import CohortFact, MemberFact
from core.dialogue.staff.states import FRESH_STAFF
from core.watching.cohort import Closing, CohortWeek, Counted, Sum, Terms
from tests.core.dialogue.office import LONDON, NOW, Office

COHORT_VERBS = {button.verb for button in BUTTONS}
SLOT = Slot(0, time(18), "Europe/London")
TERMS = Terms(date(2026, 3, 2), 6, SLOT, Counted.MINUTES)
ADA, BEN = MemberFact(1, "Ada", date(2026, 3, 1)), MemberFact(2, "Ben", date(2026, 3, 9), date(2026, 3, 20))
SUMS = (Sum(Counted.MINUTES, None, None),)
HIDDEN = CohortWeek(0, None, None, None, None)
REPORT = Closing("Spring steps", TERMS.starts, TERMS.last, 6, 2, 1, 8, 7, (HIDDEN,), SUMS, ())


def spring(**more: Any) -> CohortFact:
    usual: dict[str, Any] = {
        "members": (ADA, BEN),
        "weeks": (CohortWeek(0, 6, 5, None, None), CohortWeek(1, 6, 6, 6, 700)),
    }
    return CohortFact(3, "Spring steps", TERMS, LONDON, **(usual | more))


def olga(*cohorts: CohortFact, **facts: Any) -> Office:
    """An organiser who is no coach. It is Monday, 30 March 2026."""
    office = Office(coach_id=None, organiser_id=4, slot=None, name="Olga", **facts)
    office.cohorts = cohorts
    return office


def rowan(*cohorts: CohortFact) -> Office:
    office = Office(organiser_id=4)
    office.cohorts = cohorts
    return office


# --- setting one up ---------------------------------------------------------------------------------------------


def test_a_coach_starts_a_cohort_with_a_name_and_five_buttons() -> None:
    office = rowan()
    assert office.commands("cohort").heard(om.AskCohortName).first
    assert office.says("Spring steps").heard(om.AskCohortStart).name == "Spring steps"
    assert office.choices[:3] == ["costart:2026-04-06", "costart:2026-04-13", "costart:2026-04-20"]
    office.presses("costart:2026-04-06").heard(om.AskCohortWeeks)
    assert office.presses("coweeks:6").heard(om.AskCohortTime).weekday == 0
    office.presses("cotime:18:00").heard(om.AskCohortCounts)
    office.presses("cocounts:activity_minutes").heard(om.AskCohortMost)
    assert office.choices[:5] == ["comost:10", "comost:20", "comost:30", "comost:50", "comost:100"]
    made = office.presses("comost:30").heard(om.CohortMade)
    assert (made.first, made.last) == (date(2026, 4, 6), date(2026, 5, 18))
    assert office.did(fx.StartCohort) == [
        fx.StartCohort("Spring steps", date(2026, 4, 6), 6, SLOT, "activity_minutes", 30, 7)
    ]
    assert office.state.asking is None


def test_every_answer_can_be_typed_as_well() -> None:
    office = rowan().commands("cohort", "Spring steps").says("20 April").says("eight weeks").says("Tuesday 7:30")
    labels = {"counts:sessions": "Exercise sessions"}
    office.facts = replace(office.facts, label=lambda key, argument: labels.get(key, key))
    office.says("exercise sessions").says("45")
    assert office.did(fx.StartCohort) == [
        fx.StartCohort("Spring steps", date(2026, 4, 20), 8, Slot(1, time(7, 30), "Europe/London"), "sessions", 45, 7)
    ]


def test_an_organiser_who_is_no_coach_names_who_looks_after_newcomers_or_nobody() -> None:
    office = (
        olga().commands("cohort", "Steps").presses("costart:2026-04-06").presses("coweeks:4").presses("cotime:08:00")
    )
    office.presses("cocounts:check_ins").presses("comost:20").heard(om.AskCohortCoach)
    assert office.did(fx.StartCohort) == []
    undecided = office.state
    (made,) = office.presses("cocoach:0").did(fx.StartCohort)
    assert made.coach_id == 8
    office.state = undecided
    (made,) = office.presses("cocoach:none").did(fx.StartCohort)
    assert made.coach_id is None


def test_where_there_is_no_coach_at_all_nobody_is_asked_for_one() -> None:
    office = olga()
    office.others = ()
    office.commands("cohort", "Steps").presses("costart:2026-04-06").presses("coweeks:4").presses("cotime:08:00")
    (made,) = office.presses("cocounts:check_ins").presses("comost:20").did(fx.StartCohort)
    assert made.coach_id is None


@pytest.mark.parametrize(
    ("question", "typed"),
    [
        ("start", "yesterday"), ("start", "1 March 2020"), ("start", "1 March 2029"), ("start", "soon"),
        ("weeks", "3"), ("weeks", "13"), ("weeks", "a few"), ("weeks", "4 or 5"),
        ("time", "whenever"), ("counts", "kilos"), ("most", "4"), ("most", "501"), ("most", "plenty"),
        ("coach", "Nobody I know"),
    ],
)  # fmt: skip
def test_an_answer_that_is_not_understood_is_asked_again_and_nothing_is_made(question: str, typed: str) -> None:
    office = olga()
    office.state = replace(
        office.state, asking=PlanningCohort(question, "Steps", date(2026, 4, 6), 6, 0, "18:00", "sessions")
    )
    office.says(typed)
    assert office.heard(om.CohortUnclear).question == question
    assert isinstance(office.state.asking, PlanningCohort) and office.state.asking.question == question
    assert office.did(fx.StartCohort) == []


@pytest.mark.parametrize(
    "data", ["costart:2026-99-99", "coweeks:99", "cotime:03:33", "cocounts:weight", "comost:1", "cocoach:77"]
)
def test_a_button_nobody_made_starts_nothing(data: str) -> None:
    office = olga()
    question = {
        "costart": "start",
        "coweeks": "weeks",
        "cotime": "time",
        "cocounts": "counts",
        "comost": "most",
        "cocoach": "coach",
    }
    asking = PlanningCohort(question[data.partition(":")[0]], "Steps", date(2026, 4, 6), 6, 0, "18:00", "sessions")
    office.state = replace(office.state, asking=asking)
    office.presses(data).heard(om.CohortUnclear)


def test_setting_one_up_can_be_given_up_at_any_question() -> None:
    office = rowan().commands("cohort", "Steps").presses("cancel")
    office.heard(KeptAsItWas)
    assert office.state.asking is None
    office.commands("cohort", "Steps").says("stop").heard(KeptAsItWas)
    assert office.state.asking is None


def test_a_button_of_a_question_that_is_over_only_shows_the_list() -> None:
    office = rowan(spring()).presses("coweeks:6")
    assert office.kinds == ["CohortList"]
    assert office.did(fx.StartCohort) == []


# --- looking after one ------------------------------------------------------------------------------------------


def test_the_list_names_every_cohort_with_its_stage() -> None:
    coming = spring(members=())
    coming = replace(coming, cohort_id=5, terms=replace(TERMS, starts=date(2026, 5, 4)))
    office = olga(spring(), coming, spring(closed=True, closing=REPORT), spring(closed=True)).commands("cohort")
    assert [r.stage for r in office.heard(om.CohortList).rows] == ["running", "coming", "over", "called_off"]
    assert office.choices[:2] == ["cohort:3", "cohort:5"]


def test_a_page_shows_counts_and_figures_as_they_were_told() -> None:
    said = olga(spring(grouped=True)).presses("cohort:3").heard(om.CohortSaid)
    assert (said.here, said.gone, said.grouped, said.told) == (1, 1, True, spring().weeks)


def test_people_are_listed_by_name_and_only_who_is_in_can_be_taken_out() -> None:
    office = olga(spring(members=(BEN, ADA))).presses("copeople:3:0")
    assert office.heard(om.CohortPeople).people == (
        ("Ada", date(2026, 3, 1), None),
        ("Ben", date(2026, 3, 9), date(2026, 3, 20)),
    )
    assert [c for c in office.choices if c.startswith("coout")] == ["coout:3:1"]


def test_many_people_have_pages() -> None:
    many = tuple(MemberFact(n, f"P{n:02}", date(2026, 3, 1)) for n in range(20))
    office = olga(spring(members=many)).presses("copeople:3:1")
    said = office.heard(om.CohortPeople)
    assert (said.page, said.pages, len(said.people)) == (1, 3, cohorts.PAGE)
    assert {"copeople:3:0", "copeople:3:2"} <= set(office.choices)
    assert office.presses("copeople:3:99999").heard(om.CohortPeople).page == 2


def test_a_member_is_taken_out_only_after_a_yes() -> None:
    office = olga(spring()).presses("coout:3:1")
    assert office.heard(om.RemoveSure).name == "Ada"
    assert office.did(fx.RemoveMember) == []
    assert office.presses("cosure:remove:3:1").did(fx.RemoveMember) == [fx.RemoveMember(3, 1)]
    assert office.heard(om.MemberRemoved).name == "Ada"


def test_a_yes_can_be_typed_and_a_no_changes_nothing() -> None:
    assert olga(spring()).presses("coout:3:1").says("yes").did(fx.RemoveMember) == [fx.RemoveMember(3, 1)]
    office = olga(spring()).presses("coout:3:1").says("no")
    office.heard(KeptAsItWas)
    assert office.did(fx.RemoveMember) == []


def test_an_old_yes_is_no_yes() -> None:
    office = olga(spring()).presses("cosure:remove:3:1")
    assert (office.kinds, office.did(fx.RemoveMember)) == (["CohortList"], [])
    office.presses("coout:3:1").presses("cosure:end:3:0")
    assert office.did(fx.EndCohort) == []


def test_who_has_left_already_cannot_be_taken_out() -> None:
    assert olga(spring()).presses("coout:3:2").kinds == ["CohortNotYours"]


def test_a_joining_link_is_made_until_half_time_and_links_can_be_taken_back() -> None:
    coming = replace(spring(), terms=replace(TERMS, starts=date(2026, 3, 16)))
    assert olga(coming).presses("colink:3").did(fx.MakeJoinLink) == [fx.MakeJoinLink(3)]
    office = olga(spring()).presses("colink:3")  # half-time was a week ago
    assert office.heard(om.JoiningOver).until == date(2026, 3, 23)
    assert office.did(fx.MakeJoinLink) == []
    assert office.presses("corevoke:3").did(fx.RevokeJoinLinks) == [fx.RevokeJoinLinks(3)]


def test_a_group_chat_is_tied_by_a_link_and_untied_by_a_button() -> None:
    assert olga(spring()).presses("cogroup:3").did(fx.MakeGroupLink) == [fx.MakeGroupLink(3)]
    office = olga(spring(grouped=True)).presses("cogroup:3")
    office.heard(om.GroupIsTied)
    assert office.presses("countie:3").did(fx.UntieGroup) == [fx.UntieGroup(3)]


def test_ending_one_that_runs_makes_a_report_and_one_that_has_not_begun_is_called_off() -> None:
    office = olga(spring()).presses("coend:3")
    assert office.heard(om.EndCohortSure).begun
    assert office.presses("cosure:end:3:0").did(fx.EndCohort) == [fx.EndCohort(3)]
    coming = replace(spring(), terms=replace(TERMS, starts=date(2026, 5, 4)))
    office = olga(coming).presses("coend:3")
    assert not office.heard(om.EndCohortSure).begun
    office.presses("cosure:end:3:0").heard(om.CohortCalledOff)


def test_a_closed_cohort_shows_its_report_as_a_page_and_as_a_table_and_changes_no_more() -> None:
    closed = spring(closed=True, closing=REPORT)
    office = olga(closed)
    assert office.presses("coreport:3:pdf").heard(om.ClosingFile) == om.ClosingFile(REPORT, "pdf")
    assert office.presses("coreport:3:csv").heard(om.ClosingFile).kind == "csv"
    assert office.presses("coreport:3:x").heard(om.ClosingSaid).report is REPORT
    for data in ("colink:3", "corevoke:3", "coout:3:1", "cogroup:3", "countie:3", "coend:3"):
        assert office.presses(data).kinds == ["CohortSaid"], data
        assert [x for x in office.effects if type(x).__module__ == fx.__name__] == [], data


# --- whose, and who ---------------------------------------------------------------------------------------------

OF_ONE = (
    "cohort:9",
    "colink:9",
    "corevoke:9",
    "copeople:9:0",
    "coout:9:1",
    "cogroup:9",
    "countie:9",
    "coend:9",
    "coreport:9:csv",
)


@pytest.mark.parametrize(
    "data", [*OF_ONE, *(d.replace(":9", ":") for d in OF_ONE), *(d.replace(":9", ":3'--") for d in OF_ONE)]
)
@pytest.mark.parametrize("who", [olga, rowan])
def test_a_cohort_of_somebody_else_is_not_yours(data: str, who: Any) -> None:
    office = who(spring()).presses(data)
    assert office.kinds == ["CohortNotYours"]
    assert [x for x in office.effects if type(x).__module__ == fx.__name__] == []


@pytest.mark.parametrize("verb", sorted(STAFF_BUTTONS))
def test_an_organiser_who_is_no_coach_presses_no_coach_s_button(verb: str) -> None:
    office = olga(spring())
    office.presses(f"{verb}:1")
    if STAFF_BUTTONS[verb].who is Who.COACH:
        assert office.kinds == ["NotForThisRole"]
    assert not [x for x in office.effects if isinstance(x, sfx.WriteTo | sfx.ChangePlan | sfx.SaveNote | sfx.HandOver)]


@pytest.mark.parametrize("command", [row.name for row in STAFF if row.who is Who.COACH])
def test_an_organiser_who_is_no_coach_has_no_coach_s_command(command: str) -> None:
    assert olga(spring()).commands(command, "Ada").heard(NotForThisRole)


def test_an_organiser_needs_no_caseload_for_anything_of_a_cohort() -> None:
    """Nothing is loaded unless needed: no card, no row, no reading."""
    for verb in COHORT_VERBS:
        kinds = {type(n).__name__ for n in staff.needs(FRESH_STAFF, Press(NOW, f"{verb}:3"), "en")}
        assert kinds <= {"Cohorts", "OtherCoaches"}, verb


def test_no_message_to_an_organiser_can_hold_a_reading() -> None:
    """Only the paired means of the report are decimals, and those cover five or more people."""
    import dataclasses

    for kind in vars(om).values():
        if dataclasses.is_dataclass(kind) and kind.__module__ == om.__name__:
            assert not [
                f.name for f in dataclasses.fields(kind) if "Decimal" in str(f.type) or "Reading" in str(f.type)
            ]
    assert Decimal not in {type(getattr(REPORT, f.name)) for f in dataclasses.fields(REPORT)}


def test_a_coach_invites_an_organiser_by_name() -> None:
    office = rowan(spring()).presses("coinvite")
    office.heard(om.AskOrganiser)
    assert office.says("Olga").did(sfx.Invite) == [sfx.Invite("organiser", "Olga")]
    assert olga(spring()).presses("coinvite").heard(NotForThisRole)


def test_a_command_drops_a_half_made_cohort() -> None:
    office = rowan().commands("cohort", "Steps").commands("help")
    assert office.state.asking is None
