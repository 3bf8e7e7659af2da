"""What Spanish word problems ask for, as patterns of words, and a reader that comes to an answer.

Amounts are those of :mod:`tests.kit.spanish_stories`, in the smallest unit of their kind.
"""

import re
from collections.abc import Callable
from fractions import Fraction
from math import floor, prod

from tests.kit.spanish_reading import pieces_read
from tests.kit.spanish_stories import Ledger, UnreadError, Whole, feminine, lifted, sentences, worth
from tests.kit.spanish_told import FACTS, plain

Ask = Callable[[Ledger, re.Match[str]], object]

_HOW = r"(?:(?P<how>cuánt[ao]s) (?P<noun>WHOLES)|qué parte de una? WHOLE"
_HOW += r"|cuánto(?: tiempo| dinero| jugo)?|cuánta \w+)"
_THING = r"(?: (?:cometa|cola|cuerda|bolsa|jarra|libro|grupo))?"
_IS = r"(?:tiene|mide|pesa|cuesta|lleva|vuela|trabaja|DOES)"
_FORMS = {
    "como fracción": "FRACTION",
    "como número mixto": "MIXED",
    "como decimal": "DECIMAL",
    "en su mínima expresión": "SIMPLEST",
}
_HALF_A_DAY = 12 * 60
_PLACES = {"decena": 10, "centena": 100, "unidad de millar": 1000, "dólar": 1}


def read_story(words: str, whole: Whole) -> object:
    """Come to the answer of a story from its words alone.

    A number is a Fraction in the smallest unit of its kind; a sign, an order, a form or units stand as what
    was asked for. Raises UnreadError where a sentence is read by no pattern, or does not settle the question.
    """
    ledger = Ledger()
    *told, question = sentences(words)
    for sentence in told:
        said, found = lifted(sentence, whole)
        ledger.seen += found
        for pattern, fact in FACTS.items():
            match = re.fullmatch(_owned(pattern, whole), said)
            if match:
                _all_agree(said, whole)
                fact(ledger, found, match)
                break
        else:
            msg = f"no pattern reads: {said}"
            raise UnreadError(msg)
    for pattern, ask in ASKS.items():
        match = re.fullmatch(_owned(pattern, whole), question)
        if match:
            if match.groupdict().get("how"):
                _agree(match["how"], match["noun"], whole)
            try:
                return ask(ledger, match)
            except (TypeError, KeyError, ValueError, IndexError):
                continue
    msg = f"nothing settles: {question}"
    raise UnreadError(msg)


def _owned(pattern: str, whole: Whole) -> str:
    one, many = (
        f"(?:{re.escape(full)}|{re.escape(brief)})"
        for full, brief in zip((whole.one, whole.many), whole.brief, strict=True)
    )
    pattern = pattern.replace("WHOLES", many).replace("WHOLE", one)
    return pattern.replace("WHO", re.escape(whole.who)).replace("DOES", re.escape(whole.does))


def _all_agree(said: str, whole: Whole) -> None:
    """All wholes, or some of them, agree with what the class calls one."""
    for found in re.finditer(r"\b(?:tod|un)([ao])s (?:l([ao])s )?(\w+)", said):
        if found[3] == whole.brief[1] and ("o" in (found[1], found[2])) is whole.feminine:
            msg = f"these do not agree: {found[0]}"
            raise UnreadError(msg)


def _agree(how: str, noun: str, whole: Whole) -> None:
    if how.endswith("as") is not feminine(noun, whole):
        msg = f"these do not agree: {how} {noun}"
        raise UnreadError(msg)


def _worth(amount: Fraction | None) -> Fraction:
    """What is said; TypeError where it is not."""
    if amount is None:
        raise TypeError
    return amount


def _above_zero(amount: Fraction) -> Fraction:
    if amount < 0:
        raise ValueError
    return amount


def _sum(ledger: Ledger) -> Fraction:
    return sum((sign * _worth(amount) for sign, amount in ledger.changes), Fraction(0))


def _more(ledger: Ledger, match: re.Match[str]) -> Fraction:
    """So much more, or fewer, has the one that is named than the other one."""
    called = plain(match["than"])
    (other,) = (amount for name, amount in ledger.named.items() if name != called)
    return _above_zero((ledger.named[called] - other) * (-1 if match["which"] == "menos" else 1))


def _lacking(ledger: Ledger, _match: re.Match[str]) -> Fraction:
    return _above_zero(_worth(ledger.need) - _worth(ledger.start))


def _end(ledger: Ledger, _match: re.Match[str]) -> Fraction:
    if not ledger.changes:
        raise KeyError
    return _above_zero(_worth(ledger.start) + _sum(ledger))


def _start(ledger: Ledger, _match: re.Match[str]) -> Fraction:
    if ledger.start is not None:
        raise ValueError
    last = ledger.total if ledger.end is None else ledger.end
    return _above_zero(_worth(last) - _sum(ledger))


def _change(ledger: Ledger, _match: re.Match[str]) -> Fraction:
    ((sign, amount),) = ledger.changes
    if amount is not None:
        raise ValueError
    return _above_zero(sign * (_worth(ledger.end) - _worth(ledger.start)))


def _rest(ledger: Ledger, _match: re.Match[str]) -> Fraction:
    if not ledger.parts:
        raise ValueError
    return _above_zero(_worth(ledger.total) - sum(ledger.parts, Fraction(0)))


def _called(ledger: Ledger, match: re.Match[str]) -> Fraction:
    return ledger.all_named()[plain(match["name"])]


def _in_all(ledger: Ledger, _match: re.Match[str]) -> Fraction:
    if ledger.each is not None:
        (count,) = ledger.counts
        return count * ledger.each
    if len(ledger.parts) < 2 or ledger.total is not None or ledger.start not in {None, *ledger.parts[:1]}:
        raise ValueError
    return sum(ledger.parts, Fraction(0))


def _part_of(ledger: Ledger, _match: re.Match[str]) -> Fraction:
    if not ledger.factors:
        raise ValueError
    of = ledger.total if ledger.start is None else ledger.start
    return prod(ledger.factors, start=_worth(of) if len(ledger.factors) == 1 else Fraction(1))


def _rows(ledger: Ledger, _match: re.Match[str]) -> Fraction:
    rows, in_each = ledger.counts
    return rows * in_each


def _which(ledger: Ledger, _match: re.Match[str]) -> str:
    first, second = ledger.named.values()
    return "<" if first < second else ">" if first > second else "="


def _ordered(ledger: Ledger, match: re.Match[str]) -> tuple[Fraction, ...]:
    if len(ledger.order) < 3:
        raise ValueError
    return tuple(sorted(ledger.order, reverse=match["from"] == "mayor"))


def _rounded(ledger: Ledger, match: re.Match[str]) -> Fraction:
    (amount,), place = ledger.seen, match["place"]
    size = Fraction(1)
    if place in _PLACES:
        size = Fraction(_PLACES[place])
    elif place == "décimo de dólar":
        size = Fraction(1, 10)
    elif not re.search(r" enter[ao]$", place):
        size = (
            Fraction(1, pieces_read(place)) if place.endswith(("ésimo", "écimo")) else Fraction(worth(place))
        )
    return floor(amount / size + Fraction(1, 2)) * size


def _form(ledger: Ledger, match: re.Match[str]) -> tuple[str, Fraction]:
    (amount,) = ledger.seen
    return _FORMS[match["form"]], amount


def _units(ledger: Ledger, match: re.Match[str]) -> tuple[tuple[int, ...], Fraction]:
    (amount,) = ledger.seen
    return tuple(worth(unit) for unit in re.split(r", | y ", match["units"])), amount


def _pieces(ledger: Ledger, match: re.Match[str]) -> Fraction:
    kept, pieces = ledger.kept or (Fraction(0), "")
    if pieces != match["pieces"]:
        raise ValueError
    return (ledger.seen[0] - kept) * pieces_read(pieces)


def _brought(ledger: Ledger, match: re.Match[str]) -> Fraction:
    """What somebody brought is what came later, or what there was at first."""
    return _start(ledger, match) if ledger.start is None else _change(ledger, match)


def _later(ledger: Ledger, _match: re.Match[str]) -> Fraction:
    return Fraction(ledger.times[0]) + ledger.seen[1]


def _earlier(ledger: Ledger, _match: re.Match[str]) -> Fraction:
    return Fraction(ledger.times[0]) - ledger.seen[1]


def _between(ledger: Ledger, _match: re.Match[str]) -> Fraction:
    start, end = ledger.times
    return Fraction(end - start if end > start else end - start + _HALF_A_DAY)


#: What is asked for; the first pattern that fits and is settled by what was said.
ASKS: dict[str, Ask] = {
    rf"(?:(?P<how>cuánt[ao]s) (?P<noun>WHOLES)|cuánto(?: tiempo)?) (?P<which>más|menos) {_IS}"
    rf" (?:la|el){_THING} (?P<than>\w+)(?: día)?": _more,
    rf"{_HOW} le faltan?(?: al club)?|cuánto tiempo más tiene que volar": _lacking,
    rf"{_HOW} (?:(?:le )?quedan?|sirven? todavía)": _end,
    r"cuánto (?:pesa|mide) ahora la \w+|cuánto mide la cuerda ahora": _end,
    rf"con {_HOW} empezó(?: el club)?|cuánto (?:medía|pesaba) antes de eso": _start,
    r"cuánto (?:tenía antes|había antes en) la jarra|cuánto dura la reunión": _start,
    r"cuánto tiempo (?:voló|trabajó) al principio": _start,
    rf"{_HOW} trajo esa persona": _brought,
    rf"{_HOW} usó|cuánto le (?:cortó|echó)(?: el club)?|cuánto jugo tomó(?: el club)?": _change,
    rf"{_HOW} le dieron|cuánto costó el papel|(?:por )?cuánto tiempo (?:hizo cometas|trabajó)": _change,
    rf"cuánto pesa (?:el libro|la cometa)|{_HOW} DOES": _change,
    r"cuánto (?:pesa la caja|cuesta (?:la cuerda|el forro)|mide la cometa)|cuánta agua lleva": _rest,
    rf"{_HOW} (?:usa|DOES|trabaja) al (?P<name>otro) día": _called,
    rf"{_HOW} DOES (?:al otro|el tercer) día": _rest,
    rf"{_HOW} usa para (?:cometas|lazos|la cometa)": _rest,
    r"cuánto tiempo (?:juega|las vuela|vuela cometas)|cuánto cuesta el pegamento": _rest,
    rf"{_HOW} {_IS} (?:la|el){_THING} (?P<name>\w+)": _called,
    rf"cuánto (?:mide|pesa|tiene) la{_THING} verde": _rest,
    r".+ en total": _in_all,
    r"cuánto (?:cuesta el papel|jugo es|mide el pedazo|tiempo (?:hace cometas|trabaja))": _part_of,
    rf"{_HOW} (?:DOES|es el pedazo|usa para la cometa)|cuánto (?:tiempo )?(?:DOES)": _part_of,
    r"cuántos cuadrados corta|cuántas sillas pone": _rows,
    r"(?:qué|quién) .+, o .*(?:lo mismo|son iguales)(?: los dos días)?": _which,
    r"cuál es el orden(?: de l[ao]s \w+)? de (?P<from>menor|mayor) a (?:menor|mayor)": _ordered,
    r".*más o menos.*, al?(?: la)? (?P<place>.+) más cercan[ao]": _rounded,
    r"cómo se escribe (?:eso|ese tiempo) (?P<form>.+)": _form,
    r"cuánt[ao]s (?P<units>.+?)(?: de cinta)? son|qué parte de (?P<unit>\w+) es": _units,
    r"cuántos (?P<pieces>\w+) (?:hay|muestra)": _pieces,
    r"a qué hora termina": _later,
    r"a qué hora empezó": _earlier,
    r"cuánto tiempo (?:vuela cometas|trabaja)": _between,
}
