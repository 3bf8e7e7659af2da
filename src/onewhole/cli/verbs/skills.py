"""`onewhole skills`: which skills may stand behind right and wrong."""

from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.say_json import say_json_lists
from onewhole.desk.marking import skills_shown as desk

ResponsesFile = Annotated[
    Path,
    typer.Argument(
        metavar="RESPONSES",
        help="CSV with a column of codes and one a problem; 1 right, 0 wrong, empty not answered.",
    ),
]
QFile = Annotated[
    Path,
    typer.Argument(
        metavar="Q",
        help="The Q-matrix: CSV with a line a problem and a column a skill; 1 where it is needed.",
    ),
]
Model = Annotated[
    str,
    typer.Option(
        "--model",
        metavar="MODEL",
        help="dina: all skills of a problem are needed; dino: any is enough; gdina: each mixture for itself.",
    ),
]
Starts = Annotated[
    int | None,
    typer.Option("--starts", metavar="NUMBER", help="Starts to climb from: 4 left out, for gdina 20."),
]
Seed = Annotated[int, typer.Option("--seed", metavar="NUMBER", help="From which starts are drawn by lot.")]
PictureFile = Annotated[
    Path | None,
    typer.Option(
        "--picture", metavar="FILE", help="Draw how many pupils have each skill (SVG); it holds no codes."
    ),
]
AsJson = Annotated[bool, typer.Option("--json", help="Print JSON for other programs.")]


def run(
    responses: ResponsesFile,
    q_matrix: QFile,
    model: Model = "dina",
    starts: Starts = None,
    seed: Seed = 1,
    picture: PictureFile = None,
    as_json: AsJson = False,
) -> int:
    """Print how the class stands in each skill, how each problem does, and a line a pupil."""
    shown = desk.skills_of_files(responses, q_matrix, model=model, starts=starts, seed=seed)
    if picture is not None:
        desk.draw(shown, picture)
    if as_json:
        say_json_lists(desk.as_object(shown), answers=desk.answers(shown), pupils=desk.pupils(shown))
    else:
        for line in desk.told(shown):
            print(line)
    return 0
