"""What is said in Portuguese on the page for home, and why a line follows.

From memory, all of it: to be checked by a native speaker who teaches. A reason that is not said here is said
in English, in a sentence that is tagged as English.
"""

from collections.abc import Collection, Sequence
from fractions import Fraction

from onewhole.languages.english.reasons import reason_told as english_reason
from onewhole.languages.english.words import ClassWords
from onewhole.languages.portuguese.words import TAG, agree
from onewhole.number.digits import in_digits, named_places
from onewhole.number.ladder import TEN, Style
from onewhole.number.quantity import Quantity, whole
from onewhole.number.unit import ONE, Unit
from onewhole.problems.about import About, Units
from onewhole.problems.needs import Operation
from onewhole.sentences.node import Counted, Naming, Node, Said, Seam, Thing
from onewhole.sentences.sentence import End, Sentence, Sentences
from onewhole.working.reason import Reason
from onewhole.working.reasons.regrouping import (
    AreWorth,
    FullGroups,
    MakesLarger,
    OneIsWorth,
    OpensOne,
    OpensToMatch,
    PutTogether,
    WrittenTogether,
)
from onewhole.working.reasons.renaming import CutAgain, RenamedSameAmount, SameSizePieces, WholesInPieces
from onewhole.working.reasons.taking import (
    AddedUnitByUnit,
    InAll,
    LargerUnitFirst,
    Left,
    OpenedToTake,
    PiecesAdded,
    PiecesTaken,
    SetAside,
    SoFar,
    TakenFromWhole,
    TakenUnitByUnit,
    UnitsTaken,
)

Nodes = tuple[Node, ...]
_VERBS = {
    "regroup": ("reagrupamos", "reagrupar"),
    "open": ("abrimos", "abrir"),
    "trade": ("trocamos", "trocar"),
    "rename": ("escrevemos de outra forma", "escrever de outra forma"),
}
SO = Seam(", por isso", "por isso")
PIECE = Thing("parte", "partes", None, feminine=True)
_FULL_GROUP = Thing("grupo completo", "grupos completos", None)
_ACTS = {
    Operation.SUBTRACT: "subtraímos um número de outro",
    Operation.ADD: "somamos números",
    Operation.COMPARE: "vemos qual número é maior",
    Operation.ORDER: "colocamos números em ordem",
    Operation.FIND: "procuramos um número que falta",
    Operation.ROUND: "arredondamos números",
    Operation.MULTIPLY: "multiplicamos",
    Operation.RENAME: "escrevemos números de outra forma",
}


def told(*nodes: Node | Nodes, end: End = End.STOP) -> Sentences:
    """Make one Portuguese sentence of nodes and runs of nodes."""
    parts = [part for node in nodes for part in (node if isinstance(node, tuple) else (node,))]
    return (Sentence(TAG, tuple(parts), end),)


def asked(*nodes: Node | Nodes) -> Sentences:
    """Make one Portuguese question."""
    return told(*nodes, end=End.ASKS)


def _thing(unit: Unit, words: ClassWords | None) -> Unit | Thing:
    return Thing(words.whole, words.wholes, feminine=words.feminine) if unit == ONE and words else unit


def some(count: int, unit: Unit, words: ClassWords | None = None) -> Counted:
    """Count a unit: 5 sextos; with the class's words also 3 tiras."""
    return Counted(count, _thing(unit, words))


def one(unit: Unit, words: ClassWords | None = None) -> Counted:
    """Count one of a unit, in a word: uma tira."""
    return Counted(1, _thing(unit, words), spelt=True)


def many(unit: Unit, words: ClassWords | None = None) -> Naming:
    """Name a unit in the plural."""
    return Naming(_thing(unit, words))


def _bare(count: int) -> Said:
    return Said(whole(count))


def regroups(words: ClassWords, what: Node) -> Nodes:
    """Say with the class's verb that we regroup something."""
    return (_VERBS[words.regroup][0], what)


def listed(parts: Sequence[Nodes]) -> Nodes:
    """Join runs of nodes: a, b e c."""
    found: list[Node] = []
    for at, part in enumerate(parts):
        found += ["e" if at == len(parts) - 1 else ","] if at else []
        found += part
    return tuple(found)


def _amount(number: Quantity, words: ClassWords) -> Nodes:
    if number.ladder.style in {Style.PLACES, Style.DECIMAL}:
        places = named_places(number)
        return (Said(number),) if in_digits(number) else listed([(some(*place),) for place in places])
    named = words if number.ladder.style is Style.MIXED else None
    pairs = zip(number.counts, number.ladder.units, strict=True)
    return listed([(some(count, unit, named),) for count, unit in pairs if count is not None])


def _is(one: str, many: str, number: Quantity) -> str:
    return one if [count for count in number.counts if count] == [1] else many


def tonight_told(done: Collection[Operation]) -> Sentences:
    """Say what is done with tonight's numbers."""
    first, *rest = [act for operation, act in _ACTS.items() if operation in done] or [_ACTS[Operation.RENAME]]
    return told("esta noite", first) + tuple(said for act in rest for said in told("em alguns,", act))


def opening_told(parts: int, words: ClassWords) -> Sequence[Sentences]:
    """Say how a whole of so many parts is opened, and that tens are opened likewise; a paragraph each."""
    ten = Unit(Fraction(TEN))
    cut = agree("cortada", "cortado", _thing(ONE, words))
    opened = (
        *told("às vezes não há partes suficientes para tirar"),
        *told("então", regroups(words, one(ONE, words)), f", {cut} em partes iguais"),
        *told(one(ONE, words), "tem", Counted(parts, Unit(Fraction(1, parts)), spelt=True)),
    )
    alike = (
        *told("é igual com as", many(ten)),
        *told(one(ten), "tem", Counted(TEN, ONE, spelt=True)),
        *told("só escrevemos o número de outra forma"),
    )
    return opened, alike


def wording_told(words: ClassWords, *, taken: bool, added: bool) -> Sentences:
    """Say what regrouping is called in class, and what it was called when today's parents learnt it."""
    known: Sentences = ()
    if taken:
        known = told("talvez você conheça isso como pedir emprestado")
    elif added:
        known = told("talvez você conheça isso como vai um")
    return known + told("na aula dizemos", _VERBS[words.regroup][1], ": a quantidade não muda")


def closing_told() -> Sentences:
    """Say what a family need not do, and when to stop."""
    stop = told("se demorar muito, parem aí e mandem um bilhete para nós")
    return told("não é preciso ensinar") + told("escutar ajuda") + stop


def operation_asked(problem: About, words: ClassWords) -> Sentences:
    """Ask about what is done in a problem."""
    match problem.operation, problem.units:
        case Operation.SUBTRACT, Units.PIECES:
            return asked("há partes suficientes para tirar")
        case Operation.ADD, Units.PIECES:
            return asked("as partes completam", one(ONE, words), "ou mais")
        case Operation.SUBTRACT | Operation.ADD, Units.UNLIKE:
            return asked("que tamanho de parte serve para todas as frações")
        case Operation.SUBTRACT, _:
            return asked("há o suficiente em cada lugar para tirar")
        case Operation.ADD, _:
            return asked("há dez ou mais em algum lugar")
        case Operation.COMPARE, Units.PIECES | Units.UNLIKE:
            return asked("as partes são do mesmo tamanho")
        case Operation.COMPARE, _:
            return asked("qual lugar você olha primeiro")
        case Operation.MULTIPLY, _:
            return asked("quantos grupos há e quanto tem cada um")
        case Operation.FIND, _:
            return asked("que número faz os dois lados iguais")
        case Operation.ORDER, _:
            return asked("qual número é o menor e como você vê isso")
        case Operation.ROUND, _:
            return asked("entre quais dois números ele está e de qual está mais perto")
        case _:
            return asked("de que outra forma você pode escrever a mesma quantidade")


def unit_asked(problem: About, words: ClassWords) -> Sentences:
    """Ask about the units of a problem; nothing where there is nothing to ask."""
    match problem.units:
        case Units.PIECES | Units.UNLIKE:
            return asked("quantas partes tem", one(ONE, words))
        case Units.PLACES if problem.operation is not Operation.MULTIPLY:
            return asked("quantas", many(ONE), "tem", one(Unit(Fraction(TEN))))
        case Units.DECIMALS:
            return asked("quantos", many(Unit(Fraction(1, TEN))), "formam um inteiro")
        case Units.MEASURES:
            return asked("quantas da unidade pequena formam uma da grande")
        case _:
            return ()


def guess_asked() -> Sentences:
    """Ask whether an answer can be right."""
    return asked("sua resposta parece com o que você pensou primeiro")


def reason_told(reason: Reason, words: ClassWords) -> Sentences:
    """Say why a line follows; in English what is not said here.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import mixed
    >>> text_of(reason_told(OneIsWorth(*mixed(6).units, 6), ClassWords("tira", "tiras", feminine=True)))
    'Uma tira tem 6 sextos.'
    """
    match reason:
        case OpensOne(large, small, have, need):
            act = regroups(words, one(large, words))
            if have >= need:
                return told("não há", many(small), SO, "primeiro", act)
            return told("não há", many(small), "suficientes para tirar", some(need, small), SO, act)
        case OpensToMatch(large, small, times):
            return told(regroups(words, _made(times, large, words)), "para ter mais", many(small))
        case OneIsWorth(large, small, ratio):
            return told(one(large, words), "tem", some(ratio, small))
        case AreWorth(large, small, times, worth):
            return told(_made(times, large, words), "tem" if times == 1 else "têm", some(worth, small))
        case PutTogether(small, opened, had, now):
            if not had:
                return told("agora há", some(now, small))
            return told(some(opened, small), "e", some(had, small), "são", some(now, small))
        case FullGroups(large, small, ratio, times):
            made = (some(ratio, small), "formam", one(large, words))
            return told(made, Seam(", e"), "há", Counted(times, _FULL_GROUP))
        case MakesLarger(large, small, times, had):
            return told(some(had, small), "formam", _made(times, large, words))
        case WrittenTogether(result):
            return told("escrito como sempre, é", Said(result))
        case TakenUnitByUnit(units) if units:
            return told("tiramos", listed([(many(unit, words), "de", many(unit, words)) for unit in units]))
        case AddedUnitByUnit(units) if units:
            return told("juntamos", listed([(many(unit, words), "com", many(unit, words)) for unit in units]))
        case PiecesTaken(small, have, gone):
            return told("de", some(have, small), "tiramos", some(gone, small))
        case PiecesAdded(small, have, more):
            return told("somamos", some(have, small), "e", some(more, small))
        case LargerUnitFirst(unit, count):
            return told("primeiro o maior", Seam(":"), "tiramos", some(count, unit, words))
        case UnitsTaken(unit, had, gone):
            return told(_bare(had), "menos", _bare(gone), "dá", some(had - gone, unit, words))
        case Left(result) if not result.parts:
            return told("não sobra nada")
        case Left(result):
            return told(_is("sobra", "sobram", result), _amount(result, words))
        case InAll(result):
            return told("ao todo", _is("é", "são", result), _amount(result, words))
        case SoFar(result):
            return told("até aqui", _is("é", "são", result), _amount(result, words))
        case SetAside(wholes, pieces):
            return told("separamos", Said(pieces), Seam(", e"), "tiramos de", Said(wholes))
        case OpenedToTake(wholes, opened):
            return told(Said(wholes), "é a mesma quantidade que", Said(opened))
        case TakenFromWhole(wholes, left):
            rest: Nodes = ("sobra", Said(left)) if left.parts else ("não sobra nada",)
            return told("de", Said(wholes), rest) + told("agora devolvemos o que separamos")
        case WholesInPieces(large, small, ratio):
            whole_is = (one(large, words), "tem", some(ratio, small))
            return told(whole_is, SO, "contamos tudo em", many(small))
        case CutAgain(small):
            return told("cortamos cada parte outra vez para ter", many(small))
        case SameSizePieces(small):
            return told("agora todas as partes são do mesmo tamanho", Seam(":"), many(small))
        case RenamedSameAmount(small):
            return told("é a mesma quantidade, contada em", many(small))
        case _:
            return english_reason(reason, ClassWords(regroup=words.regroup))


def _made(times: int, large: Unit, words: ClassWords) -> Counted:
    return one(large, words) if times == 1 else some(times, large, words)
