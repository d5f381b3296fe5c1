"""The commands and buttons of an organiser: /cohort in their own chat, and those in a cohort's group."""

from __future__ import annotations

from core.dialogue.kit.commands import N_, Argument, HelpLine, NotListed, Who
from core.dialogue.organiser import cohorts, groups
from core.dialogue.organiser.groups import GroupCommand, GroupNeed
from core.dialogue.staff import rows
from core.dialogue.staff.rows import NEVER, About, StaffButton, StaffCommand
from core.dialogue.staff.step import Handler

COMMANDS = (
    StaffCommand(
        name="cohort",
        who=Who.STAFF,
        words=(),
        argument=Argument.WORDS,
        needs=rows.cohorts,
        act=cohorts.cohort,
        menu=N_("Start or look after a group"),
        help=(HelpLine(60, Who.STAFF, N_("/cohort – start a group, or look after one")),),
    ),
)

IN_A_GROUP = NotListed("a group has neither; the organiser's own chat says it with the group's link")
GROUP_COMMANDS = (
    GroupCommand(
        name="cohort bind",
        words=(),
        argument=Argument.NONE,
        needs=frozenset({GroupNeed.KNOWS, GroupNeed.FREE}),
        act=groups.bind,
        menu=IN_A_GROUP,
        help=IN_A_GROUP,
    ),
    GroupCommand(
        name="cohort unbind",
        words=(),
        argument=Argument.NONE,
        needs=frozenset(),
        act=groups.unbind,
        menu=IN_A_GROUP,
        help=IN_A_GROUP,
    ),
)


def _of_a_cohort(verb: str, act: Handler, decides: int) -> StaffButton:
    """A button under one cohort."""
    return StaffButton(verb=verb, who=Who.STAFF, about=About.COHORT, needs=rows.cohorts, act=act, decides=decides)


def _of_setting_up(verb: str, act: Handler, decides: int) -> StaffButton:
    """A button that does not name a cohort yet."""
    return StaffButton(verb=verb, who=Who.STAFF, about=About.NOBODY, needs=rows.cohorts, act=act, decides=decides)


BUTTONS = (
    _of_setting_up("cohorts", cohorts.listed, NEVER),
    _of_setting_up("conew", cohorts.begin, NEVER),
    _of_setting_up("costart", cohorts.answered("start"), 1),
    _of_setting_up("coweeks", cohorts.answered("weeks"), 1),
    _of_setting_up("cotime", cohorts.answered("time"), 1),
    _of_setting_up("cocounts", cohorts.answered("counts"), 1),
    _of_setting_up("comost", cohorts.answered("most"), 1),
    _of_setting_up("cocoach", cohorts.answered("coach"), 1),
    _of_a_cohort("cohort", cohorts.opened, NEVER),
    _of_a_cohort("colink", cohorts.join_link, 1),
    _of_a_cohort("corevoke", cohorts.revoke_links, 1),
    _of_a_cohort("copeople", cohorts.people, NEVER),
    _of_a_cohort("coout", cohorts.take_out, NEVER),
    _of_a_cohort("cogroup", cohorts.tie_group, NEVER),
    _of_a_cohort("countie", cohorts.untie_group, 1),
    _of_a_cohort("coend", cohorts.end, NEVER),
    _of_a_cohort("cosure", cohorts.sure, 1),
    _of_a_cohort("coreport", cohorts.report, NEVER),
    # Only a coach invites an organiser.
    StaffButton(
        verb="coinvite",
        who=Who.COACH,
        about=About.NOBODY,
        needs=rows.nothing,
        act=cohorts.invite_organiser,
        decides=NEVER,
    ),
)
