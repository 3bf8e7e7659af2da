"""What a sentence about a column claims, checked by place value alone: by dividing, place after place.

Nothing here goes from column to column. What is carried to a place is how often the place fits into what
stands to the right of it, all numbers together; one is given to the right where less stands there than is
taken away.
"""

import re
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction

from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Times
from onewhole.statements.statement import Question, asked_quantities
from tests.kit.heard import COUNTS, Heard
from tests.kit.spoken_reading import unsay

PLACES = {
    name: Fraction(10) ** power
    for power, name in enumerate(
        ("ones", "tens", "hundreds", "thousands", "ten thousands", "hundred thousands", "millions")
    )
} | {name: Fraction(1, 10**power) for power, name in enumerate(("tenths", "hundredths", "thousandths"), 1)}

#: The name of a place, and one of it that is opened.
PLACE = "|".join(sorted(PLACES, key=len, reverse=True))
ONE_OF = (
    rf"(?:open|regroup|rename|trade) "
    rf"(one of the ones|one (?:{'|'.join(sorted((name[:-1] for name in PLACES), key=len, reverse=True))}))"
)


@dataclass(frozen=True, slots=True)
class Block:
    """Numbers that stand under each other: they are added, or the second is taken from the first.

    A number always has a digit in the place of size ``last``: the ones, and the last of a product's rows.
    """

    numbers: tuple[Fraction, ...]
    taken: bool
    last: Fraction = Fraction(1)

    def digits(self, size: Fraction) -> tuple[int, ...]:
        """Return the digit of every number in a place."""
        return tuple(int(number // size % 10) for number in self.numbers)

    def blank(self, size: Fraction) -> tuple[bool, ...]:
        """Say for every number whether it has no digit in a place: it is smaller, and the place no one."""
        return tuple(size > self.last and number < size for number in self.numbers)

    def carried(self, size: Fraction) -> int:
        """Return how many of a place the digits to the right of it make together."""
        return int(sum((number % size for number in self.numbers), Fraction(0)) // size)

    def gives(self, size: Fraction) -> bool:
        """Say whether one of a place is opened: less stands to the right of it than is taken there."""
        first, second = self.numbers
        return first % size < second % size

    def have(self, size: Fraction) -> int:
        """Return how many of a place there are when it is taken away: one given, ten got."""
        return self.digits(size)[0] - self.gives(size) + 10 * self.gives(10 * size)

    def result(self) -> Fraction:
        """Return what the numbers make, or leave."""
        first, *others = self.numbers
        return first - others[0] if self.taken else sum(self.numbers, Fraction(0))


def blocks(heard: Heard) -> Iterator[Block]:
    """Yield the numbers of the problem as they stand under each other, from left to right."""
    statement = heard.item.statement
    if isinstance(statement, Question) and isinstance(statement.asked, Times):
        yield Block(*_rows(statement.asked))
        return
    signed = asked_quantities(statement) if isinstance(statement, Question) else None
    assert signed is not None
    (first, _), *others = [(number.value, taken) for number, taken in signed]
    adding: list[Fraction] = []
    for number, taken in others:
        if not taken:
            adding.append(number)
            continue
        if adding:
            yield (block := Block((first, *adding), taken=False))
            first, adding = block.result(), []
        yield (block := Block((first, number), taken=True))
        first = block.result()
    if adding:
        yield Block((first, *adding), taken=False)


def factors(asked: Times) -> tuple[Quantity, Quantity]:
    """Return both numbers of a product, that with more digits first."""
    assert isinstance(asked.left, Quantity)
    assert isinstance(asked.right, Quantity)
    longer = len(str(asked.right.parts)) > len(str(asked.left.parts))
    return (asked.right, asked.left) if longer else (asked.left, asked.right)


def _rows(asked: Times) -> tuple[tuple[Fraction, ...], bool, Fraction]:
    """Return the rows of a product, one for each digit of the shorter number that is not 0."""
    above, below = factors(asked)
    last = Fraction(1, 10 ** (above.ladder.after + below.ladder.after))
    digits = [int(digit) * 10**at for at, digit in enumerate(reversed(str(below.parts)))]
    return tuple(above.parts * digit * last for digit in digits if digit), False, last


def _taking(heard: Heard) -> list[Block]:
    return [block for block in blocks(heard) if block.taken]


def _adding(heard: Heard) -> list[Block]:
    return [block for block in blocks(heard) if not block.taken]


def _size(opened: str) -> Fraction:
    return Fraction(1) if opened == "one of the ones" else PLACES[f"{opened.removeprefix('one ')}s"]


def laid(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Points are under points where a number has one."""
    pointed = any(number.ladder.after for number in heard.numbers)
    return pointed or groups[0] != "point under point"


def asked_alone(heard: Heard, groups: tuple[str, ...]) -> bool:
    """A problem that is too long for one sentence is read out in a sentence of its own."""
    return unsay(groups[0]) == heard.item.statement


def too_few(heard: Heard, groups: tuple[str, ...]) -> bool:
    """So many are to be taken in a column, and before it gets ten more it has fewer."""
    place, taken, *opened = (group for group in groups if group)
    need, _, unit = taken.partition(" ")
    size = PLACES[place]
    return PLACES[f"{unit.removesuffix('s')}s"] == size and any(
        block.gives(10 * size)
        and block.digits(size)[1] == COUNTS[need]
        and block.digits(size)[0] - block.gives(size) < COUNTS[need]
        and all(_size(one) == 10 * size for one in opened)
        for block in _taking(heard)
    )


def none_to_open(heard: Heard, groups: tuple[str, ...]) -> bool:
    """A place that has none must give one, so the place named gives first."""
    place, opened = groups
    size = PLACES[place]
    return _size(opened) == 10 * size and any(
        block.digits(size)[0] == 0 and block.gives(size) and block.gives(10 * size)
        for block in _taking(heard)
    )


def zeros_up_to(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Two zeros or more must give, and the first digit that is none is in the place named."""
    place, opened = groups
    size = PLACES[place]
    return _size(opened) == size and any(
        block.digits(size)[0] > 0
        and all(block.digits(size / ten)[0] == 0 and block.gives(size / ten) for ten in (10, 100))
        and block.gives(size)
        for block in _taking(heard)
    )


def one_opened(heard: Heard, groups: tuple[str, ...]) -> bool:
    """One of the place is opened."""
    return any(block.gives(_size(groups[0])) for block in _taking(heard))


def stand_there(heard: Heard, groups: tuple[str, ...]) -> bool:
    """So many stand in two columns right after one is opened; where one is named, the other has none."""
    *others, count, small = groups
    left, size = (COUNTS[others[0]] if others else 0), PLACES[small]
    return (not others or PLACES[others[1]] == 10 * size) and any(
        block.gives(10 * size)
        and left == (block.digits(10 * size)[0] - 1) % 10
        and COUNTS[count] == 10 + max(0, block.digits(size)[0] - block.gives(size))
        for block in _taking(heard)
    )


def taken_in_column(heard: Heard, groups: tuple[str, ...]) -> bool:
    """The counts of a column, when it is taken away and after."""
    place, *counts = groups
    size = PLACES[place]
    have, gone, left = (COUNTS[count] for count in counts)
    return any(
        (block.have(size), block.digits(size)[1]) == (have, gone)
        and left == have - gone == block.result() // size % 10
        for block in _taking(heard)
    )


def stays_in_column(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Nothing stands below in a column, and what there is is written."""
    place, left = groups
    size = PLACES[place]
    return any(block.blank(size)[1] and block.have(size) == COUNTS[left] for block in _taking(heard))


def added_in_column(heard: Heard, groups: tuple[str, ...]) -> bool:
    """The digits of a column from top to bottom, and what is carried to it, make so many."""
    place, listed, total = groups
    parts = listed.split(" and ")
    carried = COUNTS[parts.pop().split(" ")[1]] if parts[-1].endswith(" above") else 0
    said = tuple(COUNTS[part] for part in parts)
    return any(
        said == _written(block, PLACES[place])
        and carried == block.carried(PLACES[place])
        and COUNTS[total] == sum(said) + carried
        for block in _adding(heard)
    )


def copied_in_column(heard: Heard, groups: tuple[str, ...]) -> bool:
    """One digit alone, or what is carried alone, is written."""
    place, listed, total = groups
    size = PLACES[place]
    count = COUNTS[re.sub(r"the | above", "", listed)]
    return count == COUNTS[total] and any(
        (*_written(block, size), *([block.carried(size)] if block.carried(size) else [])) == (count,)
        for block in _adding(heard)
    )


def written_at_the_end(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Two digits are written in the outermost place that any number has."""
    return any(block.result() // _outermost(block) == COUNTS[groups[0]] for block in _adding(heard))


def written_and_carried(heard: Heard, groups: tuple[str, ...]) -> bool:
    """A digit is written in a column, and so many of the next place are written above that one."""
    digit, up, size = COUNTS[groups[0]], COUNTS[groups[1]], PLACES[groups[2]]
    return any(
        block.result() // (size / 10) % 10 == digit and block.carried(size) == up > 0
        for block in _adding(heard)
    )


def place_parts(heard: Heard, groups: tuple[str, ...]) -> bool:
    """So many of a place are one or more of the next and the rest."""
    del heard
    whole, *parts = (_counted(part) for group in groups for part in group.split(" and "))
    return whole == sum(parts)


def _counted(said: str) -> Fraction:
    for name, size in PLACES.items():
        for unit in (name, name.removesuffix("s")):
            if said.endswith(f" {unit}") and said.removesuffix(f" {unit}") in COUNTS:
                return COUNTS[said.removesuffix(f" {unit}")] * size
    raise KeyError(said)


def _written(block: Block, size: Fraction) -> tuple[int, ...]:
    pairs: Iterable[tuple[int, bool]] = zip(block.digits(size), block.blank(size), strict=True)
    return tuple(digit for digit, blank in pairs if not blank)


def _outermost(block: Block) -> Fraction:
    return max(size for size in PLACES.values() if not all(block.blank(size)))


#: What can be claimed of a column, as words with gaps, and what must then be so.
COLUMN_CLAIMS: dict[str, Callable[[Heard, tuple[str, ...]], bool]] = {
    r"write the numbers in columns: (point under point|ones under ones, tens under tens)": laid,
    rf"there are not enough ({PLACE}) to take (.+?)(?:, so {ONE_OF})?": too_few,
    rf"there are no ({PLACE}) to (?:open|regroup), so {ONE_OF} first": none_to_open,
    rf"there are only zeros up to the ({PLACE}), so {ONE_OF} first": zeros_up_to,
    ONE_OF: one_opened,
    r"(.+ (?:plus|minus) .+)": asked_alone,
    rf"now there (?:is|are) (\S+) in the ({PLACE}) and (\S+) in the ({PLACE})": stand_there,
    rf"now there are (\S+) in the ({PLACE})": stand_there,
    rf"in the ({PLACE}), (\S+) take away (\S+) leaves (\S+)": taken_in_column,
    rf"in the ({PLACE}), nothing is taken away, so write (.+)": stays_in_column,
    rf"in the ({PLACE}), (.+) make (.+)": added_in_column,
    rf"in the ({PLACE}), nothing is added to (.+), so write (.+)": copied_in_column,
    r"nothing stands to the left, so write (.+)": written_at_the_end,
    rf"write (\S+) below and (\S+) above the ({PLACE})": written_and_carried,
    rf"(\S+ (?:{PLACE})) are (.+)": place_parts,
}
