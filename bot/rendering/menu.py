"""Descriptions of the commands, for the messenger's menu beside the text field."""

from __future__ import annotations

from bot.foundation.reader import Reader
from bot.rendering.voice import N_, voice

DESCRIPTIONS = {
    "today": N_("Start today's check-in"),
    "record": N_("Send a reading"),
    "progress": N_("See a chart of your progress"),
    "goal": N_("Set a goal, or see it"),
    "pause": N_("Take a break"),
    "undo": N_("Take back the last reading"),
    "coach": N_("Send a word to your coach"),
    "mydata": N_("Get everything we keep about you"),
    "forget": N_("Have everything about you deleted"),
    "help": N_("What you can do here"),
    "settings": N_("Day, time, language and units"),
    "caseload": N_("See your clients"),
    "invite": N_("Invite a client"),
    "client": N_("Open a client's card"),
    "digest": N_("See this week's digest"),
    "write": N_("Write to a client"),
    "cohort": N_("Start or look after a group"),
}


def describe(command: str, language: str) -> str:
    """The description of a command. Raises: KeyError if it has none; a test checks that all do."""
    return voice(Reader(language)).plain(DESCRIPTIONS[command])
