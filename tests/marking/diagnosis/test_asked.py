"""What a pupil was asked, weighed beside the page."""

from fractions import Fraction

import pytest

from onewhole.findings.status import Status
from onewhole.marking.diagnosis.ask_next import ask_next
from onewhole.marking.diagnosis.asked import WORDS, talk, word_chances
from onewhole.marking.diagnosis.chances import MILLION
from onewhole.marking.diagnosis.diagnosis import Weighed, weigh
from onewhole.marking.diagnosis.finding import Finding, findings
from onewhole.marking.diagnosis.report import report
from onewhole.marking.diagnosis.tables import all_likelihoods, replies, tables
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.asked import AskedAnswer, asked_problem, with_asked
from onewhole.marking.reading.mark import ClassMarks
from onewhole.marking.reading.talk_word import TalkSaid, TalkWord
from onewhole.problems.twins import twin_key
from tests.kit.answers import by_pattern, marked_against, page
from tests.kit.odds import known

TRAPS = ("5 1/8 - 2 5/8", "7 1/4 - 3 3/4")
TOLD = "9 3/5 - 5 4/5"


def _marks(cells: list[str], asked: dict[str, str], word: TalkWord | None = None) -> ClassMarks:
    rows = [AskedAnswer("K01", asked_problem(one), read_written(wrote)) for one, wrote in asked.items()]
    if word:
        rows.append(AskedAnswer("K01", None, None, word))
    return with_asked(marked_against(known(TRAPS)[0], {"K01": cells}), rows)


def _weighed(
    cells: list[str], asked: dict[str, str], word: TalkWord | None = None
) -> tuple[ClassMarks, Weighed, Finding]:
    marks = _marks(cells, asked, word)
    seen = weigh(marks)
    return marks, seen, findings(marks, seen.diagnoses)[0]


def _wrote(pattern: str, problem: str) -> str:
    return by_pattern(pattern, page((problem,)))[0]


@pytest.mark.parametrize(
    "wrote", ["4 1/5", "3 4/5", "3 3/5", "77", "19/5", "9 3/5 - 5 4/5 = 8 8/5 - 5 4/5 = 3 4/5"]
)
def test_an_asked_answer_weighs_as_it_would_on_the_page(wrote: str) -> None:
    """Two roads: the page and the talk as here, and a page that has the problem itself."""
    cells = ["3 4/8", "4 2/4"]
    marks = _marks(cells, {TOLD: wrote})
    longer = (*TRAPS, TOLD)
    on_page = marked_against(known(longer)[0], {"K01": [*cells, wrote]})
    of_page = tables(on_page.expected, {2})
    [whole] = all_likelihoods(of_page, [replies(on_page, on_page.pupils[0])])
    wanted = dict(zip(of_page.hypotheses, whole, strict=True))
    short = tables(marks.expected)
    said = talk(short, marks.pupils[0])
    assert said is not None
    found = said.likelihoods(short, replies(marks, marks.pupils[0]))
    assert dict(zip(short.hypotheses, found, strict=True)).items() <= wanted.items()


def test_what_two_traps_leave_open_the_answer_settles() -> None:
    """A01 and A02 write alike on both; the odds before and after say what the answer changed."""
    cells = ["3 4/8", "4 2/4"]
    for key, other in (("A01", "A02"), ("A02", "A01")):
        marks, seen, found = _weighed(cells, {TOLD: _wrote(key, TOLD)})
        assert (found.status, found.patterns) == (Status.LIKELY, (key,))
        before = seen.before["K01"].diagnosis
        assert before.alike == (("A01",), ("A02",))
        told = report(marks, seen, found).talk
        assert told is not None
        moved = {one.patterns: (one.before, one.after) for one in told.moved}
        assert moved[(other,)][0] > Fraction(1, 4) > moved[(other,)][1] * 10
        assert moved[(key,)][0] < Fraction(3, 4) < moved[(key,)][1]
        for named in ((key,), (other,)):
            listed = {one.patterns: one.probability for one in before.odds}[named]
            assert 0 <= moved[named][0] - listed < Fraction(1, 20), "two roads to the same odds"
        assert all(0 < odds < 1 for one in moved.values() for odds in one), "never certain"


def test_one_fit_on_the_page_and_one_in_the_talk_are_two() -> None:
    """Alone the page has too little; two answers of the talk without any on the page name nothing."""
    cells = ["", "4 2/4"]
    assert _weighed(cells, {})[2].status is Status.POSSIBLE
    asked = {one: _wrote("A01", one) for one in (TOLD, "9 1/3 - 3 2/3")}
    assert _weighed(cells, asked)[2].status is Status.LIKELY
    assert _weighed(["", ""], asked)[2].status is not Status.LIKELY


def test_the_same_problem_asked_again_is_no_second_fit() -> None:
    """A child who repeats an answer shows no more than before, however high the odds."""
    _, seen, found = _weighed(["", "4 2/4"], {TRAPS[1]: "4 2/4"})
    assert seen.diagnoses[0].speaking(seen.diagnoses[0].asked[0].speaks) == 2
    assert found.status is Status.POSSIBLE


def test_right_answers_in_a_talk_speak_against() -> None:
    """The odds of no steady pattern rise, and what was likely is so no more."""
    cells = ["3 4/8", "4 2/4"]
    asked = {TOLD: "3 4/5", "9 1/3 - 3 2/3": "5 2/3", "8 2/8 - 6 3/8": "1 7/8"}
    _, seen, found = _weighed(cells, asked)
    assert found.status is not Status.LIKELY
    none = {one.patterns: one.probability for one in seen.diagnoses[0].odds}
    before = {one.patterns: one.probability for one in seen.before["K01"].diagnosis.odds}
    assert none[()] > 10 * before[()]


@pytest.mark.parametrize("said", TalkSaid)
def test_a_word_moves_the_odds_its_way_and_is_never_certain(said: TalkSaid) -> None:
    """Against what the page shows it moves them, and leaves the other side a share."""
    _, seen, _ = _weighed(["", "4 2/4"], {}, TalkWord(said, ("A01", "A02")))
    before, after = seen.before["K01"].diagnosis, seen.diagnoses[0]
    none = [next(one.probability for one in found.odds if not one.patterns) for found in (before, after)]
    this = [found.together for found in (before, after)]
    if said is TalkSaid.SLIP:
        assert none[1] > none[0]
    elif said is TalkSaid.THIS:
        assert this[1] > this[0]
    assert 0 < this[1] < 1
    assert 0 < none[1] < 1


def test_the_words_are_shares_of_a_million() -> None:
    """Each row adds up; the right word is the likeliest, and any may be mistaken."""
    for held, row in WORDS.items():
        assert sum(row.values()) == MILLION, held
        assert all(0 < one < 800_000 for one in row.values()), held
    hypotheses = known(TRAPS)[1].hypotheses
    for said in TalkSaid:
        assert min(word_chances(hypotheses, TalkWord(said, ("A01",)))) > 0


def test_pupils_without_a_talk_are_weighed_as_before() -> None:
    """Beside one who was asked, too: only what the class shows reaches them."""
    rows = {"K01": ["3 4/8", "4 2/4"], "K02": ["3 4/8", "4 2/4"], "K03": ["2 4/8", "3 2/4"]}
    plain = marked_against(known(TRAPS)[0], rows)
    asked = with_asked(plain, [AskedAnswer("K01", asked_problem(TOLD), read_written("4 1/5"))])
    with_talk, without = weigh(asked), weigh(plain)
    assert with_talk.replies == without.replies
    assert set(with_talk.talks) == set(with_talk.before) == {"K01"}
    assert not without.talks
    odds = [
        {one.patterns: one.probability for one in each.diagnoses[1].odds} for each in (with_talk, without)
    ]
    second = [each["A01",] for each in odds]
    assert second[0] > second[1], "what one child holds is likelier for the next"


def test_what_was_asked_is_not_asked_again() -> None:
    """Neither the problem nor a twin of it."""
    cells = ["3 4/8", "4 2/4"]
    ([first, *_],) = ask_next(_weighed(cells, {})[1], known(TRAPS)[0])
    typed = asked_problem("8 5/8 - 5 6/8")
    assert twin_key(typed.statement) == twin_key(first.statement)
    again = ask_next(_weighed(cells, {typed.typed: "-"})[1], known(TRAPS)[0])[0]
    assert again
    assert twin_key(first.statement) not in {twin_key(one.statement) for one in again}
