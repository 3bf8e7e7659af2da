"""Another operation chosen in a story, by a second road: plain fractions, and the words themselves.

What a word suggests is read from the words of every story that is told, here by looking for it in English.
That "more" suggests adding, "less" and "uses" taking away and "times" multiplying: Lewis & Mayer (1987), from
memory.
"""

from collections.abc import Iterator
from fractions import Fraction

import pytest

from onewhole.errors import OnewholeError
from onewhole.languages.class_words import ClassWords
from onewhole.languages.table import LANGUAGES
from onewhole.misconceptions.catalogue import shows
from onewhole.misconceptions.telling import PLAIN_STORY, Doing, ToldAs
from onewhole.number.quantity import Quantity
from onewhole.problems.story_asks import NoStoryError
from onewhole.problems.story_structure import Structure
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.stories import Story, known_telling, story
from onewhole.statements.expression import WithRemainder, value
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import meaning
from tests.kit.how_much import sample

TYPED = [
    "52 - 27",
    "52 + 27",
    "? - 6 = 20",
    "6 + ? = 20",
    "? + 6 = 20",
    "20 - ? = 6",
    "4 x 12",
    "3/4 x 8",
    "87 / 4",
    "84 / 4",
    "3 / 4",
    "7 2/6 - 3 5/6",
    "1 1/2 + 2 3/4",
    "$4.50 - $1.25",
    "5 ft 2 in - 2 ft 7 in",
    "5 ft 2 in + 2 ft 7 in",
    "24 in / 4",
    "3 x 5 in",
    "2 lb 3 oz - 1 lb 5 oz",
    "7 - 3 - 2",
    "9 - 2 x 3/4",
    "3 x 12 - 20",
    "(4 + 8) / 3",
    "1 h 20 min - 45 min",
    "1/2 gal + 3/4 gal",
    "3 x $1.25",
    "9:45 to 11:20",
    "$10 / 4",
]
#: A word that suggests something, as it stands in the stories of the kite club.
SUGGESTING = {
    Doing.ADDING: (" more", " gets ", " adds ", " pours ", " grows", " in all", " joins", " puts ", " saves"),
    Doing.TAKING: (
        " less",
        " uses ",
        " tears ",
        " takes",
        " cuts ",
        " drinks ",
        " spends ",
        " off ",
        " still ",
    ),
    Doing.MULTIPLYING: (" times as ", " as many ", " times "),
}
WORKED = {
    Doing.ADDING: lambda one, other: one + other,
    Doing.TAKING: lambda one, other: abs(one - other),
    Doing.MULTIPLYING: lambda one, other: one * other,
    Doing.DIVIDING: lambda one, other: max(one, other) / min(one, other),
}


def told(typed: str, words: ClassWords | None = None) -> Iterator[Story]:
    """Every way to tell a problem."""
    statement, seen = read_statement(typed), set()
    for seed in range(40):
        found = story(statement, seed=seed, words=words)
        if found.words in seen:
            return
        seen.add(found.words)
        yield found


def written(found: Story) -> dict[str, Fraction]:
    """What each pattern of stories writes, as an amount."""
    slips = shows(found.statement, found.telling)
    return {
        slip.pattern: value(slip.wrote) if isinstance(slip.wrote, WithRemainder) else slip.wrote.value
        for slip in slips
        if slip.pattern.startswith("T") and isinstance(slip.wrote, Quantity | WithRemainder)
    }


@pytest.mark.parametrize("typed", TYPED[:: sample(9, 1)])
def test_a_word_that_suggests_stands_in_the_story(typed: str) -> None:
    """And a story that compares has two things in it; others name none that misleads."""
    for found in told(typed):
        suggests = found.telling.suggests
        assert suggests is None or any(word in found.words for word in SUGGESTING[suggests]), found.words
        if found.telling.compares:
            assert any(word in found.words for word in ("more", "less", "times", "longer", "heavier")), (
                found.words
            )


@pytest.mark.parametrize("typed", ["81 - 36", "45 + 38", "6 x 12", "84 / 4", "? - 16 = 48", "16 + ? = 48"])
def test_what_is_written_is_what_plain_fractions_give(typed: str) -> None:
    """By a word, the other way round, and everything added."""
    digits = [Fraction(one) for one in typed.replace("?", " ").split() if one.isdigit()]
    for found in told(typed):
        right = meaning(found.statement)
        wanted = {"T02": sum(digits, Fraction(0))}
        if found.telling.suggests:
            wanted["T01"] = WORKED[found.telling.suggests](*digits)
        if found.telling.compares:
            taken, times = " - " in typed, " x " in typed
            back = Doing.ADDING if taken else Doing.DIVIDING if times else None
            back = back or (Doing.TAKING if " + " in typed else Doing.MULTIPLYING)
            wanted["T03"] = WORKED[back](*digits)
        assert written(found) == {key: amount for key, amount in wanted.items() if amount != right}, (
            found.words
        )


@pytest.mark.parametrize("language", [one for one in LANGUAGES.values() if one.stories.frames(None)][:2])
def test_a_story_is_known_again_on_a_sheet(language: object) -> None:
    """By its words, in every language, for a kite club and for a class that says of whom its stories tell."""
    tag = language.tag  # type: ignore[attr-defined]
    for typed in TYPED[:: sample(5, 1)]:
        words = (
            ClassWords(language=tag)
            if tag == "en-US"
            else ClassWords("tira", "tiras", "abre", tag, feminine=True)
        )
        try:
            every = list(told(typed, words))
        except NoStoryError:
            continue
        for found in every:
            known = known_telling(found.statement, found.words, found.whole)
            assert (known or PLAIN_STORY) == found.telling, found.words
            assert (found.problem("1").told or PLAIN_STORY) == found.telling


def test_words_of_a_teacher_are_a_story_of_which_nothing_is_known() -> None:
    """So only what does not hang on a word is supposed there."""
    sheet = read_sheet("1. 12 - 3 | Ana has 12 kites. She has 3 more than Ben. How many has Ben?\n2. 12 - 5")
    first, second = sheet.problems
    assert (first.told, second.told) == (ToldAs(), None)
    assert [slip.pattern for slip in shows(first.statement, first.told) if slip.pattern[0] == "T"] == ["T02"]


def test_a_turned_story_on_a_sheet_shows_by_what_it_misleads() -> None:
    """It is read back as it was told, under the header that names what it counts."""
    found = story(read_statement("81 - 36"), structure=Structure.TURNED)
    typed = f"whole: {found.whole.whole}\n\n1. 81 - 36 | {found.words}"
    (problem,) = read_sheet(typed).problems
    assert problem.told == ToldAs(Doing.ADDING, compares=True)
    assert problem == found.problem("1")


def test_no_story_makes_a_pattern_stumble() -> None:
    """Whatever is told; what is written is never the right answer."""
    for typed in TYPED[:: sample(3, 1)]:
        for found in told(typed):
            for telling in (ToldAs(doing, compares=one) for doing in Doing for one in (True, False)):
                try:
                    slips = shows(found.statement, telling)
                except OnewholeError as error:
                    pytest.fail(f"{typed} as {telling}: {error}")
                assert all(slip.form or slip.false_at for slip in slips)
            break
