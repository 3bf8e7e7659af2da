"""Two roads: every sentence of a Spanish film is read back, and what it claims of its problem is so.

Problems of every ladder are told in full, merged, and with a likely mistake. CI takes more, and `make walk`
one in two. A sentence that no pattern reads is a failure, as is one that is not true.
"""

from collections import Counter
from collections.abc import Iterator
from itertools import islice

import pytest
from msgspec.structs import replace

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.words import read_whole
from onewhole.misconceptions.catalogue import shows
from onewhole.notations.sentences.text import text_of
from onewhole.number.quantity import whole
from onewhole.problems.answer import answer
from onewhole.sentences.node import Counted, Label, Node, Said
from onewhole.sentences.sentence import Sentence
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Comparison, Question, Relation, Statement
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.walkthroughs.script import script
from onewhole.working.questions import suiting
from onewhole.working.strategies.from_whole import FROM_WHOLE
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work
from onewhole.working.working import Working
from tests.kit.heard import Heard
from tests.kit.how_much import WHOLE, sample
from tests.kit.ladders import ladders
from tests.kit.scenes import SIXTH
from tests.kit.spanish_film import film_true, page_true

STRIP = read_whole("una tira de papel")
ENGLISH_STRIP = ClassWords("strip", "strips")
LABELS = ("one", "two", "three")
STEP = sample(70, 40, 1)
#: Problems that no ladder holds: on a middle, on an end, a plot in every way of asking.
BESIDE = (
    "round 4550 to hundreds",
    "round 3400 to hundreds",
    "plot 1/4: 2, 1/2: 3, 3/4 in: 1; total at least 1/2",
    "round 2 1/2 to the nearest whole number",
    "plot 1: 2, 2: 3, 3: 1, 4: 2, 5: 6; count at most 4",
    "plot 1/8: 2, 2/8: 4; most",
    "plot 1/2: 3, 1 lb: 1; share",
    "plot 1/4: 2, 3/4: 1; count above 1",
)
#: Of so many films one is told with changed numbers.
CHANGED = sample(4, 3, 2)
#: A number that no problem here has.
ODD = 97


def _workings() -> Iterator[tuple[Statement, Working]]:
    """Problems worked one way each, another way every time; the whole walk works each in every way."""
    on_ladders = tuple(typed for _, typed in ladders())[::STEP]
    for at, typed in enumerate((*on_ladders, *BESIDE[:: sample(4, 1)])):
        statement = read_statement(typed)
        ways = suiting(statement) if isinstance(statement, Question) else (REGROUP_FIRST,)
        for way in ways if WHOLE else (ways[at % len(ways)],):
            found = work(statement, way)
            if isinstance(found, Working):
                yield statement, found


def _films() -> Iterator[tuple[Item, ...]]:
    """A problem three times, so that later ones point back; and with a likely mistake in the first.

    The whole walk shows every mistake, worked in one way.
    """
    shown: set[Statement] = set()
    for at, (statement, working) in enumerate(_workings()):
        items = tuple(Item(str(one), statement, answer(statement), working) for one in (1, 2, 3))
        yield items
        slips = shows(statement) if statement not in shown else ()
        shown.add(statement)
        for slip in slips[: None if WHOLE else at % 2]:
            yield Item("1", statement, answer(statement), working, mistake=slip), *items[1:]


def _heard(items: tuple[Item, ...]) -> tuple[Heard, ...]:
    return tuple(Heard(item, ENGLISH_STRIP, frozenset(LABELS[: at + 1])) for at, item in enumerate(items))


def test_every_sentence_of_a_film_is_read_back_and_true() -> None:
    """Opening and closing are true of all problems, every other sentence of its own."""
    found: Counter[str] = Counter()
    wrong: dict[str, str] = {}
    for items in _films():
        heard = _heard(items)
        for merge in (0, 3):
            first, *told, last = script(Lesson("Colas", "Salón 12", "", STRIP, items), merge=merge).chapters
            for chapter in (first, last):
                for sentence in (one for cue in chapter.cues for one in cue.says):
                    found["sentences"] += 1
                    if not page_true(sentence, heard):
                        wrong.setdefault(text_of((sentence,)), chapter.title)
            for chapter, of in zip(told, heard, strict=True):
                for sentence in (one for cue in chapter.cues for one in cue.says):
                    pattern = film_true(sentence, of)
                    found["sentences"] += 1
                    found[pattern or ""] += 1
                    if pattern is None:
                        wrong.setdefault(text_of((sentence,)), chapter.title)
    print(found["sentences"], len(found))
    assert wrong == {}
    assert len(found) > 20


def _changed(sentence: Sentence) -> Iterator[Sentence]:
    """The sentence with one of its numbers or labels as another, in every place; a spelt 1 is left alone."""
    for at, node in enumerate(sentence.nodes):
        match node:
            case Counted(count, spelt=False):
                other: Node = replace(node, count=count + ODD)
            case Said(Comparison() as told):
                other = Said(replace(told, right=whole(ODD), sign=told.sign and Relation.EQUAL))
            case Said():
                other = Said(whole(ODD))
            case Label():
                other = Label(str(ODD))
            case _:
                continue
        yield replace(sentence, nodes=(*sentence.nodes[:at], other, *sentence.nodes[at + 1 :]))


def test_a_changed_number_is_found() -> None:
    """No sentence of a film stays true when one of its numbers or labels is another."""
    kept: list[str] = []
    tried = 0
    for items in islice(_films(), 0, None, CHANGED):
        heard = _heard(items)
        first, *told, _ = script(Lesson("", "", "", STRIP, items), merge=0).chapters
        for sentence in (one for cue in first.cues for one in cue.says):
            kept += [text_of((other,)) for other in _changed(sentence) if page_true(other, heard)]
        for chapter, of in zip(told[:1], heard, strict=False):
            for other in (each for cue in chapter.cues for one in cue.says for each in _changed(one)):
                tried += 1
                kept += [text_of((other,))] if film_true(other, of) else []
    assert kept == []
    assert tried > 20


@pytest.mark.parametrize("typed", ["1 ft 1 in - 2 in", "1 h 1 min - 2 min"])
def test_one_whole_taken_from_leaves_no_larger_unit(typed: str) -> None:
    """A film tells it too where the one whole is opened and none of it stays."""
    statement = read_statement(typed)
    working = work(statement, FROM_WHOLE)
    assert isinstance(working, Working)
    (heard,) = _heard((Item("1", statement, answer(statement), working),))
    (chapter,) = script(Lesson("", "", "", STRIP, (heard.item,))).chapters[1:-1]
    assert all(film_true(one, heard) for cue in chapter.cues for one in cue.says)


def test_what_is_not_so_is_found() -> None:
    """Another number, another label, a unit that is not there, or words that nobody reads."""
    statement = read_statement("7 2/6 - 3 5/6")
    working = work(statement, REGROUP_FIRST)
    assert isinstance(working, Working)
    (heard,) = _heard((Item("1", statement, answer(statement), working),))
    right, two = Said(whole(2)), Label("2")
    three_sixths = answer(statement)
    assert film_true(
        Sentence("es-US", ("la respuesta del problema", Label("1"), "es", Said(three_sixths))), heard
    )
    assert film_true(Sentence("es-US", ("sumamos", Counted(8, SIXTH))), heard)
    for wrong in (
        ("la respuesta del problema", Label("1"), "es", right),
        ("la respuesta del problema", two, "es", Said(three_sixths)),
        ("la respuesta es", right),
        ("pero la respuesta no es", Said(three_sixths)),
        ("eso es", right),
        ("sumamos", Counted(11, SIXTH)),
        ("puedes dejarlo como", right),
        ("hoy llueve y hay", right),
    ):
        assert film_true(Sentence("es-US", wrong), heard) is None, wrong
    assert not page_true(Sentence("es-US", ("esta noche hay", Counted(2, SIXTH))), (heard,))
