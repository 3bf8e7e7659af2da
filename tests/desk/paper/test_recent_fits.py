"""What recent nights showed of a pupil, as it is asked before a paper's answer is taken."""

from datetime import timedelta
from pathlib import Path

from onewhole.desk.classes.class_records import night_page, set_night
from onewhole.desk.classes.marked_nights import mark_missing, marked_night
from onewhole.desk.paper.checking_papers import papers_to_check
from onewhole.desk.paper.keep_papers import keep_seen_papers
from onewhole.desk.paper.recent_fits import recent_fits
from onewhole.marking.paper.verdict import PaperWhy
from tests.kit.answers import all_right, by_pattern, page
from tests.kit.kept import DAY, NOW, write
from tests.kit.seen_papers import TYPED, paper_class, row, seen, sure

RIGHT, WRONG = all_right(page()), by_pattern("A01", page())


def test_what_earlier_nights_showed_counts_with_one_answer_of_tonight(tmp_path: Path) -> None:
    """As the notebook tells it; one answer that fits decides then. What is not marked yet counts nothing."""
    book = paper_class(tmp_path / "room12.class")
    tonight = set_night(book, 1, TYPED, DAY + timedelta(days=2), NOW).night.number
    for at, (wrong, right) in enumerate(zip(WRONG, RIGHT, strict=True), 1):
        write(book, 1, wrong, code="K01", problem=str(at))
        write(book, 1, right, code="K02", problem=str(at))
    assert recent_fits(book, night_page(book, 1, tonight)) == {}
    mark_missing(book, 1, lambda *_: None)
    fits = recent_fits(book, night_page(book, 1, tonight))
    assert fits["K01"]["A01"] >= 2
    assert not fits.get("K02")
    assert recent_fits(book, night_page(book, 1, 1)) == {}
    label = next(str(at) for at in range(1, 13) if WRONG[at - 1] != RIGHT[at - 1])
    texts = {**row(RIGHT), label: sure(WRONG[int(label) - 1])}
    keep_seen_papers(book, 1, tonight, seen({"K01": texts, "K02": texts}), now=NOW)
    waits = papers_to_check(book, 1, tonight).open
    assert [(one.code, one.label, one.why) for one in waits] == [("K01", label, PaperWhy.DECIDES)]
    before = marked_night(book, 1, tonight).marked.tonight
    assert before is not None
    assert before.notebook.recent_fits(DAY + timedelta(days=2)) == fits
    book.close()
