"""A cell is judged by sign and word while it is typed."""

from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import sheet_typed
from onewhole.desk.marking.predicted import MOST, predicted
from onewhole.desk.marking.verdicts import SIGNS, judged, usual_right
from onewhole.errors import InputError
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.expected import expect
from onewhole.marking.reading.mark import Verdict, mark
from tests.kit.marking_book import SHEET, book_with_night

TEXTS = (
    "4 7/8",
    "39/8",
    "5 1/8",
    "5 7/8",
    "",
    "-",
    "smudge",
    "3 3/0",
    "-4 7/8",
    "-1/-2",
    "3-Mar",
    "4 7/8 = 39/8",
    "<",
    "2 ft 7 in",
)


def test_every_cell_is_judged_as_a_class_would_be_marked(tmp_path: Path) -> None:
    """Verdict and patterns are those of marking a class; what is read has a formula, the rest its text."""
    with book_with_night(tmp_path) as (_, _, page):
        for problem in sheet_typed(SHEET).problems:
            for text in TEXTS:
                found = judged(page, problem.label, text)
                marked = mark(expect(problem), read_written(text))
                assert found.text == text
                assert (found.verdict, found.sign, found.word) == (marked.verdict, *SIGNS[marked.verdict])
                assert tuple(fit.id for fit in found.fits) == marked.patterns
                if found.verdict in {Verdict.BLANK, Verdict.UNREADABLE}:
                    assert (found.mathml, found.spoken) == (None, text.strip())
                else:
                    assert found.mathml is not None
                    assert "aria-label" not in found.mathml


def test_the_status_line_says_the_verdict_in_words(tmp_path: Path) -> None:
    """What was read, the verdict, what it may fit and what can be remarked, in one sentence."""
    with book_with_night(tmp_path) as (_, _, page):
        said = {text: judged(page, "1", text).said for text in ("4 7/8", "39/8", "5 7/8", "", "three")}
    assert said == {
        "4 7/8": "four and seven eighths: right; 39/8 is the same amount.",
        "39/8": (
            "thirty-nine eighths: right; left as one fraction of one or more; 4 7/8 is the same amount."
        ),
        "5 7/8": (
            "five and seven eighths: not right; may fit: opens a whole and still counts it (A02) or off by "
            "one whole (A33); one unit more or fewer than right."
        ),
        "": "nothing written.",
        "three": (
            "three: cannot be read; A number is missing: here there is “three”. Look at the paper; an answer "
            "is one number such as 3 3/6."
        ),
    }


def test_signs_differ_in_shape() -> None:
    """No two verdicts share a sign or a word, so neither colour nor sight is needed."""
    signs, words = zip(*SIGNS.values(), strict=True)
    assert len(set(signs)) == len(set(words)) == len(Verdict)


@pytest.mark.parametrize(("head", "right"), [("", "3 3/6"), ("simplest form: yes\n\n", "3 1/2")])
def test_the_right_answer_is_in_a_form_that_the_page_asks_for(tmp_path: Path, head: str, right: str) -> None:
    """What stands for "right" is judged right, in simplest form where that is asked for."""
    with book_with_night(tmp_path, typed=f"{head}1. 7 2/6 - 3 5/6\n") as (_, _, page):
        assert usual_right(page, "1") == right
        assert judged(page, "1", right).verdict is Verdict.RIGHT


def test_every_right_answer_is_judged_right(tmp_path: Path) -> None:
    """Of a number, of a comparison, of a measure."""
    with book_with_night(tmp_path) as (_, _, page):
        rights = {label: usual_right(page, label) for label in page.labels}
        assert rights == {"1": "4 7/8", "2": "3 2/6", "3": ">", "4": "2 ft 7 in"}
        assert {judged(page, label, text).verdict for label, text in rights.items()} == {Verdict.RIGHT}


def test_a_label_that_is_not_on_the_page_is_refused(tmp_path: Path) -> None:
    """With the labels that are."""
    with book_with_night(tmp_path) as (_, _, page), pytest.raises(InputError, match="1, 2, 3, 4"):
        judged(page, "9", "4")


def test_what_is_predicted_fits_the_pattern_that_predicts_it(tmp_path: Path) -> None:
    """Each is a wrong answer that fits its pattern; no text comes twice; nine at most."""
    with book_with_night(tmp_path) as (_, _, page):
        for label in page.labels:
            found = predicted(page, label)
            assert 0 < len(found) <= MOST
            assert len({one.text for one in found}) == len(found)
            for one in found:
                seen = judged(page, label, one.text)
                assert seen.verdict is Verdict.WRONG
                assert one.id in {fit.id for fit in seen.fits}


def test_the_pupil_s_own_pattern_comes_first(tmp_path: Path) -> None:
    """Where another answer of the night fits an idea, that idea's answer leads here."""
    with book_with_night(tmp_path) as (_, _, page):
        assert [fit.id for fit in judged(page, "1", "5 7/8").fits] == ["A02", "A33"]
        assert predicted(page, "2", {"1": "5 7/8"})[0].id == "A02"
        firsts = {predicted(page, "2", {"1": one.text})[0].id for one in predicted(page, "1")}
        assert len(firsts) > 3
        assert predicted(page, "2", {"2": "4 2/6"}) == predicted(page, "2")
