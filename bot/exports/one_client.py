"""All readings of one client as a file, for their coach. Side notes are left out: nobody should chart them."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from bot.store.clients import Client
from core.reading import Reading


def one_client(form: str, client: Client, readings: Sequence[Reading], now: datetime) -> str:
    """form: "csv", with the client's name, or "fhir", with a pseudonym; as `samehour export` writes them.

    Raises: ValueError for another form.
    """
    match form:
        case "csv":
            from bot.exports.csv_out import readings_csv

            return readings_csv([(client.name, readings)])
        case "fhir":
            from bot.exports.fhir import Subject, bundle, to_json

            subject = Subject(client.id, client.created_at, client.profile)
            return to_json(bundle([(subject, readings)], now)) + "\n"
        case _:
            raise ValueError(f"there is no form {form[:20]}")
