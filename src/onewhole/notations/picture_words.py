"""The words that do a picture's job: what is shown, cut, crossed out, joined, left, jumped and compared."""

from typing import assert_never

from onewhole.errors import Fault
from onewhole.notations.amounts import amount, short
from onewhole.notations.words import ClassWords, count_words, in_digits, unit_name
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.pictures.scene import Caption, Count, Scene, Tell

#: A scene that tells nothing is there to be drawn on.
EMPTY = "Room to draw."


def told(scene: Scene, words: ClassWords) -> str:
    """Tell a scene in short sentences that hold every number of it.

    What each key tells: cut is what is cut and then the parts, split is a number and then its parts, jump is
    a length, or a length between two places, compared is two amounts. Raises Fault for a key that has no
    sentence, or too few amounts.

    >>> from fractions import Fraction
    >>> from onewhole.number.unit import ONE, Unit
    >>> cut = Tell("cut", (Count(1, ONE), Count(6, Unit(Fraction(1, 6)))))
    >>> told(Scene(Fraction(9), Fraction(9), (), (cut,)), ClassWords("strip", "strips"))
    'One strip is cut into 6 sixths.'
    """
    return " ".join(_sentence(tell, short(words)) for tell in scene.tells) or EMPTY


def _sentence(tell: Tell, words: ClassWords) -> str:
    amounts = [_amount(caption, words) for caption in tell.amounts]
    match tell.key, amounts:
        case "shown", [_, *_]:
            return f"Shown: {_listed(amounts)}."
        case "cut", [_, *parts] if parts:
            return f"{_start(tell.amounts[0], words)} cut into {_listed(parts)}."
        case "struck", [_, *_]:
            return f"Crossed out: {_listed(amounts)}."
        case "joined", [_, *_]:
            return f"Put together: {_listed(amounts)}."
        case "left", [_, *_]:
            return f"Left: {_listed(amounts)}."
        case "jump", [length]:
            return f"Jump: {length}."
        case "jump", [start, length, end]:
            return f"From {start}, jump {length}. That is {end}."
        case "jump", [start, end]:
            return f"Jump from {start} to {end}."
        case "landed", [place]:
            return f"The last jump ends at {place}."
        case "split", [_, *parts] if parts:
            return f"{_start(tell.amounts[0], words)} split into {_listed(parts)}."
        case "compared", [first, second]:
            return f"{first} {_relation(*tell.amounts)} {second}."
        case _:
            raise Fault(f"A picture cannot tell “{tell.key}” with {len(amounts)} amounts")


def _amount(caption: Caption, words: ClassWords) -> str:
    match caption:
        case Count(count, unit):
            return f"{count} {unit_name(unit, count, words)}"
        case Quantity():
            return _quantity(caption, words)
        case _:
            assert_never(caption)


def _quantity(quantity: Quantity, words: ClassWords) -> str:
    """An amount with every unit named, where it is written with units; digits of a decimal stay digits."""
    style = quantity.ladder.style
    if style is Style.MIXED or (style is not Style.MEASURE and not in_digits(quantity)):
        pairs = zip(quantity.counts, quantity.ladder.units, strict=True)
        named = [f"{n} {unit_name(unit, n, words)}" for n, unit in pairs if n is not None]
        return " and ".join(named)
    return amount(quantity, words)


def _start(caption: Caption, words: ClassWords) -> str:
    """Begin a sentence about an amount that something is done to, with its verb."""
    said = _amount(caption, words)
    number, _, rest = said.partition(" ")
    if number == "1" and " and " not in rest:
        return f"{count_words(1).capitalize()} {rest} is"
    return f"{said} {'is' if isinstance(caption, Quantity) else 'are'}"


def _relation(first: Caption, second: Caption) -> str:
    left, right = (
        caption.value if isinstance(caption, Quantity) else caption.count * caption.unit.size
        for caption in (first, second)
    )
    if left == right:
        return "is the same as"
    return "is more than" if left > right else "is less than"


def _listed(parts: list[str]) -> str:
    """Join parts with commas; parts that hold an "and" stay apart from each other."""
    return ", ".join(parts)
