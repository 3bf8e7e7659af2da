"""A line that is too long for its room, folded into rows: where it may be broken, and what stands on each."""

from collections.abc import Callable, Iterable, Iterator
from enum import Enum

from onewhole.languages.english.tongue import ENGLISH
from onewhole.languages.language import Language
from onewhole.notations.text import grouped
from onewhole.number.digits import in_digits, named_places
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.statements.row import Piece, Sign, row
from onewhole.statements.wording import OfPlot, WordsBehind
from onewhole.statements.writable import Writable

#: A piece of a line, or one named place of a number in place words: "3 hundreds".
Bit = Piece | str
#: Parts that are not broken apart, or one whole row.
Row = tuple[Bit, ...]

#: No line nests brackets deeper: the reader refuses them.
_DEEP = 99


class Break(Enum):
    """Where a line may be broken, the best places first."""

    OUTSIDE = "before a sign outside all brackets, before words, or after a comma"
    ANY_SIGN = "before any sign between two numbers"
    PLACE = "also between the named places of a number, and between the words of a line"


def folded(
    thing: Writable, room: int, width: Callable[[Bit], int], language: Language = ENGLISH
) -> tuple[Row, ...] | None:
    """Fold a line into as few rows as hold it, broken at the best places that do; None where none do.

    ``room`` is how wide a row may be, ``width`` how wide a bit is. A sign begins the row after a break.

    >>> from onewhole.statements.reading import read_expression
    >>> rows = folded(read_expression("(3000 - 1000) + (900 - 200) + 7"), 6, lambda bit: 1)
    >>> [[str(bit) for bit in row if isinstance(bit, Sign)] for row in rows]
    [['(', '-', ')'], ['+', '(', '-', ')'], ['+']]
    """
    for where in Break:
        parts = chunks(thing, where, language)
        wide = [sum(map(width, part)) for part in parts]
        if max(wide) <= room:
            return tuple(_filled(zip(parts, wide, strict=True), room))
    return None


def chunks(thing: Writable, where: Break, language: Language = ENGLISH) -> tuple[Row, ...]:
    """Return the parts of a line between the places where it may be broken, from left to right.

    >>> from onewhole.statements.reading import read_expression
    >>> chunks(read_expression("4 tens 12 ones - 27"), Break.PLACE)[:2]
    (('4 tens',), ('12 ones',))
    """
    found: list[list[Bit]] = [[]]
    depth = 0
    deepest = 0 if where is Break.OUTSIDE else _DEEP
    for piece in row(thing):
        match piece:
            case Sign.OPEN:
                depth += 1
            case Sign.CLOSE:
                depth -= 1
            case Sign.COMMA:
                found[-1].append(piece)
                found.append([])
                continue
            case Sign() if depth <= deepest and found[-1]:
                found.append([])
            case WordsBehind() if where is Break.PLACE:
                found += [[part] for part in language.line.wording(piece)]
                continue
            case OfPlot() if where is Break.PLACE:
                first, *others = language.line.wording(piece)
                found.append([first.capitalize()])
                found += [[part] for part in others]
                found.append([])
                continue
            case WordsBehind():
                found.append([])
            case Quantity() if where is Break.PLACE and _in_place_words(piece):
                first, *others = _place_words(piece, language)
                found[-1].append(first)
                found += [[other] for other in others]
                continue
            case _:
                pass
        found[-1].append(piece)
    return tuple(map(tuple, found))


def _in_place_words(quantity: Quantity) -> bool:
    return quantity.ladder.style in {Style.PLACES, Style.DECIMAL} and not in_digits(quantity)


def _place_words(quantity: Quantity, language: Language) -> Iterator[str]:
    return (
        f"{grouped(str(count))} {language.line.place(unit, count)}" for count, unit in named_places(quantity)
    )


def _filled(parts: Iterable[tuple[Row, int]], room: int) -> Iterator[Row]:
    """Fill one row after another."""
    held: Row = ()
    taken = 0
    for part, wide in parts:
        if held and taken + wide > room:
            yield held
            held, taken = (), 0
        held, taken = (*held, *part), taken + wide
    yield held
