"""Equal papers counted: files of papers in, a file of counts out. Counts add up, so a file is read once.

A file of counts says in its own metadata of which files it is, with their digests: a file of papers that was
counted and has not changed is not read again, and one that changed is counted anew with those beside it.
"""

import hashlib
import json
import operator
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path

import polars as pl
from msgspec import Struct

from onewhole.errors import InputError
from onewhole.marking.district.shared_paper import BETWEEN
from onewhole.presses.district.paper_files import COLUMNS

#: By what papers are told apart in counts; two that are equal in all of it are counted as one row.
KEYS = ("school", "grade", "week", "problems", "answers")
#: Files are taken together up to so many bytes and files: a class's night is a small file.
BYTES_AT_ONCE, FILES_AT_ONCE = 8_000_000, 2_000
#: Rows of one group in a file of counts, sorted by page: whoever wants one page need not read the others.
ROWS_OF_GROUP = 65_536
#: The version of the counts, raised when they mean something else.
FORM = "2"


class Counting(Struct, frozen=True):
    """Files to be counted together: by path, the digest of each; and where their counts go."""

    files: Mapping[str, str]
    goal: Path


def paper_files(folders: Sequence[Path]) -> dict[str, str]:
    """Return every Parquet file of some folders by its path, with the digest of its bytes.

    Raises InputError for a folder that is not there, and where there is no file.
    """
    found: dict[str, str] = {}
    for folder in folders:
        if not folder.is_dir():
            raise InputError(
                "The folder is not there", where=str(folder), remedy="Name a folder of `onewhole share`."
            )
        found |= {str(path): _digest(path) for path in sorted(folder.resolve().rglob("*.parquet"))}
    if not found:
        raise InputError(
            "There are no papers here",
            where=", ".join(map(str, folders)),
            remedy="Put the Parquet files of `onewhole share` into a folder, one folder a school.",
        )
    return found


def to_count(files: Mapping[str, str], counts: Path) -> tuple[list[Path], list[Counting]]:
    """Return the files of counts that still hold, and what is to be counted; others are taken away.

    Files of one folder are counted together, in the order of their names.
    """
    kept, there = [], set[str]()
    for path in sorted(counts.glob("*.parquet")):
        told = pl.read_parquet_metadata(path)
        of = json.loads(told.get("of", "{}"))
        if told.get("form") == FORM and of and all(files.get(name) == digest for name, digest in of.items()):
            kept.append(path)
            there |= of.keys()
        else:
            path.unlink()
    new = {name: digest for name, digest in files.items() if name not in there}
    return kept, [Counting(some, counts / f"{_name(some)}.parquet") for some in together(new)]


def together(files: Mapping[str, str]) -> Iterator[dict[str, str]]:
    """Give files that are taken together: of one folder, in the order of their names, not too many."""
    some: dict[str, str] = {}
    size = 0
    for name, digest in sorted(files.items()):
        path = Path(name)
        more = path.stat().st_size
        full = size + more > BYTES_AT_ONCE or len(some) >= FILES_AT_ONCE
        if some and (full or path.parent != Path(next(iter(some))).parent):
            yield some
            some, size = {}, 0
        some[name] = digest
        size += more
    if some:
        yield some


def count(asked: Counting) -> Path:
    """Count the papers of some files. Raises InputError for a file that is not one of papers.

    What is written takes its name when it is whole: whoever is stopped leaves nothing, and may count again.
    """
    for name in asked.files:
        _check(name)
    made = (
        pl.scan_parquet(list(asked.files))
        .select(
            pl.col("school", "problems").cast(pl.Categorical),
            "grade",
            pl.col("night").dt.truncate("1w").alias("week"),
            "answers",
        )
        .group_by(KEYS, maintain_order=True)
        .agg(pl.len().cast(pl.UInt32).alias("papers"))
        .collect(engine="streaming")
        .with_columns(pl.col("school", "problems").cast(pl.String))
        .sort("problems", maintain_order=True)
    )
    if sum(made.null_count().row(0)):
        raise _no_papers(next(iter(asked.files)), "a cell in them is empty")
    lines = (pl.col(side).str.count_matches(BETWEEN, literal=True) for side in ("problems", "answers"))
    if not made.select(operator.eq(*lines).all()).item():
        raise _no_papers(next(iter(asked.files)), "a paper has more answers than problems, or fewer")
    beside = asked.goal.with_suffix(".making")
    made.write_parquet(
        beside,
        compression="zstd",
        row_group_size=ROWS_OF_GROUP,
        metadata={"form": FORM, "of": json.dumps(dict(asked.files))},
    )
    beside.replace(asked.goal)
    return asked.goal


def _name(files: Mapping[str, str]) -> str:
    return hashlib.sha256(json.dumps(sorted(files.items())).encode()).hexdigest()[:16]


def _digest(path: Path) -> str:
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()


def _check(name: str) -> None:
    try:
        there = pl.read_parquet_schema(name)
    except (OSError, pl.exceptions.PolarsError) as refused:
        raise _no_papers(name, "it cannot be read") from refused
    if unlike := [column for column, kind in COLUMNS.items() if there.get(column) != kind]:
        raise _no_papers(name, f"its column “{unlike[0]}” is missing or of another kind")


def _no_papers(name: str, why: str) -> InputError:
    return InputError(
        f"This is no file of papers: {why}",
        where=name,
        remedy="Take it out, or write it with onewhole share.",
    )
