"""Presses: the only room that runs machines. `pdf` sets a page with Typst, `files` puts bytes on the disk,
`solver` chooses the best of very many.
"""
