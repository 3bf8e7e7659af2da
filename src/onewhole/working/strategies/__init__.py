"""The strategies themselves, one file each; :mod:`~.table` is their table of contents."""
