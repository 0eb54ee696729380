"""A plan in words, in the reader's language and units; and as the contract's JSON. Nothing here plans.

day       the round's post; a whole plan as text
news      what changed after the post; the buttons under it
contract  the plan as JSON
"""

from bot.post.contract import plan_json
from bot.post.day import leads, plan_text, round_post
from bot.post.news import buttons, drying, ticked, update

__all__ = ["buttons", "drying", "leads", "plan_json", "plan_text", "round_post", "ticked", "update"]
