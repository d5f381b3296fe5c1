"""The documents for practitioners, operators and engineers: what they name exists, and each keeps to its length."""

from __future__ import annotations

import importlib
import importlib.util
import re
import subprocess
from pathlib import Path

import pytest
import typer

from bot.foundation.config import PREFIX, Settings
from bot.operator import cli

ROOT = Path(__file__).parents[2]
TOP = {"README.md", "DEVELOPERS.md", "pyproject.toml", "compose.yaml", "bot", "core", "demo", "locales", "tests"}
OURS = ("core", "bot", "demo", "tests")
LONGEST_LINE = 120
TOOLS = {"pip", "pytest", "venv"}  # run with `python -m`, and not ours

DOCUMENTS = sorted(
    path.relative_to(ROOT).as_posix()
    for path in (*ROOT.glob("*.md"), *(page for top in OURS for page in (ROOT / top).rglob("*.md")))
    if "node_modules" not in path.parts
)

every_document = pytest.mark.parametrize("name", DOCUMENTS)


def text_of(name: str) -> str:
    return (ROOT / name).read_text(encoding="utf-8")


def commands_of(name: str, first: str) -> list[list[str]]:
    """Calls of `first` in code, split into words: after the start of a line or a backtick, and one call within a
    line."""
    code = re.findall(r"^ {4,}(.*)$|`([^`\n]+)`", text_of(name), re.MULTILINE)
    lines = [re.split(r" {2,}#| {3,}|&&|;", block or inline) for block, inline in code]
    calls = [part.strip().removeprefix(".venv/bin/") for line in lines for part in line]
    return [call.split() for call in calls if call.startswith(first)]


@every_document
def test_every_samehour_command_exists_with_its_options(name: str) -> None:
    known = typer.main.get_command(cli.app).commands
    for _, command, *words in (call for call in commands_of(name, "samehour ") if call[1] != "--help"):
        assert command in known, f"{name} names `samehour {command}`"
        options = {option for param in known[command].params for option in param.opts}
        assert {word for word in words if word.startswith("--")} <= options, f"{name}: samehour {command} {words}"


@every_document
def test_every_module_that_is_run_exists(name: str) -> None:
    for _, _, module, *_ in commands_of(name, "python -m "):
        assert module in TOOLS or importlib.util.find_spec(module), f"{name} runs {module}"


@every_document
def test_every_path_exists(name: str) -> None:
    """A path may omit its first folders if the surrounding text names them: `staff/`, `wiring.py`."""
    for path in re.findall(r"`([\w.-]+(?:/[\w.-]*)+|[\w.-]+\.(?:py|md|tape|yaml|toml))`", text_of(name)):
        assert (ROOT / path).exists() or any(found for top in OURS for found in (ROOT / top).rglob(path)), path


@every_document
def test_every_name_in_our_code_exists(name: str) -> None:
    for dotted in re.findall(r"`((?:core|bot|demo)(?:\.\w+)+)`", text_of(name)):
        module, names = dotted, []
        while importlib.util.find_spec(module.partition(".")[0]) and not _is_module(module):
            module, _, last = module.rpartition(".")
            names.append(last)
        thing = importlib.import_module(module)
        for last in reversed(names):
            thing = getattr(thing, last)


def _is_module(name: str) -> bool:
    try:
        return importlib.util.find_spec(name) is not None
    except ModuleNotFoundError:
        return False


@every_document
def test_every_link_within_the_project_leads_somewhere(name: str) -> None:
    for target in re.findall(r"\]\(([^)\s]+)\)", text_of(name)):
        if "://" in target:
            continue
        path, _, heading = target.partition("#")
        page = ((ROOT / name).parent / path).resolve() if path else ROOT / name
        assert page.exists(), f"{name} links to {target}"
        if heading:
            headings = re.findall(r"^#+ (.*)$", page.read_text(encoding="utf-8"), re.MULTILINE)
            assert heading in {_anchor(title) for title in headings}, f"{name} links to {target}"


def _anchor(title: str) -> str:
    return re.sub(r"[^\w\- ]", "", title.casefold()).replace(" ", "-")


@every_document
def test_every_setting_it_names_exists(name: str) -> None:
    named = {setting.lower() for setting in re.findall(rf"\b{PREFIX}([A-Z_]+)\b", text_of(name))}
    assert named <= set(Settings.model_fields)


@every_document
def test_prose_keeps_within_the_width_of_a_page(name: str) -> None:
    wide = [line for line in text_of(name).splitlines() if len(line) > LONGEST_LINE]
    if name == "DEVELOPERS.md":
        assert wide == []
    assert [line for line in wide if not line.startswith(("|", "    "))] == []


def test_every_line_of_the_threat_model_names_a_test_that_exists() -> None:
    tests = "".join(path.read_text(encoding="utf-8") for path in (ROOT / "tests").rglob("test_*.py"))
    _, _, *lines = (line for line in text_of("bot/THREATS.md").splitlines() if line.startswith("|"))
    assert len(lines) > 10
    for line in lines:
        shown = line.split(" | ")[-1]
        named = re.findall(r"`(test_\w+)`", shown)
        assert named or "no test can" in shown, line
        assert [name for name in named if f"def {name}(" not in tests] == []


def test_each_reader_has_a_document() -> None:
    beside = {f"{place}/README.md" for place in ("bot", "core", "tests/bench", "tests/faults")} | {"bot/THREATS.md"}
    assert {"README.md", "DEVELOPERS.md", *beside} <= set(DOCUMENTS)


def test_developers_is_read_in_twelve_minutes() -> None:
    text = text_of("DEVELOPERS.md")
    assert len(text.splitlines()) <= 230
    assert len(text.split()) <= 3000  # about 250 words a minute


def test_the_top_level_shows_what_a_stranger_needs_and_nothing_else() -> None:
    listed = subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=False)
    if listed.returncode:
        pytest.skip("not a checkout: what is the project's own cannot be told from what lies beside it")
    assert {top for path in listed.stdout.split() if not (top := path.split("/")[0]).startswith(".")} == TOP
