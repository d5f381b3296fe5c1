"""Monitoring: flags, the weighing guard, the weekly digest, cohort figures."""
