"""Writers: a page or a working into a file format, each a stranger to the others.

`look.typ` and the files in `look/` are how a printed page looks; the Typst press reads them.
"""
