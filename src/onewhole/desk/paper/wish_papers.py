"""The teacher's wishes on papers are kept, and the cells that wait or stand are judged by them."""

from datetime import datetime

from onewhole.desk.classes.class_records import room
from onewhole.desk.classes.seen import is_to_be_written
from onewhole.desk.paper.night_papers import night_papers, settle_cells
from onewhole.desk.paper.paper_wishes import PaperWishes, keep_wishes, paper_wishes, wishes_text
from onewhole.marking.paper.calibration import Calibration
from onewhole.marking.paper.sureness import Sureness
from onewhole.store.opening import Store
from onewhole.store.paper_cells import nights_with_paper


def set_paper_wishes(
    book: Store,
    room_number: int,
    sureness: Sureness,
    *,
    learns: bool,
    keeps: bool,
    now: datetime,
    saw: str | None = None,
) -> PaperWishes:
    """Keep how a class's papers are read; what nobody has checked yet is judged by it at once.

    Who does not want the program to learn any more has the counts forgotten. ``saw`` is what the window that
    changes them was shown (:func:`~.paper_wishes.wishes_text`). Raises NotThere, ChangedMeanwhile and
    StoreRefused.
    """
    with book.transaction() as within:
        room(within, room_number)
        was = paper_wishes(within, room_number)
        wishes = PaperWishes(sureness, learns, keeps, was.learnt if learns else Calibration())
        if not is_to_be_written("How papers are read", wishes_text(wishes), saw, wishes_text(was)):
            return was
        keep_wishes(within, room_number, wishes)
        for night in nights_with_paper(within, room_number):
            papers = night_papers(within, room_number, night)
            settle_cells(within, papers, {code for code, _ in papers.cells}, now)
    return wishes
