"""`python -m scanflow`."""

from scanflow.cli import main

main(prog_name="scanflow")
