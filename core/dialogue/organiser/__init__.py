"""What an organiser does in a chat of staff: start a cohort, look after it, close it."""
