"""The papers of a night are read from pictures and kept: sure ones as answers, the rest to be looked at."""

from collections.abc import Collection, Iterable, Iterator, Mapping
from datetime import datetime

from msgspec import Struct
from msgspec.structs import replace

from onewhole.desk.classes.rosters import roster_of, who_wrote
from onewhole.desk.marking.verdicts import asked
from onewhole.desk.paper.clearing_papers import finish_papers, sweep_papers
from onewhole.desk.paper.judged_cells import Key, judged_cell, of_two
from onewhole.desk.paper.night_papers import NightPapers, night_papers, settle_cells
from onewhole.desk.paper.paper_by import reading_of
from onewhole.desk.paper.seen_papers import NamedPicture, SeenCell, SeenPapers, SeesPapers
from onewhole.errors import InputError
from onewhole.findings.in_papers import PaperFinding, PaperMissing, StrangeCell, UnawaitedPaper
from onewhole.marking.paper.read_cell import ReadCell, to_be_shown
from onewhole.marking.paper.verdict import PaperVerdict, PaperWhy
from onewhole.store.answers import writings_of
from onewhole.store.opening import Store
from onewhole.store.paper_cells import PaperCell, ReadBy, keep_paper_cells, nights_with_paper


class KeptPapers(Struct, frozen=True):
    """What became of some papers: the number of this reading, and how many cells it has of each kind.

    ``read`` and ``empty`` stand as they are, ``shown`` are to be looked at; ``same`` have an answer already
    that says the same, and ``left`` were checked before and stay. ``found`` is what else there is to know.
    """

    reading: int
    read: int
    empty: int
    shown: int
    same: int
    left: int
    found: tuple[PaperFinding, ...]


def read_papers(
    book: Store,
    room_number: int,
    night: int,
    pictures: Iterable[NamedPicture],
    sees: SeesPapers,
    *,
    now: datetime,
) -> KeptPapers:
    """Read the papers of a night from pictures, and keep what they hold, all of it or nothing.

    The pictures are looked at before anything is written, and are not kept. Of other nights of the class on
    which nothing is left to be looked at, the pictures of cells go now, and those that are too old. Raises
    NotThere, InputError for no picture at all, and StoreRefused.
    """
    night_papers(book, room_number, night)
    seen = sees(pictures)
    if not seen.cells and not seen.found:
        raise InputError("There is no picture here", remedy="Choose the photos or the scan of the papers.")
    kept = keep_seen_papers(book, room_number, night, seen, now=now)
    for other in nights_with_paper(book, room_number):
        if other != night:
            finish_papers(book, room_number, other)
    sweep_papers(book, now=now)
    return kept


def keep_seen_papers(
    book: Store, room_number: int, night: int, seen: SeenPapers, *, now: datetime
) -> KeptPapers:
    """Keep what was seen in pictures of a night's papers, in one transaction.

    A sure reading is the answer at once; nothing else counts before a person looked at it. What was checked
    before, and what was typed, stays: where a picture says otherwise than what was typed, it is shown.
    Raises NotThere and StoreRefused.
    """
    with book.transaction() as within:
        papers = night_papers(within, room_number, night)
        number = _next_reading(within, papers)
        mine = [one for one in seen.cells if _is_ours(papers, one)]
        strange = {(one.code, one.label) for one in seen.cells} - {(one.code, one.label) for one in mine}
        fresh, same, left = _fresh(papers, mine)
        kept = [
            (PaperCell(night, *key, number, cell, ReadBy.PROGRAM, now), crop)
            for key, (cell, crop) in fresh.items()
        ]
        unawaited = tuple(_unawaited(within, papers, {code for code, _ in fresh}))
        keep_paper_cells(within, night, kept)
        after = replace(papers, cells={**papers.cells, **{one.key: one for one, _ in kept}})
        settle_cells(within, after, {code for code, _ in fresh}, now)
        stands = night_papers(within, room_number, night)
        found = (
            *seen.found,
            *(StrangeCell(*key) for key in sorted(strange)),
            *unawaited,
            *_missing(within, stands, {one.code for one in mine}),
        )
    verdicts = [stands.cells[key].cell.verdict for key in fresh]
    return KeptPapers(
        number,
        verdicts.count(PaperVerdict.READ),
        verdicts.count(PaperVerdict.EMPTY),
        verdicts.count(PaperVerdict.UNSURE),
        len(same),
        len(left),
        found,
    )


def _next_reading(within: Store, papers: NightPapers) -> int:
    """Return the number of the next reading of a night: none comes twice."""
    wrote = [reading_of(one.by) for one in writings_of(within, papers.page.night.number)]
    numbers = [one.number for one in wrote if one] + [one.reading for one in papers.cells.values()]
    return 1 + max(numbers, default=0)


def _is_ours(papers: NightPapers, seen: SeenCell) -> bool:
    return seen.label in papers.page.labels and any(one.code == seen.code for one in papers.room.pupils)


def _fresh(
    papers: NightPapers, seen: Iterable[SeenCell]
) -> tuple[Mapping[Key, tuple[ReadCell, bytes]], Collection[Key], Collection[Key]]:
    """Judge cells; return those to be kept, those whose answer is typed already, and those checked before."""
    fresh: dict[Key, tuple[ReadCell, bytes]] = {}
    same, left = set(), set()
    for one in seen:
        key = one.code, one.label
        if key in papers.cells and papers.cells[key].by is ReadBy.PERSON:
            left.add(key)
            continue
        cell = judged_cell(one, asked(papers.page, one.label), papers.wishes.limit())
        if papers.typed(key):
            if " ".join(papers.text(key).split()) == cell.text:
                same.add(key)
                continue
            cell = to_be_shown(cell, PaperWhy.TYPED)
        if key in fresh:
            cell = of_two(fresh[key][0], cell)
        fresh[key] = cell, one.crop
    return fresh, same, left


def _unawaited(within: Store, papers: NightPapers, came: set[str]) -> Iterator[UnawaitedPaper]:
    """Name the pupils whose paper comes in now though nobody waits for it, before it is kept."""
    wrote, who = who_wrote(papers.answers.values()), roster_of(within, papers.page.night)
    before = {code for code, _ in papers.cells}
    for code in sorted(came - wrote - before):
        if who.word(code).away or code not in who.got:
            yield UnawaitedPaper(code, who.word(code))


def _missing(within: Store, papers: NightPapers, came: Collection[str]) -> Iterator[PaperMissing]:
    """Name the pupils whose paper is waited for, and who have nothing in these pictures and no answer."""
    wrote = who_wrote(papers.answers.values())
    cells = {code for code, _ in papers.cells}
    for code in roster_of(within, papers.page.night).awaited(wrote):
        if code not in came and code not in wrote and code not in cells:
            yield PaperMissing(code)
