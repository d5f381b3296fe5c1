"""The conversation: a pure, total function and the values it works with.

    step(state, event, facts, now) -> Outcome(state, effects)          core.dialogue.engines.client

* Total: every state answers every event; user input never raises.
* `events`: what happened; `facts`: what the store knew at that moment; `effects`: what should happen; `messages`: what
  to say, as keys with arguments; `states`: everything a conversation remembers.
* Every text gets an answer. Nobody is asked twice, reproached, or left without an answer.
"""
