"""The domain: what was measured, how certain it is, and what to say next.

Rules of this package, and why:

* Pure: no I/O, clock, randomness or logging, nothing from `bot`, only the standard library. A season of check-ins
  replays in seconds, and a domain expert can follow a result line by line.
* `now` is an argument. An instant is an aware datetime in UTC; a local date and a wall time are separate types.
* Values are frozen. What happened is a value (`Reading`, `Event`); what should happen is a value (`Effect`).
* Scores are derived, never stored, so correcting a table corrects the past.
* No answer beats a made-up one: outside a published table there is `NoReference`, with its reason.
* What a person typed is never an error: `Misunderstood` is a value. An exception here is a bug.
* No text for people: messages are keys with arguments; `bot.rendering` renders them.

Imports point down: dialogue, digest, flags, chart -> assess -> change, measures -> references, language, reading
-> client, quantity, sources.
"""
