"""compose.yaml: valid by the published Compose schema, and in step with the settings it names."""

from __future__ import annotations

import re
import subprocess
import sys
from pathlib import Path

import yaml

from bot.foundation.config import PREFIX, Settings

COMPOSE = Path(__file__).parents[2] / "compose.yaml"


def test_it_is_valid_by_the_published_schema():
    """check-jsonschema includes the schema of the Compose Specification, so nothing is downloaded."""
    command = [sys.executable, "-m", "check_jsonschema", "--builtin-schema", "vendor.compose-spec", str(COMPOSE)]
    done = subprocess.run(command, capture_output=True, text=True, check=False, timeout=60)
    assert done.returncode == 0, done.stdout + done.stderr


def test_every_setting_it_gives_a_worker_exists():
    services = yaml.safe_load(COMPOSE.read_text())["services"]
    given = services["worker"]["environment"]
    assert {name.removeprefix(PREFIX).lower() for name in given} <= set(Settings.model_fields)


def test_workers_wait_for_the_migration_and_the_migration_for_the_database():
    services = yaml.safe_load(COMPOSE.read_text())["services"]
    assert services["worker"]["depends_on"]["migrate"]["condition"] == "service_completed_successfully"
    assert services["migrate"]["depends_on"]["database"]["condition"] == "service_healthy"
    assert services["worker"]["deploy"]["replicas"] >= 2


def test_no_secret_is_written_down():
    for name in ("SAMEHOUR_TOKEN", "SAMEHOUR_WEBHOOK_SECRET", "POSTGRES_PASSWORD"):
        for value in re.findall(rf"^\s+{name}: (.+)$", COMPOSE.read_text(), re.M):
            assert value.startswith("${"), f"{name} is not taken from the environment"


def test_the_image_can_back_up_the_database_it_is_used_with():
    compose = yaml.safe_load(COMPOSE.read_text())
    server = re.fullmatch(r"postgres:(\d+)", compose["services"]["database"]["image"])
    client = re.search(r"postgresql-client-(\d+)", compose["services"]["worker"]["build"]["dockerfile_inline"])
    assert server and client and int(client[1]) >= int(server[1])
    assert "backups:/backups" in compose["services"]["worker"]["volumes"]


def test_every_volume_of_a_worker_is_made_for_its_user():
    worker = yaml.safe_load(COMPOSE.read_text())["services"]["worker"]
    made = re.search(r"install -d -o samehour -m 700 (.+)", worker["build"]["dockerfile_inline"])
    assert made and set(made[1].split()) == {volume.partition(":")[2] for volume in worker["volumes"]}
