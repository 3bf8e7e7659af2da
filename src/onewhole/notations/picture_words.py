"""The words that do a picture's job: what is shown, cut, crossed out, joined, left, jumped and compared."""

from typing import assert_never

from onewhole.errors import Fault
from onewhole.languages.english.words import ClassWords, unit_name
from onewhole.notations.amounts import amount, short
from onewhole.notations.text import text
from onewhole.number.digits import in_digits, named_places
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind, Unit
from onewhole.pictures.scene import Caption, Count, Scene, Tell, Words

#: A scene that tells nothing is there to be drawn on.
EMPTY = "Room to draw."

#: Numbers that count no things: digits stand alone, and a one is called a one.
BARE = ClassWords("one", "ones")

_HEADS = {"shown": "Shown", "left": "Left", "struck": "Crossed out", "joined": "Put together"}


def told(scene: Scene, words: ClassWords) -> str:
    """Tell a scene in short sentences that hold every number of it.

    What each key takes: cut is what is cut and then its parts, split is a number and then its parts, joined
    is what there is now, or small ones and then what they make, jump is a length, landed is a place, compared
    is two amounts, and shown, struck and left are any. Raises Fault for a key that has no sentence, or the
    wrong number of amounts.

    >>> from fractions import Fraction
    >>> from onewhole.number.unit import ONE, Unit
    >>> cut = Tell("cut", (Count(1, ONE), Count(6, Unit(Fraction(1, 6)))))
    >>> told(Scene(Fraction(9), Fraction(9), (), (cut,)), ClassWords("strip", "strips"))
    'One strip is cut into 6 sixths.'
    """
    naming = scene_words(scene, words)
    return " ".join(_sentence(tell, naming) for tell in scene.tells) or EMPTY


def scene_words(scene: Scene, words: ClassWords) -> ClassWords:
    """Return the words that units are named with in a scene: the class's, made short, or ones beside tens.

    Where tens are counted and nothing is cut into parts, a one is a one and not what the class calls a whole.

    >>> from onewhole.number.unit import ONE
    >>> scene_words(Scene(ONE.size, ONE.size, ()), ClassWords.for_whole("strip of paper")).wholes
    'strips'
    """
    written = [piece.shape.caption for piece in scene.pieces if isinstance(piece.shape, Words)]
    counted = [*written, *(caption for tell in scene.tells for caption in tell.amounts)]
    units = [unit for caption in counted for unit in _units(caption)]
    numbers = all(unit.kind is Kind.NUMBER and unit.size >= 1 for unit in units)
    return BARE if numbers and any(unit.size > 1 for unit in units) else short(words)


def _units(caption: Caption) -> tuple[Unit, ...]:
    return (caption.unit,) if isinstance(caption, Count) else caption.ladder.units


def _sentence(tell: Tell, words: ClassWords) -> str:
    amounts = [_amount(caption, words) for caption in tell.amounts]
    match tell.key, amounts:
        case "joined", [small, large] if _makes(tell):
            return f"{small} make {large}."
        case ("shown" | "left" | "struck" | "joined") as key, _:
            return f"{_HEADS[key]}: {_listed(amounts)}."
        case "cut" | "split", [first, _, *_]:
            return f"{_start(first)} {tell.key} into {_listed(amounts[1:])}."
        case "jump", [length]:
            return f"Jump: {length}."
        case "landed", [place]:
            return f"The jump ends at {place}."
        case "compared", [first, second]:
            return f"{first} {_relation(*tell.amounts)} {second}."
        case _:
            raise Fault(f"A picture cannot tell “{tell.key}” with {len(amounts)} amounts")


def _makes(tell: Tell) -> bool:
    """Say whether two amounts are small ones and what they make, and not two parts of one number."""
    match tell.amounts:
        case (Count(_, small), Count(_, large)):
            return small.size < large.size
        case (Quantity(), Quantity()):
            return True
        case _:
            return False


def _amount(caption: Caption, words: ClassWords) -> str:
    match caption:
        case Count(count, unit):
            return f"{count} {unit_name(unit, count, words)}"
        case Quantity():
            return _quantity(caption, words)
        case _:
            assert_never(caption)


def _quantity(quantity: Quantity, words: ClassWords) -> str:
    """An amount with every unit named where it is written in units; digits stay digits."""
    style = quantity.ladder.style
    if style is Style.MIXED:
        pairs = zip(quantity.counts, quantity.ladder.units, strict=True)
        return " and ".join(f"{n} {unit_name(unit, n, words)}" for n, unit in pairs if n is not None)
    if style is not Style.MEASURE and not in_digits(quantity):
        return " and ".join(f"{n} {unit_name(unit, n, words)}" for n, unit in named_places(quantity))
    return text(quantity) if words == BARE else amount(quantity, words)


def _start(said: str) -> str:
    """Begin a sentence about what something is done to, with its verb."""
    if said.startswith("1 ") and " and " not in said:
        return f"One {said[2:]} is"
    return f"{said} {'is' if ' of a' in said or said.isdigit() else 'are'}"


def _relation(first: Caption, second: Caption) -> str:
    left, right = (
        caption.value if isinstance(caption, Quantity) else caption.count * caption.unit.size
        for caption in (first, second)
    )
    if left == right:
        return "is the same as"
    return "is more than" if left > right else "is less than"


def _listed(parts: list[str]) -> str:
    """Join amounts with "and"; a comma before it keeps those apart that have an "and" of their own."""
    if len(parts) < 2:
        return "".join(parts) or "nothing"
    comma = "," if len(parts) > 2 or any(" and " in part for part in parts) else ""
    return f"{', '.join(parts[:-1])}{comma} and {parts[-1]}"
