"""Keys of opening and closing sentences of a check-in, so that the engine can avoid recent ones.

The lists cover more than eight weekly check-ins, so that nothing needs to repeat within that time. The sentences are in
bot.rendering.phrases.checkin; praise is for effort and for keeping to the plan, never for a number.
"""

from __future__ import annotations

OPENINGS: tuple[str, ...] = (
    "time_again",
    "good_to_see",
    "two_minutes",
    "same_hour",
    "quick_look",
    "quiet_minute",
    "week_gone",
    "short_today",
    "when_you_are",
    "no_rush",
    "cup_of_tea",
    "hope_well",
    "hello_again",
    "thanks_for_time",
)

OF_A_REGULAR = frozenset({"same_hour", "week_gone", "hello_again"})  # not the first that somebody ever gets
OF_THE_SLOT = frozenset({"same_hour"})  # only of a check-in that comes at its own hour

PRAISES: tuple[str, ...] = (
    "thanks_time",
    "whole_picture",
    "keep_at_it",
    "kept_plan",
    "time_for_yourself",
    "small_steps",
    "in_a_row",
    "plain_answer",
    "showing_up",
    "habit",
    "one_more_page",
    "keep_going",
    "own_pace",
    "kept_up",
    "week_by_week",
    "patience",
    "one_more",
    "doing_this",
    "your_part",
    "stayed",
)
