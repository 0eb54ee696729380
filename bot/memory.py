"""Memory handed back: a picture or a plan of many horses leaves megabytes that the C library would keep."""

import ctypes


def hand_back() -> None:
    """Give freed memory back to the machine; nothing happens where the C library has no way to."""
    trim = getattr(ctypes.CDLL(None), "malloc_trim", None)
    if trim is not None:
        trim(0)
