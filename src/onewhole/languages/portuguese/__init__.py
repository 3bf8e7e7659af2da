"""Portuguese: the page for home and what a film says of mixed numbers; what it does not say is in English.

A third language, to show what one costs: four files, and a line in :mod:`onewhole.languages.table`.
"""
