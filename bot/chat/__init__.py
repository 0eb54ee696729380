"""The doors: a terminal and Telegram. They carry messages; they decide nothing."""
