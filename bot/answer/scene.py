"""What a question is answered from."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime

from bot.events import Asked
from bot.evidence import Lesson
from bot.sheet import HorseSheet, Sheet
from bot.state import State
from bot.tips import Tips
from bot.voice import Voice

TipsOf = Callable[[str], Tips | None]


def no_tips(horse: str) -> None:
    """Nobody worked out what would change the advice."""


@dataclass(frozen=True)
class Scene:
    """What a question is answered from. tips: works out what would change the advice for a horse."""

    asked: Asked
    sheet: Sheet
    state: State
    tongue: Voice
    now: datetime
    evidence: Sequence[Lesson] = ()
    tips: TipsOf = no_tips

    @property
    def current(self) -> int:
        """The window that `now` lies in, else the first to come."""
        ends = [i for i, w in enumerate(self.sheet.windows) if self.now < w.end]
        return ends[0] if ends else 0

    def horse(self) -> HorseSheet | None:
        """The horse asked about, or the one whose garment is asked about."""
        name = self.asked.horse or self.tongue.owner(self.asked.garment)
        return next((h for h in self.sheet.horses if h.horse == name), None)
