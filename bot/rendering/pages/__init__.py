"""Pages to read or print: one HTML file that holds everything it shows and asks nothing of any server.

* Charts are SVG with real text, drawn here from the same values as `bot.rendering.charts`, by its rules. Not by
  matplotlib: a trend of five readings takes it 42 ms and 14 kB, us 0.5 ms and 2 kB, and in a column as wide as a phone
  its type shrinks to 9 pixels. A caseload of sixty has some three hundred.
* Whatever a picture shows stands beside it in a table; its description is the caption that a chat would get.
* Readable at 360 pixels and on A4. In print everybody begins on a page of their own, so that it can be filed.
* Right-to-left where the reader reads so; a picture keeps its time from left to right (`bot.rendering.direction`).
* The page forbids itself every request (Content-Security-Policy), whatever somebody typed into it.
* The same bytes for the same values: no clock, no random names.

A browser prints the page, so there is no PDF of it: making one here needs a layout engine, which is a browser or a
library with Pango from the system. What a client gets as a PDF is drawn by matplotlib, which is there already.
"""

from bot.rendering.pages.caseload import caseload_page, client_page
from bot.rendering.pages.pooled import closing_page, practice_page
from bot.rendering.pages.report import report_page

__all__ = ["caseload_page", "client_page", "closing_page", "practice_page", "report_page"]
