"""A small tenant of the machine: what a picture or a plan of many horses took is given back, and not kept for later."""

import ctypes

TRIM_THRESHOLD, MMAP_THRESHOLD, ARENA_MAX = -1, -3, -8  # of the GNU C library: <malloc.h>
LARGE = 128 * 1024  # bytes; what is larger goes back to the machine as soon as it is free


def keep_little() -> None:
    """Once at a start: hold the C library to its own first limits, which it would raise after one large picture."""
    limit = getattr(ctypes.CDLL(None), "mallopt", None)
    if limit is not None:
        limit(MMAP_THRESHOLD, LARGE)
        limit(TRIM_THRESHOLD, LARGE)
        limit(ARENA_MAX, 1)  # threads that fetch forecasts share one heap


def hand_back() -> None:
    """Give freed memory back to the machine; nothing happens where the C library has no way to."""
    trim = getattr(ctypes.CDLL(None), "malloc_trim", None)
    if trim is not None:
        trim(0)
