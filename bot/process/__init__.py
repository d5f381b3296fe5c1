"""The running process: intake, turns, sweeps for due work, delivery, health checks."""
