"""The domain: what was measured, how sure we may be of it, and what to say next.

Rules of this package, and why:

* Pure. No input or output, no clock, no randomness, no logging, nothing of `bot`, the standard library only.
  A season of check-ins replays in seconds and a domain reader can follow a result line by line.
* `now` is an argument. An instant is an aware datetime in UTC; a local date and a wall time are separate types.
* Values are frozen. What happened is a value (`Reading`, `Event`); what should happen is a value (`Effect`).
* Scores are derived, never stored, so correcting a table corrects the past.
* No answer beats a made-up one: outside a published table there is `NoReference`, with its reason.
* What a person typed is never an error: `Misunderstood` is a value. An exception here is a fault of ours.
* No text for people: messages are keys with arguments; `bot.rendering` finds the words.

Imports point down: dialogue, digest, flags, chart -> assess -> change, measures -> references, language, reading
-> client, quantity, sources.
"""
