"""Which printed version the first picture shows, so that a stack of papers need not be gone through twice."""

from collections.abc import Iterable
from itertools import islice

from onewhole.presses.paper.decoding import GreyPage, decoded
from onewhole.presses.paper.found_papers import other_pages

#: So many files are looked at until one shows a page; a stack is mostly of one version.
_LOOKED = 3


def first_keys(files: Iterable[tuple[str, bytes]]) -> frozenset[int]:
    """Return the keys that the marks of the first picture say, of the first three that say any.

    Of a file of many pages only the first is looked at.
    """
    for name, content in islice(files, _LOOKED):
        first = next(decoded(content, name), None)
        if isinstance(first, GreyPage) and (says := other_pages(first.marks)):
            return frozenset(one.key for one in says)
    return frozenset()
