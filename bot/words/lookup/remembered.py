"""What was worked out before: people say the same few thousand things."""

from typing import TypeVar

MOST = 20_000  # words, descriptions
Key = TypeVar("Key")
Value = TypeVar("Value")


class Remembered(dict[Key, Value]):
    """A dictionary that forgets all at once when it holds too much: no flood of words fills the memory."""

    def __setitem__(self, key: Key, value: Value) -> None:
        if len(self) > MOST:
            self.clear()
        super().__setitem__(key, value)
