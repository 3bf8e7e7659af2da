"""The layout of wholes and parts at one line, and how it changes into the layout of the next."""

from fractions import Fraction
from itertools import count

from msgspec import Struct
from msgspec.structs import replace

from onewhole.pictures.quantity_state import Heap, QuantityState
from onewhole.pictures.scene import Look

#: A whole with more parts than this is cut both ways, where the picture allows it.
LONGEST_ROW = 6


class Bit(Struct, frozen=True):
    """An uncut whole (``cell`` None) or one part, at place ``slot`` of its row; its name never changes.

    ``cut`` is the name of the whole that a part was cut from.
    """

    name: str
    slot: int
    cell: int | None = None
    look: Look = Look.FILLED
    cut: str = ""

    @property
    def stem(self) -> str:
        """Return the name of the whole it was cut from, or its own."""
        return self.cut or self.name


class Row(Struct, frozen=True):
    """The pieces of one number: ``per`` parts to a whole, drawn in ``across`` columns.

    ``gone`` are the places of pieces that were taken away.
    """

    bits: tuple[Bit, ...]
    per: int = 1
    across: int = 1
    gone: tuple[Bit, ...] = ()

    @property
    def wholes(self) -> tuple[Bit, ...]:
        """Return the uncut wholes, in order."""
        return tuple(sorted((bit for bit in self.bits if bit.cell is None), key=lambda bit: bit.slot))

    @property
    def parts(self) -> tuple[Bit, ...]:
        """Return the parts, in order."""
        found = [bit for bit in self.bits if bit.cell is not None]
        return tuple(sorted(found, key=_seat))

    @property
    def amount(self) -> Fraction:
        """Return the amount, crossed out or not."""
        return len(self.wholes) + Fraction(len(self.parts), self.per)

    @property
    def slots(self) -> int:
        """Return how many places the row has used."""
        return max((bit.slot for bit in (*self.bits, *self.gone)), default=-1) + 1


Table = tuple[Row, ...]


def columns(per: int) -> int:
    """Return in how many columns a whole is cut: one row up to 6 parts, beyond that as square as it can be.

    >>> [columns(per) for per in (5, 7, 8, 12, 24)]
    [5, 7, 4, 4, 6]
    """
    if per <= LONGEST_ROW:
        return per
    return min(side for side in range(1, per + 1) if per % side == 0 and side * side >= per)


def laid(state: QuantityState) -> Table:
    """Lay out a first state: wholes first, then parts side by side in the places after them.

    >>> row = laid(QuantityState((Heap(1, 2, 6),)))[0]
    >>> [bit.name for bit in row.bits]
    ['whole-1', 'whole-2-part-1', 'whole-2-part-2']
    """
    rows = [_fresh(heap, at) for at, heap in enumerate(state.heaps)]
    return _struck(tuple(rows), state)


def then(table: Table, state: QuantityState) -> Table:
    """Return the table of the next state; pieces that stay keep their names when they are cut or moved.

    >>> table = then(
    ...     laid(QuantityState((Heap(2, 1, 3),))), QuantityState((Heap(1, 4, 3),), struck=Heap(0, 2, 3))
    ... )
    >>> [bit.name for bit in table[0].parts if bit.look is Look.STRUCK]
    ['whole-2-part-3', 'whole-3-part-1']
    """
    rows = table
    if len(rows) == 1 and state.renamed:
        rows = (*rows, _copied(rows[0]))
    elif len(rows) == 1:
        rows = (_cleared(rows[0], state.heaps[0]),)
    if _moved(rows, state.heaps):
        rows = _dealt(rows, state.heaps)
    rows = tuple(_shaped(row, heap, at) for at, (row, heap) in enumerate(zip(rows, state.heaps, strict=True)))
    return _struck(_named_apart(rows), state)


def _copied(row: Row) -> Row:
    """Lay the same once more under it, to be cut again or joined there."""
    tag = _tag(1)
    bits = tuple(
        replace(bit, name=f"{tag}{bit.name}", cut=f"{tag}{bit.cut}" if bit.cut else "") for bit in row.bits
    )
    return replace(row, bits=bits, gone=())


def _moved(rows: Table, heaps: tuple[Heap, ...]) -> bool:
    """Say whether pieces move from one number to another, or wholes are exchanged for parts."""
    if len(rows) != len(heaps):
        return True
    pairs = list(zip(rows, heaps, strict=True))
    if any(row.amount != heap.amount for row, heap in pairs):
        return True
    wholes = [(len(row.wholes), heap.wholes) for row, heap in pairs]
    return sum(a for a, _ in wholes) == sum(b for _, b in wholes) and any(a != b for a, b in wholes)


def _named_apart(rows: Table) -> Table:
    """Rename a bit whose name is in use, as after a whole was put together and cut again."""
    seen: set[str] = set()

    def apart(bit: Bit) -> Bit:
        name = bit.name
        while name in seen:
            name += "-again"
        seen.add(name)
        return bit if name == bit.name else replace(bit, name=name)

    bits = [tuple(apart(bit) for bit in row.bits) for row in rows]
    gone = [tuple(apart(bit) for bit in row.gone) for row in rows]
    return tuple(
        replace(row, bits=lying, gone=left) for row, lying, left in zip(rows, bits, gone, strict=True)
    )


def _seat(bit: Bit) -> tuple[int, int]:
    return bit.slot, bit.cell or 0


def _part(whole: str, slot: int, cell: int) -> Bit:
    """Cut one part of a whole."""
    return Bit(f"{whole}-part-{cell + 1}", slot, cell, cut=whole)


def _tag(number: int) -> str:
    return f"number-{number + 1}-" if number else ""


def _fresh(heap: Heap, number: int, tag: str = "") -> Row:
    tag = _tag(number) + tag
    wholes = [Bit(f"{tag}whole-{at + 1}", at) for at in range(heap.wholes)]
    parts = []
    for piece in range(heap.pieces):
        full, cell = divmod(piece, heap.per)
        slot = heap.wholes + full
        parts.append(_part(f"{tag}whole-{slot + 1}", slot, cell))
    return Row((*wholes, *parts), heap.per, columns(heap.per))


def _anew(heap: Heap, number: int) -> Row:
    """Lay out a heap with new pieces, where none of the old pieces can be used."""
    return _fresh(heap, number, f"in-{heap.per}-")


def _struck(table: Table, state: QuantityState) -> Table:
    """Cross out pieces from the end; those set aside come last."""
    if len(table) != 1:
        return table
    row, struck = table[0], state.struck
    pieces = struck.pieces * row.per // struck.per
    parts = row.parts
    free = parts[: len(parts) - state.spared]
    free = free if len(free) >= pieces else parts
    chosen = {*free[len(free) - pieces :], *row.wholes[len(row.wholes) - struck.wholes :]}
    bits = [replace(bit, look=Look.STRUCK if bit in chosen else Look.FILLED) for bit in row.bits]
    return (replace(row, bits=tuple(bits)),)


def _cleared(row: Row, heap: Heap) -> Row:
    """Remove crossed-out pieces until the row is worth no more than the heap."""
    for bit in reversed((*row.parts, *row.wholes)):
        if bit.look is Look.STRUCK and row.amount - _size(bit, row) >= heap.amount:
            row = _without(row, bit)
    return row


def _size(bit: Bit, row: Row) -> Fraction:
    return Fraction(1) if bit.cell is None else Fraction(1, row.per)


def _without(row: Row, bit: Bit) -> Row:
    kept = tuple(other for other in row.bits if other != bit)
    return replace(row, bits=kept, gone=(*row.gone, replace(bit, look=Look.DOTTED)))


def _dealt(rows: Table, heaps: tuple[Heap, ...]) -> Table:
    """Move pieces between the numbers until each row equals its heap, as far as the pieces go."""
    per = max(heap.per for heap in (*heaps, *[Heap(per=row.per) for row in rows]))
    rows = tuple(_cut_again(row, per) for row in rows)
    if len({row.per for row in rows if row.parts} | {heap.per for heap in heaps if heap.pieces}) > 1:
        return tuple(_anew(heap, at) for at, heap in enumerate(heaps))
    kept: list[list[Bit]] = []
    wholes: list[Bit] = []
    parts: list[Bit] = []
    for at, row in enumerate(rows):
        heap = heaps[at] if at < len(heaps) else Heap()
        kept.append([*row.wholes[: heap.wholes], *row.parts[: heap.pieces]])
        wholes.extend(row.wholes[heap.wholes :])
        parts.extend(row.parts[heap.pieces :])
    found: list[Row] = []
    for heap, bits, row in zip(heaps, kept, rows, strict=False):
        across = row.across if per % row.across == 0 and row.parts else columns(per)
        full = Row(tuple(bits), per, across)
        while wholes and heap.amount - full.amount >= 1:
            full = replace(full, bits=(*full.bits, wholes.pop(0)))
        while parts and full.amount < heap.amount:
            full = replace(full, bits=(*full.bits, parts.pop(0)))
        found.append(_packed(full))
    return tuple(found)


def _packed(row: Row) -> Row:
    """Lay wholes first and parts after them without gaps, and drop the places of removed pieces."""
    wholes = [bit for bit in row.bits if bit.cell is None]
    parts = [bit for bit in row.bits if bit.cell is not None]
    bits = [replace(bit, slot=at) for at, bit in enumerate(wholes)]
    for at, bit in enumerate(parts):
        bits.append(replace(bit, slot=len(wholes) + at // row.per, cell=at % row.per))
    return Row(tuple(bits), row.per, row.across)


def _cut_again(row: Row, per: int) -> Row:
    """Cut every part again so that ``per`` make a whole, where that can be done."""
    if not row.parts:
        return replace(row, per=per, across=columns(per))
    times, uneven = divmod(per, row.per)
    if uneven or times < 2:
        return row
    bits: list[Bit] = []
    for bit in row.bits:
        if bit.cell is None:
            bits.append(bit)
        else:
            bits.extend(
                replace(bit, name=f"{bit.name}-{at + 1}", cell=bit.cell * times + at) for at in range(times)
            )
    return Row(tuple(bits), per, row.across)


def _shaped(row: Row, heap: Heap, number: int) -> Row:
    """Regroup, cut, put together, remove or add pieces until the row equals the heap."""
    if heap.pieces and heap.per != row.per:
        row = _cut_again(row, heap.per)
    if heap.pieces and heap.per != row.per:
        return _anew(heap, number)
    while len(row.wholes) > heap.wholes and row.amount - heap.amount >= 1:
        row = _without(row, row.wholes[-1])
    while len(row.wholes) > heap.wholes and row.per > 1:
        row = _opened(row)
    while len(row.parts) > heap.pieces and row.amount > heap.amount:
        row = _without(row, row.parts[-1])
    if len(row.wholes) < heap.wholes:
        row = _composed(row, heap.wholes - len(row.wholes))
    row = _grown(row, heap, number)
    if (len(row.wholes), len(row.parts)) != (heap.wholes, heap.pieces):
        return _anew(heap, number)
    return row


def _opened(row: Row) -> Row:
    """Cut the last whole into parts where it lies."""
    last = row.wholes[-1]
    parts = [_part(last.name, last.slot, cell) for cell in range(row.per)]
    kept = tuple(bit for bit in row.bits if bit != last)
    return replace(row, bits=(*kept, *parts))


def _composed(row: Row, times: int) -> Row:
    """Replace so many full groups of parts by wholes; parts are packed first where too few are full."""
    full = _full(row)
    if len(full) < times:
        row = _packed(row)
        full = _full(row)
    for slot in full[:times]:
        inside = [bit for bit in row.bits if bit.slot == slot and bit.cell is not None]
        kept = tuple(bit for bit in row.bits if bit not in inside)
        taken = {part for bit in kept for part in (bit.name, bit.stem)}
        stem = min(inside, key=_seat).stem
        names = (stem if at == 0 else f"{stem}-again-{at}" for at in count())
        name = next(name for name in names if name not in taken)
        row = replace(row, bits=(*kept, Bit(name, slot)))
    return row


def _full(row: Row) -> list[int]:
    slots = [bit.slot for bit in row.parts]
    return [slot for slot in sorted(set(slots)) if slots.count(slot) == row.per]


def _grown(row: Row, heap: Heap, number: int) -> Row:
    """Add the missing wholes and parts in the first free places."""
    taken = {bit.name for bit in (*row.bits, *row.gone)}
    names = (f"{_tag(number)}added-{at}" for at in count(1))
    for _ in range(heap.wholes - len(row.wholes)):
        name = next(name for name in names if name not in taken)
        row = replace(row, bits=(*row.bits, Bit(name, row.slots)))
    for _ in range(heap.pieces - len(row.parts)):
        name = next(name for name in names if name not in taken)
        slot, cell = _free_seat(row)
        gone = tuple(bit for bit in row.gone if (bit.slot, bit.cell) != (slot, cell))
        row = replace(row, bits=(*row.bits, Bit(name, slot, cell)), gone=gone)
    return row


def _free_seat(row: Row) -> tuple[int, int]:
    taken = {_seat(bit) for bit in row.parts}
    for slot in sorted({bit.slot for bit in row.parts}):
        for cell in range(row.per):
            if (slot, cell) not in taken:
                return slot, cell
    return row.slots, 0
