"""Word problems of the kite club and of other classes: examples and refusals."""

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.stories import KITE_PAPER
from onewhole.languages.english.words import words_for
from onewhole.misconceptions.telling import PLAIN_STORY
from onewhole.problems.story_asks import NoStoryError
from onewhole.problems.story_structure import Structure
from onewhole.sentences.typed import typed_sentences
from onewhole.sheets.labelled import labelled
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.stories import Story, UnknownStructureError, story, structure_named
from onewhole.sheets.writing import write_sheet
from onewhole.statements.reading import read_statement

ASKED = read_statement("5 1/3 - 2 2/3")


@pytest.mark.parametrize(
    ("typed", "structure", "words"),
    [
        (
            "5 1/3 - 2 2/3",
            Structure.TAKE_FROM,
            (
                "All the strips are the same size. "
                "The kite club has 5 1/3 strips. It uses 2 2/3 strips for a kite. "
                "How many strips are left?"
            ),
        ),
        (
            "1 - 5/6",
            Structure.COMPARE,
            (
                "All the strips are the same size. "
                "The red kite takes 1 strip. The blue kite takes 5/6 of a strip. "
                "How many more strips does the red kite take?"
            ),
        ),
        (
            "5/6 - 1/6",
            Structure.PART_UNKNOWN,
            (
                "All the strips are the same size. "
                "A kite needs 5/6 of a strip. The kite club has 1/6 of a strip. "
                "How much more of a strip does it need?"
            ),
        ),
        (
            "2 1/6 + 1",
            Structure.PUT_TOGETHER,
            (
                "All the strips are the same size. "
                "The kite club has 2 1/6 strips for kites and 1 strip for tails. "
                "How many strips does it have in all?"
            ),
        ),
        (
            "5 ft 1 in - 1 ft 7 in",
            Structure.TAKE_FROM,
            (
                "A kite string is 5 feet 1 inch long. The kite club cuts off 1 foot 7 inches. "
                "How long is the string now?"
            ),
        ),
        (
            "4 x 2/3",
            Structure.EQUAL_GROUPS,
            (
                "All the strips are the same size. The kite club makes 4 kites. "
                "Each kite takes 2/3 of a strip. How many strips does it use in all?"
            ),
        ),
        (
            "24 x 36",
            Structure.AREA,
            ("The kite club cuts a sheet of paper into 24 rows of 36 squares. How many squares does it cut?"),
        ),
        (
            "1/2 x 3/4",
            Structure.AREA,
            (
                "All the strips are the same size. The kite club cuts a piece out of a strip. "
                "The piece is 1/2 as wide and 3/4 as long as the strip. "
                "How much of a strip is the piece?"
            ),
        ),
        (
            "order 2 ft, 1 ft 8 in, 22 in",
            Structure.COMPARE,
            (
                "The red tail is 2 feet long. The blue tail is 1 foot 8 inches long. "
                "The green tail is 22 inches long. "
                "What is the order of the lengths from least to greatest?"
            ),
        ),
        (
            "round 2 5/8 to the nearest whole number",
            Structure.ABOUT,
            (
                "All the strips are the same size. The kite club has 2 5/8 strips. "
                "About how many strips is that, to the nearest whole strip?"
            ),
        ),
        (
            "26 in = ?",
            Structure.SAME_AMOUNT,
            "A kite string is 26 inches long. How many feet and inches is that?",
        ),
        (
            "11/4 as a mixed number",
            Structure.SAME_AMOUNT,
            (
                "All the strips are the same size. The kite club uses 11/4 strips for a kite. "
                "How many strips is that as a mixed number?"
            ),
        ),
        (
            "9:50 a.m. to 2:15 p.m.",
            Structure.ELAPSED_TIME,
            (
                "At 9:50 a.m., the kite club starts to fly kites. At 2:15 p.m., it stops. "
                "How long does it fly kites?"
            ),
        ),
        (
            "2 + ? + 3 = 9",
            Structure.PART_UNKNOWN,
            (
                "The kite club uses 2 strips for a kite and 3 strips for a tail. The rest is for bows. "
                "It uses 9 strips in all. How many strips does it use for bows?"
            ),
        ),
        (
            "7 2/6 = 6 ?/6",
            Structure.SAME_AMOUNT,
            (
                "All the strips are the same size. "
                "A kite takes 7 2/6 strips. The tail maker lays out the same amount "
                "as 6 whole strips and some sixths. How many sixths are there?"
            ),
        ),
    ],
)
def test_examples(typed: str, structure: Structure, words: str) -> None:
    """Units, plurals, parts of a strip and measures, letter for letter."""
    told = story(read_statement(typed), structure=structure, words=words_for("strip"))
    assert told.words == words
    assert told.structure is structure


def test_seeds_go_through_the_structures_in_turn() -> None:
    """The first five seeds of a difference tell it in five ways; far on they begin again."""
    kinds = [story(ASKED, seed=seed).structure for seed in range(8)]
    first = [Structure.TAKE_FROM, Structure.COMPARE, Structure.PART_UNKNOWN]
    assert kinds == [*first, Structure.SMALLER_UNKNOWN, Structure.TURNED, *first]
    assert story(ASKED, seed=0) == story(ASKED, seed=8) != story(ASKED, seed=5)
    only = {story(ASKED, structure=Structure.COMPARE, seed=seed).structure for seed in range(5)}
    assert only == {Structure.COMPARE}


@pytest.mark.parametrize("words", [None, ClassWords(), ClassWords("whole", "wholes", "trade")])
def test_a_class_that_only_says_whole_counts_kite_paper(words: ClassWords | None) -> None:
    """A story needs a thing that can be cut."""
    told = story(ASKED, words=words)
    assert (told.whole.whole, told.whole.wholes) == (KITE_PAPER.whole, KITE_PAPER.wholes)
    assert "The kite club has" in told.words


@pytest.mark.parametrize(
    ("typed", "structure", "remedy"),
    [
        (
            "5 - 2",
            Structure.PUT_TOGETHER,
            "It can be told as: take from, compare, part unknown, smaller unknown, turned wording.",
        ),
        ("5 ? 2", Structure.TAKE_FROM, "It can be told as: compare."),
    ],
)
def test_a_structure_that_a_statement_has_not(typed: str, structure: Structure, remedy: str) -> None:
    """It is refused with those that it has."""
    with pytest.raises(NoStoryError) as refused:
        story(read_statement(typed), structure=structure)
    assert refused.value.remedy == remedy


def test_words_must_tell_the_numbers() -> None:
    """A story whose words hold other numbers cannot be built."""
    words = "The red kite takes 5 strips. How many are left?"
    with pytest.raises(NoStoryError, match="do not tell the numbers"):
        Story(ASKED, Structure.COMPARE, typed_sentences(words, "en-US"), KITE_PAPER)


@pytest.mark.parametrize(
    ("whole", "stories", "words"),
    [
        ("trail mile", "the trail club walks", "The trail club has 5 1/3 trail miles. It walks 2 2/3 trail"),
        ("cup of rice", "", "The class has 5 1/3 cups. It uses 2 2/3 cups."),
        ("strip", "our team cuts", "Our team has 5 1/3 strips. It cuts 2 2/3 strips."),
    ],
)
def test_a_class_names_its_own_things(whole: str, stories: str, words: str) -> None:
    """Its stories tell of them, and of no kites, on a page that is composed too."""
    typed = f"whole: {whole}\n" + (f"stories: {stories}\n" if stories else "")
    sheet = read_sheet(f"{typed}\n1. 5 1/3 - 2 2/3")
    told = story(ASKED, words=sheet.header.words).words
    assert words in told
    assert "kite" not in told
    assert read_sheet(write_sheet(sheet)) == sheet
    _, (problem,) = labelled(sheet.header, {ASKED: PLAIN_STORY}, seed=-1)
    assert problem.story == told


@pytest.mark.parametrize("said", ["take from", "Take-From", "TAKE_FROM", "  take  from "])
def test_a_structure_by_its_name(said: str) -> None:
    """Capitals, hyphens and blanks do not matter."""
    assert structure_named(said) is Structure.TAKE_FROM


def test_an_unknown_structure() -> None:
    """It is refused with the names there are."""
    with pytest.raises(UnknownStructureError) as refused:
        structure_named("start unknown")
    assert refused.value.remedy == (
        "Use one of: take from, add to, put together, compare, smaller unknown, turned wording, "
        "part unknown, same amount, equal groups, times as much, area, part of, sharing, measuring out, "
        "how many times, several steps, about how much, elapsed time, line plot."
    )
