"""`python -m sallet` is the command `sallet`."""

from sallet.cli import main

main()
