"""What is told of nights: one that could not be worked through, and how an idea went over many."""

from datetime import date

from onewhole.findings.idea_course import GoneSince, HeldSince
from onewhole.findings.night_failed import NightFailed
from onewhole.languages.english.days import MONTHS
from onewhole.languages.english.making import bare, told
from onewhole.sentences.node import Counted, Thing, Typed
from onewhole.sentences.sentence import Sentences


def day_said(day: date) -> Typed:
    """Say a day within a sentence.

    >>> day_said(date(2026, 11, 4)).text
    '4 November'
    """
    return Typed(f"{day.day} {MONTHS[day.month - 1]}")


def night_failed_told(failed: NightFailed) -> Sentences:
    """Say that a night could not be worked through, what that means, and what to do.

    >>> from onewhole.notations.sentences.text import text_of
    >>> print(text_of(night_failed_told(NightFailed(date(2026, 11, 4), "Kites", "ValueError at x.py:7"))))
    The answers of 4 November (“Kites”) could not be worked through: that is a mistake of the program, not of
    what was typed. They are kept, and the other nights are read without them. Please report it with the
    page: ValueError at x.py:7.
    """
    page = Typed(f"(“{failed.page}”)")
    return (
        *told(
            "the answers of",
            day_said(failed.on),
            page,
            "could not be worked through: that is a mistake of the program, not of what was typed",
        ),
        *told("they are kept, and the other nights are read without them"),
        *told("please report it with the page:", Typed(failed.at)),
    )


def held_told(since: HeldSince) -> Sentences | None:
    """Say since which night an idea fits, and how often; None of one that was seen on a single night.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(held_told(HeldSince(date(2026, 11, 4), 3, 5)))
    'Answers fit it since 4 November, on 3 of the last 5 nights that could show it.'
    """
    if since.of == 1:
        return None
    nights = Counted(since.of, Thing("night", "nights", None))
    often = ("on", bare(since.shown), "of the last", nights, "that could show it")
    return told("answers fit it since", day_said(since.on), ",", *often)


def withdrawn_told(ideas: str, since: GoneSince) -> Sentences:
    """Say that ideas that were found, named for the teacher, are gone.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(withdrawn_told("A01", GoneSince(date(2026, 11, 9))))
    'A01 is gone since 9 November: the answers of that night speak against it.'
    """
    gone = ("is gone since", day_said(since.on), ": the answers of that night speak against it")
    return told(Typed(ideas), *gone)
