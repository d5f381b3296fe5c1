"""The first steps of README.md, command by command, on an empty machine beside the local messenger: from the token to
the first client."""

from __future__ import annotations

import asyncio
import os
import re
import signal
import sys
from pathlib import Path

from demo.messenger import Remote, SeenMessage

ROOT = Path(__file__).parents[2]
STEPS = (ROOT / "README.md").read_text(encoding="utf-8").partition("\n## First steps with a real account\n")[2]
COMMANDS = [line.split() for line in re.findall(r"^ +\.venv/bin/samehour (.*)$", STEPS, re.MULTILINE)]
LINK = re.compile(r"\?start=([\w-]+)")


def test_the_steps_are_those_that_are_tried_here() -> None:
    assert COMMANDS == [["migrate"], ["check"], ["invite", "coach", "Rowan"], ["serve"]]
    assert "`/invite Ada`" in STEPS
    assert "`/client Ada`" in STEPS


def test_they_lead_from_a_token_to_the_first_client(tmp_path: Path) -> None:
    async def scene() -> None:
        async with asyncio.timeout(60), await Remote.spawn("--no-flood") as messenger:
            bare = {name: value for name, value in os.environ.items() if not name.startswith("SAMEHOUR_")}
            machine = {**bare, "HOME": str(tmp_path), "XDG_DATA_HOME": str(tmp_path)}
            machine["PYTHONPATH"] = os.pathsep.join(filter(None, (str(ROOT), bare.get("PYTHONPATH"))))
            settings = {
                "SAMEHOUR_TOKEN": messenger.token,
                "SAMEHOUR_API_BASE_URL": messenger.url,
                "SAMEHOUR_CHAT_RATE": "30",  # the real rate would only slow down the test
            }

            async def run(words: list[str]) -> asyncio.subprocess.Process:
                return await asyncio.create_subprocess_exec(
                    sys.executable, "-m", "bot", *words, env=machine | settings, stdout=-1, stderr=-1
                )

            said = {}
            for words in COMMANDS[:-1]:
                process = await run(words)
                out, err = await process.communicate()
                assert (process.returncode, err) == (0, b""), words
                said[words[0]] = out.decode()
            assert all(line.endswith(" ok") for line in said["check"].splitlines())

            server = await run(COMMANDS[-1])
            try:
                rowan = await messenger.create_user("Rowan")
                await messenger.open_bot(rowan, _token(said["invite"]))
                await _until_hears(messenger, rowan, "Which town's clock")
                await messenger.send_text(rowan, "Lisbon")
                await _until_hears(messenger, rowan, "Your digest comes every week")
                await messenger.send_text(rowan, "/invite Ada")
                invitation = await _until_hears(messenger, rowan, "An invitation for Ada")

                ada = await messenger.create_user("Ada")
                await messenger.open_bot(ada, _token(invitation.text))
                await _until_hears(messenger, ada, "May I keep your answers")
                await messenger.press(ada, "Yes, I agree")
                await _until_hears(messenger, ada, "What year were you born?")
                await messenger.send_text(rowan, "/client Ada")
                card = await _until_hears(messenger, rowan, "Not there yet")
                assert "Plan" in card.labels
            finally:
                if server.returncode is None:
                    server.send_signal(signal.SIGTERM)
                _, err = await server.communicate()
            assert server.returncode == 0, err

    asyncio.run(scene())


def _token(text: str) -> str:
    found = LINK.search(text)
    assert found is not None, text
    return found[1]


async def _until_hears(messenger: Remote, user: int, words: str) -> SeenMessage:
    """The first message of the bot to this person that contains these words and follows their last message."""
    version = -1
    while True:
        version = await messenger.changed(version)
        seen = await messenger.seen(user)
        last = max((n for n, m in enumerate(seen) if not m.from_bot), default=-1)
        for message in seen[last + 1 :]:
            if words in message.text:
                return message
