"""The table of published values stands at the end of every run that tested them."""

import pytest

from tests.published.check import table


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """Print the table, misses and all."""
    reports = [r for group in ("passed", "xfailed", "failed") for r in terminalreporter.getreports(group)]
    if any("tests/published/" in report.nodeid for report in reports):
        terminalreporter.section("published values")
        terminalreporter.write_line(table())
