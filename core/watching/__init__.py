"""What a person should know: flags, the weighing guard, the weekly digest, a cohort's figures."""
