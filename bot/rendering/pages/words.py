"""What the templates say themselves."""

from __future__ import annotations

from bot.rendering.voice import Voice


def said_by_templates(v: Voice) -> dict[str, str]:
    """Headings and labels, by the name a template has for them."""
    return {
        "care": v.plain("Health data of named people: keep it as you keep their files."),
        "quoted": v.plain("In quotation marks: what a client reads about it. Numbers in brackets lead to the sources."),
        "list": v.plain_in("page", "Who is where"),
        "back": v.plain_in("page", "Back to the list"),
        "open_flags": v.plain_in("page", "Open flags"),
        "measured": v.plain_in("page", "Measured"),
        "note": v.plain_in("page", "Note"),
        "messages": v.plain_in("page", "Messages"),
        "sources": v.plain_in("page", "Sources"),
        "source": v.plain_in("page", "Source"),
        "numbers": v.plain_in("page", "The picture in numbers"),
        "urgent": v.plain_in("page", "Urgent"),
        "nothing": v.plain("Nothing measured yet."),
    }
