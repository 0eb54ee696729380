"""Everything the bot says back, from the plan as posted and the barn as it is; nothing here plans anew.

questions  today, left, drying, state, forecast, help
why        why, and why not
scene      what a question is answered from
reports    what a report is answered with, what it changed, what was taken back, what is asked back
alarms     advice for a horse that needs somebody, the second look, whom to call
week       a horse's week, an owner's week
manners    joining, strangers, the nudge, a missed post, the hand-over, safety on request
"""

from bot.answer.alarms import alarm, dry_layers, escalate, recheck
from bot.answer.manners import handover, joined, missed, nudge, safety, stranger, stranger_danger, unknown_group
from bot.answer.questions import answer
from bot.answer.reports import ask, changed, noted, options, refused, undone
from bot.answer.week import horse_week, week

__all__ = [
    "alarm",
    "answer",
    "ask",
    "changed",
    "dry_layers",
    "escalate",
    "handover",
    "horse_week",
    "joined",
    "missed",
    "noted",
    "nudge",
    "options",
    "recheck",
    "refused",
    "safety",
    "stranger",
    "stranger_danger",
    "undone",
    "unknown_group",
    "week",
]
