"""All commands and buttons, collected from the packages that own them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from core.dialogue.client import buttons as client_buttons
from core.dialogue.client import commands as client
from core.dialogue.client.buttons import ClientButton
from core.dialogue.kit.commands import Chat, Table
from core.dialogue.organiser import commands as organiser
from core.dialogue.organiser.groups import GroupCommand
from core.dialogue.staff import commands as staff
from core.dialogue.staff.rows import StaffButton, StaffCommand, by_verb

CLIENT = client.COMMANDS
STAFF: Table[StaffCommand] = Table(Chat.STAFF, (*staff.OF_A_COACH, *organiser.COMMANDS, *staff.OF_ALL_STAFF))
GROUP: Table[GroupCommand] = Table(Chat.GROUP, organiser.GROUP_COMMANDS)
TABLES: Mapping[Chat, Table[Any]] = {table.chat: table for table in (CLIENT, STAFF, GROUP)}

CLIENT_BUTTONS: Mapping[str, ClientButton] = client_buttons.BUTTONS
REQUESTED = staff.REQUESTED
STAFF_BUTTONS: Mapping[str, StaffButton] = by_verb((*staff.BUTTONS, *organiser.BUTTONS))
