"""English as a language of sentences: its tag, and the words that a notation asks for."""

from onewhole.languages.english.facts import fact_told
from onewhole.languages.english.for_home import closing_told, opening_told, tonight_told, wording_told
from onewhole.languages.english.home_questions import guess_asked, operation_asked, unit_asked
from onewhole.languages.english.in_key import (
    estimate_told,
    missing_told,
    needs_told,
    range_told,
    slip_told,
)
from onewhole.languages.english.pictured import pictured, scene_words
from onewhole.languages.english.reasons import reason_told
from onewhole.languages.english.round_film import ROUND_FILM
from onewhole.languages.english.round_page import ROUND_PAGE
from onewhole.languages.english.speech import BLANK, SIGNS, say
from onewhole.languages.english.stories import frames_told, story_told, told_whole
from onewhole.languages.english.ways import way_of
from onewhole.languages.english.words import TAG, count_words, unit_name
from onewhole.languages.language import Language
from onewhole.languages.told import HomeTold, KeyTold, StoriesTold, WorkingTold
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
    tag=TAG,
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
    working=WorkingTold(reason_told, fact_told, pictured, scene_words, way_of),
    home=HomeTold(
        tonight=tonight_told,
        opening=opening_told,
        wording=wording_told,
        closing=closing_told,
        operation_asked=operation_asked,
        unit_asked=unit_asked,
        guess_asked=guess_asked,
    ),
    key=KeyTold(
        needs=needs_told, estimate=estimate_told, range=range_told, missing=missing_told, slip=slip_told
    ),
    stories=StoriesTold(frames_told, story_told, told_whole),
)
