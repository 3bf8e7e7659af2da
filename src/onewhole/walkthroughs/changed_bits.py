"""What is new on a line of the board beside the line before it."""

from difflib import SequenceMatcher

from onewhole.statements.row import Sign, row
from onewhole.statements.writable import Writable


def changed_bits(before: Writable, after: Writable) -> frozenset[int]:
    """Return which bits of a line are new, by their number from 0; none where nearly everything is.

    Where only part of a line changes, that part is what a child looks for; a line that is all new says so by
    itself.

    >>> from onewhole.statements.reading import read_expression
    >>> sorted(changed_bits(read_expression("7 2/6 - 3 5/6"), read_expression("6 8/6 - 3 5/6")))
    [0]
    """
    old, new = row(before), row(after)
    kept: set[int] = set()
    for block in SequenceMatcher(None, old, new, autojunk=False).get_matching_blocks():
        kept.update(range(block.b, block.b + block.size))
    numbers = [at for at, bit in enumerate(new) if not isinstance(bit, Sign)]
    fresh = frozenset(at for at in numbers if at not in kept)
    return fresh if len(fresh) < len(numbers) else frozenset()
