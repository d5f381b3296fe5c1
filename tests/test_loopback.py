"""The guard over every test bites: in this process, in those that tests start, and where the refusal is passed over."""

import asyncio
import socket
import subprocess
import sys
from pathlib import Path

import pytest
import uvloop

from tests.loopback import guard
from tests.loopback.guard import LeavesTheMachine

ROOT = Path(__file__).parents[1]
ELSEWHERE = "elsewhere.example"  # RFC 2606: nobody's
ADDRESS = "192.0.2.7"  # RFC 5737: nobody's


@pytest.fixture
def notes(monkeypatch, tmp_path):
    """Where this test's refusals are noted, in place of the file that would fail it."""
    file = tmp_path / "refused"
    file.touch()
    monkeypatch.setenv(guard.NOTES, str(file))
    return lambda: file.read_text().split()


def connect(host):
    with socket.socket() as one:
        one.connect((host, 443))


def send_datagram(host):
    with socket.socket(type=socket.SOCK_DGRAM) as one:
        one.sendto(b"x", (host, 53))


async def connect_asynchronously(host):
    await asyncio.open_connection(host, 443)


async def look_up_asynchronously(host):
    await asyncio.get_running_loop().getaddrinfo(host, 443)


@pytest.mark.parametrize(
    "reach, host",
    [
        pytest.param(lambda host: socket.getaddrinfo(host, 443), ELSEWHERE, id="look-up"),
        pytest.param(socket.gethostbyname, ELSEWHERE, id="old-look-up"),
        pytest.param(connect, ADDRESS, id="connection"),
        pytest.param(send_datagram, ADDRESS, id="datagram"),
        pytest.param(lambda host: asyncio.run(connect_asynchronously(host)), ADDRESS, id="asyncio"),
        pytest.param(lambda host: asyncio.run(look_up_asynchronously(host)), ELSEWHERE, id="asyncio-look-up"),
        pytest.param(lambda host: uvloop.run(connect_asynchronously(host)), ADDRESS, id="uvloop"),
        pytest.param(lambda host: uvloop.run(look_up_asynchronously(host)), ELSEWHERE, id="uvloop-look-up"),
    ],
)
def test_nothing_reaches_beyond_this_machine(notes, reach, host):
    with pytest.raises(LeavesTheMachine, match=host):
        reach(host)
    assert notes() == [host]


def test_this_machine_may_be_reached(notes):
    with socket.create_server(("127.0.0.1", 0)) as server:
        socket.create_connection(("localhost", server.getsockname()[1])).close()
    ours, theirs = socket.socketpair()
    ours.close()
    theirs.close()
    assert notes() == []


REACHING = f"import socket\ntry: socket.getaddrinfo({ELSEWHERE!r}, 443)\nexcept Exception as e: print(type(e).__name__)"


def test_a_process_that_a_test_starts_is_held_to_it_too(notes):
    ended = subprocess.run([sys.executable, "-c", REACHING], capture_output=True, text=True, check=True)
    assert (ended.stdout, notes()) == ("LeavesTheMachine\n", [ELSEWHERE])


def test_a_test_fails_that_passes_over_the_refusal(tmp_path):
    program = "\n    ".join(REACHING.splitlines())
    (tmp_path / "test_it.py").write_text(f"def test_it():\n    {program}\n\ndef test_another():\n    pass\n")
    command = [sys.executable, "-m", "pytest", "-p", "tests.conftest", "-c", "pyproject.toml", str(tmp_path)]
    ended = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)
    assert f"reached beyond loopback, for {ELSEWHERE}" in ended.stdout
    assert "2 passed, 1 error" in ended.stdout
