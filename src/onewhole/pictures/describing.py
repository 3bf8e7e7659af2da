"""The descriptions of a scene: what is shown, and what has changed since the scene before."""

from collections.abc import Iterator
from itertools import pairwise, starmap

from msgspec.structs import replace

from onewhole.number.unit import MEASURES, Kind, Unit
from onewhole.pictures.caption import Count
from onewhole.pictures.description import (
    Compared,
    CrossedOut,
    CutInto,
    Description,
    Gathered,
    Shown,
    StillThere,
)
from onewhole.pictures.quantity_state import Heap, QuantityState


def unit_of(whole: Unit, per: int) -> Unit:
    """Return the unit of which ``per`` make a whole.

    >>> from onewhole.number.ladder import measure
    >>> unit_of(measure("ft").units[0], 12).mark
    'in'
    """
    size = whole.size / per
    if whole.kind is Kind.NUMBER:
        return replace(whole, size=size)
    return next(unit for unit in MEASURES if (unit.kind, unit.size) == (whole.kind, size))


def counts(heap: Heap, whole: Unit) -> tuple[Count, ...]:
    """Return a heap as wholes and parts, none left out but what is not there; 0 wholes when it is empty.

    >>> from onewhole.number.unit import ONE
    >>> [count.count for count in counts(Heap(3, 2, 6), ONE)]
    [3, 2]
    """
    found = [Count(heap.wholes, whole)] if heap.wholes or not heap.pieces else []
    if heap.pieces:
        found.append(Count(heap.pieces, unit_of(whole, heap.per)))
    return tuple(found)


def descriptions(before: QuantityState | None, now: QuantityState, whole: Unit) -> tuple[Description, ...]:
    """Return the descriptions of a scene; ``before`` is the state before it, None for the first.

    First what is there, one description a number; then what was cut into how many parts, what is crossed
    out and what is left when it is gone, and both numbers on the line that decides which is more.
    """
    return tuple(_descriptions(before, now, whole))


def _descriptions(before: QuantityState | None, now: QuantityState, whole: Unit) -> Iterator[Description]:
    for heap in now.heaps:
        yield _came_about(before, now)(counts(heap, whole))
    if before is not None and now.renamed and not before.renamed:
        yield from _recut(now.heaps[0], now.heaps[1], whole)
    elif before is not None and before.amount == now.amount:
        yield from _cuts(before, now, whole)
    if now.struck.amount:
        yield CrossedOut(counts(now.struck, whole))
        yield StillThere(counts(_left(now), whole))
    yield from starmap(Compared, pairwise(now.compared))


def _came_about(before: QuantityState | None, now: QuantityState) -> type[Shown | StillThere | Gathered]:
    """Say how what is there came about: it is shown, put together, or left."""
    if before is None or len(now.heaps) > 1 or now.struck.amount:
        return Shown
    if before.amount > now.amount:
        return StillThere
    joined = len(before.heaps) > 1 or before.heaps[0].wholes < now.heaps[0].wholes
    return Gathered if joined else Shown


def _cuts(before: QuantityState, now: QuantityState, whole: Unit) -> Iterator[Description]:
    if len(before.heaps) != len(now.heaps):
        return
    opened = sum(heap.wholes for heap in before.heaps) - sum(heap.wholes for heap in now.heaps)
    per = max(heap.per for heap in now.heaps)
    if opened > 0 and per > 1:
        yield CutInto(Count(opened, whole), Count(opened * per, unit_of(whole, per)))
        return
    for old, new in zip(before.heaps, now.heaps, strict=True):
        if old.wholes == new.wholes and new.per > old.per > 1:
            yield CutInto(counts(old, whole)[-1], counts(new, whole)[-1])


def _recut(old: Heap, new: Heap, whole: Unit) -> Iterator[Description]:
    """Say into what pieces were cut again; where they were joined, both numbers say it."""
    if new.per > old.per:
        yield CutInto(counts(old, whole)[-1], counts(new, whole)[-1])


def _left(now: QuantityState) -> Heap:
    heap, struck = now.heaps[0], now.struck
    pieces = heap.pieces - struck.pieces * heap.per // struck.per
    return Heap(heap.wholes - struck.wholes, pieces, heap.per if pieces else 1)
