"""What a Spanish sentence claims: read word by word into what an English reader can find true or false.

A sentence is a pattern of words with its numbers and names in their places. Each pattern says in English what
is claimed of them; the readers of English sentences (:mod:`tests.kit.claims`), which know nothing of how a
sentence was made, then find it true of the problem or not. A sentence with no pattern is read by nobody.
"""

import re
from dataclasses import replace
from fractions import Fraction

from onewhole.languages.english.tongue import ENGLISH
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.sentences.node import Counted, Naming, Said, Seam, Thing
from onewhole.sentences.sentence import Sentence
from onewhole.statements.expression import quantities
from tests.kit.claims import in_columns, true
from tests.kit.heard import Heard, number_words, sides

#: Things that are no unit, by their Spanish word.
THINGS = {
    "grupo": ("group", "groups"),
    "grupo completo": ("full group", "full groups"),
    "número entero": ("whole number", "whole numbers"),
    "número fácil": ("easy number", "easy numbers"),
    "parte": ("piece", "pieces"),
    "parte igual": ("equal part", "equal parts"),
    "salto": ("jump", "jumps"),
}

#: A list of amounts: #, # y #; a list of digits; one unit behind another, the same twice.
_SOME, _DIGITS = r"(?:# , )*(?:# y )?#", r"(?:§ y )*(?:el )?§(?: de arriba)?"
_OPENS = r"reagrupamos (?:un[ao] de l[ao]s ~|#)"

#: Words of a sentence with # for a count, § for a number as it is written and ~ for a name; what that says in
#: English, where {0} is the first of them, {is0} agrees with it and {all} are several in a row.
CLAIMS = {
    # one is so many
    r"# (?:tienen?|son|es) #": "{0} {is0} {1}",
    r"# tiene # , así que contamos todo en ~": "{0} is {1}, so count everything in {2}",
    r"# forman # , y hay #": "{0} make {1}, and there {is2} {2}",
    r"# forman #": "{0} make {1}",
    r"# y # son #": "{0} and {1} make {2}",
    r"eso da # y #": "that is {0} and {1}",
    r"ahora hay #": "now there are {0}",
    r"escrito como siempre, es §": "written the usual way, this is {0}",
    r"# sin cortar son #": "{0} not cut are {1}",
    r"por eso el denominador es §": "so the denominator is {0}",
    r"el último dígito cuenta ~ , así que el denominador es §": (
        "the last digit stands for {0}, so the denominator is {1}"
    ),
    r"cada # forman #": "every {0} make {1}",
    r"§ cabe justo en § y en §": "{0} goes into {1} and into {2}",
    r"solo § cabe justo en § y en § : ya es su mínima expresión": (
        "only {0} goes into {1} and into {2}: it is in simplest form already"
    ),
    r"esa es su mínima expresión": "that is the simplest form",
    r"como una sola fracción , § es §": "as one fraction, {0} is {1}",
    r"§ es §": "{0} is {1}",
    # taking and adding
    r"no hay suficientes ~ para quitar #": "there are not enough {0} to take {1}",
    rf"no hay suficientes ~ para quitar # , así que {_OPENS}": (
        "there are not enough {0} to take {1}, so regroup {one2}"
    ),
    rf"no hay ~(?: para reagrupar)? , así que primero {_OPENS}": (
        "there are no {0} to open, so regroup {one1} first"
    ),
    rf"solo hay ceros hasta l[ao]s ~ , así que primero {_OPENS}": (
        "there are only zeros up to the {0}, so regroup {one1} first"
    ),
    r"reagrupamos # para tener más ~": "regroup {0} to get more {1}",
    _OPENS: "regroup {one0}",
    r"a # les? quitamos #": "take {1} from {0}",
    r"sumamos # y #": "add {0} and {1}",
    r"primero lo más grande: quitamos #": "larger units first: take {0}",
    r"§ menos § (?:es|son) #": "{0} take away {1} leaves {2}",
    r"quedan? (?:§|#)": "{0} {is0} left",
    rf"quedan? {_SOME}": "{all} are left",
    r"no queda nada": "nothing is left",
    rf"en total (?:es|son) (?:§|{_SOME})": "that makes {all} in all",
    rf"hasta aquí (?:es|son) (?:§|{_SOME})": "that makes {all} so far",
    r"apartamos § , y quitamos de §": "set {0} aside, and take from {1}",
    r"§ es la misma cantidad que § , y ahora hay suficiente de cada unidad": (
        "{0} is the same amount as {1}, and now there is enough of each unit"
    ),
    r"de § quedan? §": "{1} is left of {0}",
    r"ahora devolvemos lo que apartamos": "now put back what was set aside",
    r"ahora sumamos § y §": "now add {0} and {1}",
    r"(?:quitamos|juntamos) .*~.*": "unit by unit",
    # jumps
    r"contamos desde § hasta § , con paradas en números fáciles": (
        "count up from {0} to {1}, with stops at easy numbers"
    ),
    r"buscamos cuánto mide cada uno de los #": "find how long each of the {0} is",
    r"buscamos cuánto mide el salto": "find how long the jump is",
    r"empezamos en § y saltamos §": "start at {0} and jump on by {1}",
    r"llegamos a §": "you land on {0}",
    r"desde § , un salto de § llega (?:al|a la) siguiente ~": "from {0}, a jump of {1} lands on the next {2}",
    r"a § le faltan? § para llegar (?:al|a la) siguiente ~ , así que eso se lo quitamos al otro número": (
        "{0} needs {1} to reach the next {2}, so take that from the other number"
    ),
    r"sumamos § a los dos números : la distancia entre ellos no cambia": (
        "add {0} to both numbers: the distance between them stays the same"
    ),
    r"es más fácil quitar §": "{0} is easier to take away",
    # pieces of one size
    r"cortamos cada parte otra vez para tener ~": "cut each piece again to get {0}",
    r"ahora todas las partes son del mismo tamaño : ~": "now all the pieces are the same size: {0}",
    r"es la misma cantidad, contada en ~": "it is the same amount, counted in {0}",
    r"escribimos (?:cada número|los dos números) (?:con partes del mismo tamaño :|hasta los|con sus) ~": "",
    r"contamos (?:todo )?en ~": "",
    # columns
    r"ahora hay § en l[ao]s ~": "now there {is0} {0} in the {1}",
    r"ahora hay § en l[ao]s ~ y § en l[ao]s ~": "now there {is0} {0} in the {1} and {2} in the {3}",
    r"en l[ao]s ~ , § menos § es §": "in the {0}, {1} take away {2} leaves {3}",
    r"en l[ao]s ~ no se quita nada , así que escribimos §": (
        "in the {0}, nothing is taken away, so write {1}"
    ),
    r"en l[ao]s ~ , solo está § , así que escribimos §": "in the {0}, nothing is added to {1}, so write {2}",
    r"en l[ao]s ~ , solo está el § de arriba , así que escribimos §": (
        "in the {0}, nothing is added to the {1} above, so write {2}"
    ),
    rf"en l[ao]s ~ , {_DIGITS} son §": "in the {0}, {digits} make {last}",
    r"a la izquierda no hay nada , así que escribimos §": "nothing stands to the left, so write {0}",
    r"# (?:es|son) # y #": "{0} are {1} and {2}",
    r"escribimos § abajo y § arriba de l[ao]s ~": "write {0} below and {1} above the {2}",
    # comparing
    r"(?:los dos son) §": "both are {0}",
    r"# (?:es|son) más que #(?: , y eso decide)?": "{0} {is0} more than {1}",
    r"# (?:es|son) menos que #(?: , y eso decide)?": "{0} {is0} fewer than {1}",
    r"# (?:es|son) más que ningun[ao] de l[ao]s ~ , y eso decide": "{0} {is0} more than zero {1}",
    r"§ es menos que la mitad de § , así que § es menos que un medio": (
        "{0} is less than half of {1}, so {2} is less than one half"
    ),
    r"§ es más que la mitad de § , así que § es más que un medio": (
        "{0} is more than half of {1}, so {2} is more than one half"
    ),
    r"§ es la mitad de § , así que § es un medio": "{0} is half of {1}, so {2} is one half",
    r"hay § partes? en cada número": "there {is0} {0} {pieces0} in each",
    r"l[ao]s ~ son más (?:grandes|pequeñ[ao]s) que l[ao]s ~ , y eso decide": "",
    r"a § le falta # para formar # , y a § le falta #": "{0} needs {1} to make {2}, and {3} needs {4}",
    r"l[ao]s ~ son más grandes que l[ao]s ~ , así que § está más cerca de #": (
        "{0} are larger than {1}, so {2} is nearer to {3}"
    ),
    r"l[ao]s ~ son más pequeñ[ao]s que l[ao]s ~ , así que § está más cerca de #": (
        "{0} are smaller than {1}, so {2} is nearer to {3}"
    ),
    r"§ es #": "{0} is {1}",
    r"§ es menos que #": "{0} is less than {1}",
    r"§ es más que #": "{0} is more than {1}",
    r"los dos tienen # , así que comparamos las fracciones": "both have {0}, so compare the fractions",
    r"los dos tienen # , y § tiene § más": "both have {0}, and {1} has {2} more",
    r"l[ao]s ~(?: , l[ao]s ~)*(?: y l[ao]s ~)? son iguales": "",
    r"tod[ao]s son ~ , así que solo importa cuánt[ao]s hay": "",
    r"l[ao]s (?:partes son del mismo tamaño|lugares más grandes son iguales)": "",
    r"(?:primero deciden|donde son iguales , deciden) l[ao]s ~": "",
    r"así quedan en orden , de (?:menor a mayor|mayor a menor)": "",
    # rounding
    r"contamos por ~ : § está después de § y antes de §": "count by {0}: {1} comes after {2} and before {3}",
    r"el punto medio es § , y § ya lo pasa": "halfway is {0}, and {1} is past it",
    r"el punto medio es § , y § no llega tan lejos": "halfway is {0}, and {1} is not that far",
    r"está a § de § y a § de § , así que § está más cerca": (
        "it is {0} from {1} and {2} from {3}, so {4} is nearer"
    ),
    # a missing number
    r"deshacemos lo que está junto al espacio en blanco, para que quede solo": "",
    r"lo que se quita y lo que queda forman el total , §": "the whole is {0}",
    r"por eso el espacio en blanco es el total menos lo que queda , §": "{0} is what is left",
    r"se quitan? (?:§|#)(?: y #)?": "{all} are taken away",
    # multiplying
    r"separamos § en § (?:, § )*y §": "split {0} into {rest}",
    r"multiplicamos cada parte por §": "multiply each part by {0}",
    r"multiplicamos cada parte por cada parte": "",
    r"§ por (?:§|#) (?:es|son) (?:§|#)": "{0} times {1} is {2}",
    r"§ por § es lo mismo que § por §": "{0} times {1} is as much as {2} times {3}",
    r"damos # de §": "that is {0} of {1}",
    r"multiplicamos los numeradores , y multiplicamos los denominadores": "",
    r"un entero en § partes , cada una cortada en § , tiene § partes": (
        "a whole in {0} parts, each cut into {1}, has {2} parts"
    ),
    r"multiplicamos (?:l[ao]s ~ por §(?: ,)? ?(?:y )?)+": "take {times}",
    # dividing
    r"repartimos # entre §": "share {0} among {1}",
    r"a cada uno le tocan? #": "each gets {0}",
    r"a cada uno le tocan? # más": "each share gets {0} more",
    r"sobran? (?:§|#)": "{0} {is0} left",
    rf"sobran? (?:§|{_SOME}) , y es menos que §": "{most} is left over, and that is less than {last}",
    rf"sobran? (?:§|{_SOME}) , y no alcanza para repartir entre §": (
        "{most} is left over, and that is not enough to share among {last}"
    ),
    r"con l[ao]s ~ que ya hay son #": "with the {1} that is {1}",
    r"# no alcanzan? para repartir entre §": "{0} {is0} not enough to share among {1}",
    r"# de § (?:es|son) §": "{0} of {1} {is0} {2}",
    r"§ por § es § , así que § entre § es §": "{0} times {1} is {2}, so {3} divided by {4} is {5}",
    r"cortamos # en # cada vez": "cut {0} into {1} each",
    r"una parte de cada vez da #": "one part of each makes {0}",
    r"cortamos cada ~ en #": "cut each {0} into {1}",
    r"cortamos cada entero de § que sobran en #": "cut each of the {0} that are left into {1}",
    r"§ (?:son|es) #(?: y § (?:son|es) #)?": "{row}",
    r"medimos grupos de # en #": "measure groups of {0} out of {1}",
    r"§ entre § es (?:§|#)": "{0} divided by {1} is {2}",
    r"las cifras no terminarían nunca , así que escribimos § como §": (
        "the digits would never end, so write {0} as {1}"
    ),
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


#: What names alone claim.
HOLDS = (
    {pattern: _larger for pattern in CLAIMS if "grandes|pequeñ" in pattern or "más grandes que" in pattern}
    | {pattern: _unit_by_unit for pattern in CLAIMS if "quitamos|juntamos" in pattern}
    | {pattern: _larger for pattern in CLAIMS if "más pequeñ[ao]s que" in pattern}
)
