"""Apply effects: a turn's decisions become rows, and the rows of many turns are written together.

Effects are first collected in a `WriteBatch`, in order, so that later ones override earlier ones (a timer set and
cancelled, a reading stored and withdrawn). They are written with one statement per kind, for any number of turns.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace
from datetime import date, datetime
from typing import Any

from sqlalchemy import Connection

from bot.store import (
    caseload,
    clients,
    coach_thread,
    cohorts,
    conversations,
    encouragement_history,
    erase,
    erasures,
    flags,
    goals,
    outbox,
    owners,
    people,
    readings,
    slots,
    timers,
)
from bot.store.clients import Client
from bot.store.facts import CoachContact
from bot.store.flags import Lowering
from bot.store.outbox import ANSWER, Outgoing
from bot.store.timers import Timer
from bot.store.zones import zone_of
from core import schedule
from core.care import Plan, Slot, Status
from core.dialogue.client import effects as e
from core.dialogue.client.facts import GoalFact
from core.dialogue.client.messages_to_coach import (
    ClientEnrolled,
    ClientInCohort,
    ClientWord,
    DoctorFirst,
    HealthChanged,
    News,
    RepeatTaken,
    SignAnswered,
    UrgentFlag,
)
from core.dialogue.kit.effects import Choice, Erase, Join, Rows, Say, SendData
from core.dialogue.organiser.messages import SomebodyJoined
from core.dialogue.staff.step import about, about_flag, written_at
from core.dialogue.staff.talk_messages import TakingBack, WordsTakenBack
from core.watching.digest import when_to_tell
from core.watching.flags import RULES, Clears, Code, Ended, Flag, Severity

ENDED_BY = {Clears.ANSWERED: Ended.ANSWER, Clears.HEARD: Ended.HEARD}


@dataclass
class WriteBatch:
    """Rows to write. Keys are the database's unique keys, so the last value for each wins."""

    outbox: list[dict[str, object]] = field(default_factory=list)
    states: dict[int, tuple[str, datetime, str]] = field(default_factory=dict)
    readings: dict[tuple[int, str], dict[str, Any]] = field(default_factory=dict)
    withdrawn: dict[tuple[int, str], None] = field(default_factory=dict)
    amended: dict[tuple[int, str], Any] = field(default_factory=dict)
    changes: dict[int, dict[str, Any]] = field(default_factory=dict)
    plans: list[tuple[Client, Plan]] = field(default_factory=list)
    languages: dict[int, str] = field(default_factory=dict)
    raised: dict[tuple[int, str, str | None], Flag] = field(default_factory=dict)
    lowered: dict[tuple[int, str, str | None], Lowering] = field(default_factory=dict)
    timers: dict[tuple[int, str, str], Timer] = field(default_factory=dict)
    stopped: dict[tuple[int, str], None] = field(default_factory=dict)
    delayed_drops: dict[int, datetime] = field(default_factory=dict)
    answered: dict[tuple[int, date], None] = field(default_factory=dict)
    not_asked: dict[tuple[int, date], datetime] = field(default_factory=dict)
    goals: dict[tuple[int, str], GoalFact] = field(default_factory=dict)
    dropped: dict[tuple[int, str], None] = field(default_factory=dict)
    left_cohorts: dict[tuple[int, int], None] = field(default_factory=dict)
    heard: list[tuple[int, str]] = field(default_factory=list)
    coach_words: list[tuple[int, int | None, coach_thread.Direction, str]] = field(default_factory=list)

    def add(self, other: WriteBatch) -> None:
        """Add the rows of another turn, of another chat."""
        for name, value in vars(other).items():
            if not value:
                continue
            mine = getattr(self, name)
            if isinstance(mine, list):
                mine.extend(value)
            else:
                mine.update(value)

    def write(self, conn: Connection, now: datetime) -> None:
        """Write everything. Deletions come before insertions, so that a timer cancelled and set again is set."""
        readings.withdraw(conn, list(self.withdrawn), now)
        readings.amend(conn, [(client, key, new) for (client, key), new in self.amended.items()])
        readings.put(conn, list(self.readings.values()))
        for client, plan in self.plans:
            clients.set_plan(conn, client, plan)
        clients.change(conn, self.changes)
        for person_id, language in self.languages.items():
            people.set_language(conn, person_id, language)
        flags.lower(conn, self.lowered, now)
        flags.raise_(conn, [(client, flag) for (client, _, _), flag in self.raised.items()], now)
        timers.forget(conn, list(self.stopped))
        timers.put(conn, list(self.timers.values()))
        slots.not_asked(conn, [(client, day, at) for (client, day), at in self.not_asked.items()])
        slots.answered(conn, list(self.answered), now)
        goals.drop(conn, list(self.dropped))
        goals.put(conn, [(client, goal) for (client, _), goal in self.goals.items()])
        for client_id, cohort_id in self.left_cohorts:
            cohorts.leave(conn, client_id, now, cohort_id)
        encouragement_history.put(conn, self.heard, now)
        coach_thread.put(conn, self.coach_words, now)
        outbox.drop_delayed(conn, self.delayed_drops)
        outbox.put_rows(conn, self.outbox)
        conversations.save(conn, self.states)


@dataclass
class TurnEffects:
    """Applies the effects of one chat's turn.

    at: the turn's instant, never before the chat's last turn, whatever the machine's clock says. join: applies `Join`,
    redeeming the invitation that the event opened. open_flags: codes of the client's open flags, if they were loaded.
    """

    conn: Connection
    now: datetime
    at: datetime
    chat_id: int
    join: Callable[[TurnEffects], None]
    language: str = "en"
    person_id: int | None = None
    client: Client | None = None
    coach: CoachContact | None = None
    deputy: CoachContact | None = None
    is_group: bool = False
    priority: int = ANSWER
    open_flags: frozenset[str] | None = None
    writes: WriteBatch = field(default_factory=WriteBatch)
    erased: bool = False
    _reschedule: bool = False
    _names: dict[int, str] | None = None  # what the coach's clients are called, once it was asked for

    # --- saying -------------------------------------------------------------------------------------------

    def say(self, effect: Say) -> None:
        """Queue a message for this chat."""
        self._queue(
            Outgoing(
                self.chat_id,
                effect.message,
                self.at + effect.after,
                effect.choices,
                self.person_id,
                effect.occasion,
                kind=outbox.DeliveryKind.FAREWELL if self.erased else outbox.DeliveryKind.MESSAGE,
                is_group=self.is_group,
                language=None if self.person_id else self.language,
                priority=self.priority,
                ready_at=erasures.HELD if self.erased else self.now + effect.after,
                lasting=effect.lasting,
            )
        )
        if effect.said and self.client is not None:
            self.writes.heard.append((self.client.id, effect.said))

    def notify_coach(
        self,
        message: object,
        choices: Rows = (),
        *,
        urgent: bool = False,
        occasion: str | None = None,
        at: datetime | None = None,
        to: CoachContact | None = None,
    ) -> None:
        """Queue a message for this client's coach; at night only if urgent, or if the coach chose so. at: the instant,
        if already known. to: whoever stands in for them, instead. It waits while they cannot be reached. The only way
        from a client to their coach."""
        coach = self.coach if to is None else to
        if coach is None or coach.chat_id is None:
            return
        message = self._as_called(message)
        due = at or self.now
        if at is None and not urgent and coach.quiet_nights:
            due = schedule.daytime(due, zone_of(coach.zone_name))
        about = None if self.client is None else self.client.id
        self._queue(
            Outgoing(
                coach.chat_id,
                message,
                due,
                choices,
                coach.person_id,
                occasion,
                about=about,
                priority=self.priority,
                lasting=True,
            )
        )

    def _as_called(self, message: object) -> object:
        """News of the client, under the name by which the coach knows them."""
        client = self.client
        if client is None or not isinstance(message, News) or message.name != client.name:
            return message
        called = self._called(client)
        if isinstance(message, ClientEnrolled) and called != client.name and not client.called:
            return replace(message, name=called, alike=client.name)
        return replace(message, name=called)

    def _queue(self, out: Outgoing) -> None:
        self.writes.outbox.append(outbox.row(out, self.now))

    # --- effects ------------------------------------------------------------------------------------------

    def apply(self, effects: Iterable[object]) -> None:
        """Apply effects, in order.

        Raises: ValueError if an effect is not a client effect, or is one without a client.
        """
        for effect in effects:
            self._one(effect)
        if self._reschedule and not self.erased:
            self._set_next_due()

    def store_state(self, state: str) -> None:
        """Store the conversation's state, unless the person was erased."""
        if not self.erased:
            self.writes.states[self.chat_id] = (state, self.at, self._key())

    def _key(self) -> str:
        """The number of the key of whose chat this is."""
        if self.client is not None:
            return self.client.key
        if self.person_id is None:
            return owners.passing(self.conn, self.now)
        return owners.of_person(self.conn, self.person_id)

    def _one(self, effect: object) -> None:
        writes = self.writes
        match effect:
            case Say():
                self.say(effect)
                return
            case e.DropButtons(ref):
                if ref:
                    kind = outbox.DeliveryKind.DROP_BUTTONS
                    self._queue(
                        Outgoing(
                            self.chat_id, None, self.at, kind=kind, ref=ref, person_id=self.person_id, ready_at=self.now
                        )
                    )
                return
            case SendData():
                kind = outbox.DeliveryKind.DATA
                self._queue(
                    Outgoing(self.chat_id, None, self.at, kind=kind, person_id=self.person_id, ready_at=self.now)
                )
                return
            case e.SetTimer(purpose, at, mark):
                writes.timers[self.chat_id, purpose, mark] = Timer(self.chat_id, purpose, mark, at)
                return
            case e.CancelTimer(purpose):
                for key in [k for k in writes.timers if k[:2] == (self.chat_id, purpose)]:
                    del writes.timers[key]
                writes.stopped[self.chat_id, purpose] = None
                return
            case e.DropDelayed():
                writes.delayed_drops[self.chat_id] = self.at
                return
            case Join():
                self.join(self)
                return
        if self.client is None:
            raise ValueError(f"{type(effect).__name__} is an effect of a client's conversation")
        self._of_client(effect, self.client)

    def _of_client(self, effect: object, client: Client) -> None:
        writes, me = self.writes, client.id
        match effect:
            case e.NotifyCoach(message, choices, urgent, occasion):
                news = (
                    about(me) if isinstance(message, DoctorFirst | HealthChanged | RepeatTaken | SignAnswered) else ()
                )
                self.notify_coach(message, choices or news, urgent=urgent, occasion=occasion)
            case e.Record(reading, key):
                writes.readings[me, key] = readings.row(me, key, reading, self.now)
                writes.withdrawn.pop((me, key), None)
                writes.amended.pop((me, key), None)
            case e.Retract(key):
                if (me, key) in writes.readings:
                    writes.readings[me, key]["withdrawn_at"] = self.now
                writes.withdrawn[me, key] = None
            case e.Amend(key, reading):
                if (me, key) in writes.readings:
                    writes.readings[me, key]["conditions"] = readings.conditions_text(reading.conditions)
                writes.amended[me, key] = reading.conditions
            case e.ChangeClient(name, value):
                self._change_client(client, name, value)
            case e.Raise(flag):
                self._raise(client, flag)
            case e.Lower(code, measure, ended, after):
                writes.raised.pop((me, code, measure), None)
                writes.lowered[me, code, measure] = Lowering(ended, after)
            case e.Answered(day):
                self._answered(client, date.fromisoformat(day))
            case e.NotAsked(day):
                self._not_asked(client, date.fromisoformat(day))
            case e.SetGoal(goal):
                writes.goals[me, goal.measure] = goal
                writes.dropped.pop((me, goal.measure), None)
            case e.DropGoal(measure):
                writes.goals.pop((me, measure), None)
                writes.dropped[me, measure] = None
            case e.PassOn(text, urgent, to):
                coach_id = None if self.coach is None else self.coach.id
                writes.coach_words.append((me, coach_id, coach_thread.Direction.TO_COACH, text))
                said = ClientWord(me, self._called(client), text)
                self.notify_coach(said, about(me), urgent=urgent)
                if to and self.deputy is not None and self.deputy.id == to:
                    self.notify_coach(said, about(me), urgent=urgent, to=self.deputy)
            case e.Unsay(mark, by):
                self._unsay(client, mark, by)
            case e.EnterCohort(cohort_id):
                self._enter(client, cohort_id)
            case e.LeaveCohort(cohort_id):
                writes.left_cohorts[me, cohort_id] = None
            case Erase(farewell):
                self._erase(client, farewell)
            case _:
                raise ValueError(f"{type(effect).__name__} is not an effect")

    def _unsay(self, client: Client, occasion: str, by: int) -> None:
        """Take a coach's words back: drop them if they wait, else order them deleted. The coach hears which it was."""
        coach = people.coach(self.conn, by)
        if coach is None:
            return
        name = caseload.names(self.conn, by).get(client.id, client.name)
        if outbox.unsay(self.conn, occasion):
            at = written_at(occasion)
            if at is not None:
                coach_thread.drop_unsent(self.conn, client.id, by, at)
            told = WordsTakenBack(name, "never")
            self._queue(Outgoing(coach.chat_id, told, self.now, (), coach.person_id, about=client.id))
            return
        order = TakingBack(name, coach.chat_id, coach.person_id, client.id)
        self._queue(
            Outgoing(
                self.chat_id,
                order,
                self.at,
                kind=outbox.DeliveryKind.DELETE,
                ref=occasion,
                person_id=self.person_id,
                ready_at=self.now,
            )
        )

    def _enter(self, client: Client, cohort_id: int) -> None:
        """Tell the organiser who joined, and ask their coach, if that is somebody else who can be asked."""
        found = cohorts.find(self.conn, [cohort_id]).get(cohort_id)
        if found is None or found.closed:
            return
        coach = self.coach
        asked = coach is not None and coach.chat_id is not None and coach.person_id != found.organiser_person
        if asked:
            rows = (
                (Choice("cohort_yes", f"coyes:{client.id}:{cohort_id}"),),
                (Choice("cohort_no", f"cono:{client.id}:{cohort_id}"),),
            )
            self.notify_coach(ClientInCohort(client.name, found.name, found.organiser_name), rows)
        else:
            cohorts.agree(self.conn, cohort_id, client.id, self.now)
        if found.organiser_chat is not None:
            here = len(cohorts.current_members(self.conn, cohort_id))
            said = SomebodyJoined(found.name, client.name, here, coach.name if coach is not None and asked else "")
            rows = (
                (Choice("take_out", f"coout:{cohort_id}:{client.id}", client.name),),
                (Choice("cohort_named", f"cohort:{cohort_id}", found.name),),
            )
            self._queue(
                Outgoing(
                    found.organiser_chat,
                    said,
                    self.now,
                    rows,
                    found.organiser_person,
                    about=client.id,
                    priority=self.priority,
                )
            )

    def _raise(self, client: Client, flag: Flag) -> None:
        self.writes.raised[client.id, flag.code.value, flag.measure] = flag
        if flag.severity is not Severity.URGENT:
            return
        if self.coach is None:
            return
        day = flag.since.astimezone(zone_of(client.slot.zone_name if client.slot else None)).date()
        level = dict(flag.evidence).get("level", "")
        what = level
        if flag.code is Code.RED_FLAG_WORDS:  # an occasion is stored in clear: nobody's own words are in it
            what = "/".join(str(value) for name, value in flag.evidence if name != "words")
        self.notify_coach(
            UrgentFlag(client.id, self._called(client), flag.code.value, flag.measure, flag.evidence, flag.since),
            about_flag(client.id, flag.code.value, self.now),
            at=when_to_tell(flag, self.now, zone_of(self.coach.zone_name), quiet_nights=self.coach.quiet_nights),
            # one emergency must never be mistaken for a repetition of another
            occasion=None if level == "emergency" else f"flag/{client.id}/{flag.code.value}/{what}/{day.isoformat()}",
        )

    def _called(self, client: Client) -> str:
        """What the coach knows this client as: two of one name are told apart."""
        if self.coach is None:
            return client.name
        if self._names is None:
            self._names = caseload.names(self.conn, self.coach.id)
        return self._names.get(client.id, client.name)

    def clear_flags(self, client: Client, ends: Clears) -> None:
        """Clear the open flags with this clearing rule."""
        raised = {code for _, code, _ in self.writes.raised}
        for code in (code.value for code, rule in RULES.items() if rule.clears is ends):
            if self.open_flags is None or code in self.open_flags or code in raised:
                self._of_client(e.Lower(code, ended=ENDED_BY[ends]), client)

    def _answered(self, client: Client, day: date) -> None:
        self.clear_flags(client, Clears.ANSWERED)
        if (day, 0) == (client.answered, client.missed):
            return  # recorded with the first answer of this check-in
        self.writes.answered[client.id, day] = None
        self._change(client, answered=max(day, client.answered or day), missed=0)

    def _not_asked(self, client: Client, day: date) -> None:
        self.writes.not_asked[client.id, day] = self.now
        if client.asked == day:  # the sweep recorded it as asked, so it would count as missed
            self._change(client, asked=None)

    def _change(self, client: Client, **values: Any) -> None:
        self.writes.changes.setdefault(client.id, {}).update(values)

    # --- learning -----------------------------------------------------------------------------------------

    def _change_client(self, client: Client, name: str, value: Any) -> None:
        if name == "plan":
            self.writes.plans = [(c, p) for c, p in self.writes.plans if c.id != client.id] + [(client, value)]
        elif name == "language":
            if client.person_id is not None:
                self.writes.languages[client.person_id] = value
        elif name == "zone":
            self._change(client, zone_name=value if isinstance(value, str) else value.key)
        else:
            self._change(client, **clients.columns(name, value, self.now))
        self._reschedule |= name in ("slot", "zone", "status", "paused_until")

    def _set_next_due(self) -> None:
        """Recompute when this client is due, because their slot, zone, status or pause has changed."""
        assert self.client is not None
        client, new = self.client, self.writes.changes.get(self.client.id, {})
        old = client.slot
        weekday = new.get("weekday", old.weekday if old else None)
        at = new.get("at", old.at if old else None)
        zone_name = new.get("zone_name", old.zone_name if old else None)
        slot = Slot(weekday, at, zone_name) if weekday is not None and at is not None and zone_name else None
        status = Status(new.get("status", client.status))
        paused_until = new.get("paused_until", client.paused_until)
        self._change(client, **clients.next_due(status, slot, paused_until, zone_of(zone_name), self.now))

    # --- leaving ------------------------------------------------------------------------------------------

    def _erase(self, client: Client, farewell: object) -> None:
        """Erase the person. This turn's messages to the coach are still sent; nothing else of it is written."""
        told = [row for row in self.writes.outbox if row["chat_id"] != self.chat_id]
        erase.client(self.conn, client.id, self.now)
        self.writes = WriteBatch(outbox=[row | {"about": None} for row in told])
        self.person_id, self.client, self.erased = None, None, True
        self.say(Say(farewell))
