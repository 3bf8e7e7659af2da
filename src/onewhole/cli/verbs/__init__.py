"""One file a verb; each has a function `run` whose parameters are the verb's arguments.

`run` is read by Typer, calls the desk, prints, and returns 0 (fine) or 1 (the maths says no). What a person
typed wrong is raised as an `onewhole.errors.InputError`; the door prints it. The verb's line in the table
of `onewhole.cli.main` is its help.
"""
