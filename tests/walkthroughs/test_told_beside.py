"""A film told in a second language: the same steps at the same times, each sentence on whole frames."""

from itertools import pairwise

import pytest
from msgspec.structs import replace

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.words import words_for
from onewhole.languages.table import LANGUAGES, words_at_home
from onewhole.notations.sentences.text import sentence_text
from onewhole.problems.answer import answer
from onewhole.problems.taught import as_taught
from onewhole.statements.reading import read_statement
from onewhole.walkthroughs.cue import Role
from onewhole.walkthroughs.fitting import fitted
from onewhole.walkthroughs.lesson import Item, Lesson, Pace
from onewhole.walkthroughs.timeline import FRAMES, Timeline
from onewhole.walkthroughs.told_beside import told_beside
from onewhole.working.strategies.regroup_first import REGROUP_FIRST

STRIPS = words_for("strip")
TIRAS = words_at_home(STRIPS, LANGUAGES["es-US"].usual)


def _night(words: ClassWords, *typed: str) -> Lesson:
    items = []
    for at, one in enumerate(typed, start=1):
        asked = read_statement(one)
        items.append(Item(str(at), asked, answer(asked), as_taught(asked, REGROUP_FIRST), try_first=at == 2))
    return Lesson("Kite tails", "", "", words, tuple(items))


def _both(*typed: str, minutes: int | None = None) -> tuple[Timeline, Timeline]:
    made, film = fitted(_night(STRIPS, *typed), Pace(), minutes)
    return film, told_beside(film, _night(TIRAS, *typed), made.merge)


@pytest.mark.parametrize("minutes", [None, 4])
def test_every_step_says_in_its_time_what_the_other_language_says(minutes: int | None) -> None:
    """Cues and acts are the film's own; sentences begin and end on frames, one after another, in the cue."""
    film, beside = _both("7 1/6 - 3 5/6", "9 5/8 - 4 6/8", "8 3/8 - 4 5/8", minutes=minutes)
    assert (film.language, beside.language) == ("en-US", "es-US")
    assert beside.length == film.length
    for chapter, other in zip(film.chapters, beside.chapters, strict=True):
        assert chapter.label == other.label
        for cue, told in zip(chapter.cues, other.cues, strict=True):
            assert (told.start, told.end, told.moves) == (cue.start, cue.end, cue.moves)
            times = [(start, end) for _, start, end in told.said]
            assert all(cue.start <= start < end <= cue.end for start, end in times)
            assert all(end <= start for (_, end), (start, _) in pairwise(times))
            assert all((time * FRAMES).denominator == 1 for pair in times for time in pair)


def test_the_words_are_those_of_the_step() -> None:
    """The problem, the stop and the answer are said where the film says them."""
    _, beside = _both("7 1/6 - 3 5/6", "9 5/8 - 4 6/8")
    cues = beside.chapters[2].cues
    said = {cue.cue.role: " ".join(sentence_text(one) for one, _, _ in cue.said) for cue in cues}
    assert "9 5/8 - 4 6/8" in said[Role.PROBLEM]
    assert said[Role.TRY] == "Paren aquí y traten de hacerlo."
    assert said[Role.ANSWER] == "Quedan 4 tiras y 7 octavos."


def test_where_the_other_language_has_no_words_the_films_own_stand() -> None:
    """A step that only one of both has: nothing is silent, and nothing is told of what is not there."""
    night = _night(STRIPS, "7 1/6 - 3 5/6")
    made, film = fitted(night, Pace(), None)
    assert Role.CHECK in {cue.cue.role for cue in film.chapters[1].cues}
    bare = replace(film.chapters[1], cues=film.chapters[1].cues[:-1])
    short = replace(film, chapters=(film.chapters[0], bare, film.chapters[2]))
    assert film.chapters[1].cues[-1].cue.role is Role.CHECK
    assert len(told_beside(short, _night(TIRAS, "7 1/6 - 3 5/6"), made.merge).chapters[1].cues) == len(
        bare.cues
    )
    check = replace(film.chapters[1].cues[-1], cue=replace(film.chapters[1].cues[-1].cue, line=99))
    odd = replace(film.chapters[1], cues=(*bare.cues, check))
    other = replace(film, chapters=(film.chapters[0], odd, film.chapters[2]))
    last = told_beside(other, _night(TIRAS, "7 1/6 - 3 5/6"), made.merge).chapters[1].cues[-1]
    assert [one for one, _, _ in last.said] == list(check.cue.says)


def test_problems_that_the_film_does_not_show_are_left_out() -> None:
    """As where a line is too long for the board."""
    made, film = fitted(_night(STRIPS, "7 1/6 - 3 5/6"), Pace(), None)
    beside = told_beside(film, _night(TIRAS, "7 1/6 - 3 5/6", "9 5/8 - 4 6/8"), made.merge)
    assert [chapter.label for chapter in beside.chapters] == ["", "1", ""]
