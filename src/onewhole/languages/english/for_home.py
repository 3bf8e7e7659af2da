"""What the page for home says: what the class does tonight, in short sentences."""

from collections.abc import Collection, Sequence
from fractions import Fraction

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import a_single, listed, told, units
from onewhole.languages.told import acts_told
from onewhole.number.ladder import TEN
from onewhole.number.unit import ONE, Unit
from onewhole.problems.needs import Operation
from onewhole.sentences.node import Counted, Typed
from onewhole.sentences.sentence import Sentences

_ACTS = {
    Operation.SUBTRACT: "we take one number from another",
    Operation.ADD: "we put numbers together",
    Operation.COMPARE: "we see which number is more",
    Operation.ORDER: "we put numbers in order",
    Operation.FIND: "we look for a missing number",
    Operation.ROUND: "we round numbers",
    Operation.READ: "we read line plots",
    Operation.MULTIPLY: "we multiply",
    Operation.DIVIDE: "we share out equally",
    Operation.RENAME: "we write numbers in other ways",
}
_SAYING = {"open": "regrouping", "regroup": "regrouping", "rename": "renaming", "trade": "trading"}


def tonight_told(done: Collection[Operation]) -> Sentences:
    """Say what is done with tonight's numbers.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(tonight_told([Operation.ADD, Operation.SUBTRACT]))
    'Tonight we take one number from another. In some, we put numbers together.'
    """
    first, *rest = [act for operation, act in _ACTS.items() if operation in done] or [_ACTS[Operation.RENAME]]
    others = (told("in some,", listed(acts, "or")) for acts in acts_told(rest))
    return told("tonight", first) + tuple(one for said in others for one in said)


def opening_told(parts: int, words: ClassWords) -> Sequence[Sentences]:
    """Say how a whole of so many parts is opened, and that tens are opened likewise; a paragraph each."""
    act = ("then we", Typed(words.regroup), a_single(ONE, words), ": it is cut into equal pieces")
    pieces = Counted(parts, Unit(Fraction(1, parts)), spelt=True)
    ten = a_single(Unit(Fraction(TEN)))
    opened = (
        *told("sometimes there are too few pieces to take away"),
        *told(act),
        *told(a_single(ONE, words), "is", pieces),
    )
    alike = (
        *told("it is the same with", units(Unit(Fraction(TEN)))),
        *told(ten, "is", Counted(TEN, ONE, spelt=True)),
        *told("we only write the number in another way"),
    )
    return opened, alike


def wording_told(words: ClassWords, *, taken: bool, added: bool) -> Sentences:
    """Say what regrouping is called in class, and what it was called when today's parents learnt it."""
    known: Sentences = ()
    if taken:
        known = told("you may know this as borrowing")
    elif added:
        known = told("you may know this as carrying")
    saying = Typed(_SAYING[words.regroup])
    return known + told("in class we say", saying, ": the amount does not change")


def closing_told() -> Sentences:
    """Say what a family need not do, and when to stop."""
    return (
        *told("you do not need to teach it"),
        *told("listening helps"),
        *told("if it takes too long, stop there and write us a note"),
    )
