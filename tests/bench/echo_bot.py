"""The yardstick of turns: an echo bot as in the library's examples. It stores nothing and scores nothing.

    python tests/bench/echo_bot.py BASE_URL TOKEN [CONCURRENT]

CONCURRENT: updates handled at once, with as many connections; by default, the library's own setting (one).
"""

import sys

from telegram import Update
from telegram.ext import Application, ContextTypes, MessageHandler, filters


async def echo(update: Update, context: ContextTypes.DEFAULT_TYPE) -> None:
    await update.message.reply_text(update.message.text)


def main(base_url: str, token: str, concurrent: int = 0) -> None:
    builder = Application.builder().token(token).base_url(base_url)
    if concurrent:
        builder = builder.concurrent_updates(concurrent).connection_pool_size(concurrent).pool_timeout(None)
    application = builder.build()
    application.add_handler(MessageHandler(filters.TEXT, echo))
    application.run_polling()


if __name__ == "__main__":
    main(sys.argv[1], sys.argv[2], *map(int, sys.argv[3:]))
