"""The functions that decide one event: `client.step`, `staff.step`, `group.step`. Pure and total."""
