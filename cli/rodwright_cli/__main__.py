"""`python -m rodwright_cli`: the same as the `rodwright` command."""

from rodwright_cli.main import main

main()
