"""Choices for single problems: taken where they suit, and said where they do not."""

import pytest

from onewhole.desk.walkthrough.board import on_offer
from onewhole.desk.walkthrough.film_options import FilmChoice
from onewhole.desk.walkthrough.film_plan import FilmPlan
from onewhole.desk.walkthrough.lesson import lesson, refused
from onewhole.errors import InputError
from onewhole.notations.sentences.text import text_of
from onewhole.pictures.picture import PictureKind
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.walkthroughs.cue import Role
from onewhole.walkthroughs.script import script

SHEET = read_sheet("1. 7 2/6 - 3 5/6\n2. 5 1/8 - 2 5/8\n3. 3.45 - 1.27\n4. 1 + 2 ? 4\n5. 2 4/5 + 1 3/5\n")


def test_a_strategy_and_a_picture_for_one_problem() -> None:
    """Problem 2 is worked and drawn as chosen, the others as before."""
    plain = lesson(WorkedSheet(SHEET)).items
    items = lesson(WorkedSheet(SHEET), choices={"2": FilmChoice("count_up", "number line")}).items
    assert items[1].working is not None
    assert items[1].working.strategy == "count_up"
    assert items[1].picture is not None
    assert items[1].picture.kind is PictureKind.LINE
    assert [items[at] for at in (0, 2, 3, 4)] == [plain[at] for at in (0, 2, 3, 4)]


def test_no_choice_is_as_before() -> None:
    """An empty choice changes nothing of the lesson."""
    assert lesson(WorkedSheet(SHEET), choices={"1": FilmChoice(), "3": FilmChoice()}) == lesson(
        WorkedSheet(SHEET)
    )


def test_no_picture_can_be_chosen() -> None:
    """A problem without a picture has none on the board."""
    item = lesson(WorkedSheet(SHEET), choices={"1": FilmChoice(picture="none")}).items[0]
    assert item.picture is None
    assert item.working is not None


def test_what_does_not_suit_gives_way_and_is_said() -> None:
    """A strategy for sums in a difference, and strips of hundredths: what suits is taken, and said."""
    choices = {"1": FilmChoice("make_a_whole"), "3": FilmChoice(picture="strips")}
    items = lesson(WorkedSheet(SHEET), choices=choices).items
    assert items[0].working is not None
    assert items[0].working.strategy == "regroup_first"
    assert items[2].picture is not None
    assert items[2].picture.kind is PictureKind.COLUMNS
    first, second = refused(WorkedSheet(SHEET), choices=choices)
    assert first.startswith("Problem 1: “Make a whole” does not suit it")
    assert first.endswith("It is worked by “Regroup one whole first”.")
    assert second.startswith("Problem 3: ")
    assert second.endswith("The columns are shown.")


def lines_told(choices: dict[str, FilmChoice]) -> list[int]:
    """How many cues of each chapter tell lines."""
    chapters = script(lesson(WorkedSheet(SHEET), choices=choices)).chapters
    return [sum(cue.role is Role.LINE for cue in chapter.cues) for chapter in chapters]


def test_a_problem_told_short_or_in_full() -> None:
    """Short goes straight through; in full tells line by line what would else point back to the first."""
    plain = lines_told({})
    short = lines_told({"1": FilmChoice(length="short")})
    full = lines_told({"2": FilmChoice(length="in full")})
    assert short[1] < plain[1]
    assert full[2] >= plain[2]
    assert full[1] == plain[1]


def test_a_problem_told_short_leaves_its_reasons_to_the_next() -> None:
    """When the first is told short, the second of its kind is told as the first would have been."""
    sheet = read_sheet("1. 7 2/6 - 3 5/6\n2. 5 1/6 - 2 5/6\n")
    chapters = script(lesson(WorkedSheet(sheet), choices={"1": FilmChoice(length="short")})).chapters
    said = text_of(sentence for cue in chapters[2].cues for sentence in cue.says)
    assert "number 1" not in said
    assert len(chapters[2].cues) > len(chapters[1].cues)


def test_what_is_on_offer_can_be_chosen() -> None:
    """Every strategy and picture that is offered is taken without a note."""
    tried = 0
    for one in on_offer(SHEET, FilmPlan()):
        for strategy, _ in one.strategies:
            assert refused(WorkedSheet(SHEET), choices={one.label: FilmChoice(strategy)}) == ()
            tried += 1
        for kind, _ in one.pictures:
            assert refused(WorkedSheet(SHEET), choices={one.label: FilmChoice(picture=kind)}) == ()
            tried += 1
    assert tried > 30


def test_what_is_only_answered_has_no_choices() -> None:
    """1 + 2 ? 4 is not worked line by line."""
    asked = on_offer(SHEET, FilmPlan())[3]
    assert (asked.title, asked.strategies, asked.pictures, asked.lengths) == ("1 + 2 ? 4", (), (), ())


def test_a_choice_for_no_problem() -> None:
    """A label that the sheet does not have is refused with those it has."""
    with pytest.raises(InputError, match="no problem 9") as no:
        lesson(WorkedSheet(SHEET), choices={"9": FilmChoice()})
    assert "1, 2, 3, 4, 5" in (no.value.remedy or "")
