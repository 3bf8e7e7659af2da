"""The sentences of Spanish word problems as patterns, each with what it says.

Typed by hand from the words alone. In a pattern # is an amount, & a count of things, % a number that stands
alone and @ a time of day; WHO, DOES, WHOLE and WHOLES are the class's own words.
"""

import re
from collections.abc import Callable
from fractions import Fraction

from tests.kit.spanish_stories import Ledger

Fact = Callable[[Ledger, list[Fraction], re.Match[str]], None]

_CLUB = r"(?:el club(?: de cometas)?|WHO)"
_SOME = r"(?:un[ao]s WHOLES|una parte de una? WHOLE)"
_COLOR = r"(roj[ao]|azul|verde|amarill[ao]|naranja|morad[ao]|blanc[ao]|negr[ao]|grande|pequeñ[ao])"
_NAMED = rf"(?:la|el)(?: (?:cometa|cola|cuerda|bolsa|jarra|libro|grupo))? {_COLOR}"
_IS = r"(?:tiene|mide|pesa|cuesta|lleva|vuela(?: por)?|trabaja(?: por)?|DOES)"


def plain(name: str) -> str:
    """Return what a thing is told apart by, without its gender."""
    return name[:-1] if name[-1] in "ao" and name != "naranja" else name


def _name(name: str | None = None, more: str | None = None) -> Fact:
    """An amount of a named thing: so much, or so much more than the last one that was named."""

    def fact(ledger: Ledger, found: list[Fraction], match: re.Match[str]) -> None:
        called = plain(name or match[1])
        before = list(ledger.named.values())[-1] if more and match[more] else Fraction(0)
        ledger.named[called] = before + found[0]
        ledger.parts.append(ledger.named[called])
        ledger.order.append(found[0])

    return fact


def _someone(ledger: Ledger, found: list[Fraction], match: re.Match[str]) -> None:
    """What somebody brings is what there is at first, or one of two parts."""
    _name("alguien")(ledger, found, match)
    ledger.start = found[0]


def _two(first: str, second: str) -> Fact:
    def fact(ledger: Ledger, found: list[Fraction], _match: re.Match[str]) -> None:
        ledger.named |= dict(zip((plain(first), plain(second)), found, strict=True))
        ledger.parts += found

    return fact


def _starts(ledger: Ledger, found: list[Fraction], _match: re.Match[str]) -> None:
    ledger.start = found[0] if found else None


def _ends(ledger: Ledger, found: list[Fraction], _match: re.Match[str]) -> None:
    ledger.end = found[0]


def _from_to(ledger: Ledger, found: list[Fraction], _match: re.Match[str]) -> None:
    ledger.start, ledger.end = found
    ledger.changes.append((-1, None))


def _needs(ledger: Ledger, found: list[Fraction], _match: re.Match[str]) -> None:
    ledger.need = found[0]


def _totals(ledger: Ledger, found: list[Fraction], _match: re.Match[str]) -> None:
    ledger.total = found[0]


def _changes(sign: int) -> Fact:
    """Something goes or comes, so much or not said how much; what goes is also a part of what is used."""

    def fact(ledger: Ledger, found: list[Fraction], _match: re.Match[str]) -> None:
        ledger.changes += [(sign, amount) for amount in found] or [(sign, None)]
        ledger.parts += found

    return fact


def _part(ledger: Ledger, found: list[Fraction], _match: re.Match[str]) -> None:
    ledger.parts += found


def _counts(ledger: Ledger, found: list[Fraction], _match: re.Match[str]) -> None:
    ledger.counts += found


def _each(ledger: Ledger, found: list[Fraction], _match: re.Match[str]) -> None:
    ledger.each = found[0]


def _scales(ledger: Ledger, found: list[Fraction], match: re.Match[str]) -> None:
    ledger.scaled = plain(match[1]), found[0], plain(match[2])


def _of_monday(ledger: Ledger, found: list[Fraction], _match: re.Match[str]) -> None:
    ledger.scaled = "martes", found[0], "lunes"


def _factor(ledger: Ledger, found: list[Fraction], _match: re.Match[str]) -> None:
    ledger.factors += found


def _clock(ledger: Ledger, found: list[Fraction], _match: re.Match[str]) -> None:
    ledger.times += map(int, found)


def _keeps(ledger: Ledger, found: list[Fraction], match: re.Match[str]) -> None:
    ledger.kept = (found[0] if found else Fraction(0)), match[1]


def _nothing(_ledger: Ledger, _found: list[Fraction], _match: re.Match[str]) -> None:
    pass


#: What a sentence says; the first pattern that fits it whole.
FACTS: dict[str, Fact] = {
    r"tod[ao]s l[ao]s (?:WHOLES) son del mismo tamaño": _nothing,
    r"hay dos (?:colas|cuerdas), una tras otra": _nothing,
    # things told apart
    rf"{_NAMED} {_IS} #(?: de cuerda)?(?P<more> más(?: que eso)?)?": _name(more="more"),
    rf"{_NAMED} {_IS} (?:&|% veces) (?:lo que \w+|el tiempo) (?:(?:de )?(?:la|el)|del)"
    rf"(?: (?:cometa|cola|cuerda|bolsa|jarra|libro|grupo))? {_COLOR}": _scales,
    rf"{_NAMED} pesa % de lo que pesa (?:la|el) {_COLOR}": _scales,
    rf"el lunes (?:{_CLUB} )?DOES #": _name("lunes"),
    r"el martes DOES #": _name("martes"),
    rf"el martes {_CLUB} DOES (?:&|% veces) lo del lunes": _of_monday,
    rf"{_CLUB} (?:usa|DOES|trabaja por) # un día": _name("primer"),
    r"al otro día (?:usa|DOES|trabaja(?: por)?) #(?P<more> más que eso)?": _name("otro", "more"),
    rf"{_CLUB} DOES # un día y # al otro día": _two("primer", "otro"),
    r"al otro día DOES # y el tercer día DOES #": _two("otro", "tercer"),
    r"DOES # el primer día y lo demás al otro día": _name("primer"),
    r"el tercer día DOES lo demás": _nothing,
    rf"en la mañana {_CLUB} DOES #": _name("mañana"),
    r"en la tarde DOES #": _name("tarde"),
    r"alguien (?:trae|corta) #": _someone,
    r"otra persona (?:trae|corta) #": _name("otra"),
    r"(?:una|la otra) mide #": _part,
    # there was, something comes or goes, there is
    r"alguien trae # al club de cometas": _starts,
    rf"alguien trae {_SOME}": _starts,
    rf"{_CLUB} (?:solo )?tiene {_SOME}": _starts,
    rf"{_CLUB} (?:solo )?tiene #(?: de cinta| para (?:colas|su reunión|hacer cometas|trabajar))?": _starts,
    rf"hay # para {_CLUB}": _starts,
    rf"{_CLUB} tiene una (?:cuerda|bolsa) de #": _starts,
    r"la caja de las cometas(?: del club)? pesa #": _starts,
    r"una (?:cuerda|cola|caja(?: de cometas)?|bolsa) (?:mide|pesa) #": _starts,
    r"una jarra tiene #(?: de (?:jugo|pintura))?": _starts,
    r"(?:alguien trae|le dan) # más": _changes(1),
    rf"{_CLUB} le (?:pone|echa) # más(?: a una (?:cola|cuerda))?": _changes(1),
    rf"{_CLUB} le mete un[ao]? (?:cometa|libro) de #": _changes(1),
    rf"{_CLUB} mete en una (?:caja|bolsa) un[ao]? (?:cometa|libro) de #": _changes(1),
    rf"(?:{_CLUB} )?gana #": _changes(1),
    rf"{_CLUB} echa # en una jarra": _changes(1),
    r"(?:alguien trae|le dan) más": _changes(1),
    rf"{_CLUB} le (?:echa más|mete un[ao]? (?:cometa|libro)(?: a la caja)?)": _changes(1),
    r"(?:una cometa vuela|WHO trabaja), y después (?:vuela|trabaja por) # más": _changes(1),
    rf"(?:después )?(?:{_CLUB} )?(?:usa|DOES) #(?: para (?:una cometa|hacer cometas))?": _changes(-1),
    rf"{_CLUB} usa # de su reunión para hacer cometas": _changes(-1),
    r"el viento (?:le )?rompe #(?: al club de cometas)?": _changes(-1),
    rf"(?:después |{_CLUB} )le corta #(?: a una cuerda)?": _changes(-1),
    rf"(?:después |{_CLUB} )le saca un[ao]?(?: cometa| libro)? de #": _changes(-1),
    rf"{_CLUB} saca de una (?:caja|bolsa) un[ao]? (?:cometa|libro) de #": _changes(-1),
    rf"{_CLUB} toma #(?: de jugo de una jarra)?": _changes(-1),
    r"una cola lleva #(?: de cinta)?": _changes(-1),
    rf"(?:después )?(?:{_CLUB} )?compra (?:papel|cuerda|pegamento) por #": _changes(-1),
    r"después bebe #": _changes(-1),
    rf"(?:después |al final )?(?:{_CLUB} )?"
    r"(?:trabaja|juega|pega|recoge|(?:hace|vuela) cometas|corta papel|las vuela) por #(?: en su reunión)?": (
        _changes(-1)
    ),
    rf"usa papel para una cometa|(?:DOES|{_CLUB} (?:le corta|toma)) una parte(?: de eso)?": _changes(-1),
    rf"{_CLUB} le saca un[ao]? (?:cometa|libro)(?: a la caja)?": _changes(-1),
    r"compra papel|hace cometas|trabaja por un rato": _changes(-1),
    rf"(?:ahora|al final)(?: aún)?(?: {_CLUB}| la \w+)? (?:tiene|mide|pesa) #|todavía tiene #": _ends,
    rf"{_CLUB} empieza con # y termina con #": _from_to,
    # there must be so much
    rf"{_CLUB} quiere tener #|quiere tener #|tiene que (?:medir|volar|trabajar por) #": _needs,
    r"una (?:cola|cuerda) tiene que medir #|una cometa (?:lleva|cuesta) #|un libro cuesta #": _needs,
    r"ya (?:mide|tiene) #|una (?:cola|cuerda) ya mide #": _starts,
    r"una cometa ha volado #|WHO ha trabajado por #": _starts,
    # so much in all, and parts of it
    r"un[ao]? (?:cometa|libro) (?:con su cola|en su caja|y su \w+) (?:mide|pesa|cuestan) #": _totals,
    r"una jarra tiene # de ponche": _totals,
    rf"(?:{_CLUB} )?(?:usa|DOES|vuela|trabaja por) # en total": _totals,
    rf"con (?:la (?:\w+ )?verde|el pegamento)(?: {_CLUB})? (?:miden|pesan|tienen|paga) # en total": _totals,
    rf"la reunión dura #|{_CLUB} se reúne(?: por)? #": _totals,
    r"la (?:cola|cometa|cuerda) (?:mide|pesa|cuesta) #|el (?:libro|papel) (?:pesa|cuesta) #": _part,
    r"el ponche lleva # de jugo y lo demás es agua": _part,
    r"(?:hace cometas|trabaja) por # y el resto del tiempo (?:las vuela|juega)": _part,
    r"usa # para colas y lo demás para cometas": _part,
    rf"{_CLUB} tiene # para cometas y # para colas": _part,
    rf"{_CLUB} usa # para una cometa y # para una cola|usa # para una cola y # para lazos": _part,
    rf"{_CLUB} usa {_SOME} para una cometa y # para su cola": _part,
    rf"(?:{_CLUB}|también) usa # de cinta (?:roja|azul)": _part,
    rf"{_CLUB} echa # de jugo en una jarra|después le echa # de agua": _part,
    r"compra (?:cuerda|cinta) por # y pegamento por #": _part,
    r"lo demás es para lazos|el resto del tiempo (?:juega|vuela cometas)": _nothing,
    # groups, rows and a part of
    rf"{_CLUB} (?:compra|hace|tiene|llena|corta|se reúne|pone) &": _counts,
    r"en (?:una caja|el club de cometas) hay &": _counts,
    rf"{_CLUB} (?:corta una hoja en|pone) & de &": _counts,
    r"cada (?:\w+) (?:mide|pesa|tiene|cuesta|lleva|trae|dura|DOES) #": _each,
    rf"{_CLUB} (?:usa|DOES|corta|paga|toma|(?:hace cometas|trabaja) por) % "
    r"(?:de (?:una cinta|lo que tiene|su (?:papel para una cometa|dinero por papel|reunión))"
    r"|del jugo de una jarra)": _factor,
    r"(?:al principio tenía|la (?:cinta medía|jarra tenía)) #(?: al principio)?": _starts,
    r"el club de cometas corta un pedazo de una? WHOLE": _nothing,
    r"el pedazo tiene % del ancho y % del largo de(?: la|l) WHOLE": _factor,
    # about one number
    rf"{_CLUB} (?:hace|paga) #(?: de jugo)?|una fiesta de cometas necesita #|una cometa vuela por #": _starts,
    r"(?:el club )?muestra (?:la misma cantidad|lo mismo) como # complet[ao]s? y unos (\w+)": _keeps,
    r"(?:el club )?muestra (?:la misma cantidad|lo mismo) en (\w+)": _keeps,
    # a clock
    rf"a las? @, (?:{_CLUB} )?(?:empieza a|termina)(?: de)?(?: volar cometas| trabajar)?": _clock,
    r"(?:las (?:vuela|voló)|trabaj[aó]) por #": _changes(1),
}
