"""The conversation: one pure, total function and the values it speaks in.

    step(state, event, facts, now) -> Outcome(state, effects)          core.dialogue.engines.client

* Total: every state answers every event; nothing raises because of what somebody typed or pressed.
* `events` is what happened, `facts` is what the store knew at that moment, `effects` is what should happen,
  `messages` are what should be said, as keys with arguments. `states` is all a conversation remembers.
* Every text gets an answer. Nobody is asked twice, told off, or lost.
"""
