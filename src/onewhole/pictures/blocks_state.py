"""BlocksState of tens and ones, line by line: what lies there, what was opened, what is struck."""

from msgspec import Struct
from msgspec.structs import replace

from onewhole.number.ladder import TEN, Style, decimal, places
from onewhole.number.quantity import Quantity, counted_in_parts
from onewhole.number.unit import Unit
from onewhole.pictures.scene import Look
from onewhole.statements.statement import Question, asked_quantities
from onewhole.working.line import Line
from onewhole.working.reasons.columns import ColumnAdded, ColumnOpened, ColumnTaken
from onewhole.working.reasons.regrouping import OneIsWorth
from onewhole.working.reasons.renaming import SamePlaces
from onewhole.working.reasons.taking import LargerUnitFirst, Left, PiecesTaken, TakenUnitByUnit
from onewhole.working.strategies.columns import COLUMNS
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.same_units import Signed, same_units
from onewhole.working.strategies.units_apart import UNITS_APART
from onewhole.working.strategies.wholes_first import WHOLES_FIRST
from onewhole.working.working import Working

#: Squares, rods and cells.
UNITS = 3
#: Strategies that work place by place, so that blocks can show them, and how many numbers they join.
WAYS, PAIR = {COLUMNS.key, REGROUP_FIRST.key, WHOLES_FIRST.key, UNITS_APART.key}, 2


class Block(Struct, frozen=True):
    """A square, rod or cell, with a name that it keeps."""

    name: str
    look: Look = Look.FILLED


class BlocksState(Struct, frozen=True):
    """The blocks of every unit, the largest unit first: at most three units."""

    units: tuple[Unit, ...]
    blocks: tuple[tuple[Block, ...], ...]

    def count(self, *, struck: bool) -> tuple[int, ...]:
        """Count the blocks of every unit that are struck, or that are not."""
        return tuple(sum((b.look is Look.STRUCK) is struck for b in pile) for pile in self.blocks)

    def with_pile(self, at: int, pile: tuple[Block, ...]) -> "BlocksState":
        """Put another pile in the place of one."""
        return replace(self, blocks=(*self.blocks[:at], pile, *self.blocks[at + 1 :]))

    def opened(self, at: int) -> "BlocksState":
        """Open the last block of a pile into ten of the next unit."""
        *rest, block = self.blocks[at]
        ten = tuple(Block(f"{block.name}/{number}") for number in range(TEN))
        return self.with_pile(at, tuple(rest)).with_pile(at + 1, (*self.blocks[at + 1], *ten))

    def made(self, at: int) -> "BlocksState":
        """Make ten of the next unit, the last ones, into one."""
        *rest, block = self.blocks[at + 1][: 1 - TEN]
        more = (*self.blocks[at], Block(f"{block.name}/one"))
        return self.with_pile(at + 1, tuple(rest)).with_pile(at, more)

    def struck(self, at: int, count: int) -> "BlocksState":
        """Strike the first blocks of a pile."""
        pile = self.blocks[at]
        gone = tuple(Block(block.name, Look.STRUCK) for block in pile[:count])
        return self.with_pile(at, (*gone, *pile[count:]))


def blocks_of(working: Working) -> Signed | None:
    """Return the two numbers of a sum or difference that can be laid in blocks, or None.

    Both are whole numbers or decimals below 1,000 smallest units, worked place by place.
    """
    if not isinstance(working.statement, Question) or working.strategy not in WAYS:
        return None
    signed = asked_quantities(working.statement)
    if signed is None or len(signed) != PAIR or any(n.kind is not signed[0][0].kind for n, _ in signed):
        return None
    counted, _ = same_units(signed)
    ladder = counted[0][0].ladder
    answer = working.answer
    if ladder.style not in {Style.PLACES, Style.DECIMAL} or not isinstance(answer, Quantity):
        return None
    parts = [quantity.parts for quantity, _ in counted]
    most = max(*parts, answer.value / ladder.finest)
    if most >= TEN**UNITS or any(max(quantity.amounts) >= TEN for quantity, _ in counted):
        return None
    after = ladder.after
    wide = decimal(max(UNITS - after, 1), after, ladder.mark) if after else places(UNITS, ladder.mark)
    return tuple((counted_in_parts(wide, quantity.parts), taken) for quantity, taken in counted)


def blocks_states(working: Working, counted: Signed) -> tuple[BlocksState, ...]:
    """Return the blocks at every line; ``counted`` are the numbers as ``blocks_of`` returns them.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> from onewhole.working.work import work
    >>> working = work(read_statement("52 - 27"), REGROUP_FIRST)
    >>> [found.count(struck=False) for found in blocks_states(working, blocks_of(working))]
    [(0, 5, 2), (0, 5, 2), (0, 4, 12), (0, 4, 12), (0, 2, 5), (0, 2, 5)]
    """
    (first, _), (second, taken) = counted
    units = first.ladder.units[-UNITS:]
    heaps = [_laid(first, "first", Look.FILLED)]
    if not taken:
        heaps.append(_laid(second, "second", Look.PLAIN))
    now = BlocksState(units, tuple(sum(same, ()) for same in zip(*heaps, strict=True)))
    found = []
    for line in working.lines:
        now = _taking(now, line, second) if taken else _adding(now, line)
        found.append(now)
    if taken:
        found[-1] = _all_struck(now, second)
    return tuple(found)


def _laid(quantity: Quantity, name: str, look: Look) -> tuple[tuple[Block, ...], ...]:
    amounts = quantity.amounts[-UNITS:]
    return tuple(
        tuple(Block(f"{name}/{rung}/{number}", look) for number in range(count))
        for rung, count in enumerate(amounts)
    )


def _taking(now: BlocksState, line: Line, second: Quantity) -> BlocksState:
    """Follow one line of a difference."""
    match line.because:
        case OneIsWorth(large=large):
            return now.opened(now.units.index(large))
        case ColumnOpened(large=large):
            return now.opened(now.units.index(large))
        case LargerUnitFirst(unit, count) | ColumnTaken(unit, _, count):
            return now.struck(now.units.index(unit), count)
        case TakenUnitByUnit() | PiecesTaken() | Left():
            return _all_struck(now, second)
        case _:
            return now


def _all_struck(now: BlocksState, second: Quantity) -> BlocksState:
    for rung, count in enumerate(second.amounts[-UNITS:]):
        now = now.struck(rung, count)
    return now


def _adding(now: BlocksState, line: Line) -> BlocksState:
    """Follow one line of a sum: put both numbers together, then make tens until the places are as written."""
    if line.because is None or isinstance(line.because, SamePlaces):
        return now
    joined = tuple(tuple(Block(block.name) for block in pile) for pile in now.blocks)
    now = replace(now, blocks=joined)
    match line.because:
        case ColumnAdded(large=large) as added if added.total >= TEN:
            return now.made(now.units.index(large))
    if not isinstance(line.says, Quantity):
        return now
    for rung in reversed(range(len(now.units) - 1)):
        unit = now.units[rung + 1]
        written = dict(zip(line.says.ladder.units, line.says.amounts, strict=True)).get(unit, 0)
        while len(now.blocks[rung + 1]) >= written + TEN:
            now = now.made(rung)
    return now
