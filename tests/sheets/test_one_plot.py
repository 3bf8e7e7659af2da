"""Questions of a page about line plots stand in twos to fours on one plot."""

from collections import Counter

from onewhole.desk.page.compose import compose
from onewhole.findings.wished_skill import WishedSkill
from onewhole.problems.difficulty import difficulty
from onewhole.sheets.arranging import Hard
from onewhole.sheets.learning import doubts, settles
from onewhole.sheets.one_plot import MOST_ON_ONE, beside_each_other, on_one_plot
from onewhole.sheets.shared_plots import shared_plots
from onewhole.sheets.wishes import Wishes
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.reading import read_statement

ASKED = tuple(
    read_statement(typed)
    for typed in (
        "plot 1/4: 2, 2/4: 3, 3/4 in: 1; total",
        "plot 1/8: 1, 2/8: 2, 3/8 in: 4; most",
        "9 - 4",
        "plot 1/8: 1, 2/8: 3, 3/8 in: 4; count above 1/8 in",
        "plot 1/8: 1, 2/8: 3, 3/8 in: 4; total",
        "plot 1/2: 1, 1 in: 3; spread",
    )
)


def test_a_question_is_asked_of_the_plot_before_it() -> None:
    """At the same place of it; not where it is asked there already, and not where plots differ in size."""
    found = on_one_plot(ASKED, ())
    first = read_statement("plot 1/4: 2, 2/4: 3, 3/4 in: 1; count above 1/4 in")
    assert found[3] == first
    plots = [one.plot for one in found if isinstance(one, PlotQuestion)]
    assert [one == plots[0] for one in plots] == [True, True, True, False, False]
    assert found[2] == ASKED[2]


def test_what_was_asked_before_is_not_asked_again() -> None:
    """A question that stood on an earlier page keeps its own plot."""
    gone = {"plot 1/4: 2, 2/4: 3, 3/4 in: 1; find the most common value"}
    assert on_one_plot(ASKED, (), gone)[1] == ASKED[1]


def test_a_composed_page_shares_its_plots() -> None:
    """As many questions as before, in twos to fours, each telling apart what it did."""
    wishes = Wishes(skill=WishedSkill.LINE_PLOTS, number=8)
    made = compose(wishes)
    labels = [shared.labels for _, shared in shared_plots(made.sheet.items)]
    plots = Counter(
        one.statement.plot for one in made.sheet.problems if isinstance(one.statement, PlotQuestion)
    )
    assert len(labels) == len(plots) < sum(plots.values()) == 8
    assert 2 <= max(plots.values()) <= MOST_ON_ONE
    settled = [settles(one.statement, doubts(wishes)) for one in made.sheet.problems]
    assert any(settled)


def test_questions_about_one_plot_stand_together() -> None:
    """Where the first of them stood; all else keeps its order."""
    order = [Hard(one, "", difficulty(one).score) for one in (*ASKED[3:5], ASKED[2], *ASKED[3:4])]
    assert [one.statement for one in beside_each_other(order)] == [
        ASKED[3],
        ASKED[4],
        ASKED[3],
        ASKED[2],
    ]
