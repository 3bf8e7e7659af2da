"""Very many papers put together: counted with Polars, weighed with NumPy, on one machine or on several.

========================  ==============================================================
:mod:`~.paper_files`      papers as Parquet files
========================  ==============================================================
"""
