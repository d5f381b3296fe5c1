"""The local messenger: a loopback HTTP server that speaks the chat platform's public Bot API.

The demo, the tapes, the tests and the benchmarks talk to it with the real client over real HTTP. It stores what the
platform stores (unconfirmed updates, repeated until an offset confirms them) and refuses what the platform refuses,
with its wording. Nothing here reaches beyond loopback.

In this process:

    async with Messenger(clock=clock, flood=Flood.off()) as messenger:
        bot = Bot(messenger.token, base_url=messenger.base_url, base_file_url=messenger.base_file_url)
        ada = await messenger.create_user("Ada", language_code="en")
        mark = await messenger.mark()
        await messenger.open_bot(ada, "invitation-token")         # sends "/start invitation-token"
        (answer,) = await messenger.wait_for_messages(ada, after=mark)
        answer.text, answer.labels                                 # plain text; button labels
        await messenger.press(ada, "Same as last time")            # the latest button with that label
        await messenger.settled()                                  # every update confirmed, nothing in flight

In a separate process (`python -m demo.messenger`), with the same methods:

    async with await Remote.spawn("--no-flood") as messenger: ...

`hands.Hands` documents every method; `faults` lists the faults, `flood` the limits.

Rules of this package:
* Time comes from the messenger's clock argument: message dates, the age of updates and presses. Flood limits have their
  own monotonic clock and apply in real time even with a simulated calendar.
* One thread, and every request is executed atomically: an act or method never awaits half-way, so what was accepted
  first is first in every list.
* Errors have the platform's wording where we know it (its server's source). Where the platform is lax about
  types (a number for a text), we refuse: a test should notice.
* Lengths are UTF-16 units, callback data is bytes. Only HTML formatting is supported; other modes are refused.
* Not imitated: stickers' sets, payments, inline mode, forums, channels, several bots, and the throttling of rapid
  polls.
"""

from demo.messenger.control import Remote
from demo.messenger.faults import Faults
from demo.messenger.flood import Flood
from demo.messenger.hands import Hands
from demo.messenger.refusals import CannotDo
from demo.messenger.seen import Button, PressAnswer, SeenMessage
from demo.messenger.server import DEFAULT_TOKEN, Messenger

__all__ = [
    "DEFAULT_TOKEN",
    "Button",
    "CannotDo",
    "Faults",
    "Flood",
    "Hands",
    "Messenger",
    "PressAnswer",
    "Remote",
    "SeenMessage",
]
