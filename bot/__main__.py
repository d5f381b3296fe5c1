"""`python -m bot`: the same as the `samehour` command."""

from bot.cli import main

if __name__ == "__main__":
    main()
