"""A district's prior file, as `mark`, `plan` and `night` take it."""

from pathlib import Path
from typing import Annotated

import typer

PriorFile = Annotated[
    Path | None,
    typer.Option(
        "--prior",
        metavar="FILE",
        help="What a district learnt of other classes: prior.json of `onewhole district`."
        " It counts as 60 pupils.",
    ),
]
