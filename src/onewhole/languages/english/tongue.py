"""English as a language of sentences: its tag, and the words that a notation asks for."""

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.class_settings import CLASS_SETTINGS
from onewhole.languages.english.facts import fact_told
from onewhole.languages.english.film_told import (
    THE_END,
    TONIGHT,
    both_signs_told,
    column_opened_told,
    columns_told,
    count_told,
    date_told,
    film_closing_told,
    greeting_told,
    one_adds_told,
    one_takes_told,
    opened_told,
    tens_told,
    title_told,
    try_told,
    turn_told,
    whole_told,
)
from onewhole.languages.english.for_home import closing_told, opening_told, tonight_told, wording_told
from onewhole.languages.english.forms_told import (
    check_told,
    may_stay_told,
    one_fraction_told,
    same_amount_told,
)
from onewhole.languages.english.home_questions import guess_asked, operation_asked, unit_asked
from onewhole.languages.english.in_key import (
    estimate_told,
    missing_told,
    needs_told,
    range_told,
    slip_told,
)
from onewhole.languages.english.line_told import (
    deed_told,
    done_as_before,
    done_told,
    parts_stand_told,
    stands_told,
    then_done,
)
from onewhole.languages.english.mistake_told import (
    answer_is_told,
    does_not_fit,
    may_be_written,
    no_pieces_told,
    not_equal_told,
    not_so_told,
    not_the_answer,
    right_line_told,
    still_the_same,
    truth_told,
)
from onewhole.languages.english.own_story import read_own_story
from onewhole.languages.english.pictured import pictured, scene_words
from onewhole.languages.english.problem_told import answers_told, asked_told, outcome_told
from onewhole.languages.english.reasons import reason_told
from onewhole.languages.english.round_film import ROUND_FILM
from onewhole.languages.english.round_page import ROUND_PAGE
from onewhole.languages.english.speech import BLANK, SIGNS, say, say_before
from onewhole.languages.english.stories import amount_told, frames_told, story_told, told_whole
from onewhole.languages.english.ways import way_of
from onewhole.languages.english.wordings import wording_parts
from onewhole.languages.english.words import (
    FORMS,
    TAG,
    count_words,
    known,
    place_written,
    read_whole,
    short,
    unit_name,
)
from onewhole.languages.film_told import AfterTold, LinesTold, MistakeTold, OpeningTold
from onewhole.languages.language import Language
from onewhole.languages.line_words import LineWords
from onewhole.languages.told import HomeTold, KeyTold, StoriesTold, WorkingTold
from onewhole.number.unit import Unit
from onewhole.sentences.node import Thing
from onewhole.statements.row import Sign


def counted_words(count: int, of: Unit | Thing | None = None) -> str:  # noqa: ARG001 - no English count agrees
    """Return a count in words; what is counted makes no difference in English.

    >>> counted_words(1, Thing("strip", "strips"))
    'one'
    """
    return count_words(count)


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
    usual=ClassWords(),
    count_words=counted_words,
    called=called,
    say=say,
    say_before=say_before,
    short=short,
    known=known,
    read_whole=read_whole,
    read_story=read_own_story,
    class_settings=CLASS_SETTINGS,
    equals=SIGNS[Sign.EQUALS],
    blank=BLANK,
    asks="",
    line=LineWords(wording_parts, FORMS, place_written, SIGNS[Sign.UNTIL]),
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
    stories=StoriesTold(frames_told, story_told, told_whole, amount_told),
    opening=OpeningTold(
        tonight=TONIGHT,
        the_end=THE_END,
        greeting=greeting_told,
        date=date_told,
        title=title_told,
        count=count_told,
        whole=whole_told,
        opened=opened_told,
        column_opened=column_opened_told,
        one_adds=one_adds_told,
        one_takes=one_takes_told,
        both_signs=both_signs_told,
        try_first=try_told,
        your_turn=turn_told,
        turn_written="Your turn",
        closing=film_closing_told,
        columns=columns_told,
        tens=tens_told,
    ),
    lines=LinesTold(
        asked=asked_told,
        stands=stands_told,
        parts_stand=parts_stand_told,
        deed=deed_told,
        done=done_told,
        then=then_done,
        as_before=done_as_before,
        outcome=outcome_told,
        answers=answers_told,
    ),
    after=AfterTold(same_amount_told, one_fraction_told, may_stay_told, check_told),
    mistake=MistakeTold(
        may_be_written=may_be_written,
        still_the_same=still_the_same,
        no_pieces=no_pieces_told,
        not_so=not_so_told,
        does_not_fit=does_not_fit,
        not_the_answer=not_the_answer,
        not_equal=not_equal_told,
        right_line=right_line_told,
        truth=truth_told,
        answer_is=answer_is_told,
    ),
)
