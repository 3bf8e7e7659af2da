"""What holds for any papers: hostile pictures, every setting, whatever was typed before."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from onewhole.desk.paper.file_papers import answers_table, papers_object, papers_told, read_files
from onewhole.desk.paper.keep_papers import keep_seen_papers
from onewhole.desk.paper.night_papers import NightPapers, night_papers
from onewhole.desk.paper.seen_papers import SeenCell, SeenPapers
from onewhole.desk.paper.wish_papers import set_paper_wishes
from onewhole.marking.paper.sureness import Sureness
from onewhole.marking.paper.verdict import PaperVerdict
from onewhole.marking.reading.answers_table import read_answers
from onewhole.sheets.reading import read_sheet
from onewhole.store.paper_cells import CellState, ReadBy
from tests.kit.answers import by_pattern, page
from tests.kit.inks import inks
from tests.kit.kept import NOW
from tests.kit.paper_cells import CROP
from tests.kit.seen_papers import TYPED, Sees, paper_class, sure

SHEET = read_sheet(TYPED)
LABELS = [one.label for one in SHEET.problems]
WRONG = by_pattern("A01", page())
CODES = ("K01", "K02", "K03")
#: Pictures of all kinds, among them those that are sure of what one pattern writes.
CELLS = st.lists(
    st.builds(
        SeenCell,
        st.sampled_from((*CODES, "K77")),
        st.sampled_from((*LABELS, "99")),
        st.just(CROP),
        st.one_of(inks(), st.sampled_from(WRONG).map(sure)),
    ),
    max_size=20,
).map(lambda cells: SeenPapers(tuple(cells)))


@given(CELLS)
def test_a_stricter_setting_reads_nothing_more(seen: SeenPapers) -> None:
    """Of the papers of a file, those that decide a group among them: what is shown stays shown."""
    if not seen.cells:
        return
    before: set[tuple[str, str]] = set()
    for sureness in reversed(Sureness):
        papers = read_files(SHEET, [], Sees(seen), codes=CODES, sureness=sureness)
        read = set(papers.of(PaperVerdict.READ))
        assert before <= read
        before = read
        if papers.codes:
            assert len(read_answers(answers_table(papers), SHEET.problems).pupils) == len(papers.codes)
        assert len(list(papers_told(papers))) >= 1
        assert len(papers_object(papers)["cells"]) == len(papers.cells)  # type: ignore[arg-type]


def _agrees(papers: NightPapers) -> None:
    """What counts is what was read for sure, or what a person wrote; nothing of a cell that waits."""
    for key, one in papers.cells.items():
        if one.by is ReadBy.PROGRAM and not papers.typed(key):
            stands = one.cell.text if papers.state(key) is CellState.TAKEN else ""
            assert papers.text(key) == stands


def _read(papers: NightPapers) -> set[tuple[str, str]]:
    return {key for key, one in papers.cells.items() if one.cell.verdict is PaperVerdict.READ}


@settings(max_examples=settings().max_examples // 4)
@given(first=CELLS, second=CELLS)
def test_cells_and_answers_agree_whatever_comes(
    first: SeenPapers, second: SeenPapers, tmp_path_factory: pytest.TempPathFactory
) -> None:
    """After one reading and another, and at each setting; a stricter one reads nothing more."""
    book = paper_class(tmp_path_factory.mktemp("any") / "room12.class")
    for seen in (first, second):
        keep_seen_papers(book, 1, 1, seen, now=NOW)
        _agrees(night_papers(book, 1, 1))
    before = None
    for sureness in Sureness:
        set_paper_wishes(book, 1, sureness, learns=False, keeps=False, now=NOW)
        papers = night_papers(book, 1, 1)
        _agrees(papers)
        assert before is None or _read(papers) <= before
        before = _read(papers)
    book.close()
