"""A practice rehearsed in a browser: one person, or several in their own windows, play the coach, the clients and the
organiser against the real bot, on a clock they move.

    stage       what is being played: the bot on SQLite, the local messenger, the clock; one act at a time
    acts        from what a form of the page says to a line of a tape
    why         what the engine knows of a person, and why it answered as it did
    words       from formatted text to HTML
    page        what each person sees, as HTML
    app         the web application, on loopback
    practices   practices to begin with, as tapes in any language the bot speaks

Whatever is done is a line of a tape, so what was rehearsed can be saved and plays again to the same transcript. Nothing
leaves this machine, and nothing but a saved tape stays when the page is stopped.

Jinja2 makes the pages: 1.3 MB on disk, 0.05 s to import. The browser's side is one file of our own of 12 kB, where the
library it stands in for has 52, and the policy that forbids whatever is not a file here has no gap.
"""
