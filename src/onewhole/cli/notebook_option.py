"""The notebook of the class, as `mark`, `plan` and `night` open it."""

import sys
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import datetime
from pathlib import Path

from onewhole.cli.clock import now
from onewhole.desk.classes import notebooks


@contextmanager
def tonight_in(
    path: Path | None, date: datetime | None, sheet: Path, answers: Path
) -> Iterator[notebooks.Tonight | None]:
    """Give the notebook for a night, today's where no date was typed; None without a notebook.

    Where the program fails meanwhile, the notebook has it; afterwards standard error tells of recent nights
    on which it failed.
    """
    with notebooks.opened(path, (date or now()).date(), sheet, answers) as tonight:
        yield tonight
    for line in notebooks.failures_told(tonight) if tonight else ():
        print(line, file=sys.stderr)
