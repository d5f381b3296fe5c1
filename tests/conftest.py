"""What holds for every test."""

from hypothesis import settings

# A slow moment of a shared machine is no failure of ours.
settings.register_profile("ours", deadline=None)
settings.load_profile("ours")
