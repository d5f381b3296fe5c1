"""Messages about a cohort: to its members in private, and in its group chat."""
