"""The only place where concrete parts are chosen. Nothing opens on import or construction.

service(settings)                       the process run by `samehour serve`
service(settings, clock=held, live=False, paced=False)    the same parts, for a tape to settle at each instant
"""

from __future__ import annotations

import asyncio
import os
import random
import socket
from collections.abc import Callable
from datetime import datetime, timedelta
from functools import partial

from sqlalchemy import Connection, func, select, text

from bot.exports.my_data import gather
from bot.foundation import config, log
from bot.foundation.clock import Clock, Jumps, MachineClock, SharedClock, now
from bot.foundation.metrics import Metrics
from bot.process import deputies, digests, reminders
from bot.process.delivery import Delivery
from bot.process.intake import Answers, Poller, keeper
from bot.process.rendering_cache import Renderings
from bot.process.web import HttpServer, Probe, Webhook, application, updates_only
from bot.process.worker import Bells, Parts, Service
from bot.rendering.menu import describe
from bot.store import clock_jumps, outbox, rate_limit, retention, staff, unread
from bot.store import inbox as inbox_store
from bot.store import menus as menus_of_staff
from bot.store import migrate as versions
from bot.store.database import Database
from bot.store.opening import open_database
from bot.store.schema import inbox
from bot.transports.menus import version as version_of_menus
from bot.transports.telegram import Telegram
from bot.turns import cohorts
from bot.turns.turn import Steps, work_batch
from core.language import LANGUAGES

BATCH = 128  # turns that share a commit
SWEEP = 500  # due rows that share one
_log = log.get("wiring")
PROBE_WITHIN = 2.0  # seconds until /readyz calls a part not ready


def steps(settings: config.Settings, link: Callable[[str], str], group_link: Callable[[str], str] = str) -> Steps:
    """The decision functions with their look-ups. link, group_link: create the link for an invitation's token."""
    from bot.exports.one_client import one_client
    from bot.rendering.phrases.labels import labeller
    from bot.rendering.places import country_of, find_zones
    from bot.turns.group_turn import GroupTurn
    from bot.turns.staff_turn import StaffTurn, look_ups
    from core.dialogue.engines.client import step, step_stranger

    return Steps(
        client=step,
        stranger=step_stranger,
        staff=StaffTurn(look_ups(), link, group_link, one_client),
        group=GroupTurn(),
        find_zones=find_zones,
        country_of=country_of,
        label=lambda language, key, argument: labeller(language)(key, argument),
        languages=settings.languages,
    )


def rates(settings: config.Settings) -> rate_limit.Rates:
    return rate_limit.Rates(settings.send_rate, settings.chat_rate, settings.group_per_minute)


def worker_name(database: Database) -> str:
    """The name under which this process claims messages.

    On SQLite there is one worker, so after a restart it finds what the killed process held; elsewhere leases expire.
    """
    return "local" if database.is_sqlite else f"{socket.gethostname()}/{os.getpid()}"


def service(
    settings: config.Settings,
    *,
    clock: Clock | None = None,
    live: bool = True,
    paced: bool = True,
    webhook: bool = False,
    menus: bool | None = None,
    spread: Callable[[], float] = random.random,
) -> Service:
    """Assemble a process.

    live: works by itself; else only when `settle` is called. paced: within the rate limits.  webhook: updates are
    pushed to us.  menus: whether it sets the command menus; None: if live.

    Raises: BadSettings.
    """
    menus = live if menus is None else menus
    store = open_database(settings)
    shared = None if clock is not None or store.is_sqlite else SharedClock()
    clock = clock or shared or MachineClock()
    jumps = Jumps(clock) if live else None
    metrics = Metrics()
    bells = Bells.new()
    telegram = Telegram.of(settings)
    renderings = Renderings(store, gather)
    delivery = Delivery(
        store,
        telegram,
        renderings,
        clock,
        metrics,
        worker=worker_name(store),
        rates=rates(settings) if paced else None,
        parallel=settings.send_parallel,
        on_events=bells.turns.ring,
        spread=spread,
    )
    keep = keeper(store, clock, bells.turns.ring)
    poller = None
    hook = None
    pushed_to = secret = ""
    if webhook:
        pushed_to, secret = settings.need_webhook()
        hook = Webhook(secret, telegram, keep, Answers(telegram.answer), clock, metrics)
    else:
        poller = Poller(telegram, keep, clock, metrics, timeout=settings.poll_timeout, spread=spread)
    servers: list[HttpServer] = []
    if live and (webhook or settings.health_port):
        probes: dict[str, Probe] = {
            "database": partial(_answers, store, _ping),
            "schema": partial(_answers, store, _has_our_schema),
            "messenger": telegram.is_open,
        }
        look = partial(_look, store, metrics)
        finish = None if hook is None else hook.answers.finish
        host, port = settings.webhook_host, settings.webhook_port
        if settings.health_port:  # apart from the webhook, if there is one
            health = application(probes, metrics, look=look)
            servers.append(HttpServer(health, settings.health_host, settings.health_port))
            if hook is not None:
                servers.append(HttpServer(updates_only(hook, settings.webhook_path), host, port, finish))
        else:
            servers.append(
                HttpServer(application(probes, metrics, hook, settings.webhook_path, look), host, port, finish)
            )

    decide = steps(settings, telegram.link, telegram.group_link)
    kept = retention.RetentionPeriods(
        inbox=timedelta(days=settings.keep_inbox_days),
        sent=timedelta(days=settings.keep_sent_days),
        left=timedelta(days=settings.keep_left_days),
        side_notes=timedelta(days=settings.keep_side_notes_days),
        withdrawn=timedelta(days=settings.keep_withdrawn_days),
        words=timedelta(days=settings.keep_words_days),
        audit=timedelta(days=settings.keep_audit_days),
    )

    async def turns() -> int:
        with metrics.turn_seconds.time():
            done = await store.write(work_batch, decide, clock.now(), BATCH)
        if done:
            metrics.turns.inc(done)
            delivery.bell.ring()
        return done

    async def sweep() -> int:
        if shared is not None:
            shared.agree(*await store.read(_time_there))
        if jumps is not None and (jumped := jumps.look()):
            _log.warning("the clock jumped", seconds=round(jumped.total_seconds()))
            await store.write(clock_jumps.mend, clock.now())
            delivery.clock_went_back()
        done = await store.write(_sweep, clock.now())
        if done:
            metrics.swept.inc(done)
            bells.turns.ring()
        return done

    async def next_due() -> datetime | None:
        return await store.read(next_instant)

    async def housekeeping() -> int:
        await store.write(retention.tidy, clock.now(), kept)
        store.keyring.destroy_passing(clock.now())
        return 0

    async def erasures() -> int:
        done = await store.finish_erasures()
        if done:
            delivery.bell.ring()
        return done

    menus_now = version_of_menus(LANGUAGES, describe)

    async def set_menus() -> int:
        for menu in (found := await store.read(menus_of_staff.stale, menus_now)):
            await telegram.set_menu(menu.chat_id, menu.menu, menu.language)
            await store.write(menus_of_staff.set_to, menu)
        return len(found)

    async def on_open() -> None:
        if shared is not None:
            shared.agree(*await store.read(_time_there))
        if live:
            await store.write(clock_jumps.mend, clock.now())
        await telegram.receive(pushed_to, secret)
        if menus:
            await telegram.set_menus(settings.languages)

    return Service(
        Parts(
            database=store,
            account=telegram,
            delivery=delivery,
            turns=turns,
            sweep=sweep,
            housekeeping=housekeeping,
            erasures=erasures,
            next_due=next_due,
            metrics=metrics,
            clock=clock,
            bells=bells,
            poller=poller,
            servers=tuple(servers),
            menus=set_menus,
            on_open=on_open,
            close=renderings.close,
        ),
        live=live,
        turn_workers=1 if store.is_sqlite else settings.turn_workers,
        sweep_every=settings.sweep_every,
        spread=spread,
    )


def _sweep(conn: Connection, now: datetime) -> int:
    due = reminders.sweep(conn, now, SWEEP) + digests.sweep(conn, now, SWEEP) + cohorts.sweep(conn, now)
    return due + deputies.sweep(conn, now)


def _time_there(conn: Connection) -> tuple[datetime, datetime, datetime]:
    """The database's time, with ours before and after the query."""
    before = now()
    there = conn.execute(select(func.clock_timestamp())).scalar_one()
    return there, before, now()


def next_instant(conn: Connection) -> datetime | None:
    """When the next slot, timer, digest, cohort task or retry of a turn is due, or None."""
    retry = select(func.min(inbox.c.retry_at)).where(inbox.c.status == "pending")
    known = (
        reminders.next_at(conn),
        digests.next_at(conn),
        cohorts.next_at(conn),
        deputies.next_at(conn),
        conn.execute(retry).scalar(),
    )
    return min((at for at in known if at is not None), default=None)


def _ping(conn: Connection) -> bool:
    return conn.execute(text("SELECT 1")).scalar() == 1


def _has_our_schema(conn: Connection) -> bool:
    return versions.version(conn) == versions.head()


def _backlog(conn: Connection) -> dict[str, int]:
    return {
        "inbox": inbox_store.waiting(conn),
        "outbox": outbox.waiting(conn),
        "person": inbox_store.set_aside_count(conn) + unread.count(conn),
        "coach": staff.unheard(conn).coaches,
    }


async def _answers(store: Database, question: Callable[[Connection], bool]) -> bool:
    """Whether the database answers yes in time."""
    try:
        async with asyncio.timeout(PROBE_WITHIN):
            return await store.read(question)
    except Exception:
        return False


async def _look(store: Database, metrics: Metrics) -> None:
    """Update the gauges of pending rows; if the database does not answer, they keep their values."""
    try:
        async with asyncio.timeout(PROBE_WITHIN):
            found = await store.read(_backlog)
    except Exception:
        return
    for what, count in found.items():
        if what == "coach":
            metrics.unreachable_coaches.set(count)
        else:
            metrics.waiting.labels(what).set(count)
