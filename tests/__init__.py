"""What the barn relies on, said as tests; a package, so that nobody else's `tests` is taken for ours."""
