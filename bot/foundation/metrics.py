"""Prometheus metrics. Labels are codes from a fixed list, never people or anything they wrote."""

from __future__ import annotations

from prometheus_client import CollectorRegistry, Counter, Gauge, Histogram, generate_latest

_FAST = (0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 15)
_SLOW = (0.05, 0.25, 1, 5, 15, 60, 300, 1800, 7200, 43_200)


class Metrics:
    """One process's metrics, in a registry of their own."""

    def __init__(self) -> None:
        self.registry = CollectorRegistry()
        self.updates = Counter(
            "samehour_updates", "Updates received from the messenger", ["way"], registry=self.registry
        )
        self.unread = Counter(
            "samehour_updates_not_read", "Updates that could not be read and were set aside", registry=self.registry
        )
        self.turns = Counter("samehour_turns", "Events handled", registry=self.registry)
        self.turn_seconds = Histogram(
            "samehour_turn_batch_seconds",
            "Time one batch of turns took",
            buckets=_FAST,
            registry=self.registry,
        )
        self.swept = Counter("samehour_due_swept", "Due rows turned into events", registry=self.registry)
        self.messages = Counter("samehour_messages", "Results of sending messages", ["result"], registry=self.registry)
        self.send_seconds = Histogram(
            "samehour_send_seconds", "Time the messenger took", buckets=_FAST, registry=self.registry
        )
        self.late_seconds = Histogram(
            "samehour_message_late_seconds",
            "Delay between the time a message was due and its sending",
            buckets=_SLOW,
            registry=self.registry,
        )
        self.waiting = Gauge(
            "samehour_waiting",
            "Pending rows of all workers: to be handled, to be sent, set aside",
            ["what"],
            registry=self.registry,
        )
        self.unreachable_coaches = Gauge(
            "samehour_unreachable_coaches", "Coaches with clients whom no message reaches", registry=self.registry
        )
        self.halted = Gauge("samehour_halted", "1 while the messenger halts all sending", registry=self.registry)

    def text(self) -> bytes:
        """Everything in the exposition format."""
        return generate_latest(self.registry)
