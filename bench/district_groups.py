"""Equal papers counted by one engine, in a process of its own: Polars, DuckDB, Dask or Arrow.

Run by bench/district.py: `python bench/district_groups.py ENGINE FOLDER` prints how many different rows there
are. Dask and Arrow count a file at a time and add the counts up.
"""

import sys
from pathlib import Path

KEYS = ("school", "grade", "night", "problems", "answers")


def by_polars(folder: str) -> int:
    """Group by the streaming engine of Polars."""
    import polars as pl  # noqa: PLC0415

    rows = pl.scan_parquet(f"{folder}/**/*.parquet").group_by(KEYS).len()
    return int(rows.select(pl.len()).collect(engine="streaming").item())


def by_duckdb(folder: str) -> int:
    """Group by DuckDB: 1 GB at most, two threads, nothing fetched."""
    import duckdb  # noqa: PLC0415

    held = {"memory_limit": "1GB", "threads": 2, "autoinstall_known_extensions": "false"}
    papers = duckdb.connect(config=held).read_parquet(f"{folder}/**/*.parquet")
    return len(papers.aggregate(f"{', '.join(KEYS)}, count(*) as papers"))


def by_dask(folder: str) -> int:
    """Group a file at a time on two worker processes, and add up."""
    import polars as pl  # noqa: PLC0415
    from distributed import Client, LocalCluster  # noqa: PLC0415

    files = sorted(map(str, Path(folder).rglob("*.parquet")))
    with (
        LocalCluster(n_workers=2, threads_per_worker=1, dashboard_address=None, host="127.0.0.1") as cluster,
        Client(cluster) as client,
    ):
        parts = client.gather(client.map(_counted, files, pure=False))
    return pl.concat(parts).group_by(KEYS).agg(pl.col("papers").sum()).height


def _counted(file: str) -> object:
    import polars as pl  # noqa: PLC0415

    return pl.scan_parquet(file).group_by(KEYS).agg(pl.len().alias("papers")).collect()


def by_arrow(folder: str) -> int:
    """Code each column by Arrow's dictionaries, a file at a time, and count whole numbers by bincount."""
    import numpy as np  # noqa: PLC0415
    import pyarrow as pa  # noqa: PLC0415
    import pyarrow.parquet as pq  # noqa: PLC0415

    parts = []
    for file in sorted(Path(folder).rglob("*.parquet")):
        code, kinds = np.zeros(pq.read_metadata(file).num_rows, dtype=np.int64), []
        for name in KEYS:
            coded = pq.read_table(file, columns=[name])[name].combine_chunks().dictionary_encode()
            kinds.append(coded.dictionary)
            code = code * len(coded.dictionary) + coded.indices.to_numpy()
        times = np.bincount(code)
        left = np.flatnonzero(times)
        columns = {"papers": pa.array(times[left])}
        for name, kind in zip(reversed(KEYS), reversed(kinds), strict=True):
            left, at = np.divmod(left, len(kind))
            columns[name] = kind.take(pa.array(at))
        parts.append(pa.table(columns))
    return int(pa.concat_tables(parts).group_by(list(KEYS)).aggregate([("papers", "sum")]).num_rows)


ENGINES = {"polars": by_polars, "duckdb": by_duckdb, "dask": by_dask, "pyarrow": by_arrow}

if __name__ == "__main__":
    print(ENGINES[sys.argv[1]](sys.argv[2]))
