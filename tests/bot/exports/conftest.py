"""Reports prominently if HL7's profiles were not checked."""

import pytest

NOT_HERE = "the FHIR validator is not here"


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    reasons = {str(report.longrepr[2]) for report in terminalreporter.getreports("skipped")}
    for reason in sorted(r for r in reasons if NOT_HERE in r):
        terminalreporter.write_line(reason.removeprefix("Skipped: "), red=True, bold=True)
