"""Playing tapes: expectations that hold and fail, and that the same tape gives the same bytes."""

from pathlib import Path

import pytest

from demo.__main__ import SEASON, main
from demo.player import Played, play
from demo.tape import read

ADA = """\
start 2026-03-02 07:00 Europe/London
coach Rowan
client Ada of Rowan: slot="Mon 07:30" measures=waist
"""


def played(more: str, **options: object) -> Played:
    return play(read(ADA + more), **options)  # type: ignore[arg-type]


def test_an_expectation_that_does_not_hold_is_named_by_its_line_and_the_tape_goes_on() -> None:
    came = played("at 2026-03-02 07:30\nexpect Ada sees elephants\nexpect-not Ada sees energy\nAda: 7")
    assert [(f.number, f.said) for f in came.failures] == [
        (5, 'Ada did not see "elephants"'),
        (6, 'Ada saw "energy"'),
    ]
    assert any(line.endswith("Ada -> bot: 7") for line in came.lines)


def test_what_nobody_could_do_ends_the_tape_at_its_line() -> None:
    came = played("Ada presses Launch the rocket\nAda: 7")
    assert [f.number for f in came.failures] == [4]
    assert not any(line.endswith("Ada -> bot: 7") for line in came.lines)


def test_only_what_came_since_the_last_step_in_time_is_looked_at() -> None:
    came = played("at 2026-03-02 07:30\nexpect Ada sees energy\nat 2026-03-02 07:31\nexpect-not Ada sees energy")
    assert came.failures == []


def test_what_comes_due_on_the_way_comes_at_its_own_minute() -> None:
    came = played("at 2026-03-02 12:00\nexpect Ada sees energy")
    assert came.failures == []
    assert any(line.startswith("[2026-03-02 07:30] bot -> Ada: ") for line in came.lines)


def test_the_same_tape_gives_the_same_bytes_and_shows_no_token() -> None:
    text = "Ben opens Rowan's invitation\nBen presses Yes, I agree\nat 2026-03-02 07:30\nAda: 7"
    first, second = played(text), played(text)
    assert first.text == second.text
    assert "start=THEIR-OWN-LINK" in first.text


def test_a_stopped_bot_says_nothing_until_it_starts_again() -> None:
    came = played("bot stops\nAda: hello\nat 2026-03-02 09:00\nexpect-not Ada sees anything\nbot starts\n"
                  "expect Ada sees energy")  # fmt: skip
    assert came.failures == []


def test_a_bot_killed_with_a_message_on_its_lips_says_it_once_when_it_starts_again() -> None:
    came = played("bot crashes\nat 2026-03-02 07:30\nexpect-not Ada sees anything\nAda: 7\nat 2026-03-02 09:00\n"
                  "bot starts\nexpect Ada sees Waist")  # fmt: skip
    assert came.failures == []
    said = [line[19:] for line in came.lines]
    assert said.index("the bot is killed before it could send what it had to say") < said.index("the bot starts again")
    assert sum("How much energy do you have today" in line for line in said) == 1


def test_a_bot_that_has_nothing_to_send_is_not_killed_yet() -> None:
    came = played("bot crashes\nat 2026-03-02 07:10\nat 2026-03-02 08:00")
    assert came.failures == []
    (killed,) = [line for line in came.lines if "is killed" in line]
    assert killed.startswith("[2026-03-02 07:30]")


def test_a_messenger_that_fails_loses_nothing_that_was_written_or_to_be_said() -> None:
    came = played("messenger fails\nat 2026-03-02 07:30\nAda: /help\nexpect-not Ada sees anything\n"
                  "at 2026-03-02 07:40\nmessenger works\nat 2026-03-02 08:30\nexpect Ada sees energy\n"
                  "expect Ada sees /undo")  # fmt: skip
    assert came.failures == []


@pytest.mark.parametrize(
    ("more", "said"),
    [
        ("bot stops\nbot crashes", "the bot is stopped already"),
        ("messenger fails\nbot crashes", "nothing can be sent while the messenger fails"),
        ("bot crashes\nmessenger fails", "the bot is about to be killed at a message that then could not be sent"),
        ("bot stops\nmessenger fails\nbot starts", "the bot cannot start while the messenger fails"),
        ("Ada edits the 9th last: 7", "there are not that many messages"),
        ("Ada opens Rowan's 3rd invitation", "there is no 3rd link"),
    ],
)
def test_what_cannot_be_is_said_and_leaves_no_line(more: str, said: str) -> None:
    came = played(more)
    assert [f.said for f in came.failures] == [said]
    assert not any("killed" in line and "will" not in line for line in came.lines)


def test_an_older_button_and_an_older_message_are_the_ones_that_are_counted() -> None:
    came = played("Rowan: /invite Ben\nRowan: /invite Chidi\nBen opens Rowan's 1st invitation\n"
                  "expect Ben sees not a doctor\nChidi opens Rowan's invitation\nexpect Chidi sees not a doctor\n"
                  "at 2026-03-02 07:30\nAda: hello there\nAda: 7\nAda: 90 cm\n"
                  "Ada edits the 2nd last: 5\nexpect Ada sees 5\nAda replies to the 2nd last: thank you")  # fmt: skip
    assert came.failures == []
    assert any(line.endswith("Ada -> bot (in reply): thank you") for line in came.lines)


def test_pictures_are_kept_under_the_day_and_the_person(tmp_path: Path) -> None:
    came = played("Ben opens Rowan's invitation", pictures=tmp_path)
    assert came.failures == []
    assert came.pictures
    assert all(path.read_bytes().startswith(b"\x89PNG") for path in came.pictures)
    assert {path.name[:22] for path in came.pictures} == {"2026-03-02-0700-rowan-"}


@pytest.mark.parametrize(
    ("more", "code", "said"),
    [
        ("expect Ada sees elephants", 1, "line 4: Ada did not see"),
        ("expect-not Ada sees elephants", 0, ""),
        ("Ada whispers", 2, "line 4: no step is written like this"),
    ],
)
def test_the_exit_code_says_whether_a_tape_held_and_could_be_read(
    more: str, code: int, said: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "mine.tape"
    path.write_text(ADA + more, encoding="utf-8")
    assert main([str(path), "--pictures", str(tmp_path / "pictures")]) == code
    assert said in capsys.readouterr().err


def test_a_tape_that_is_not_there_is_wrong_use(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main([str(tmp_path / "none.tape")]) == 2
    assert "cannot be opened" in capsys.readouterr().err


def test_recording_writes_the_transcript_beside_the_tape(tmp_path: Path) -> None:
    path = tmp_path / "mine.tape"
    path.write_text(ADA + "at 2026-03-02 07:30\nAda: 7", encoding="utf-8")
    assert main([str(path), "--record", "--pictures", str(tmp_path / "pictures")]) == 0
    assert "Ada -> bot: 7" in path.with_suffix(".txt").read_text(encoding="utf-8")


def test_the_built_in_season_can_be_read() -> None:
    assert len(read(SEASON.read_text(encoding="utf-8")).steps) > 50
