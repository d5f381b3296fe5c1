"""The shared rate limits, on both databases. `now` is an argument: nothing here waits."""

from datetime import UTC, datetime, timedelta

from bot.store import rate_limit

NOW = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)
RATES = rate_limit.Rates(overall=28, chat=1, group=20)
QUARTER = timedelta(milliseconds=250)
SECOND = timedelta(seconds=1)


def instants(given, count):
    return [given.first + n * RATES.apart for n in range(count)]


def draw(conn, now, most=100):
    """Reserve all available sends, as one worker would; return the instant of each."""
    given = rate_limit.room(conn, now, QUARTER, RATES)
    count = min(given.count, most)
    rate_limit.take(conn, given, count, RATES)
    return instants(given, count)


def busiest_second(sent):
    sent = sorted(sent)
    return max(sum(1 for other in sent if at <= other < at + SECOND) for at in sent)


def test_a_worker_takes_a_quarter_of_a_second_at_once(database):
    given = database.write_now(rate_limit.room, NOW, QUARTER, RATES)
    assert given == rate_limit.Room(NOW, 7)


def test_workers_that_take_turns_fill_the_rate_and_never_exceed_it(database):
    def two_workers(conn):  # for ten seconds, each polling every 100 ms
        return [at for tick in range(200) for at in draw(conn, NOW + tick * timedelta(milliseconds=50))]

    sent = database.write_now(two_workers)
    assert busiest_second(sent) == 28
    used = len([at for at in sent if at < NOW + 10 * SECOND])
    assert used >= 279


def test_a_clock_that_runs_ahead_makes_others_wait_but_never_sends_too_much(database):
    def two_workers(conn):
        ticks = [(NOW + tick * timedelta(milliseconds=100), tick % 2 * 3 * SECOND) for tick in range(100)]
        return [at for now, ahead in ticks for at in draw(conn, now + ahead)]

    assert busiest_second(database.write_now(two_workers)) <= 28


def test_room_that_was_not_used_stays_free(database):
    assert len(database.write_now(draw, NOW, 2)) == 2
    assert database.write_now(rate_limit.room, NOW, QUARTER, RATES) == rate_limit.Room(NOW + 2 * RATES.apart, 5)


def test_when_the_platform_says_wait_no_worker_sends(database):
    until = NOW + 7 * SECOND
    database.write_now(rate_limit.halt, until)
    assert database.write_now(rate_limit.room, NOW, QUARTER, RATES) == rate_limit.Room(until, 0)
    assert database.write_now(rate_limit.room, until, QUARTER, RATES) == rate_limit.Room(until, 7)


def test_a_shorter_wait_does_not_undo_a_longer_one(database):
    database.write_now(rate_limit.halt, NOW + 7 * SECOND)
    database.write_now(rate_limit.halt, NOW + 1 * SECOND)
    assert database.write_now(rate_limit.room, NOW, QUARTER, RATES).first == NOW + 7 * SECOND


def send_whenever_free(database, chat, group, seconds):
    """Send to one chat as soon as allowed, polling every 100 ms; return the instants."""

    def sending(conn):
        sent = []
        for tick in range(seconds * 10):
            now = NOW + tick * timedelta(milliseconds=100)
            if rate_limit.chats_free(conn, [(chat, group)], RATES).get(chat, now) <= now:
                rate_limit.take_chats(conn, [(chat, group, now)], RATES)
                sent.append(now)
        return sent

    return database.write_now(sending)


def test_a_chat_takes_a_short_burst_and_then_one_a_second(database):
    sent = send_whenever_free(database, 17, False, 6)
    assert sent[: rate_limit.BURST] == [NOW, NOW + 0.1 * SECOND, NOW + 0.2 * SECOND]
    gaps = [
        later - earlier for earlier, later in zip(sent[rate_limit.BURST - 1 :], sent[rate_limit.BURST :], strict=False)
    ]
    assert all(gap >= 0.8 * SECOND for gap in gaps)
    assert len(sent) == rate_limit.BURST + 5


def test_a_group_never_gets_more_than_twenty_in_any_minute(database):
    sent = send_whenever_free(database, -17, True, 130)
    assert len(sent) >= 40
    for at in sent:
        assert sum(1 for other in sent if at <= other < at + 60 * SECOND) <= 20


def test_one_chat_does_not_hold_up_another(database):
    for _ in range(5):
        database.write_now(rate_limit.take_chats, [(17, False, NOW)], RATES)
    free = database.write_now(rate_limit.chats_free, [(17, False), (18, False)], RATES)
    assert free[17] > NOW
    assert 18 not in free


def test_quiet_chats_are_forgotten_and_the_overall_rate_is_not(database):
    database.write_now(draw, NOW, 3)
    database.write_now(rate_limit.take_chats, [(17, False, NOW), (-3, True, NOW)], RATES)
    assert database.write_now(rate_limit.forget, NOW + 30 * SECOND) == 0
    assert database.write_now(rate_limit.forget, NOW + 120 * SECOND) == 2
    assert database.write_now(rate_limit.room, NOW, QUARTER, RATES).first > NOW
