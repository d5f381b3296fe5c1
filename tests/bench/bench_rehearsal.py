"""The rehearsal page: from starting to its first answer, and from an act to its answer. Reported, not asserted."""

from __future__ import annotations

import re
import statistics
import subprocess
import sys
import time

import httpx
from rich.table import Table

ACTS = 60


def run() -> Table:
    table = Table("what", "median", "longest", "wanted")
    begun = time.perf_counter()
    process = subprocess.Popen([sys.executable, "-m", "demo", "--rehearse"], stdout=subprocess.PIPE, text=True)
    try:
        assert process.stdout is not None
        found = re.search(r"http://\S+?/", process.stdout.readline())
        assert found is not None
        url = found[0]
        with httpx.Client(base_url=url, headers={"Origin": url.rstrip("/")}, timeout=60) as page:
            while "Rowan" not in page.get("/").text:
                pass
            started = time.perf_counter() - begun
            table.add_row("start to a page with a coach", f"{started:.2f} s", "", "2 s")
            key = re.search(r"/\?only=(p\d+)", page.get("/").text)
            assert key is not None
            acts, columns = [], []
            for number in range(ACTS):
                before = time.perf_counter()
                text = "/caseload" if number % 2 else f"hello {number}"
                answer = page.post("/act/say", data={"person": key[1], "text": text})
                acts.append(time.perf_counter() - before)
                assert answer.status_code == 204, answer.text
                before = time.perf_counter()
                page.get(f"/column/{key[1]}")
                columns.append(time.perf_counter() - before)
            for what, took, wanted in (
                ("an act, answered", acts, "100 ms"),
                ("a column, looked at again", columns, ""),
            ):
                table.add_row(what, f"{statistics.median(took) * 1000:.0f} ms", f"{max(took) * 1000:.0f} ms", wanted)
            before = time.perf_counter()
            page.post("/clock", data={"by": "4weeks"})
            table.add_row("four weeks of one coach", f"{time.perf_counter() - before:.2f} s", "", "")
    finally:
        process.terminate()
        process.wait(20)
    return table
