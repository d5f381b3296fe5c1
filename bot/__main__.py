"""`python -m bot`: the same as the `samehour` command."""

from bot.operator.cli import main

if __name__ == "__main__":
    main()
