"""English as a language of sentences: its tag, and the words that a notation asks for."""

from onewhole.languages.english.round_film import ROUND_FILM
from onewhole.languages.english.round_page import ROUND_PAGE
from onewhole.languages.english.speech import BLANK, SIGNS, say
from onewhole.languages.english.words import count_words, unit_name
from onewhole.languages.language import Language
from onewhole.number.unit import Unit
from onewhole.sentences.node import Thing
from onewhole.statements.row import Sign


def called(unit: Unit | Thing, count: int) -> str:
    """Return what so many of a unit or a thing are called.

    >>> from onewhole.number.ladder import mixed
    >>> called(mixed(6).units[1], 1), called(Thing("strip", "strips"), 0)
    ('sixth', 'strips')
    """
    if isinstance(unit, Thing):
        return unit.one if count == 1 else unit.many
    return unit_name(unit, count)


ENGLISH = Language(
    tag="en-US",
    name="English",
    code="eng",
    voice="en-us",
    count_words=count_words,
    called=called,
    say=say,
    equals=SIGNS[Sign.EQUALS],
    blank=BLANK,
    film=ROUND_FILM,
    page=ROUND_PAGE,
)
