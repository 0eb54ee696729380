"""The barest bot the library makes: it echoes. What a message costs here is what a message costs at least."""

import asyncio
import logging
import sys

from telegram import Update
from telegram.ext import Application, ContextTypes, MessageHandler, filters

from tests.whole.local_bot_api import TOKEN


async def echo(update: Update, _: ContextTypes.DEFAULT_TYPE) -> None:
    """Say it back."""
    if update.message:
        await update.message.reply_text(f"noted {update.message.text}")


async def main(url: str) -> None:
    """Echo until killed."""
    app = Application.builder().token(TOKEN).base_url(url).build()
    app.add_handler(MessageHandler(filters.TEXT & filters.UpdateType.MESSAGE, echo))
    async with app:
        await app.start()
        assert app.updater
        await app.updater.start_polling()
        await asyncio.Event().wait()


if __name__ == "__main__":
    logging.getLogger("httpx").setLevel(logging.WARNING)
    asyncio.run(main(sys.argv[1]))
