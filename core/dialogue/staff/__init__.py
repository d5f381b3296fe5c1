"""A coach's conversation: caseload, cards, plans, the weekly digest, their own settings.

A staff chat may belong to a coach, an organiser or both; facts, states and effects here are those of such a chat.
"""
