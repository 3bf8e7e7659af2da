"""What a Spanish sentence claims: read word by word into what an English reader can find true or false.

A sentence is a pattern of words with its numbers and names in their places. Each pattern says in English what
is claimed of them; the readers of English sentences (:mod:`tests.kit.claims`), which know nothing of how a
sentence was made, then find it true of the problem or not. A sentence with no pattern is read by nobody.
"""

import re
from collections.abc import Callable
from fractions import Fraction

from msgspec.structs import replace

from onewhole.languages.english.tongue import ENGLISH
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.sentences.node import Counted, Naming, Said, Seam, Thing
from onewhole.sentences.sentence import Sentence
from onewhole.statements.expression import quantities, value
from onewhole.statements.statement import Comparison, Relation
from tests.kit.claims import in_columns, true
from tests.kit.heard import Heard, number_words, sides
from tests.kit.spanish_said import CLAIMS

Holds = Callable[[str, list[Counted | Said | Naming], Heard], bool]

#: Things that are no unit, by their Spanish word.
THINGS = {
    "cero": ("zero", "zeros"),
    "cifra": ("digit", "digits"),
    "grupo": ("group", "groups"),
    "grupo completo": ("full group", "full groups"),
    "número entero": ("whole number", "whole numbers"),
    "número fácil": ("easy number", "easy numbers"),
    "parte": ("piece", "pieces"),
    "parte igual": ("equal part", "equal parts"),
    "salto": ("jump", "jumps"),
    "marca": ("mark", "marks"),
}


def skeleton(sentence: Sentence) -> tuple[str, list[Counted | Said | Naming]]:
    """Return a sentence as a pattern, and what stands in its places.

    A word that is joined to the next by a hyphen or a full stop stays as it is.
    """
    words: list[str] = []
    places: list[Counted | Said | Naming] = []
    for node in sentence.nodes:
        match node:
            case Counted():
                words.append("#")
                places.append(node)
            case Said():
                words.append("§")
                places.append(node)
            case Naming():
                words.append("~")
                places.append(node)
            case Seam(inside):
                words.append(inside)
            case str():
                words.append(node)
            case _:
                words.append("@")
    return " ".join(words), places


def spanish_true(sentence: Sentence, heard: Heard) -> str | None:
    """Return the pattern that reads a Spanish sentence and whose claim is true; None where there is none."""
    said, places = skeleton(sentence)
    for pattern, english in CLAIMS.items():
        if re.fullmatch(pattern, said) is None:
            continue
        holds = HOLDS.get(pattern)
        if holds is not None and not holds(said, places, heard):
            continue
        claimed = english.format(*(_english(one, heard) for one in places), **_also(said, places, heard))
        if not number_words(claimed) or true(claimed, heard) is not None or _alone(pattern, places, heard):
            return pattern
    return None


def _english(node: Counted | Said | Naming, heard: Heard) -> str:
    match node:
        case Counted(count, unit):
            return f"{ENGLISH.count_words(count)} {_called(unit, count, heard)}"
        case Said(thing):
            return ENGLISH.say(thing)
        case Naming(unit, many):
            return _called(unit, 2 if many else 1, heard)


def _called(unit: object, count: int, heard: Heard) -> str:
    if isinstance(unit, Thing):
        if unit.one in THINGS:
            return THINGS[unit.one][count != 1]
        return heard.words.whole if count == 1 else heard.words.wholes
    assert isinstance(unit, Unit)
    return ENGLISH.called(replace(unit, mark="") if in_columns(heard) else unit, count)


def _also(said: str, places: list[Counted | Said | Naming], heard: Heard) -> dict[str, str]:
    """Return what else an English sentence may be made of: the verb that agrees, one of a unit, lists."""
    each = [_english(one, heard) for one in places]
    found = {"all": _joined(each), "most": _joined(each[:-1]), "rest": _joined(each[1:])}
    found |= {"last": each[-1] if each else "", "row": _joined(_pairs(each))}
    found["digits"] = " and ".join(each[1:-1])
    if "§ de arriba" in said and each:
        *rest, up = each[1:-1]
        found["digits"] = " and ".join((*rest, f"the {up} above"))
    found["times"] = " and ".join(
        f"the {unit} {count} times" for unit, count in zip(each[::2], each[1::2], strict=False)
    )
    for at, (one, words) in enumerate(zip(places, each, strict=True)):
        single = isinstance(one, Counted) and one.count == 1
        single = single or words == "one"
        found[f"is{at}"] = "is" if single else "are"
        found[f"one{at}"] = words if isinstance(one, Counted) else f"one of the {words}"
        found[f"pieces{at}"] = "piece" if single else "pieces"
    return found


def _pairs(each: list[str]) -> list[str]:
    return [f"{one} is {other}" for one, other in zip(each[::2], each[1::2], strict=False)]


def _joined(parts: list[str]) -> str:
    *most, last = parts or [""]
    return f"{', '.join(most)} and {last}" if most else last


def _alone(pattern: str, places: list[Counted | Said | Naming], heard: Heard) -> bool:
    """Say whether a claim that no English reader knows of (of three numbers, a blank) holds of the lines."""
    amounts = [found for one in places if (found := _worth(one)) is not None]
    there = {number.value for number in heard.numbers}
    given = {number.value for line in heard.lines[:1] for side in sides(line) for number in quantities(side)}
    match pattern[:14]:
        case "lo que se quit":
            return amounts[0] == max(given)
        case "por eso el esp":
            return amounts[0] in given and amounts[0] < max(given)
        case "se quitan? (?:":
            answered = heard.item.answer
            return isinstance(answered, Quantity) and sum(amounts) == answered.value
        case "escrito como s" | "llegamos a §":
            return heard.stands(amounts[0])
        case "eso da # y #" | "empezamos en §":
            return all(map(heard.stands, amounts))
        case "contamos desde":
            return set(amounts) <= there and amounts[0] < amounts[1]
        case "apartamos § , " | "ahora sumamos " | "a § le faltan?":
            return sum(amounts) in there
        case "de § quedan? §":
            return amounts[0] - amounts[1] in there
        case "sumamos § a lo":
            return sum(1 for amount in there if amount + amounts[0] in there) >= 2
        case "no hay suficie":
            counts = [
                count
                for number in heard.numbers
                for count, unit in zip(number.amounts, number.ladder.units, strict=True)
                if isinstance(places[0], Naming) and unit == places[0].unit
            ]
            need = places[1].count if isinstance(places[1], Counted) else 0
            return need in counts and min(counts) < need
        case _:
            return False


def _worth(node: Counted | Said | Naming) -> Fraction | None:
    match node:
        case Counted(count, unit):
            size = unit.worth if isinstance(unit, Thing) else unit
            return count * size.size if size else Fraction(count)
        case Said(Quantity() as number):
            return number.value
        case _:
            return None


def _larger(said: str, places: list[Counted | Said | Naming], _heard: Heard) -> bool:
    """Of two pieces that are named, the first is the larger or the smaller."""
    first, second = (_size(one) for one in places[:2])
    return first > second if "grandes" in said else first < second


def _unit_by_unit(_said: str, places: list[Counted | Said | Naming], _heard: Heard) -> bool:
    """Every unit is named twice: what is taken, and what it is taken from."""
    return [_size(one) for one in places[::2]] == [_size(one) for one in places[1::2]]


def _size(node: Counted | Said | Naming) -> Fraction:
    assert isinstance(node, Naming)
    unit = node.unit.worth if isinstance(node.unit, Thing) else node.unit
    return unit.size if unit else Fraction(0)


def _does_not_go_into(_said: str, places: list[Counted | Said | Naming], _heard: Heard) -> bool:
    by, number = (_worth(one) for one in places)
    return by is not None and number is not None and (number / by).denominator > 1


def _counts_by(_said: str, places: list[Counted | Said | Naming], _heard: Heard) -> bool:
    by, again, most = (_worth(one) for one in places)
    return by is not None and by == again and most is not None and most >= by


def _one_step(_said: str, places: list[Counted | Said | Naming], _heard: Heard) -> bool:
    """The step is named twice: de 7 en 7."""
    return _worth(places[0]) == _worth(places[1])


def _goes_past(_said: str, places: list[Counted | Said | Naming], heard: Heard) -> bool:
    """The next one is more than every number that stands there."""
    following = _worth(places[0])
    return following is not None and all(following > number.value for number in heard.numbers)


def _equal_sides(_said: str, places: list[Counted | Said | Naming], _heard: Heard) -> bool:
    """A step that ends with what it comes to: the two sides are the same amount."""
    match places[0]:
        case Said(Comparison(left, right, Relation.EQUAL)):
            return value(left) == value(right)
        case Said(Comparison()):
            return False
        case _:
            return True


#: What is claimed by names alone, or read by nobody in English.
HOLDS: dict[str, Holds] = {
    r"§ no cabe justo en §": _does_not_go_into,
    r"contamos de § en § hasta §": _counts_by,
    r"el siguiente es § , y ya se pasa": _goes_past,
    r"si contamos de § en § , llegamos a §": _one_step,
    r"si contamos de § en § , pasamos de §": _one_step,
    r"(?:primero los paréntesis|al final|de izquierda a derecha) : §": _equal_sides,
    r"(?:multiplicamos|dividimos) antes de sumar o restar : §": _equal_sides,
}
for _pattern in CLAIMS:
    if "quitamos|juntamos" in _pattern:
        HOLDS[_pattern] = _unit_by_unit
    elif "más (?:grandes|" in _pattern or "más grandes que" in _pattern or "más pequeñ[ao]s que" in _pattern:
        HOLDS[_pattern] = _larger
