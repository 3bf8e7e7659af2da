"""Mark the nights of a class in order, each with what earlier ones showed, and cache their summaries."""

from collections.abc import Callable, Mapping, Sequence
from contextlib import suppress
from datetime import date
from hashlib import sha256

from msgspec import DecodeError, Struct

from onewhole import __version__
from onewhole.desk.classes.class_records import (
    Classroom,
    NightPage,
    night_page,
    night_pages,
    room,
    sheet_typed,
    standing_answers,
)
from onewhole.desk.classes.group_settings import groups_of
from onewhole.desk.classes.night_summary import (
    NightSummaries,
    NightSummary,
    failed_text,
    notebook_night,
    read_summary,
    summary_text,
)
from onewhole.desk.classes.talk_rows import TalkText, rows_of_talks, talk_texts
from onewhole.desk.keep.error_location import error_location
from onewhole.desk.keep.pupil_cache import pupil_cache
from onewhole.desk.marking.mark import Marked, mark_sheet
from onewhole.desk.marking.readings import readings_in
from onewhole.desk.tomorrow.overrides import Overrides, overrides_of, with_overrides
from onewhole.errors import Fault, InputError
from onewhole.findings.night_failed import NightFailed
from onewhole.languages.english.nights_told import night_failed_told
from onewhole.marking.diagnosis.notebook import Notebook, Tonight
from onewhole.marking.grouping.group_settings import USUAL, GroupSettings
from onewhole.marking.reading.class_answers import PupilTexts, read_texts
from onewhole.notations.sentences.text import text_of
from onewhole.sheets.worked import WorkedSheet
from onewhole.store.cache_inputs import cache_inputs_of
from onewhole.store.corrections import Correction, corrections_of, keep_corrections
from onewhole.store.night_cache import cache_night, cached_nights
from onewhole.store.opening import Store
from onewhole.store.refusals import StoreRefused

#: The version of the cache format, raised when that changes within one version of the program.
FORM = 7
#: The most marked nights cached in memory.
HELD = 16

Progress = Callable[[int, int], None]


class NightFailedError(Fault):
    """The program failed on this night: its answers are kept, and the other nights are read without it."""

    def __init__(self, failed: NightFailed) -> None:
        first, *others = night_failed_told(failed)
        super().__init__(text_of((first,)), remedy=text_of(tuple(others)))


class NightInput(Struct, frozen=True):
    """The inputs of marking a night: page and answers as typed, the day, what earlier nights showed.

    ``talks`` is what pupils were asked since, ``settings`` how many groups are met and their sizes.
    """

    typed: str
    answers: tuple[PupilTexts, ...]
    day: date
    before: tuple[str, ...]
    talks: tuple[TalkText, ...] = ()
    settings: GroupSettings = USUAL


class MarkedNight(Struct, frozen=True):
    """A night read: ``said`` is what the answers alone say, ``marked`` has the teacher's ``overrides`` in it.

    ``given`` is all that ``said`` comes from (:func:`marked_of`).
    """

    page: NightPage
    given: NightInput
    said: Marked
    marked: Marked
    overrides: Overrides


class _Chain(Struct, frozen=True):
    """The nights of a class with answers, by day: their cache keys, and the cached texts.

    ``texts`` has only the entries whose key is still valid.
    """

    days: Mapping[int, str]
    stamps: Mapping[int, str]
    texts: Mapping[int, str]

    @property
    def nights(self) -> tuple[int, ...]:
        return tuple(self.stamps)

    def before(self, page: NightPage) -> tuple[int, ...]:
        """Return the nights before this one."""
        mine = (page.night.day.isoformat(), page.night.number)
        return tuple(night for night, day in self.days.items() if (day, night) < mine)


class NightToMark(Struct, frozen=True):
    """All that a night is marked from: page, answers, the teacher's word, and the class's chain of nights."""

    page: NightPage
    given: NightInput
    overrides: Overrides
    here: Classroom
    chain: _Chain

    @property
    def cached(self) -> str:
        """Return the cached summary of the night; empty where there is none, or none that is valid."""
        return self.chain.texts.get(self.page.night.number, "")

    @property
    def is_read(self) -> bool:
        """Say whether there is nothing new to be read: every answer was, and the program failed on none."""
        text = self.cached
        return not read_summary(text).failed if text else self.page.night.number not in self.chain.stamps

    @property
    def content(self) -> str:
        """Return a short name of all that the night is marked from."""
        word = self.overrides
        said = (sorted(word.aside), list(word.places.items()), list(word.sits.items()))
        return sha256(repr((__version__, FORM, self.given, said)).encode(errors="replace")).hexdigest()

    def still_stands(self, book: Store) -> bool:
        """Say whether nothing was written, and no pupil erased, since it was read; ask in a transaction."""
        night, number = self.page.night.number, self.here.number
        if _stamps(book, number)[1].get(night) != self.chain.stamps.get(night):
            return False
        return room(book, number).pupils == self.here.pupils


def night_summaries(book: Store, room_number: int) -> NightSummaries:
    """Return the cached summaries of a class's nights, and which nights are not marked yet.

    Nights without answers have no summary and are not missing. Two queries, no marking.
    """
    chain = _chain(book, room_number)
    fresh = [read_summary(chain.texts[night]) for night in chain.nights if night in chain.texts]
    missing = tuple(night for night in chain.nights if night not in chain.texts)
    stamp = sha256(" ".join(chain.stamps[night] for night in chain.texts).encode()).hexdigest()
    failed = tuple(NightFailed(one.day, one.name, one.failed) for one in fresh if one.failed)
    return NightSummaries(tuple(one for one in fresh if not one.failed), missing, stamp, failed)


def cached_summaries(book: Store, room_number: int) -> dict[int, tuple[NightSummary | None, bool]]:
    """Return the summary of every night that the file has one of, and whether it is out of date.

    None stands for one that an earlier release wrote in a form that is not read any more. Never marks.
    """
    with book.snapshot() as seen:
        kept, fresh = cached_nights(seen, room_number), _chain(seen, room_number).texts
    found: dict[int, tuple[NightSummary | None, bool]] = {}
    for night, (_, text) in kept.items():
        found[night] = None, night not in fresh
        with suppress(DecodeError):
            found[night] = read_summary(text), night not in fresh
    return found


def missing_before(book: Store, room_number: int, night_number: int) -> int:
    """Return how many earlier nights must be marked before this one can be. Raises NotThere."""
    with book.snapshot() as seen:
        chain = _chain(seen, room_number)
        earlier = chain.before(night_page(seen, room_number, night_number))
    return sum(night not in chain.texts for night in earlier)


def mark_night(book: Store, room_number: int, night_number: int) -> Marked:
    """Return a night marked, with what the class showed on earlier nights and the teacher's word.

    Earlier nights that are not marked yet are marked first. Raises NotThere, and InputError for a class
    without pupils.
    """
    return marked_night(book, room_number, night_number).marked


def marked_night(book: Store, room_number: int, night_number: int) -> MarkedNight:
    """Return a night marked, as the answers alone say and with the teacher's word. Raises as `mark_night`.

    A night on which the program failed is tried again, and raises NightFailedError where it fails again; else
    what was read without it is read anew.
    """
    return marked_from(book, night_to_mark(book, room_number, night_number))


def night_to_mark(book: Store, room_number: int, night_number: int) -> NightToMark:
    """Return all that a night is marked from; earlier nights that are not marked yet are marked first.

    Raises as `mark_night`.
    """
    with book.snapshot() as seen:
        page = night_page(seen, room_number, night_number)
        chain = _chain(seen, room_number)
        here = room(seen, room_number)
    texts = _work_through(book, here, chain, chain.before(page), None)
    return NightToMark(page, *_given(book, here, page, tuple(texts.values())), here, chain)


def marked_from(book: Store, found: NightToMark) -> MarkedNight:
    """Mark a night from what it is marked from. Raises as `marked_night`."""
    page, given, word = found.page, found.given, found.overrides
    night, chain, cached = page.night.number, found.chain, found.cached
    failed = bool(cached) and bool(read_summary(cached).failed)
    try:
        made = _marked(page, given, word, hold=True)
        text = summary_text(page, made.marked, word.aside) if failed or not cached else cached
    except Exception as fault:
        raise NightFailedError(_failed(page, fault)) from fault
    if night in chain.stamps and text != cached:
        _keep(book, found.here, chain, night, text)
        if failed:
            _forget_after(book, chain, night)
    return made


def is_last(book: Store, room_number: int, night_number: int) -> bool:
    """Say whether a night is the last one of a class that has answers."""
    with book.snapshot() as seen:
        return list(_stamps(seen, room_number)[1])[-1:] == [night_number]


def keep_unchanged(book: Store, found: MarkedNight, kept: Sequence[Correction]) -> bool:
    """Keep corrections that change nothing of what a night shows, and cache it under the key it has then.

    Where something of the night was written meanwhile, nothing is kept; return whether it was.
    """
    night, room_number = found.page.night.number, found.page.night.class_number
    with book.snapshot() as seen:
        was = _stamps(seen, room_number)[1].get(night)
    text = summary_text(found.page, found.marked, found.overrides.aside)
    with book.transaction() as now:
        if was is None or _stamps(now, room_number)[1].get(night) != was:
            return False
        keep_corrections(now, kept)
        cache_night(now, night, _stamps(now, room_number)[1][night], text)
    return True


def mark_missing(book: Store, room_number: int, progress: Progress) -> int:
    """Mark every night that is not marked yet, by day; return how many there were.

    ``progress`` is told how many are done and of how many, from 0 on. What is done stays done when the work
    stops half-way. Raises StoreRefused when the file takes nothing more.
    """
    with book.snapshot() as seen:
        chain, here = _chain(seen, room_number), room(seen, room_number)
    _work_through(book, here, chain, chain.nights, progress)
    return len(chain.nights) - len(chain.texts)


def _chain(book: Store, room_number: int) -> _Chain:
    """Read the chain: two queries.

    A cache key depends on the program, the sheet, the last answer, the last correction, the last row of a
    talk, the last word on a paper, who was not in the class, and the key of the night before: a change in one
    night makes all later ones stale.
    """
    with book.snapshot() as seen:
        days, stamps = _stamps(seen, room_number)
        kept = cached_nights(seen, room_number)
    return _Chain(
        days,
        stamps,
        {night: kept[night][1] for night in stamps if kept.get(night, ("",))[0] == stamps[night]},
    )


def _stamps(book: Store, room_number: int) -> tuple[dict[int, str], dict[int, str]]:
    """Return day and cache key of every night with answers."""
    days: dict[int, str] = {}
    stamps: dict[int, str] = {}
    last = f"{__version__} {FORM}"
    for basis in cache_inputs_of(book, room_number):
        if basis.answer:
            last = sha256(f"{last} {basis}".encode()).hexdigest()
            days[basis.night], stamps[basis.night] = basis.day, last
    return days, stamps


def _work_through(
    book: Store, here: Classroom, chain: _Chain, nights: tuple[int, ...], progress: Progress | None
) -> dict[int, str]:
    """Return the summaries of these nights; those not cached are marked and cached, by day.

    Without a ``progress`` to tell, a failed cache write is ignored.
    """
    of = sum(night not in chain.texts for night in nights)
    if not of:
        return {night: chain.texts[night] for night in nights}
    pages = {page.night.number: page for page in night_pages(book, here.number)}
    done = 0
    texts: dict[int, str] = {}
    for night in nights:
        if night in chain.texts:
            texts[night] = chain.texts[night]
            continue
        if progress:
            progress(done, of)
        texts[night] = _read(book, here, pages[night], tuple(texts.values()))
        _keep(book, here, chain, night, texts[night], quietly=progress is None)
        done += 1
    if progress:
        progress(of, of)
    return texts


def _read(book: Store, here: Classroom, page: NightPage, before: tuple[str, ...]) -> str:
    """Return the summary of a night; one on which the program fails says so, and blocks no other."""
    given, word = _given(book, here, page, before)
    try:
        return summary_text(page, _marked(page, given, word).marked, word.aside)
    except Exception as fault:  # noqa: BLE001 - whatever one night does, the next ones are read
        return failed_text(page, _failed(page, fault))


def _failed(page: NightPage, fault: Exception) -> NightFailed:
    return NightFailed(page.night.day, page.name, error_location(fault))


def _keep(
    book: Store, here: Classroom, chain: _Chain, night: int, text: str, *, quietly: bool = True
) -> None:
    """Cache the summary of a night; a failed cache write is ignored, unless it is to be told.

    Nothing is cached where an answer was written or a pupil erased since: the summary would be stale.
    """
    stamp = chain.stamps[night]
    with suppress(*(StoreRefused,) if quietly else ()), book.transaction() as now:
        _, stamps = _stamps(now, here.number)
        if stamps.get(night) == stamp and room(now, here.number).pupils == here.pupils:
            cache_night(now, night, stamp, text)


def _forget_after(book: Store, chain: _Chain, night: int) -> None:
    """Make the cached summaries of all later nights stale."""
    later = chain.nights[chain.nights.index(night) + 1 :]
    with suppress(StoreRefused), book.transaction() as now:
        for one in later:
            cache_night(now, one, "", "")


def _given(
    book: Store, here: Classroom, page: NightPage, before: tuple[str, ...]
) -> tuple[NightInput, Overrides]:
    if not here.pupils:
        raise InputError("There is no pupil in this class yet", remedy="Add pupils on the Class page.")
    with book.snapshot() as seen:
        corrections = corrections_of(seen, page.night.number)
        answers = standing_answers(seen, page, here, readings_in(corrections))
        talks = talk_texts(seen, here.number, page.night.number)
        settings = groups_of(seen, here.number)
    given = NightInput(page.kept.typed, answers, page.night.day, before, talks, settings)
    return given, overrides_of(corrections)


def _marked(page: NightPage, given: NightInput, word: Overrides, *, hold: bool = False) -> MarkedNight:
    said = marked_of(given) if hold else _mark(given)
    return MarkedNight(page, given, said, with_overrides(said, word), word)


@pupil_cache(maxsize=HELD)
def marked_of(given: NightInput) -> Marked:
    """Return a night marked by what the answers alone say; the same once more costs nothing."""
    return _mark(given)


def _mark(given: NightInput) -> Marked:
    book = Notebook()
    for text in given.before:
        book = book.and_night(notebook_night(text))
    worked = WorkedSheet(sheet_typed(given.typed))
    return mark_sheet(
        worked,
        read_texts(given.answers, worked.sheet.problems),
        settings=given.settings,
        tonight=Tonight(book, given.day),
        asked=rows_of_talks(given.talks),
    )
