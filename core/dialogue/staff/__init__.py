"""A coach's conversation: caseload, cards, plans, the weekly digest, their own settings.

A chat of staff may belong to a coach, an organiser or both: facts, states and effects here are of such a chat.
"""
