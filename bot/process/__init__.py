"""The running process: intake, turns, sweeps over what is due, delivery, health."""
