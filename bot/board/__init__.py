"""The board: a plan as a picture for the tack-room wall and the phone, and one horse's last days.

canvas   paper, inks, type that can write any name
fence    margins as a thread between two rails; reads without colour
weather  the head: temperature, what falls, gusts
wall     the barn's board, as PNG and on pages to print
days     one horse's days
"""

from bot.board.days import horse
from bot.board.wall import draw, pdf

__all__ = ["draw", "horse", "pdf"]
