"""A page is worked once, whoever asks: print, night and the page while it is typed."""

from collections import Counter
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

import pytest

from onewhole.desk.page.live_page import laid
from onewhole.desk.page.print_pages import print_pages
from onewhole.desk.tomorrow.night import night
from onewhole.desk.walkthrough.film import FilmWishes, told
from onewhole.number.quantity import Quantity
from onewhole.problems import worked as problem_worked
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets import worked as sheet_worked
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.working import questions
from onewhole.working.line import Line
from onewhole.working.strategies.same_units import Counted
from onewhole.working.strategy import Strategy

NOW = datetime(2026, 11, 24, 7, tzinfo=UTC)
#: Questions of every sort that is worked: no number of one is that of another.
TYPED = """title: Once
picture: strip

1. 9 5/8 - 4 6/8
2. 4 - 1 3/8
3. 7 2/6 - 3 5/6
4. 5 4/12 - 2 1/12
5. 2 4/5 + 1 3/5
6. 304 - 128
7. 5.2 - 2.7
8. 3/4 + 1/6
9. 5 ft 2 in - 2 ft 7 in
10. 1/2 + 1/4 + 3/8
11. 7 1/3 = 6 ?/3
12. 5/6 ? 7/8
"""
ANSWERS = """pupil,1,2,3,4,5,6,7,8,9,10,11,12
K01,5 1/8,2 5/8,4 3/6,,,,,,,,,
K02,4 7/8,3 3/8,3 3/6,,,,,,,,,
"""


class Count:
    """How often each question was worked to its end by each strategy, and each problem looked at."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        """Count every call from now on."""
        self.worked: Counter[tuple[object, str]] = Counter()
        self.others: dict[str, Counter[object]] = {}
        plain = questions._work

        def counting(asked: Counted, strategy: Strategy) -> tuple[tuple[Line, ...], Quantity]:
            found = plain(asked, strategy)
            self.worked[asked, strategy.key] += 1
            return found

        monkeypatch.setattr(questions, "_work", counting)
        for module, name in (
            (problem_worked, "as_taught"),
            (problem_worked, "needs"),
            (problem_worked, "shows"),
            (problem_worked, "traps"),
            (problem_worked, "answer"),
            (sheet_worked, "room"),
        ):
            monkeypatch.setattr(module, name, self._counting(name, getattr(module, name)))

    def _counting(self, name: str, plain: Callable[..., object]) -> Callable[..., object]:
        seen = self.others.setdefault(name, Counter())

        def counting(asked: object, *more: object) -> object:
            seen[asked.statement if isinstance(asked, WorkedProblem) else asked] += 1
            return plain(asked, *more)

        return counting

    def is_once(self) -> None:
        """Nothing was done twice, and everything was done."""
        assert max(self.worked.values()) == 1, self.worked.most_common(3)
        assert self.others["as_taught"].total() == 12
        assert self.others["room"].total() == 12
        assert all(max(seen.values(), default=1) == 1 for seen in self.others.values())


@pytest.fixture
def counted(monkeypatch: pytest.MonkeyPatch) -> Count:
    """Count all work from now on."""
    return Count(monkeypatch)


def test_print_works_each_problem_once(counted: Count, tmp_path: Path) -> None:
    """Pupil page, key, workings and page for home: one working a problem, and one more as its check."""
    print_pages(read_sheet(TYPED), tmp_path, when=NOW)
    counted.is_once()
    own = Counter(at for (at, _), _ in counted.worked.items())
    assert max(own.values()) == 2


def test_a_night_works_each_problem_once(counted: Count, tmp_path: Path) -> None:
    """The pages, the audit, the marks and the morning plan are handed the same workings.

    What tomorrow's practice works are new problems, each once for its page and its key.
    """
    (tmp_path / "sheet.txt").write_text(TYPED, encoding="utf-8")
    night(tmp_path, tmp_path / "out", when=NOW)
    counted.is_once()


@pytest.mark.more("desk/classes/test_marked_nights.py")
def test_marking_works_nothing_that_the_page_has_worked(counted: Count, tmp_path: Path) -> None:
    """With answers each problem of the sheet is still looked at once."""
    (tmp_path / "sheet.txt").write_text(TYPED, encoding="utf-8")
    (tmp_path / "answers.csv").write_text(ANSWERS, encoding="utf-8")
    night(tmp_path, tmp_path / "out", when=NOW)
    own = {problem.statement for problem in read_sheet(TYPED).problems}
    for name in ("as_taught", "needs", "shows", "traps", "answer"):
        assert {counted.others[name][one] for one in own} == {1}, name


def test_the_page_while_it_is_typed_works_each_problem_once(counted: Count) -> None:
    """The drawn page, its rooms and what is found in it."""
    assert laid(TYPED, NOW).pages
    counted.is_once()


def test_a_film_works_each_problem_once(counted: Count) -> None:
    """The script of a film is handed the workings of the page."""
    worked = WorkedSheet(read_sheet(TYPED))
    told(worked, FilmWishes())
    told(worked, FilmWishes())
    assert counted.others["as_taught"].total() == 12
