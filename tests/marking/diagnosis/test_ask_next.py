"""Which problems to ask a pupil next."""

import pytest

from onewhole.findings.status import Status
from onewhole.marking.diagnosis.ask_next import TELLING, ask_next, candidates
from onewhole.marking.diagnosis.diagnosis import weigh
from onewhole.marking.diagnosis.finding import findings
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.asked import AskedAnswer, asked_problem, with_asked
from onewhole.problems.twins import twin_key
from onewhole.statements.reading import read_answer, read_statement
from tests.kit.answers import all_right, by_pattern, marked_against, page
from tests.kit.odds import PAGE, known, one, weighed

TRAPS = ("5 1/8 - 2 5/8", "7 1/4 - 3 3/4")


def _asked(cells: list[str], typed: tuple[str, ...]) -> list[str]:
    [found] = ask_next(weighed({"K01": cells}, typed), known(typed)[0])
    return [one.typed for one in found]


def test_what_is_asked_tells_apart_what_stayed_alike() -> None:
    """After two traps A01 and A02 are left: asked again with the answer of either, that one is settled."""
    asked = _asked(["3 4/8", "4 2/4"], TRAPS)
    assert 1 <= len(asked) <= 2
    for key in ("A01", "A02"):
        [answer] = by_pattern(key, page((asked[0],)))
        found = one(["3 4/8", "4 2/4", answer], (*TRAPS, asked[0]))
        assert (found.alike, found.confident) == (((key,),), True)


def test_nothing_is_asked_where_nothing_is_open() -> None:
    """A clear pattern, all right, and nothing written."""
    rows = {"K01": by_pattern("A01", PAGE), "K02": all_right(PAGE), "K03": [""] * 12}
    assert ask_next(weighed(rows), known()[0]) == ((), (), ())


def test_nothing_is_asked_where_no_problem_would_tell() -> None:
    """A12 and A26 write the same on every problem there is."""
    assert ask_next(weighed({"K01": by_pattern("A12", PAGE)}), known()[0]) == ((),)
    assert one(by_pattern("A12", PAGE)).alike == (("A12",), ("A26",))


def test_each_pupil_is_asked_for_what_is_open_there() -> None:
    """In the order of the class; pupils who are settled are asked nothing, whoever else is asked."""
    typed = ("9 5/8 - 4 6/8", "5 1/8 - 2 5/8", "7 1/4 - 3 3/4")
    rows = {"K01": ["4 7/8", "2 4/8", "3 2/4"], "K02": ["", "3 4/8", "4 2/4"]}
    first, second = ask_next(weighed(rows, typed), known(typed)[0])
    assert first == ()
    assert second != ()


def test_candidates_are_no_twins_of_the_page_nor_of_each_other() -> None:
    """Each is a new problem, of the page's kinds or with its pieces."""
    found = candidates(known()[0])
    keys = [twin_key(each.problem.statement) for each in found]
    before = {twin_key(problem.statement) for problem in PAGE}
    assert len(set(keys)) == len(keys)
    assert before.isdisjoint(keys)
    assert 8 <= len(found) <= 30


@pytest.mark.parametrize("typed", TELLING)
def test_the_telling_problems_are_read(typed: str) -> None:
    """Each is a problem that shows more than one pattern, with answers that can be read."""
    asked = known((typed,))[0][0]
    assert len(asked.shows) > 10
    assert read_answer("5") is not None
    assert read_statement(typed) == asked.problem.statement


def test_after_sums_nothing_telling_about_differences_is_asked() -> None:
    """The pieces of a sum call for no difference."""
    found = candidates(known(("3/8 + 2/8", "2 4/5 + 1 3/5"))[0])
    assert found
    assert all("+" in each.problem.typed for each in found)


def test_high_odds_with_one_exact_fit_are_not_settled() -> None:
    """Asked is what shows the same patterns once more; with that answer they are likely."""
    typed = ("9 5/8 - 4 6/8", "8 1/6 - 3 5/6", "6 1/4 - 3 2/4")
    rows = {f"K{at:02}": by_pattern("A01", page(typed)) for at in range(1, 12)} | {"K12": ["5 1/8", "", ""]}
    marks = marked_against(known(typed)[0], rows)
    seen = weigh(marks)
    found = findings(marks, seen.diagnoses)
    assert (seen.diagnoses[-1].confident, found[-1].status) == (True, Status.POSSIBLE)
    assert ask_next(seen, marks.expected) == ((),) * 12
    *others, asked = ask_next(seen, marks.expected, findings=found)
    assert set(others) == {()}
    again = asked_problem(asked[0].typed)
    (wrote,) = by_pattern("A01", (again,))
    told = with_asked(marks, [AskedAnswer("K12", again, read_written(wrote))])
    after = weigh(told)
    assert findings(told, after.diagnoses)[-1].status is Status.LIKELY
    assert ask_next(after, marks.expected, findings=findings(told, after.diagnoses))[-1] == ()


def test_only_those_named_are_worked_out() -> None:
    """The others are asked nothing, and the one who is named is asked the same as among all."""
    typed = ("5 1/8 - 2 5/8", "7 1/4 - 3 3/4")
    seen = weighed({"K01": ["3 4/8", "4 2/4"], "K02": ["3 4/8", "4 2/4"]}, typed)
    every = ask_next(seen, known(typed)[0])
    assert ask_next(seen, known(typed)[0], {"K02"}) == ((), every[1])
    assert every[1]
