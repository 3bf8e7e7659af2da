"""Spanish as families of a school in the United States read and hear it, one function a family of meanings.

The files have the names of their twins in :mod:`onewhole.languages.english`. A page for home says usted, a
film says nosotros, and tú only for what is the child's own. What no source covers is to be checked by a
native speaker: ``docs/languages.md`` lists it.
"""
