"""The script of a night: its chapters, how fully each is told, and what happens on the board."""

from collections import Counter
from fractions import Fraction

import pytest
from msgspec.structs import replace

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.reasons import reason_told
from onewhole.languages.english.words import words_for
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.sentences.speech import spoken, words_spoken
from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.pictures.caption import Count
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Box, Piece, Scene, Words
from onewhole.problems.answer import answer
from onewhole.problems.taught import as_taught
from onewhole.sentences.sentence import Sentences
from onewhole.statements.reading import read_statement
from onewhole.walkthroughs.cue import Chapter, Cue, Draw, Fresh, Role, Script, Strike, Write
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.walkthroughs.memory import MOST_OFTEN, MOST_WORDS, SHORT, cut
from onewhole.walkthroughs.opening import overview
from onewhole.walkthroughs.script import script
from onewhole.working.reason import Reason
from onewhole.working.reasons.regrouping import FullGroups, OneIsWorth, OpensOne
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from tests.kit.saying import written

WORDS = words_for("strip of kite paper", "regroup")
NIGHT = (
    "5 4/6 - 2 1/6",
    "6 7/8 - 3 2/8",
    "4 1/5 - 1 2/5",
    "6 1/4 - 3 2/4",
    "5 - 1 3/8",
    "7 1/6 - 3 5/6",
    "9 5/8 - 4 6/8",
    "8 3/8 - 4 5/8",
    "6 - 2 3/4",
    "2 4/5 + 1 3/5",
    "9 4/12 - 6 7/12",
    "9 7/12 - 4 9/12",
)


def item(typed: str, label: str = "1") -> Item:
    """A problem worked as Room 12 was taught."""
    statement = read_statement(typed)
    return Item(label, statement, answer(statement), as_taught(statement, REGROUP_FIRST))


def lesson(*items: Item) -> Lesson:
    """A night of Room 12."""
    return Lesson("Kite tails", "Tuesday, November 24", "Room 12", WORDS, items)


def room12() -> Lesson:
    """The twelve problems of the demonstration."""
    return lesson(*(item(typed, str(at)) for at, typed in enumerate(NIGHT, start=1)))


def sentences(part: Script | Chapter | Cue) -> Sentences:
    """Every sentence, in order."""
    if isinstance(part, Script):
        return tuple(said for chapter in part.chapters for said in sentences(chapter))
    if isinstance(part, Chapter):
        return tuple(said for cue in part.cues for said in cue.says)
    return part.says


def told(part: Script | Chapter | Cue) -> list[str]:
    """Every sentence as it is written, in order."""
    return written(sentences(part))


def roles(chapter: Chapter) -> list[Role]:
    """What each cue is there for."""
    return [cue.role for cue in chapter.cues]


def test_a_chapter_a_problem_between_opening_and_closing() -> None:
    """Labels and titles follow the page."""
    chapters = script(room12()).chapters
    assert [chapter.label for chapter in chapters] == ["", *(str(at) for at in range(1, 13)), ""]
    assert [chapter.title for chapter in chapters[:2]] == ["Tonight", "5 4/6 - 2 1/6"]


@pytest.mark.parametrize("merge", range(4))
def test_no_sentence_is_long_and_no_long_one_is_said_five_times(merge: int) -> None:
    """At most 20 spoken words; more than 5 words are said at most four times; nothing is left in digits."""
    said = sentences(script(room12(), merge=merge))
    assert max(map(words_spoken, said)) <= MOST_WORDS
    assert all(times <= MOST_OFTEN for one, times in Counter(said).items() if words_spoken(one) > SHORT)
    assert not any(sign.isdigit() for one in said for sign in spoken(one))


@pytest.mark.parametrize("merge", range(4))
def test_every_reason_is_given_the_first_time(merge: int) -> None:
    """However short, the first problem with a reason says it whole."""
    night = room12()
    chapters = script(night, merge=merge).chapters[1:-1]
    seen: set[type[Reason]] = set()
    words = ClassWords("strip", "strips", "regroup")
    for one, chapter in zip(night.items, chapters, strict=True):
        assert one.working is not None
        for line in one.working.lines:
            if line.because and type(line.because) not in seen:
                seen.add(type(line.because))
                assert set(cut(reason_told(line.because, words))) <= set(sentences(chapter))
    assert {OpensOne, OneIsWorth, FullGroups} <= seen


def test_more_merging_is_never_longer() -> None:
    """Each step of merging says fewer words."""
    words = [sum(map(words_spoken, sentences(script(room12(), merge=merge)))) for merge in range(4)]
    assert words == sorted(words, reverse=True)
    assert words[3] < words[0]


def test_later_problems_point_back_and_the_last_go_straight_through() -> None:
    """The first of a kind is full, two point back to it, the others are shorter still."""
    chapters = script(room12()).chapters
    assert not any("number 3" in one for one in told(chapters[3])[1:-1])
    assert any("number 3" in one for one in told(chapters[4]))
    assert any("number 3" in one for one in told(chapters[5]))
    assert roles(chapters[6])[:3] == [Role.PROBLEM, Role.LINE, Role.ANSWER]
    assert len(told(chapters[12])) < len(told(chapters[3]))


def test_the_same_lesson_gives_the_same_script() -> None:
    """Nothing is left to chance."""
    assert script(room12()) == script(room12())


def test_a_problem_begins_on_a_fresh_board_and_thinks_before_its_answer() -> None:
    """Fresh, then the problem with its label; two seconds before the last line; lines by their number."""
    (chapter,) = script(lesson(item("7 1/6 - 3 5/6", "6"))).chapters[1:-1]
    fresh, written = chapter.cues[0].acts
    assert fresh == Fresh()
    assert isinstance(written, Write)
    assert (written.name, written.label) == ("problem", "6")
    (found,) = (cue for cue in chapter.cues if cue.role is Role.ANSWER)
    assert found.think == Fraction(2)
    assert found.line == 5
    names = [act.name for cue in chapter.cues for act in cue.acts if isinstance(act, Write)]
    assert names[:6] == ["problem", *(f"line-{at}" for at in range(1, 6))]


def test_opening_a_whole_is_linked_to_opening_a_ten_once() -> None:
    """One cue in the whole film, and none where nothing is opened or a ten is."""
    assert sum(cue.role is Role.TENS for part in script(room12()).chapters for cue in part.cues) == 1
    for typed in ("5 4/6 - 2 1/6", "52 - 27"):
        assert Role.TENS not in roles(script(lesson(item(typed))).chapters[1])


def test_the_big_picture_is_counted() -> None:
    """Most, all, so many, or nothing: only what is so."""
    most = told(script(room12()).chapters[0].cues[1])
    assert most[0] == "In most of these there are not enough pieces, so regroup one strip."
    assert most[1] == "Look at the sign of number 10: there you add."
    hard, easy = item("7 1/6 - 3 5/6", "2"), item("5 4/6 - 2 1/6")
    assert told(script(lesson(easy, hard)).chapters[0].cues[1]) == [
        "In 1 of these there are not enough sixths, so regroup one strip."
    ]
    assert roles(script(lesson(easy, replace(easy, label="2"))).chapters[0]) == [Role.OPENING]


def test_equal_forms_are_named_and_not_demanded() -> None:
    """3 3/6 may stay."""
    (chapter,) = script(lesson(item("5 4/6 - 2 1/6"))).chapters[1:-1]
    (cue,) = (cue for cue in chapter.cues if cue.role is Role.FORMS)
    assert told(cue)[0] == "3 3/6 is the same amount as 3 1/2."
    assert told(cue)[-1] == "You may leave it as 3 3/6."


def test_the_form_that_was_asked_about_is_not_told_of_the_answer() -> None:
    """11/4 was given and 2 3/4 found: nobody says that, as one fraction, 2 3/4 is 11/4."""
    for problem, forms in (("11/4 = ?", 0), ("14/4 = ?", 1)):
        (chapter,) = script(lesson(item(problem))).chapters[1:-1]
        cues = [cue for cue in chapter.cues if cue.role is Role.FORMS]
        assert len(cues) == forms
        assert not any("one fraction" in sentence for cue in cues for sentence in told(cue))


def test_a_mistake_is_written_struck_out_and_mended() -> None:
    """The false line first, then the stroke and the truth."""
    problem = item("9 5/8 - 4 6/8")
    slip = by_id("A02").slip(problem.statement)
    assert slip is not None
    chapter = script(lesson(replace(problem, mistake=slip))).chapters[1]
    shown, mended = (cue for cue in chapter.cues if cue.role is Role.MISTAKE)
    assert [type(act) for act in (*shown.acts, *mended.acts)] == [Write, Strike]
    assert told(shown) == ["Someone may write 9 13/8 - 4 6/8."]
    assert told(mended)[0] == "But 9 5/8 is not equal to 9 13/8."
    assert told(mended)[-2:] == ["The right line is 8 13/8 - 4 6/8.", "9 5/8 - 4 6/8 = 4 7/8."]


def test_try_first_stops_after_the_problem() -> None:
    """Stop and try comes before any line."""
    chapter = script(lesson(replace(item("7 1/6 - 3 5/6"), try_first=True))).chapters[1]
    assert roles(chapter)[:2] == [Role.PROBLEM, Role.TRY]


def test_the_answer_is_left_to_the_family() -> None:
    """The film stops right before it, at the board as it is; a problem that is only answered stops too."""
    chapter = script(lesson(replace(item("7 1/6 - 3 5/6"), your_turn=True))).chapters[1]
    turn = next(at for at, role in enumerate(roles(chapter)) if role is Role.TURN)
    assert roles(chapter)[turn + 1] is Role.ANSWER
    assert roles(chapter).count(Role.TURN) == 1
    assert not chapter.cues[turn].acts
    answered = script(lesson(replace(item("3 x (1 + 2)"), working=None, your_turn=True))).chapters[1]
    assert roles(answered) == [Role.PROBLEM, Role.TURN, Role.ANSWER]


def test_a_turn_is_told_at_every_problem() -> None:
    """However often: who watches the last problem only hears it too."""
    asked = replace(item("7 1/6 - 3 5/6"), your_turn=True)
    night = lesson(*(replace(asked, label=str(at)) for at in range(1, 8)))
    turns = [cue for part in script(night).chapters for cue in part.cues if cue.role is Role.TURN]
    assert len(turns) == 7
    assert {tuple(told(cue)) for cue in turns} == {
        ("Now it is your turn.", "Stop here, and write the answer.")
    }


def test_a_story_is_told_and_a_problem_without_working_is_only_answered() -> None:
    """The words of the story come first; 1 + 2 ? 4 has its answer and no lines."""
    story = replace(item("7 1/6 - 3 5/6"), story="The club has 7 1/6 strips. It cuts off 3 5/6 strips.")
    assert told(script(lesson(story)).chapters[1].cues[0])[1:3] == [
        "The club has 7 1/6 strips.",
        "It cuts off 3 5/6 strips.",
    ]
    assert roles(script(lesson(item("1 + 2 ? 4"))).chapters[1]) == [Role.PROBLEM, Role.ANSWER]


@pytest.mark.parametrize(
    ("typed", "story", "heard"),
    [
        ("24 - 6", "Today 6 in the back row are away.", "Today six in the back row are away."),
        ("12 - 4", "She cuts 4 in half.", "She cuts four in half."),
        ("6 in - 2 in", "A tail is 6 in long.", "A tail is six inches long."),
    ],
)
def test_a_small_word_after_a_number_is_no_unit(typed: str, story: str, heard: str) -> None:
    """What a teacher typed is said as it was meant: "in" is inches only where a length stands."""
    first = script(lesson(replace(item(typed), story=story))).chapters[1].cues[0]
    assert heard in [spoken(said) for said in first.says]
    assert story in told(first)


def scene(name: str) -> Scene:
    """A scene with one box and a caption."""
    unit = Unit(Fraction(1, 6))
    box = Piece(name, Box(Fraction(0), Fraction(0), Fraction(9), Fraction(3)))
    return Scene(
        Fraction(90),
        Fraction(30),
        (box, Piece("words", Words(Fraction(1), Fraction(1), Count(1, unit), Fraction(4)))),
    )


def test_the_picture_is_drawn_when_it_changes() -> None:
    """The first scene with the problem, later ones only when they differ from the one that is shown."""
    problem = item("7 1/6 - 3 5/6")
    assert problem.working is not None
    one, two = scene("one"), scene("two")
    picture = Picture(PictureKind.STRIPS, (one, one, two, two, two, one))
    assert len(picture.scenes) == len(problem.working.lines)
    chapter = script(lesson(replace(problem, picture=picture))).chapters[1]
    drawn = [(cue.line, act.scene) for cue in chapter.cues for act in cue.acts if isinstance(act, Draw)]
    assert drawn == [(None, one), (2, two), (5, one)]


def test_the_check_goes_back_and_only_once() -> None:
    """One check in a night, of the first problem."""
    chapters = script(room12()).chapters
    checks = [cue for chapter in chapters for cue in chapter.cues if cue.role is Role.CHECK]
    assert [told(cue) for cue in checks] == [["Check it by going back: 3 3/6 + 2 1/6 = 5 4/6."]]


def test_wrong_use_is_refused() -> None:
    """Merging has four steps, and a night has a problem."""
    with pytest.raises(ValueError, match="merged by 0 to 3, not 4"):
        script(room12(), merge=4)
    with pytest.raises(ValueError, match="one problem at least"):
        script(lesson())


def test_a_form_of_the_right_amount_is_not_struck_out() -> None:
    """3 7/5 for 4 2/5 is said to be the same amount."""
    problem = item("2 4/5 + 1 3/5")
    slip = by_id("P10").slip(problem.statement)
    assert slip is not None
    assert slip.wrote == Quantity(mixed(5), (3, 7))
    chapter = script(lesson(replace(problem, mistake=slip))).chapters[1]
    (cue,) = (cue for cue in chapter.cues if cue.role is Role.MISTAKE)
    assert not any(isinstance(act, Strike) for act in cue.acts)
    assert "3 7/5 is the same amount as 4 2/5." in told(cue)


@pytest.mark.parametrize("date", ["11/25/2026", "2026-11-25", "25.11.2026"])
def test_a_date_in_digits_is_written_and_not_said_as_a_problem(date: str) -> None:
    """11/25 is no fraction: the board shows it, and nothing is said that could be heard as one."""
    opening = script(replace(room12(), date=date)).chapters[0]
    assert not any(date in sentence for sentence in told(opening))
    assert any(isinstance(act, Write) and act.content == date for cue in opening.cues for act in cue.acts)


def test_a_sum_of_three_numbers_is_counted_as_an_addition() -> None:
    """Of four sums, one with three numbers, and two differences: you add in 4."""
    sums = ("1/5 + 2/5", "1/8 + 2/8", "2/6 + 3/6", "1/8 + 2/8 + 3/8")
    taken = ("3/5 - 1/5", "5/8 - 2/8")
    items = tuple(item(typed, str(at)) for at, typed in enumerate((*sums, *taken), 1))
    assert "You add in 4 and take away in 2 of the problems." in written(overview(items, ClassWords()))
