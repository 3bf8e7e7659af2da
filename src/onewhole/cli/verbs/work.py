"""`onewhole work`: a problem worked line by line."""

from typing import Annotated

import typer

from onewhole.cli.say_json import say_json
from onewhole.desk.page import work as desk

Problem = Annotated[str, typer.Argument(metavar="PROBLEM", help="The problem, in quotes: '7 2/6 - 3 5/6'.")]
By = Annotated[
    str | None, typer.Option("--strategy", metavar="NAME", help="A strategy's key or name, or all.")
]
Brief = Annotated[bool, typer.Option("--brief", help="Only the lines that a pupil writes.")]
Blank = Annotated[
    int, typer.Option("--blank", metavar="LINES", min=0, help="Leave the last so many lines blank.")
]
Whole = Annotated[str, typer.Option("--whole", metavar="WORDS", help="What the class calls one whole.")]
AsJson = Annotated[bool, typer.Option("--json", help="Print JSON for other programs.")]


def run(
    problem: Problem,
    strategy: By = None,
    brief: Brief = False,
    blank: Blank = 0,
    whole: Whole = "whole",
    as_json: AsJson = False,
) -> int:
    """Print the working, or every working that suits with --strategy all."""
    every = strategy == "all"
    workings = desk.work_every_way(problem) if every else (desk.work(problem, strategy=strategy),)
    if as_json:
        objects = [desk.as_object(working, whole) for working in workings]
        say_json(objects if every else objects[0])
        return 0
    shown = ("\n".join(desk.told(working, whole, brief=brief, blank=blank)) for working in workings)
    print("\n\n".join(shown))
    return 0
