"""The barn's list changed by message: a manager's plain sentence, what it would write, yes or no.

tables    how it is said, in each language
phrases   the tables as words, quick to compare
reading   a message to one change; none where any word of it is not understood
deciding  what would be written is shown; yes or no
"""

from bot.enrol.deciding import decided

__all__ = ["decided"]
