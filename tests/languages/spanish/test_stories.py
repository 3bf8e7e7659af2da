"""Spanish word problems: every frame is told, with the numbers of its problem in their order, and asks."""

from collections import Counter, defaultdict
from collections.abc import Iterator

import pytest
from msgspec.structs import replace

from onewhole.languages.class_words import ClassWords, OwnStory
from onewhole.languages.spanish.stories import KITE_PAPER, amount_told
from onewhole.languages.spanish.word_problems.frames import FRAMES, OWN_FRAMES
from onewhole.languages.spanish.words import read_whole
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import printed
from onewhole.number.quantity import Quantity, with_mark
from onewhole.number.unit import DOLLAR, Kind
from onewhole.problems.story_asks import asked
from onewhole.problems.story_frame import StoryFrame
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure
from onewhole.sheets.reading_level import ReadingFormula, reading_level
from onewhole.sheets.told_numbers import untold
from onewhole.statements.reading import read_statement
from tests.kit.stories import EVERY, TOLD, every, grouped, to_be_told

WALKS = replace(read_whole("un kilómetro de sendero"), story=OwnStory("el club de caminatas", "recorre"))


def written(number: Quantity) -> Iterator[str]:
    """How a number may stand in the words: a measure with its units, a number in digits."""
    if number.kind is not Kind.NUMBER:
        yield text_of(amount_told(number)).removesuffix(".")
    elif number.ladder.mark == DOLLAR:
        yield printed(number)
    else:
        yield printed(with_mark(number, ""))


@pytest.mark.parametrize("typed", TOLD)
@pytest.mark.parametrize("words", [KITE_PAPER, WALKS], ids=["kites", "own"])
def test_numbers_stand_in_their_order(typed: str, words: ClassWords) -> None:
    """Each number of the problem stands in the words after the one before it, and the last sentence asks."""
    for told in every(typed, words):
        at = 0
        for number in to_be_told(told.statement):
            places = [(told.words.find(one, at), one) for one in written(number)]
            at, one = min((place, one) for place, one in places if place >= 0)
            at += len(one)
        assert not untold(told.problem("1"))
        assert told.words.endswith("?")
        assert told.words.rpartition(". ")[2].startswith("¿")
        assert "{" not in told.words
        assert "  " not in told.words


@pytest.mark.parametrize(("frames", "words"), [(FRAMES, KITE_PAPER), (OWN_FRAMES, WALKS)])
def test_every_sentence_is_told(frames: tuple[StoryFrame, ...], words: ClassWords) -> None:
    """The statements of the kit reach every frame, and every frame gives words of its own."""
    told: dict[tuple[Asks, Kind, Structure], set[str]] = defaultdict(set)
    for typed in EVERY:
        parts = asked(read_statement(typed))
        for structure, same in grouped(every(typed, words)).items():
            key = parts.asks, parts.kind, structure
            told[key] = max(told[key], same, key=len)
    counted = Counter((frame.asks, frame.kind, frame.structure) for frame in frames)
    assert {key: len(words) for key, words in told.items()} == counted


CUPS = read_whole("una taza")


@pytest.mark.parametrize("words", [KITE_PAPER, CUPS], ids=["kites", "own"])
@pytest.mark.parametrize("typed", TOLD)
def test_every_story_is_easy_to_read(typed: str, words: ClassWords) -> None:
    """Fernández Huerta 80 or more for each story, the aim of every page for home; kilograms too.

    Own words of a class that are as long as kilómetros make its stories harder, and are left to the class.
    """
    for told in every(typed, words):
        assert told.level.formula is ReadingFormula.FERNANDEZ_HUERTA
        assert told.level.ease >= 80, (float(told.level.ease), told.words)


def test_long_words_of_a_class_are_its_own() -> None:
    """All stories of kilometers of trail together read at 80 or more, single ones do not."""
    told = " ".join(one.words for typed in TOLD for one in every(typed, WALKS))
    level = reading_level(told, "es-US")
    assert level is not None
    assert level.ease >= 80, float(level.ease)
