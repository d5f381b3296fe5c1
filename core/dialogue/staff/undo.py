"""Undo what a coach did last, where that can be undone: one step, and only if nothing has changed since.

A note is not: the words it replaced would have to be kept outside the client's own data, and so are cautions. Handing
over, ending care and a new baseline are asked about beforehand; an invitation has a button of its own.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from core.care import Plan
from core.dialogue.staff import effects as fx
from core.dialogue.staff import talk_messages as tm
from core.dialogue.staff.facts import CardFact
from core.dialogue.staff.states import Undo
from core.dialogue.staff.step import StaffStep, about, written_at
from core.dialogue.staff.writing import TAKEN_BACK_WITHIN

NAME = "undo"
A_DAY = timedelta(days=1)
NO_ACTION = (fx.ToldInDigest, fx.Export)  # effects that change nothing a coach could want back


def remember(d: StaffStep) -> None:
    """Note what this step did and how to undo it; anything that cannot be undone ends what could be."""
    did = [effect for effect in d.effects if isinstance(effect, fx.StaffEffect) and not isinstance(effect, NO_ACTION)]
    if not did:
        return
    back = _inverse(d, did[0]) if len(did) == 1 and not d.undoing else None
    d.become(undo=None if back is None else Undo(_bare(did[0]), back, d.now))


def client_of(undo: Undo | None) -> int:
    """The client whom it is about; 0 for nobody."""
    back = None if undo is None else undo.back
    return back.client_id if isinstance(back, fx.TakeBack | fx.ReopenFlags | fx.ChangePlan) else 0


def undo(d: StaffStep, argument: str) -> None:
    last = d.state.undo
    client = client_of(last)
    card = _card(d, client)
    within = TAKEN_BACK_WITHIN if last is not None and isinstance(last.back, fx.TakeBack) else A_DAY
    if last is None or d.now >= last.at + within or not _as_left(last, card):
        d.become(undo=None)
        d.say(tm.NothingToUndo())
        return
    d.undoing = True
    back = last.back
    if isinstance(back, fx.ChangePlan) and back.plan is not None and card is not None:
        own = replace(back.plan, own_question=card.plan.own_question)
        back = replace(back, plan=replace(own, directed_by=card.plan.directed_by if own.directed_weighing else ""))
    d.do(back)  # type: ignore[arg-type]  # made by _inverse
    if isinstance(last.back, fx.TakeBack):
        return  # what became of the words is said when it is known
    what = {fx.ReopenFlags: "flags", fx.ChangePlan: "plan", fx.MarkUnseen: "seen"}.get(type(last.back), "own")
    rows = () if card is None else about(card.client_id)
    d.say(tm.ActionUndone(what, "" if card is None else card.name), *rows)


def _bare(did: object) -> object:
    """What was done, without anybody's words: they are kept with the client only."""
    match did:
        case fx.WriteTo():
            return replace(did, text="")
        case fx.ClearFlags():
            return replace(did, words="")
        case fx.ChangePlan():
            return replace(did, plan=_impersonal(did.plan), detail="")
        case _:
            return did


def _impersonal(plan: Plan | None) -> Plan | None:
    return None if plan is None else replace(plan, own_question="", directed_by="")


def _as_left(last: Undo, card: CardFact | None) -> bool:
    """Whether it is still as that step left it: nobody has changed it since."""
    did = last.did
    if client_of(last) and card is None:
        return False
    if isinstance(did, fx.ChangePlan) and card is not None:
        return not card.for_coach and did.plan in (None, _impersonal(card.plan)) and did.slot in (None, card.slot)
    return True


def _inverse(d: StaffStep, did: object) -> object | None:
    match did:
        case fx.WriteTo(client, _, mark):
            at = written_at(mark)
            return None if at is None else fx.TakeBack(client, mark, at)
        case fx.ClearFlags(client, flag_ids):
            return fx.ReopenFlags(client, flag_ids)
        case fx.MarkSeen(flag_ids):
            here = [*(f for c in d.facts.cards for f in c.flags), *(f for r in d.facts.rows for f in r.flags)]
            new = tuple(dict.fromkeys(f.id for f in here if f.id in flag_ids and f.seen_at is None))
            return fx.MarkUnseen(new) if new else None
        case fx.ChangePlan(client) if (card := _card(d, client)) is not None:
            return _plan_before(did, card)
        case fx.SetDigest():
            return fx.SetDigest(d.known.slot)
        case fx.SetNight():
            return fx.SetNight(d.known.night)
        case fx.SetWait():
            return fx.SetWait(d.known.wait)
        case fx.SetDeputy():
            return fx.SetDeputy(d.known.deputy)
        case _:
            return None


def _card(d: StaffStep, client: int) -> CardFact | None:
    return next((c for c in d.facts.cards if c.client_id == client), None)


def _plan_before(did: fx.ChangePlan, card: CardFact) -> fx.ChangePlan | None:
    """The plan as it was; the client reads news of the same kind."""
    before, what, detail = card.plan, did.what, ""
    if what in ("baseline", "cautions", "directed_weighing_off") or (did.slot is not None and card.slot is None):
        return None
    if what == "directed_weighing":
        what = "directed_weighing_off"
    elif what in ("programme", "programme_open"):
        what = "programme" if before.programme is not None else "programme_open"
        detail = "" if before.programme is None else str(before.programme.weeks)
    return fx.ChangePlan(
        card.client_id,
        what,
        plan=None if did.plan is None else _impersonal(before),
        slot=None if did.slot is None else card.slot,
        detail=detail,
    )
