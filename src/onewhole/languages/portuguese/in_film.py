"""What a film says in Portuguese beside the reasons, and what a picture of strips shows.

From memory, all of it: to be checked by a native speaker who teaches.
"""

from collections.abc import Sequence

from onewhole.languages.english.pictured import pictured as english_picture
from onewhole.languages.english.pictured import scene_words
from onewhole.languages.english.words import ClassWords
from onewhole.languages.portuguese.told import PIECE, SO, Nodes, listed, many, one, regroups, some, told
from onewhole.languages.portuguese.words import TAG, WHOLE
from onewhole.number.quantity import Quantity
from onewhole.number.unit import ONE, Unit
from onewhole.pictures.caption import Caption, Count
from onewhole.pictures.description import CrossedOut, CutInto, Description, Gathered, Makes, Shown, StillThere
from onewhole.pictures.scene import Scene
from onewhole.sentences.node import Counted, Label, Naming, Said, Seam, Thing
from onewhole.sentences.sentence import Sentences
from onewhole.sentences.typed import typed, typed_sentences
from onewhole.statements.expression import Expression
from onewhole.statements.statement import AnotherName, Comparison, Question, Relation, RightAnswer, Statement
from onewhole.working.line import LineContent
from onewhole.working.reason import Reason
from onewhole.working.reasons.regrouping import OpensOne
from onewhole.working.reasons.taking import PiecesAdded, PiecesTaken

_PROBLEM = Thing("problema", "problemas", None)
_SEEN = {Shown: "aqui estão:", StillThere: "sobram:", CrossedOut: "riscados:", Gathered: "juntos:"}


def pictured(scene: Scene, words: ClassWords) -> Sentences:
    """Describe a scene of things that are counted; in English what is not said here."""
    naming = scene_words(scene, words)
    parts = [_seen(each, naming) for each in scene.descriptions]
    if not parts or not all(parts):
        return english_picture(scene, ClassWords())
    return tuple(sentence for part in parts for sentence in part)


def _seen(each: Description, words: ClassWords) -> Sentences:
    match each:
        case Shown(amounts) | StillThere(amounts) | CrossedOut(amounts) | Gathered(amounts) if amounts:
            return told(_SEEN[type(each)], listed([(_counted(amount, words),) for amount in amounts]))
        case Makes(small, made):
            return told(_counted(small, words), "formam", _counted(made, words))
        case CutInto(cut, parts):
            return told("cortamos", _counted(cut, words), "em", _counted(parts, words))
        case _:
            return ()


def _counted(amount: Caption, words: ClassWords) -> Counted | Said:
    return some(amount.count, amount.unit, words) if isinstance(amount, Count) else Said(amount)


def date_told(date: str) -> Sentences:
    """Say what day it is."""
    return told("hoje é", typed(date))


def title_told(title: str) -> Sentences:
    """Say what the page is called."""
    return told("esta página se chama", typed(title))


def opened_told(
    count: int, every: int, small: Unit | None, large: Unit | None, words: ClassWords, *, lacking: bool
) -> Sentences:
    """Say in how many of all problems a larger unit is opened."""
    smaller = many(small) if small else Naming(PIECE)
    larger = one(large, words) if large else "uma unidade maior"
    there: Nodes = ("não há", smaller, "suficientes") if lacking else ("precisamos de mais", smaller)
    return told("em", _bare_of(count, every), there, SO, regroups(words, larger))


def _bare_of(count: int, every: int) -> Nodes:
    return ("todos estes",) if count == every else (Counted(count, _PROBLEM),)


def one_adds_told(label: str) -> Sentences:
    """Warn of the one problem that adds."""
    return told("olhe o sinal do problema", Label(label), Seam(":"), "ali se soma")


def one_takes_told(label: str) -> Sentences:
    """Warn of the one problem that takes away."""
    return told("olhe o sinal do problema", Label(label), Seam(":"), "ali se subtrai")


def tens_told(large: Unit, small: Unit, tens: Sequence[Unit], words: ClassWords) -> Sentences:
    """Say that opening a unit is the same as opening a ten."""
    ten, single = tens
    worth = (one(large, words), "tem", some((large.size / small.size).numerator, small))
    alike = told("é igual com as dezenas")
    return alike + told(one(ten), "tem", some(10, single), Seam(", e"), worth) + told("a quantidade não muda")


def try_told() -> Sentences:
    """Ask the family to try it first."""
    return told("parem aqui e tentem resolver")


def greeting_told(class_name: str) -> Sentences:
    """Greet a class by its name, or without one."""
    return told("olá,", typed(class_name)) if class_name else told("olá")


def count_told(problems: int) -> Sentences:
    """Say how many problems there are."""
    return told("esta noite há", Counted(problems, _PROBLEM))


def whole_told(words: ClassWords) -> Sentences:
    """Say what a whole is in this class."""
    return told(Counted(1, WHOLE, spelt=True), "é", one(ONE, words))


def film_closing_told() -> Sentences:
    """End the film."""
    other = told("se a sua resposta é outra", Seam(","), "procure a linha onde ela muda")
    return told("esse foi o último") + other + told("boa noite e parabéns")


def asked_told(label: str, statement: Statement, story: str, _at: int) -> Sentences:
    """Say a problem's label, its story and what it asks for."""
    if isinstance(statement, Question) and not story:
        return told("problema", Label(label), Seam(":"), Said(statement))
    said = told("problema", Label(label)) + typed_sentences(story, TAG)
    return said + told("calculamos" if isinstance(statement, Question) else "procuramos", Said(statement))


def stands_told(says: LineContent) -> tuple[Sentences, ...]:
    """Say what stands on a line, in more than one wording."""
    return told("isso é", Said(says)), told("agora temos", Said(says))


def parts_stand_told(parts: tuple[Expression, ...]) -> tuple[Sentences, ...]:
    """Say what stands on a line that is worked in parts."""
    return (told("agora temos", listed([(Said(part),) for part in parts])),)


def deed_told(reason: Reason | None, words: ClassWords) -> Nodes | None:
    """Say what is done at a line, as a part of a sentence; None where only its reason tells it."""
    match reason:
        case OpensOne(large=large):
            return regroups(words, one(large, words))
        case PiecesTaken(small, _, count):
            return ("tiramos", some(count, small))
        case PiecesAdded(small, _, count):
            return ("somamos", some(count, small))
        case _:
            return None


def done_told(deed: Nodes) -> Sentences:
    """Say what is done, as a sentence of its own."""
    return told(deed)


def then_done(deed: Nodes) -> Sentences:
    """Say what is done next, after something else was done."""
    return told("depois", deed)


def done_as_before(deed: Nodes, label: str) -> tuple[Sentences, ...]:
    """Point back to the problem in which the same was done and explained."""
    return (told("como no problema", Label(label), ",", deed),)


def outcome_told(statement: Statement, answer: RightAnswer) -> Nodes:
    """Say a problem with its answer, as a part of a sentence."""
    match statement, answer:
        case Question(asking) | AnotherName(asking), Quantity():
            return (Said(Comparison(asking, answer, Relation.EQUAL)),)
        case Comparison(left, right), Relation():
            return (Said(Comparison(left, right, answer)),)
        case _:
            return ("a resposta é", Said(answer))


def answers_told(label: str, statement: Statement, answer: RightAnswer) -> tuple[Sentences, ...]:
    """Say the answer once more, in more than one wording."""
    said = outcome_told(statement, answer)
    return told("por isso", said), told("no problema", Label(label), ",", said)


def same_amount_told(kept: Quantity, other: Quantity) -> tuple[Sentences, ...]:
    """Name an equal form."""
    return (told(Said(kept), "é a mesma quantidade que", Said(other)),)


def one_fraction_told(kept: Quantity, fraction: Quantity) -> Sentences:
    """Name an answer as one fraction."""
    return told("como uma só fração", ",", Said(kept), "é", Said(fraction))


def may_stay_told(kept: Quantity) -> tuple[Sentences, ...]:
    """Say that no form is demanded."""
    return told("você pode deixar como", Said(kept)), told("as duas formas estão certas")


def check_told(back: Comparison) -> Sentences:
    """Check an answer by undoing what was done."""
    return told("conferimos ao contrário", Seam(":"), Said(back))
