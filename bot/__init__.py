"""Haybell: everything that touches the world; the arithmetic lives in `rules`."""
