"""What a Spanish sentence of a film claims, beside the reasons: read by its words, held against the truth.

As in :mod:`tests.kit.spanish_claims`, a pattern of words says in English what is claimed of the numbers in
its places, and the readers of English sentences find that true of the problem or not. What English readers do
not know is read here. A sentence with no pattern is read by nobody.
"""

import re
from collections.abc import Callable
from fractions import Fraction

from onewhole.languages.english.tongue import ENGLISH
from onewhole.number.impossible import Impossible
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.sentences.node import Counted, Label, Naming, Said, Thing
from onewhole.sentences.sentence import Sentence
from onewhole.statements.expression import quantities, value
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.listing import Listing
from onewhole.statements.statement import Comparison, Relation
from onewhole.working.line import LineContent
from tests.kit.claims import true
from tests.kit.heard import Heard, sides, spoken
from tests.kit.spanish_claims import skeleton, spanish_true
from tests.kit.spanish_said import GROUPS_ASKED

Place = Counted | Said | Naming
Holds = Callable[[list[Place], Heard], bool]

_ROW = r"§(?:(?: ,)?(?: luego| , luego| , que es la misma cantidad que| ,) §)+"
_NAMES = r"l[ao]s ~(?: , l[ao]s ~)*(?: y luego l[ao]s ~)?"
#: Sentences without a number, which claim nothing of the problem.
SAYS_NOTHING = frozenset(
    {
        *("hola", "hola , @", "hoy es @", "esta página se llama @", "paren aquí y traten de hacerlo"),
        *("ahora les toca a ustedes", "paren aquí y escriban la respuesta", "ese fue el último"),
        "si tu respuesta es otra , busca el renglón donde cambia",
        *("buenas noches y muy buen trabajo", "la cantidad no cambia", "las dos formas están bien"),
        *("no hace falta cambiarlo", "escribe la que quieras", "es igual que con las decenas"),
        *("todavía se puede escribir como siempre", "mira los signos", "escribimos fracciones"),
        *("trabajamos de derecha a izquierda", "trabajamos en columnas , de derecha a izquierda"),
        "escribimos los números en columnas : unidades con unidades, decenas con decenas",
        "escribimos los números en columnas : punto debajo de punto",
        "dividimos cifra por cifra , de izquierda a derecha",
        "multiplicamos cifra por cifra , de derecha a izquierda",
        "buscamos el número del espacio en blanco",
        *("sacamos grupos", "repartimos también lo que sobra", "con paradas en números fáciles"),
        *("multiplicamos numeradores y denominadores", "ahora hay suficiente de cada unidad"),
        *("por eso se lo quitamos al otro número", "se lo quitamos al otro número"),
        *("miramos el diagrama de puntos", "el acuerdo es subir", "se queda igual"),
    }
)
#: The words of a sentence, and what they say in English; {label} is a problem's label, {row} what stands one
#: after another.
FILM_CLAIMS = {
    r"(?:el )?problema @ (?:es|:) §": "number {label} is {0}",
    r"(?:el )?problema @": "number {label}",
    r"es § múltiplo de §": "is {0} a multiple of {1}",
    r"es § factor de §": "is {0} a factor of {1}",
    r"es § primo o compuesto": "is {0} prime or composite",
    r"cuál es mayor , § [ou] §": "which is more, {0} or {1}",
    rf"ponemos estos en orden , de menor a mayor : {_ROW}": (
        "put these in order, from least to greatest: {listed}"
    ),
    rf"ponemos estos en orden , de mayor a menor : {_ROW}": (
        "put these in order, from greatest to least: {listed}"
    ),
    r"buscamos el número del espacio en blanco : §": "find the number for the blank: {0}",
    r"(?:escribimos|escribe los) §": "write {0}",
    r"escribe los §": "write the {0}",
    r"lo escribimos en otras unidades : §": "write it in other units: {0}",
    r"calculamos §": "we work out {0}",
    r"(?:eso|ahora) es §|por eso ahora tenemos §|el renglón correcto es §": "that is {0}",
    r"ahora dice §": "now it says {0}",
    r"ahora tenemos §": "now we have {0}",
    rf"ahora (?:dice|tenemos) {_ROW}": "now it says {listed}",
    r"ahora §": "now {0}",
    rf"(?:primero|eso es) {_ROW}": "first {row}",
    r"por eso §": "so {0}",
    r"§": "{0}",
    r"ahora comparamos § con §": "now compare {0} with {1}",
    r"por eso miramos § y también §": "so look at {0} and at {1}",
    rf"(?:por eso|en el problema @ ,) el orden es {_ROW}": "so the order is {order}",
    rf"(?:(?:por eso|en el problema @ ,) )?son {_ROW}": "so they are {listed}",
    r"la respuesta del problema @ es §": "the answer to number {label} is {0}",
    **GROUPS_ASKED,
    r"(?:(?:por eso|en el problema @ ,) )?la respuesta es §": "the answer is {0}",
    r"por eso el problema @ da §": "so number {label} comes to {0}",
    r"en el problema @ , §": "so {0}",
    r"(?:(?:por eso|en el problema @ ,) )?(?:el )?número que falta es §": "the missing number is {0}",
    r"(?:(?:por eso|en el problema @ ,) )?§ es menor que §": "in number {label}, {0} is less than {1}",
    r"(?:(?:por eso|en el problema @ ,) )?§ es mayor que §": "in number {label}, {0} is greater than {1}",
    r"(?:(?:por eso|en el problema @ ,) )?§ es la misma cantidad que §": "{0} is the same amount as {1}",
    r"otra forma de escribir § es §": "another name for {0} is {1}",
    r"puedes dejarlo como §": "you may leave it as {0}",
    r"lo comprobamos al revés : §": "check it by going back: {0}",
    r"(?:alguien|otra persona) puede escribir §": "someone may write {0}",
    r"pero la respuesta no es §": "but the answer is not {0}",
    r"pero § no es igual a §": "but {0} is not equal to {1}",
    r"pero § no es menor que §": "but {0} is not less than {1}",
    r"pero § no es mayor que §": "but {0} is not greater than {1}",
    r"pero § no es la misma cantidad que §": "but {0} is not the same amount as {1}",
    r"pero § no es lo que falta en el espacio": "but {0} does not fit the blank",
    r"pero # no se puede cortar en #": "but one whole cannot be cut into zero pieces",
    r"sumamos (?:#|§)": "add {0}",
    r"quitamos (?:#|§)": "take {0}",
    r"saltamos §": "jump on by {0}",
    r"apartamos §": "set {0} aside",
    r"le damos § a §": "give {0} to {1}",
    r"contamos desde § hasta §": "count up from {0} to {1}",
    r"empezamos en § y saltamos §": "start at {0} and jump on by {1}",
    r"sumamos § a los dos números": "add {0} to both numbers",
    r"a § le faltan? § para llegar (?:al|a la) siguiente ~": "{0} needs {1} to reach the next {2}",
    r"para § , (?:pasamos por la decena|pensamos en sumar)(?: : §(?:(?: ,)? luego §)*)?": "{fact}",
    r"luego §(?:(?: ,)? luego §)*": "then {row}",
    r"contamos por ~ : § está después de §": "count by {0}: {1} comes after {2}",
    r"contamos por ~": "count by {0}",
    r"§ está después de §": "{0} comes after {1}",
    r"§ está después de § y antes de §": "{0} comes after {1} and before {2}",
    r"está antes de §": "it comes before {0}",
    r"el punto medio es §": "halfway is {0}",
    r"§ ya lo pasa": "{0} is past it",
    r"§ no llega tan lejos": "{0} is not that far",
    r"está a § de § y a § de §": "it is {0} from {1} and {2} from {3}",
    r"está a § de §": "it is {0} from {1}",
    r"está a § de § , así que § está más cerca": "it is {0} from {1}, so {2} is nearer",
    r"(?:por eso )?§ está más cerca": "so {0} is nearer",
    r"está justo en el punto medio : a § de § e igual de lejos de §": (
        "it is exactly halfway: {0} from {1} and from {2}"
    ),
    r"está justo en el punto medio": "it is exactly halfway",
    r"está igual de lejos de §": "it is as far from {0}",
    r"§ (?:es|son) exactamente #(?: , así que se queda igual)?": "{0} is exactly {1}, so it stays",
}


def film_true(sentence: Sentence, heard: Heard) -> str | None:
    """Return the pattern that reads a Spanish sentence of a film and whose claim is true, or None."""
    labels = [node.problem for node in sentence.nodes if isinstance(node, Label)]
    if any(spoken(label) not in heard.labels for label in labels):
        return None
    said, places = skeleton(sentence)
    begun = re.match(r"(?:como|igual que) en el problema @ [,:] ", said)
    if begun:
        said, labels = said[begun.end() :], []
    if said in SAYS_NOTHING:
        return said
    if not all(holds(places, heard) for words, holds in ITS_OWN.items() if re.fullmatch(words, said)):
        return None
    found = None if begun else spanish_true(sentence, heard)
    return found or _film_claim(said, places, labels, heard) or _named(said, places, heard)


def _film_claim(said: str, places: list[Place], labels: list[str], heard: Heard) -> str | None:
    each = [_english(one, heard) for one in places]
    label = spoken(labels[0]) if labels else spoken(heard.item.label)
    also = {"label": label, "row": ", then ".join(each), "listed": ", ".join(each)}
    also |= {"order": _order(said, each), "fact": _fact(said, each)}
    for pattern, english in FILM_CLAIMS.items():
        if re.fullmatch(pattern, said) is None:
            continue
        claimed = english.format(*each, **also)
        if true(claimed, heard) is not None or _read_here(said, places, heard):
            return pattern
    return None


def _english(node: Place, heard: Heard) -> str:
    match node:
        case Said(thing):
            return ENGLISH.say(thing)
        case Counted(count, unit):
            return f"{ENGLISH.count_words(count)} {_called(unit, count, heard)}"
        case Naming(unit, many):
            return _called(unit, 2 if many else 1, heard)


def _called(unit: Unit | Thing, count: int, heard: Heard) -> str:
    if isinstance(unit, Thing):
        return heard.words.whole if count == 1 else heard.words.wholes
    return ENGLISH.called(unit, count)


def _order(said: str, each: list[str]) -> str:
    joins = re.findall(r"que es la misma cantidad que|luego", said)
    words = [", which is the same amount as " if join.startswith("que") else ", then " for join in joins]
    return "".join(part for pair in zip(each, [*words, ""], strict=False) for part in pair)


def _fact(said: str, each: list[str]) -> str:
    if not each:
        return ""
    way = "go by way of the ten" if "decena" in said else "think of adding"
    return f"for {each[0]}, {way}" + (f": {', then '.join(each[1:])}" if each[1:] else "")


def _read_here(said: str, places: list[Place], heard: Heard) -> bool:
    """Read what no English reader knows of: lines that stand, and what is done at them."""
    amounts = [amount for one in places if (amount := _worth(one)) is not None]
    there = {number.value for number in heard.numbers}
    if re.fullmatch(r"(?:(?:eso|ahora) es|el renglón correcto es|por eso ahora tenemos) §", said):
        return any(isinstance(one, Said) and one.thing in heard.lines for one in places)
    thing = places[0].thing if places and isinstance(places[0], Said) else None
    if said in {"§", "por eso §"} and isinstance(thing, Comparison) and thing.sign is Relation.EQUAL:
        return value(thing.left) == value(thing.right) and thing.right == heard.item.answer
    if said == "escribe los §" or (said == "§" and isinstance(thing, PlotQuestion)):
        return thing == heard.item.statement
    if said.endswith("puede escribir §") or said == "pero la respuesta no es §":
        return True  # ITS_OWN holds it against the mistake
    if said == "lo comprobamos al revés : §":
        return isinstance(thing, Comparison) and thing.sign is Relation.EQUAL and _goes_back(thing, heard)
    if said.startswith(("quitamos", "sumamos", "saltamos", "apartamos")) and len(amounts) == 1:
        return heard.stands(amounts[0])
    if said.startswith("empezamos en § y saltamos"):
        return amounts[0] in there and sum(amounts) in there
    if said.startswith("contamos desde"):
        return set(amounts) <= there and amounts[0] < amounts[1]
    return False


def _on_lines(places: list[Place], heard: Heard) -> bool:
    """Every number stands on a line of the working or the mistake, or is a part of one, a half or a whole."""
    slip = heard.item.mistake
    lines = (*heard.lines, *(line.says for line in slip.lines)) if slip else heard.lines
    numbers = {number for line in lines for side in sides(line) for number in quantities(side)}
    numbers |= {slip.wrote} if slip and isinstance(slip.wrote, Quantity) else set()
    there = {number.value for number in numbers} | {Fraction(1, 2), Fraction(1)}
    for number in numbers:
        units = number.ladder.units
        there |= {count * unit.size for count, unit in zip(number.amounts, units, strict=True)}
    said = [number.value for one in places if isinstance(one, Said) for number in _numbers(one)]
    counted = [_worth(one) for one in places if isinstance(one, Counted)]
    return there.issuperset(said) and there.issuperset(filter(None, counted))


def _numbers(said: Said) -> list[Quantity]:
    of = sides(said.thing) if isinstance(said.thing, LineContent) else ()
    return [number for side in of for number in quantities(side)]


def _of_mistake(places: list[Place], heard: Heard) -> bool:
    """What is shown as wrong is a line of the mistake, its outcome, or the problem with the wrong sign."""
    slip, asked, shown = heard.item.mistake, heard.item.statement, places[0]
    if slip is None or not isinstance(shown, Said) or shown.thing == heard.item.answer:
        return False
    wrong = {slip.wrote, *(line.says for line in slip.lines)}
    if isinstance(asked, Comparison) and isinstance(slip.wrote, Relation):
        wrong.add(Comparison(asked.left, asked.right, slip.wrote))
    return shown.thing in wrong


def _shifted(places: list[Place], heard: Heard) -> bool:
    """Two numbers on lines have others there that are so much more."""
    there = {number.value for number in heard.numbers}
    more = _worth(places[0])
    return more is not None and sum(1 for amount in there if amount + more in there) >= 2


def _tried(places: list[Place], heard: Heard) -> bool:
    """A smaller number is tried on the one whose factors are listed."""
    by, number = map(_worth, places)
    return by is not None and number in {one.value for one in heard.numbers} and by < number


def _lists_to(places: list[Place], heard: Heard) -> bool:
    """The list goes up to its end, and the next one is the first behind it."""
    asked, last = heard.item.statement, _worth(places[-1])
    if not isinstance(asked, Listing) or asked.most is None or last is None:
        return False
    step, most = asked.number.value, asked.most.value
    return last == (most if len(places) > 1 else (most // step + 1) * step)


def _asks(places: list[Place], heard: Heard) -> bool:
    return isinstance(places[0], Said) and places[0].thing == heard.item.statement


#: What must be so besides, where words are true of other numbers too: a half is less than 97 as well.
ITS_OWN: dict[str, Holds] = {
    r"cuál es mayor , .+|ahora comparamos .+|por eso miramos .+|pero § no .+": _on_lines,
    r"(?:por eso |en el problema @ , )?§ es (?:menor que|mayor que|la misma cantidad que) §": _on_lines,
    r"# (?:es|son) (?:más|menos) que .+": _on_lines,
    r"(?:primero los paréntesis|al final|de izquierda a derecha) : §": _on_lines,
    r"(?:multiplicamos|dividimos) antes de sumar o restar : §": _on_lines,
    r"(?:alguien|otra persona) puede escribir §|pero la respuesta no es §": _of_mistake,
    r"sumamos § a los dos números.*": _shifted,
    r"pero # no se puede cortar en #": lambda places, heard: (
        isinstance(getattr(heard.item.mistake, "wrote", None), Impossible)
        and [one.count for one in places if isinstance(one, Counted)] == [1, 0]
    ),
    r"§ no cabe justo en §": _tried,
    r"contamos por ~ : § está .+|en vez de la suma , .+": _on_lines,
    r"contamos de § en § hasta §|el siguiente es § , .+": _lists_to,
    r"eso da # y #": lambda places, heard: {_worth(one) for one in places} <= set(heard.given),
    r"# forman # , y hay #": lambda places, heard: (
        isinstance(places[2], Counted) and places[2].count <= max(one.value for one in heard.numbers)
    ),
    r"buscamos el número del espacio en blanco : §": _asks,
}


def _goes_back(told: Comparison, heard: Heard) -> bool:
    """The two sides are the same amount; the answer stands first, and it comes to the first number."""
    begins, answered = quantities(told.left)[0], heard.item.answer
    return value(told.left) == value(told.right) == heard.given[0] and begins == getattr(
        answered, "quotient", answered
    )


def _worth(node: Place) -> Fraction | None:
    match node:
        case Counted(count, unit):
            size = unit.worth if isinstance(unit, Thing) else unit
            return count * size.size if size else None
        case Said(Quantity() as number):
            return number.value
        case _:
            return None


#: What is done, or said of a whole page, with the names of units and no number.
_DONE = (
    rf"(?:sumamos|quitamos|multiplicamos) {_NAMES}",
    r"primero quitamos l[ao]s ~",
    r"(?:repartimos|cortamos) l[ao]s ~",
    r"reagrupamos l[ao]s ~ que sobran",
    r"(?:juntamos grupos completos de|cortamos las partes otra vez en|contamos(?: todo)? en) ~",
    r"juntamos l[ao]s ~ en ~",
    r"reagrupamos #",
    r"damos #",
    r"separamos §(?: , §)*(?: y §)?",
)


def _named(said: str, places: list[Place], heard: Heard) -> str | None:
    """Read a deed that names units: each stands on a line of the working."""
    if said == "# tiene # , y # tiene #":
        one, many, other, more = (_worth(place) for place in places)
        return said if one == many and other == more else None
    pattern = next((pattern for pattern in _DONE if re.fullmatch(pattern, said)), None)
    if pattern is None:
        return None
    sizes = {unit.size for number in heard.numbers for unit in number.ladder.units} | {Fraction(1)}
    sizes |= {number.value for number in heard.numbers} if said.startswith("separamos") else set()
    return pattern if all(_size(place) in sizes for place in places) else None


def _size(node: Place) -> Fraction | None:
    match node:
        case Said(Quantity() as number):
            return number.value
        case Counted(unit=unit) | Naming(unit=unit):
            if isinstance(unit, Thing):
                return Fraction(1) if unit.worth is None else unit.worth.size
            return unit.size
        case _:
            return None


def page_true(sentence: Sentence, heard: tuple[Heard, ...]) -> bool:
    """Say whether a sentence of a film's beginning is read, and true of all its problems."""
    said, places = skeleton(sentence)
    if said in SAYS_NOTHING:
        return True
    labels = {spoken(node.problem) for node in sentence.nodes if isinstance(node, Label)}
    match = re.fullmatch(
        r"en (?P<many>todos estos|la mayoría|§ de estos) (?:no hay suficientes|necesitamos|una columna) .+",
        said,
    )
    if said == "esta noche hay #":
        return isinstance(places[0], Counted) and places[0].count == len(heard)
    if said == "# es #":
        return _worth(places[0]) == _worth(places[1])
    if re.fullmatch(r"mira el signo del problema @ : ahí se (?:suma|resta)", said):
        return labels <= heard[0].labels
    if re.fullmatch(r"se suma en § de los problemas , y se resta en §", said):
        return sum(int(amount) for one in places if (amount := _worth(one)) is not None) <= len(heard)
    if match is None:
        return False
    opened = sum(1 for one in heard if _opens(one))
    if match["many"] == "todos estos":
        return opened == len(heard)
    if match["many"] == "la mayoría":
        return 2 * opened > len(heard)
    return _worth(places[0]) == opened


def _opens(heard: Heard) -> bool:
    """Say whether a line has too few of a unit: a later number on it has more of it than the first."""
    on_lines = ([number for side in sides(line) for number in quantities(side)] for line in heard.lines)
    return any(_lacks(numbers[0], other) for numbers in on_lines for other in numbers[1:])


def _lacks(first: Quantity, second: Quantity) -> bool:
    fewer = dict(zip((unit.size for unit in first.ladder.units), first.amounts, strict=True))
    return any(
        count > fewer.get(unit.size, 0)
        for count, unit in zip(second.amounts, second.ladder.units, strict=True)
    )
