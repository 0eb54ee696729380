"""The commands; each a few calls and one printed result."""


def main() -> None:
    """Run the console script."""
    raise SystemExit("haybell: not yet built")
