"""A coach's week on one screen: who needs a person today, what changed, who went quiet, and a line for what is known.

Everybody stands in one section only, with the gravest of what is new about them:

| the gravest new flag is                                   | section   |
|-----------------------------------------------------------|-----------|
| urgent, or this week's and neither of the two below       | `needs`   |
| any, beside something urgent that is known and still open | `needs`   |
| a confirmed change, or a note                             | `changes` |
| silence, or a messenger that refuses to deliver           | `quiet`   |
| none: all was seen before, and something of it still asks | `known`   |
| none, and they take a break                               | `away`    |

Within a section the most severe of what is new comes first, then the newest; who takes a break comes after who does
not. What was known before never stands above what is new.

The life cycle of a flag in the digest:

| the flag is                         | in the digest                                         |
|-------------------------------------|-------------------------------------------------------|
| open, neither seen nor told before  | in its section                                        |
| open, known, this week's            | `known`, if nothing else of the person is new         |
| open, known, urgent                 | `known`, or named behind what is new of the person    |
| open, known, a note                 | not listed: it stays on the card                      |
| urgent, known, it happened again    | in its section, as if it were new                     |
| urgent, and cleared by itself       | once more, with what followed; then on the card       |
| urgent, and cleared by a deputy     | once more, with what was done, for its coach          |
| cleared by its coach, or not urgent | gone; if it recurs, it is a new flag                  |

Known is what a coach has seen, and what the digest of an earlier week has named.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, replace
from datetime import date, datetime, time, timedelta, tzinfo
from decimal import Decimal
from enum import StrEnum

from core.care import METRIC, Units
from core.judging.chart_data import PressureWeekChart, RatingLine, TrendChart
from core.schedule import instant
from core.watching.flags import Code, Flag, Severity, flag

CHANGES = frozenset({Code.CHANGE_BETTER_CONFIRMED, Code.CHANGE_WORSE_CONFIRMED, Code.CHANGE_CONFIRMED})
QUIET = frozenset({Code.MISSED_CHECK_INS, Code.UNREACHABLE})
GRAVITY = {Severity.URGENT: 0, Severity.THIS_WEEK: 1, Severity.NOTE: 2}

IN_CARE = ("active", "paused", "finished")  # whoever is not still arriving, and has not left

INCLUDES: dict[Code, frozenset[Code]] = {  # of the same measure: the one on the left says all that those say
    Code.BP_SEVERE_REPEATED: frozenset({Code.BP_SEVERE}),
    Code.ENERGY_FALLING: frozenset({Code.ENERGY_DROPPED, Code.CHANGE_WORSE_LARGE}),
    Code.ENERGY_DROPPED: frozenset({Code.CHANGE_WORSE_LARGE}),
    Code.CHANGE_WORSE_CONFIRMED: frozenset({Code.CHANGE_WORSE_LARGE}),
    Code.MUST_HIGH: frozenset({Code.MUST_MEDIUM}),
    Code.UNPLANNED_LOSS_OVER_5: frozenset({Code.MUST_MEDIUM}),  # its one point, then, is for that loss
    Code.RETEST_MISSED: frozenset({Code.BP_WEEK_SHORT}),
}

NIGHT_BEGINS, NIGHT_ENDS = time(22, 0), time(7, 0)
LIMIT = 4096  # characters of one message on the platform
SCREEN = 25  # lines of one phone screen
NOBODY = 0  # client_id of an entry that is about the caseload, or about somebody who has not come yet
SILENT_FROM = 3  # ours: so many asked and none answered is a matter of the bot, not of the people
STUCK_AFTER = timedelta(days=3)  # ours
UNUSED_AFTER = timedelta(days=7)
A_WEEK = timedelta(days=7)
EARLIER = timedelta(days=6)  # a digest of that age is another week's, even where a coach has moved its day or hour


@dataclass(frozen=True, slots=True)
class FlagFact:
    """A flag of a client in the caseload, as stored.

    refreshed_at: when it last recurred.  id: 0 for one that is reckoned for each digest and never stored.  digest_at:
    when a weekly digest first named it.  cleared_at: None while it is open.  ended, after: what cleared it, and what
    followed (`core.watching.flags`).  done, words, by: what a coach did, in their words, and their name.
    """

    id: int
    code: str
    severity: str
    measure: str | None
    evidence: tuple[tuple[str, str | Decimal], ...]
    since: datetime
    seen_at: datetime | None = None
    refreshed_at: datetime | None = None
    digest_at: datetime | None = None
    cleared_at: datetime | None = None
    ended: str = ""
    after: tuple[tuple[str, str | Decimal], ...] = ()
    done: str = ""
    words: str = ""
    by: str = ""

    @property
    def seen(self) -> bool:
        """Whether a coach has seen it since it last mattered: an urgent flag that recurs counts as new."""
        return self.seen_at is not None and not self._again(self.seen_at)

    def known(self, now: datetime) -> bool:
        """Whether it is no news in a digest: it was seen, or an earlier week's digest has named it."""
        told = self.digest_at is not None and now - self.digest_at >= EARLIER and not self._again(self.digest_at)
        return self.seen or told

    def _again(self, since: datetime) -> bool:
        again = self.refreshed_at is not None and self.refreshed_at > since
        return again and self.severity == Severity.URGENT

    @property
    def over(self) -> bool:
        return self.cleared_at is not None

    @property
    def newest(self) -> datetime:
        """When it last mattered."""
        return self.refreshed_at or self.since


@dataclass(frozen=True, slots=True)
class CaseRow:
    """One client's row in a caseload.

    answered: local date of the last answered check-in.  asked: whether a check-in fell within the week of the digest.
    kept: whether it was answered. status: "invited", "enrolling", "active", "paused", "finished", "left". units:
    the client's own, in which their figures are told. joined: when their row was made. settled: urgent flags that
    ended by themselves or by somebody else's doing, and no digest has said so yet.
    """

    client_id: int
    name: str
    status: str
    answered: date | None = None
    asked: bool = False
    kept: bool = False
    missed: int = 0
    paused_until: date | None = None
    reachable: bool = True
    flags: tuple[FlagFact, ...] = ()
    units: Units = METRIC
    joined: datetime | None = None
    settled: tuple[FlagFact, ...] = ()


@dataclass(frozen=True, slots=True)
class OpenInvitation:
    """A link that nobody has used yet. made: the instant it was made."""

    id: int
    name: str
    made: datetime


class Detail(StrEnum):
    """How much of an entry there is room for."""

    FULL = "full"  # every new flag, with the person's own words and the next step
    SHORT = "short"  # the gravest flag, with its figure and date
    NAMED = "named"  # the name


@dataclass(frozen=True, slots=True)
class DigestEntry:
    """One client in a digest, with the flags that put them there, most serious first. status, until: as in `CaseRow`.
    units: of the figures. still: what is urgent, known and still open, beside the flags that are new."""

    client_id: int
    name: str
    flags: tuple[FlagFact, ...]
    units: Units = METRIC
    status: str = "active"
    until: date | None = None
    detail: Detail = Detail.FULL
    still: tuple[FlagFact, ...] = ()

    @property
    def urgent(self) -> bool:
        return any(f.severity == Severity.URGENT and not f.over for f in (*self.flags, *self.still))

    @property
    def matters(self) -> tuple[FlagFact, ...]:
        """The flags without those that another of them includes."""
        said = {(code, f.measure) for f in self.flags for code in INCLUDES.get(Code(f.code), ())}
        return tuple(f for f in self.flags if (f.code, f.measure) not in said)

    @property
    def told(self) -> tuple[FlagFact, ...]:
        """The matters that there is room to tell."""
        return {Detail.FULL: self.matters, Detail.SHORT: self.matters[:1], Detail.NAMED: ()}[self.detail]

    @property
    def shown(self) -> tuple[int, ...]:
        """Ids of the flags that are told, and of those they include."""
        whole = self.detail is Detail.FULL
        told = {(c, f.measure) for f in self.told for c in (Code(f.code), *INCLUDES.get(Code(f.code), ()))}
        return tuple(f.id for f in self.flags if f.id and (whole or (f.code, f.measure) in told))


@dataclass(frozen=True, slots=True)
class Digest:
    """day: local date of the coach.  needs, changes, quiet, known, away: see above; nobody is in two of them.

    needed: how many people are in `needs`, or in `known` with something urgent.  asked, kept: the week's check-ins over
    the whole caseload.  often: how many still weigh often, as was known before.  rest: clients with nothing to report.
    left_out: how many there was no room even to name.
    """

    day: date
    needs: tuple[DigestEntry, ...] = ()
    changes: tuple[DigestEntry, ...] = ()
    quiet: tuple[DigestEntry, ...] = ()
    known: tuple[DigestEntry, ...] = ()
    away: tuple[DigestEntry, ...] = ()
    needed: int = 0
    asked: int = 0
    kept: int = 0
    often: int = 0
    rest: int = 0
    left_out: int = 0

    @property
    def calm(self) -> bool:
        """True if there is nothing new."""
        return not self.entries

    @property
    def silent(self) -> bool:
        """Whether a whole caseload has gone quiet: that is no quiet week."""
        return self.asked >= SILENT_FROM and not self.kept

    @property
    def shown(self) -> tuple[int, ...]:
        """Ids of every flag that is told in it."""
        return tuple(number for e in self.entries for number in e.shown)

    @property
    def entries(self) -> tuple[DigestEntry, ...]:
        """All that is new, in display order."""
        return (*self.needs, *self.changes, *self.quiet)

    @property
    def named(self) -> tuple[tuple[int, str], ...]:
        """Number and name of everybody in it, in display order."""
        everybody = (*self.entries, *self.known, *self.away)
        return tuple((e.client_id, e.name) for e in everybody if e.client_id != NOBODY)


@dataclass(frozen=True, slots=True)
class Panel:
    """One small chart of a caseload sheet: whose, and why it is shown. code: of the flag.  flag, units: with its
    figure, as the text has it; None in one that was made before it was kept."""

    name: str
    code: str
    picture: TrendChart | RatingLine | PressureWeekChart
    flag: FlagFact | None = None
    units: Units = METRIC


def digest(
    rows: tuple[CaseRow, ...], day: date, *, now: datetime, invitations: Iterable[OpenInvitation] = ()
) -> Digest:
    """Order a caseload the way a coach needs it.

    now: the instant of the digest, which decides what has stood for how long.  Clients who left are omitted unless
    something of theirs is open.
    """
    sections: dict[str, list[DigestEntry]] = {"needs": [], "changes": [], "quiet": [], "known": [], "away": []}
    counted = [r for r in rows if r.status in ("active", "paused")]
    asked, kept = sum(r.asked for r in counted), sum(r.kept for r in counted)
    if asked >= SILENT_FROM and not kept:
        silence = _reckoned(flag(Code.CASELOAD_QUIET, now, asked=Decimal(asked)))
        sections["needs"].append(DigestEntry(NOBODY, "", (silence,)))
    for row in rows:
        section, flags, still = _placed(row, now)
        if section:
            until = row.paused_until if row.status == "paused" else None
            entry = DigestEntry(row.client_id, row.name, flags, row.units, row.status, until, still=still)
            sections[section].append(entry)
    for one in invitations:
        if (found := _unused(one.made, now)) is not None and not found.known(now):
            sections["quiet"].append(DigestEntry(NOBODY, one.name, (found,), status="invited"))

    def in_order(section: str) -> tuple[DigestEntry, ...]:
        return tuple(sorted(sections[section], key=_entry_order))

    named = {e.client_id for entries in sections.values() for e in entries}
    return Digest(
        day=day,
        needs=in_order("needs"),
        changes=in_order("changes"),
        quiet=in_order("quiet"),
        known=in_order("known"),
        away=in_order("away"),
        needed=sum(e.client_id != NOBODY for e in sections["needs"]) + sum(e.urgent for e in sections["known"]),
        asked=asked,
        kept=kept,
        often=sum(any(f.code == Code.WEIGHING_OFTEN and f.known(now) for f in r.flags) for r in counted),
        rest=sum(r.client_id not in named and r.status == "active" for r in counted),
    )


def _placed(row: CaseRow, now: datetime) -> tuple[str, tuple[FlagFact, ...], tuple[FlagFact, ...]]:
    """The section of a client, "" for none; the flags that put them there, and those urgent ones that are known."""
    paused = row.status == "paused"
    open_ = [f for f in (*row.flags, *_standing(row, now)) if not (paused and f.code == Code.MISSED_CHECK_INS)]
    known = [f for f in open_ if f.known(now)]
    new = [*(f for f in open_ if not f.known(now) and not any(_says(one, f) for one in known)), *row.settled]
    if new:
        told = tuple(sorted(new, key=_worst_first))
        urgent = (f for f in known if f.severity == Severity.URGENT and not any(_says(one, f) for one in known))
        still = tuple(sorted(urgent, key=_worst_first))
        return "needs" if still else _section(told[0]), told, still
    old = tuple(sorted((f for f in open_ if f.severity != Severity.NOTE), key=_worst_first))
    if old:
        return "known", old, ()
    return ("away" if paused else ""), (), ()


def _says(known: FlagFact, one: FlagFact) -> bool:
    """Whether a known flag says all that another does, which has not happened again since."""
    included = Code(one.code) in INCLUDES.get(Code(known.code), ())
    return included and one.measure == known.measure and one.newest <= known.newest


def _section(gravest: FlagFact) -> str:
    code = Code(gravest.code)
    if gravest.over:
        return "changes"
    if code in QUIET or code is Code.INVITATION_UNUSED:
        return "quiet"
    return "changes" if code in CHANGES or gravest.severity == Severity.NOTE else "needs"


def _standing(row: CaseRow, now: datetime) -> Iterator[FlagFact]:
    """What a client's row says by itself: it is reckoned for each digest, and over when the row says something else."""
    if row.joined is None:
        return
    if row.status == "enrolling" and now - row.joined >= STUCK_AFTER:
        yield _stood(flag(Code.STUCK_ENROLLING, row.joined), row.joined + STUCK_AFTER, now)
    if row.status == "invited" and (found := _unused(row.joined, now)) is not None:
        yield found


def _unused(made: datetime, now: datetime) -> FlagFact | None:
    since = made + UNUSED_AFTER
    return _stood(flag(Code.INVITATION_UNUSED, made), since, now) if now >= since else None


def _stood(found: Flag, due: datetime, now: datetime) -> FlagFact:
    """New in the first digest after `due`, and known from then on."""
    return replace(_reckoned(found), seen_at=due if now - due >= A_WEEK else None)


def _reckoned(found: Flag) -> FlagFact:
    return FlagFact(0, found.code.value, found.severity.value, found.measure, found.evidence, found.since)


def _worst_first(flag: FlagFact) -> tuple[int, bool, float]:
    gravity = GRAVITY[Severity.THIS_WEEK if flag.over else Severity(flag.severity)]
    return gravity, flag.seen, -flag.newest.timestamp()


def _entry_order(entry: DigestEntry) -> tuple[bool, int, bool, float, str]:
    about_all = entry.client_id == NOBODY and not entry.name
    if not entry.flags:
        return not about_all, 0, True, 0.0, entry.name.casefold()
    gravity, _, since = _worst_first(entry.flags[0])
    return not about_all, gravity, entry.until is not None, since, entry.name.casefold()


def by_need(rows: tuple[CaseRow, ...]) -> tuple[CaseRow, ...]:
    """A caseload in list order: by gravest unseen flag, then missed check-ins, then name."""

    def order(row: CaseRow) -> tuple[bool, tuple[int, bool, float] | tuple[()], int, str]:
        flags = sorted(row.flags, key=_worst_first)
        return (not flags, _worst_first(flags[0]) if flags else (), -row.missed, row.name.casefold())

    return tuple(sorted(rows, key=order))


# --- one screen -------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Size:
    """Of a message as somebody reads it. characters: as the platform counts them; lines: of a phone's screen."""

    characters: int
    lines: int

    def fits(self, room: Size) -> bool:
        return self.characters <= room.characters and self.lines <= room.lines


ROOM = Size(3900, SCREEN)  # ours: leaves some characters for another language, if the coach changes it before delivery


def fitted(whole: Digest, size: Callable[[Digest], Size], room: Size = ROOM) -> Digest:
    """Cut a digest to one screen. Urgent entries are the last to be shortened, and never go below a line.

    size: of a digest as rendered for the coach.  One that was cut before and fits stays as it is.

    From the least pressing up, entries are shortened to a line, so that as many as can be are told; then the least
    pressing to a name in a list; only if the names do not fit either are the last of them counted. If the urgent ones
    alone are more lines than a screen has, they are all there: then the message is longer than the screen, but never
    than the platform allows.
    """
    if size(whole).fits(room):
        return whole
    order = _by_weight(whole)
    urgent = sum(whole_entry.urgent for _, whole_entry in order)
    every = len(order)

    def ok(full: int, short: int, named: int = every, within: Size = room) -> bool:
        return size(_cut(whole, order, full, short, named)).fits(within)

    best = _most(0, every, lambda n: ok(n, every - n))  # so many in full, the rest in short
    if best is not None:
        return _cut(whole, order, best, every - best, every)
    told = _most(0, every - urgent, lambda n: ok(0, urgent + n))  # so many in short beside the urgent, the rest by name
    if told is not None:
        short = urgent + told
        best = _most(0, short, lambda n: ok(n, short - n)) or 0  # and of these so many in full
        return _cut(whole, order, best, short - best, every)
    best = _most(0, every - urgent, lambda n: ok(0, urgent, urgent + n))
    if best is not None:
        return _cut(whole, order, 0, urgent, urgent + best)
    unbounded = Size(room.characters, 10**6)
    best = _most(0, urgent, lambda n: ok(0, n, n, unbounded)) or 0
    return _cut(whole, order, 0, best, best)


def _most(low: int, high: int, fits: Callable[[int], bool]) -> int | None:
    """The largest number that fits, None if the lowest does not. A larger one never fits where a smaller does not."""
    if low > high or not fits(low):
        return None
    while low < high:
        middle = (low + high + 1) // 2
        low, high = (middle, high) if fits(middle) else (low, middle - 1)
    return low


SECTIONS = ("needs", "changes", "quiet")


def _by_weight(whole: Digest) -> tuple[tuple[str, DigestEntry], ...]:
    """Every entry with its section, the ones to keep in full first."""
    every = [(section, entry) for section in SECTIONS for entry in getattr(whole, section)]

    def order(item: tuple[str, DigestEntry]) -> tuple[bool, int]:
        return not item[1].urgent, _worst_first(item[1].flags[0])[0]

    return tuple(sorted(every, key=order))


def _cut(whole: Digest, order: tuple[tuple[str, DigestEntry], ...], full: int, short: int, named: int) -> Digest:
    """The first `full` entries in full, the next `short` ones in short, up to `named` by name, the rest counted."""
    sections: dict[str, dict[int, DigestEntry]] = {name: {} for name in SECTIONS}
    for n, (section, entry) in enumerate(order[: max(named, full + short)]):
        detail = Detail.FULL if n < full else Detail.SHORT if n < full + short else Detail.NAMED
        sections[section][id(entry)] = replace(entry, detail=detail)

    def kept(section: str) -> tuple[DigestEntry, ...]:
        return tuple(sections[section][id(e)] for e in getattr(whole, section) if id(e) in sections[section])

    left_out = whole.left_out + len(order) - sum(map(len, sections.values()))
    return replace(whole, needs=kept("needs"), changes=kept("changes"), quiet=kept("quiet"), left_out=left_out)


# --- telling at once --------------------------------------------------------------------------------------------


def when_to_tell(flag: Flag | FlagFact, now: datetime, zone: tzinfo, *, quiet_nights: bool) -> datetime:
    """When to notify a coach of an urgent flag: `now`, or at the end of the night if it may wait and the coach chose
    so.

    zone: the coach's.  Emergencies and severe readings never wait.
    """
    local = now.astimezone(zone)
    night = local.time() >= NIGHT_BEGINS or local.time() < NIGHT_ENDS
    if not (quiet_nights and night and _may_wait(flag)):
        return now
    day = local.date() + timedelta(days=local.time() >= NIGHT_BEGINS)
    return instant(day, NIGHT_ENDS, zone)


EMERGENCY_WAITS = 30  # minutes, ours: for a coach's answer, unless they choose otherwise
LESS_PRESSING = 4  # ours: so many times as long waits what is urgent and no emergency


def acknowledged_by(flag: Flag | FlagFact, wait: timedelta) -> timedelta:
    """How long an urgent flag waits for its coach before it goes to whoever stands in. wait: of an emergency."""
    return LESS_PRESSING * wait if _may_wait(flag) else wait


def may_wait(level: str, sign: str) -> bool:
    """Whether words about a sign may wait for the end of the night. Despair never does, whatever its level."""
    return level in ("same_day", "stop_rest", "talk") and sign != "despair"


def _may_wait(flag: Flag | FlagFact) -> bool:
    """True for what public guidance calls a same-day matter, or for no more than "not well today"."""
    evidence = dict(flag.evidence)
    match Code(flag.code):
        case Code.RED_FLAG_WORDS | Code.SIGN_UNANSWERED:
            return may_wait(str(evidence.get("level")), str(evidence.get("sign")))
        case Code.SYMPTOM_REPORTED:
            return evidence.get("sign") == "gate_unwell"
        case Code.FAST_GAIN | Code.BP_LOW:  # advice for today
            return True
        case _:
            return False
