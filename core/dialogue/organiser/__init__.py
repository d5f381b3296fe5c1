"""An organiser's part of a staff chat: start, manage and close cohorts."""
