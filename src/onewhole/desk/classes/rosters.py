"""Who got the page of a night, whose paper is waited for, and what the teacher said of the others."""

from collections.abc import Collection, Iterable, Mapping, Sequence
from datetime import date

from msgspec import Struct

from onewhole.findings.attendance import NightSaid, PageWord, PaperWord
from onewhole.store.answers import KeptAnswer
from onewhole.store.classes import pupils_of
from onewhole.store.night_words import pupils_on_night, words_by_night
from onewhole.store.nights import KeptNight, nights_of
from onewhole.store.opening import Store
from onewhole.store.pupil_days import ALL_YEAR, PupilDays, pupil_days_of


class Roster(Struct, frozen=True):
    """The pupils of a class on one night, by code.

    ``everyone`` are all pupils there are in the file, in the class's order, ``in_class`` those who were in
    the class on that day, ``got`` those who got the page. ``words`` has what was said of papers, of those of
    whom anything was; ``for_part`` says that the page was for named pupils, or for nobody any more.
    """

    everyone: tuple[str, ...]
    in_class: frozenset[str]
    got: frozenset[str]
    words: Mapping[str, PaperWord]
    for_part: bool = False

    def word(self, code: str) -> PaperWord:
        """Return what was said of a pupil's paper."""
        return self.words.get(code, PaperWord.HERE)

    def stands(self, code: str, *, wrote: bool) -> PaperWord:
        """Return what a pupil's paper is: of one who was away and hands in all the same it came late.

        >>> ada = frozenset({"K01"})
        >>> roster = Roster(("K01",), ada, ada, {"K01": PaperWord.ABSENT})
        >>> roster.stands("K01", wrote=False).value, roster.stands("K01", wrote=True).value
        ('absent', 'late')
        """
        word = self.word(code)
        return PaperWord.LATE if wrote and word.away else word

    def awaited(self, wrote: Collection[str] = ()) -> tuple[str, ...]:
        """Return whose paper is waited for or there: who got the page and was not away, and who wrote."""
        return tuple(
            code for code in self.everyone if code in wrote or (code in self.got and not self.word(code).away)
        )

    def marked(self, wrote: Collection[str]) -> tuple[str, ...]:
        """Return whom a night is marked for: who got the page, and who wrote something all the same."""
        return tuple(code for code in self.everyone if code in self.got or code in wrote)

    def without_page(self, wrote: Collection[str] = ()) -> tuple[str, ...]:
        """Return who was in the class on that day and did not get the page."""
        return tuple(
            code
            for code in self.everyone
            if code in self.in_class and code not in self.got and code not in wrote
        )


def who_wrote(answers: Iterable[KeptAnswer]) -> frozenset[str]:
    """Return of whom something is written: an answer that was cleared, or holds only blanks, is none."""
    return frozenset(one.code for one in answers if one.text.strip())


def rosters(book: Store, room_number: int, nights: Iterable[KeptNight] | None = None) -> dict[int, Roster]:
    """Return the roster of every night of a class, by its number; ``nights`` are its nights, if at hand."""
    with book.snapshot() as seen:
        nights, words = nights or nights_of(seen, room_number), words_by_night(seen, room_number)
        days = pupil_days_of(seen, room_number)
        codes = tuple(pupil.code for pupil in pupils_of(seen, room_number))
    always = _roster(codes, {}, date.min, {})  # most classes, on most nights: everyone, and nothing said
    return {
        night.number: _roster(codes, days, night.day, words.get(night.number, {}))
        if days or night.number in words
        else always
        for night in nights
    }


def roster_of(book: Store, night: KeptNight) -> Roster:
    """Return the roster of one night: one statement."""
    found = pupils_on_night(book, night.class_number, night.number)
    return _roster(
        tuple(one.code for one in found),
        {one.code: one.days for one in found},
        night.day,
        {one.code: one.said for one in found},
    )


def in_class_on(book: Store, room_number: int, day: date) -> tuple[str, ...]:
    """Return the codes of those who are in a class on a day, in the class's order."""
    with book.snapshot() as seen:
        days = pupil_days_of(seen, room_number)
        codes = [pupil.code for pupil in pupils_of(seen, room_number)]
    return tuple(code for code in codes if days.get(code, ALL_YEAR).in_class(day))


def _roster(
    codes: tuple[str, ...],
    days: Mapping[str, PupilDays],
    day: date,
    said: Mapping[str, Sequence[NightSaid]],
) -> Roster:
    """Put a night's roster together; of what is said of a pupil the last word of a sort counts.

    Where pupils were named, whoever is not named did not get the page.
    """
    papers: dict[str, PaperWord] = {}
    pages: dict[str, PageWord] = {}
    for code, words in said.items():
        for word in words:
            if isinstance(word, PaperWord):
                papers[code] = word
            else:
                pages[code] = word
    here = frozenset(code for code in codes if days.get(code, ALL_YEAR).in_class(day))
    for_part = PageWord.NAMED in pages.values()
    by_word = {code for code, word in pages.items() if word in {PageWord.GIVEN, PageWord.NAMED}}
    usual = set() if for_part else {code for code in here if pages.get(code) is not PageWord.NOT_GIVEN}
    away = {code: word for code, word in papers.items() if word is not PaperWord.HERE}
    got = frozenset(by_word | usual)
    return Roster(codes, here, got, away, for_part or bool(here and not got))
