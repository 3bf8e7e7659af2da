"""Cells of a night are kept: some at once, a column, and how the teacher reads one."""

import re
from collections.abc import Iterator, Sequence
from datetime import datetime

from msgspec import Struct

from onewhole.desk.classes.class_records import Classroom, NightPage, night_page, room
from onewhole.desk.classes.pupil_codes import codes_typed, no_pupils
from onewhole.desk.classes.rosters import roster_of, who_wrote
from onewhole.desk.marking.readings import LONGEST, Reading, keep_reading
from onewhole.desk.marking.verdicts import Judged, asked, judged, usual_right
from onewhole.errors import InputError
from onewhole.store.answers import answers_of
from onewhole.store.cells import Change, change_answers
from onewhole.store.marked import answered
from onewhole.store.opening import Store

__all__ = ["Change", "KeptCells", "codes_typed", "keep_cells", "keep_column", "read_cell_as"]

#: Control signs (general category Cc of the Unicode Standard) but for a tab and the ends of lines.
UNSEEN = re.compile(r"[\0-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f]")
#: Cells that one request may change; a class of 60 with 40 problems is whole.
MOST_CELLS = 2400


class KeptCells(Struct, frozen=True):
    """What became of some changes of a night's page: those kept; those whose cell another window had changed,
    each with the text that stands there; and those that cannot be kept, each with words that say why.

    ``told`` says whose paper came in although it was not waited for.
    """

    page: NightPage
    kept: tuple[Change, ...] = ()
    clashes: tuple[tuple[Change, str], ...] = ()
    refused: tuple[tuple[Change, str], ...] = ()
    told: tuple[str, ...] = ()


def keep_cells(
    book: Store, room_number: int, night: int, changes: Sequence[Change], *, now: datetime, by: str
) -> KeptCells:
    """Keep cells exactly as typed, all of them in one transaction; once that has ended they are on the disk.

    A cell that another window changed since ``was`` was read is left as it is and told. A text that is too
    long, has half a character or a control sign, and a pupil or problem that is not there, is refused by
    itself; the others are kept. Raises NotThere for a night that is not of the class, InputError for more
    than 2400 cells, StoreRefused when nothing could be written.
    """
    if len(changes) > MOST_CELLS:
        raise InputError(f"{len(changes)} cells at once are too many", remedy=f"Send {MOST_CELLS} at most.")
    with book.transaction() as within:
        of, page = room(within, room_number), night_page(within, room_number, night)
        return _keep(within, of, page, changes, now=now, by=by)


def _keep(
    book: Store,
    of: Classroom,
    page: NightPage,
    changes: Sequence[Change],
    *,
    now: datetime,
    by: str,
    looks: bool = True,
) -> KeptCells:
    """Keep what can be kept; ``looks`` is False where every paper is known to be waited for."""
    why = [_refusal(of, page, change) for change in changes]
    good = [change for change, words in zip(changes, why, strict=True) if not words]
    told = tuple(_unawaited(book, of, page, good)) if looks else ()
    stands = change_answers(book, page.night.number, good, now, by) if good else ()
    pairs = list(zip(good, stands, strict=True))
    return KeptCells(
        page,
        tuple(change for change, text in pairs if text == change.text),
        tuple((change, text) for change, text in pairs if text != change.text),
        tuple((change, words) for change, words in zip(changes, why, strict=True) if words),
        told,
    )


def _unawaited(book: Store, of: Classroom, page: NightPage, good: Sequence[Change]) -> Iterator[str]:
    """Tell of papers that come in now and that nobody waits for, before anything of them is written."""
    new = sorted({change.code for change in good if change.text.strip() and not (change.was or "").strip()})
    if not new:
        return
    who = roster_of(book, page.night)
    if strange := [code for code in new if who.word(code).away or code not in who.got]:
        wrote = answered(book, [page.night.number]).get(page.night.number, frozenset())
        for code in strange:
            if code in wrote:
                continue
            if who.word(code).away:
                yield f"{of.shown(code)} is down as {who.word(code).value}: this counts as a late paper now."
            else:
                yield f"{of.shown(code)} did not get this page, as it stands; the answer counts all the same."


def keep_column(
    book: Store,
    room_number: int,
    night: int,
    label: str,
    wrong: Sequence[str],
    *,
    now: datetime,
    by: str,
    over: bool = False,
) -> KeptCells:
    """Keep the right answer, as it is typed, for everyone except some codes, all in one transaction.

    Only empty cells are filled, unless ``over`` is set, and only of those whose paper is waited for or there:
    none of who was away or did not get the page. Raises InputError for an unknown code or label (and
    then keeps nothing), and as :func:`keep_cells`.
    """
    with book.transaction() as within:
        of, page = room(within, room_number), night_page(within, room_number, night)
        codes = [pupil.code for pupil in of.pupils]
        if unknown := [code for code in wrong if code not in codes]:
            raise no_pupils(unknown)
        right = usual_right(page, label)
        written = answers_of(within, night)
        awaited = roster_of(within, page.night).awaited(who_wrote(written))
        stands = {one.code: one.text for one in written if one.problem == label}
        changes = [
            Change(code, label, right, None if over else "")
            for code in awaited
            if code not in wrong and (over or not stands.get(code))
        ]
        return _keep(within, of, page, changes, now=now, by=by, looks=False)


def read_cell_as(
    book: Store,
    room_number: int,
    night: int,
    reading: Reading,
    *,
    code: str,
    label: str,
    now: datetime,
    by: str,
    saw: str | None = None,
) -> Judged:
    """Keep how the teacher reads a cell and return it judged so. Raises as readings.keep_reading."""
    with book.transaction() as within:
        page = night_page(within, room_number, night)
        asked(page, label)
        keep_reading(within, night, reading, code=code, label=label, now=now, by=by, saw=saw)
    return judged(page, label, reading.read)


def _refusal(of: Classroom, page: NightPage, change: Change) -> str:
    """Say why a change cannot be kept; nothing where it can."""
    if change.problem not in page.labels:
        return f"The page has no problem “{change.problem[:20]}”. Load the page again."
    if all(pupil.code != change.code for pupil in of.pupils):
        return f"There is no pupil “{change.code[:20]}” in this class now. Load the page again."
    refused = text_refused(change.text)
    return "" if refused is None else f"{refused.what}. {refused.remedy}"


def text_refused(text: str) -> InputError | None:
    """Return why no cell holds a text; None where one does."""
    if len(text) > LONGEST:
        return InputError(
            f"This has {len(text)} characters, and a cell holds {LONGEST}",
            remedy="Type the answer alone; a long working can stay on the paper.",
        )
    try:
        text.encode()
    except UnicodeEncodeError:
        return InputError("A character is cut in half", remedy="Type it again.")
    if UNSEEN.search(text):
        return InputError("A sign stands here that nobody can see", remedy="Type the answer again by hand.")
    return None
