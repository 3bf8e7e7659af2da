"""Taking and adding, unit by unit, and what is there in the end."""

from onewhole.notations.reasons.told import Told, amount, single
from onewhole.notations.words import unit_name


def unit_from_unit(told: Told) -> str:
    """Wholes from wholes, sixths from sixths."""
    return _units(told, "from")


def unit_to_unit(told: Told) -> str:
    """Wholes with wholes, sixths with sixths."""
    return _units(told, "with")


def _units(told: Told, joined: str) -> str:
    """Name every unit; the largest of several may be the class's wholes, ones below tens are ones."""
    units = told.units()
    largest = unit_name(units[0], 2, told.words if len(units) > 1 else None)
    names = (largest, *(unit_name(unit) for unit in units[1:]))
    said = ", ".join(f"{name} {joined} {name}" for name in names)
    return f"{said[0].upper()}{said[1:]}."


def pieces_from_pieces(told: Told) -> str:
    """Take 5 sixths from 8 sixths."""
    return f"Take {told.some_small('gone')} from {told.some_small('have')}."


def pieces_to_pieces(told: Told) -> str:
    """Add 3 eighths and 7 eighths."""
    return f"Add {told.some_small('have')} and {told.some_small('gone')}."


def larger_units_first(told: Told) -> str:
    """Larger units first: take 3 wholes."""
    count = told.quantity("gone").value / told.unit("unit").size
    return f"Larger units first: take {count} {told.large(int(count))}."


def units_taken(told: Told) -> str:
    """7 take away 3 leaves 4 wholes."""
    had, gone = told.count("had"), told.count("gone")
    return f"{had} take away {gone} leaves {had - gone} {told.large(had - gone)}."


def left(told: Told) -> str:
    """3 wholes and 3 sixths are left."""
    result = told.quantity("result")
    if not result.parts:
        return "Nothing is left."
    return f"{amount(result, told.words)} {'is' if single(result) else 'are'} left."


def in_all(told: Told) -> str:
    """That makes 3 wholes and 7 fifths in all."""
    return f"That makes {amount(told.quantity('result'), told.words)} in all."


def set_aside(told: Told) -> str:
    """Set 2/6 aside, and take from 7."""
    return f"Set {told.number('pieces')} aside, and take from {told.number('wholes')}."


def open_to_take(told: Told) -> str:
    """7 is the same amount as 6 6/6, and now there is enough of each unit."""
    same = f"{told.number('wholes')} is the same amount as {told.number('opened')}"
    return f"{same}, and now there is enough of each unit."


def taken_from_whole(told: Told) -> str:
    """3 1/6 is left of 7. Now put back what was set aside."""
    rest = told.number("left") if told.quantity("left").parts else "Nothing"
    return f"{rest} is left of {told.number('wholes')}. Now put back what was set aside."
