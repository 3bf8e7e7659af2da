"""Papers as Parquet files: written for a district, a file a night, and how their columns are called."""

from collections.abc import Sequence
from io import BytesIO

import polars as pl

from onewhole.marking.district.shared_paper import SharedPaper

#: The columns of a file of papers. One row is one paper; `problems` and `answers` have a line a problem.
COLUMNS = {
    "pupil": pl.String,
    "class": pl.String,
    "school": pl.String,
    "night": pl.Date,
    "grade": pl.Int8,
    "problems": pl.String,
    "answers": pl.String,
}


def paper_bytes(papers: Sequence[SharedPaper]) -> bytes:
    """Return papers as a Parquet file, sorted by what is asked, what is answered and whose it is.

    So their order tells nothing of the order of the class.
    """
    rows = [
        (one.pupil, one.class_name, one.school, one.night, one.grade, one.problems, one.answers)
        for one in papers
    ]
    table = pl.DataFrame(rows, schema=COLUMNS, orient="row")
    made = BytesIO()
    table.sort("problems", "answers", "pupil").write_parquet(made, compression="zstd", statistics=True)
    return made.getvalue()
