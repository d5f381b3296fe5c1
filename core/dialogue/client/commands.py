"""The commands of a client's chat."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from enum import StrEnum

from core.dialogue.client import (
    check_in,
    coach_thread,
    cohort_membership,
    corrections,
    help_and_menu,
    leaving,
    pausing,
    progress_and_goals,
    settings,
)
from core.dialogue.client.start import start
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.commands import N_, Argument, Chat, CommandRow, HelpLine, NotListed, OnLineOf, Table, Who
from core.language import Intent

Handler = Callable[[ClientStep, str], None]


class Stage(StrEnum):
    """The stage from which a client may use a command; before that, the open question is repeated."""

    ARRIVED = "arrived"
    CONSENTED = "consented"
    ENROLLED = "enrolled"


@dataclass(frozen=True, slots=True, kw_only=True)
class ClientCommand(CommandRow[Handler]):
    """stage: from when it can be used. Nothing to load is named: a client's facts are always complete."""

    chat: Chat = field(init=False, default=Chat.CLIENT)
    who: Who = field(init=False, default=Who.CLIENT)
    stage: Stage


COMMANDS: Table[ClientCommand] = Table(
    Chat.CLIENT,
    (
        ClientCommand(
            name="today",
            stage=Stage.ENROLLED,
            words=(Intent.TODAY, Intent.START, Intent.CONTINUE, Intent.REPEAT),
            argument=Argument.TEXT,
            act=lambda d, _: check_in.today(d),
            menu=N_("Start today's check-in"),
            help=(HelpLine(10, Who.CLIENT, N_("/today – what is due")),),
        ),
        ClientCommand(
            name="record",
            stage=Stage.ENROLLED,
            words=(Intent.RECORD,),
            argument=Argument.TEXT,
            act=lambda d, _: check_in.today(d),
            menu=N_("Send a reading"),
            help=(HelpLine(20, Who.CLIENT, N_("/record – send a number")),),
        ),
        ClientCommand(
            name="progress",
            stage=Stage.ENROLLED,
            words=(Intent.PROGRESS,),
            argument=Argument.WORDS,
            act=lambda d, words: progress_and_goals.progress(d, words.strip()),
            menu=N_("See a chart of your progress"),
            help=(HelpLine(30, Who.CLIENT, N_("/progress – your picture")),),
        ),
        ClientCommand(
            name="goal",
            stage=Stage.ENROLLED,
            words=(Intent.GOAL,),
            argument=Argument.NONE,
            act=lambda d, _: progress_and_goals.goal(d),
            menu=N_("Set a goal, or see it"),
            help=NotListed("/help is short: the menu and the settings offer it"),
        ),
        ClientCommand(
            name="pause",
            stage=Stage.ENROLLED,
            words=(Intent.PAUSE,),
            argument=Argument.SPOKEN,
            act=pausing.pause,
            menu=N_("Take a break"),
            help=(HelpLine(50, Who.CLIENT, N_("/pause – a break")),),
        ),
        ClientCommand(
            name="undo",
            stage=Stage.ENROLLED,
            words=(Intent.UNDO,),
            argument=Argument.NONE,
            act=lambda d, _: corrections.undo(d),
            menu=N_("Take back the last reading"),
            help=(HelpLine(40, Who.CLIENT, N_("/undo – take the last number back")),),
        ),
        ClientCommand(
            name="coach",
            stage=Stage.ENROLLED,
            words=(Intent.COACH,),
            argument=Argument.WORDS,
            act=coach_thread.message_coach,
            menu=N_("Send a word to your coach"),
            help=(HelpLine(60, Who.CLIENT, N_("/coach – a word to {coach}")),),
        ),
        ClientCommand(
            name="mydata",
            stage=Stage.ENROLLED,
            words=(Intent.MY_DATA,),
            argument=Argument.NONE,
            act=lambda d, _: leaving.my_data(d),
            menu=N_("Get everything we keep about you"),
            help=(HelpLine(80, Who.CLIENT, N_("/mydata and /forget – get it all, or delete it all")),),
        ),
        ClientCommand(
            name="forget",
            stage=Stage.CONSENTED,
            words=(Intent.FORGET,),
            argument=Argument.NONE,
            act=lambda d, _: settings.change(d, "forget"),
            menu=N_("Have everything about you deleted"),
            help=OnLineOf("mydata"),
        ),
        ClientCommand(
            name="help",
            stage=Stage.ENROLLED,
            words=(Intent.HELP, Intent.WHY, Intent.DONT_KNOW),
            argument=Argument.NONE,
            act=lambda d, _: help_and_menu.help_(d),
            menu=N_("What you can do here"),
            help=NotListed("whoever reads it has found it"),
        ),
        ClientCommand(
            name="settings",
            stage=Stage.ENROLLED,
            words=(Intent.SETTINGS,),
            argument=Argument.NONE,
            act=lambda d, _: settings.settings(d),
            menu=N_("Day, time, language and units"),
            help=(HelpLine(70, Who.CLIENT, N_("/settings – day, time, units, language")),),
        ),
        ClientCommand(
            name="cohort",
            stage=Stage.ENROLLED,
            words=(),
            argument=Argument.NONE,
            act=lambda d, _: cohort_membership.list_cohorts(d),
            menu=NotListed("most clients are in no cohort; who is in one has a button for it"),
            help=NotListed("most clients are in no cohort; who is in one has a button for it"),
        ),
        ClientCommand(
            name="start",
            stage=Stage.ARRIVED,
            words=(),
            argument=Argument.LINK,
            act=start,
            menu=NotListed("the messenger sends it by itself"),
            help=NotListed("the messenger sends it by itself"),
        ),
    ),
)
