"""Very many papers put together: counted with Polars, weighed with NumPy, on one machine or on several.

========================  ==============================================================
:mod:`~.paper_files`      papers as Parquet files
:mod:`~.counting`         equal papers counted; counts add up, and no file is read twice
:mod:`~.distinct`         the different rows of a table of small numbers
:mod:`~.page_rows`        the different papers of a page as numbers
:mod:`~.weighing`         odds of patterns for very many papers at once
:mod:`~.page_work`        a page worked out: skills, odds, its rows as a file
:mod:`~.tallies`          what a page adds to the tables of the report
:mod:`~.pupils_back`      what was found, written back for every pupil
:mod:`~.engine`           who works: this process, or the workers of a Dask cluster
========================  ==============================================================
"""
