"""The barn's list changed by message: a manager's plain sentence, what it would write, yes or no.

tables   how it is said, in each language
reading  a message to one change; none where any word of it is not understood
"""

from bot.enrol.reading import agreed, proposed

__all__ = ["agreed", "proposed"]
