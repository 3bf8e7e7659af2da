"""A third language: its numbers read back, what it does not say is English and says so."""

from fractions import Fraction

import pytest

from onewhole.languages.table import LANGUAGES
from onewhole.notations.sentences.text import text_of
from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity
from onewhole.sentences.node import Thing
from onewhole.statements.reading import read_statement
from onewhole.walkthroughs.cue import Cue, Role
from onewhole.walkthroughs.timeline import Timed, TimedChapter, Timeline
from onewhole.working.reasons.comparing import CountDecides
from onewhole.writers.captions import srt, vtt
from onewhole.writers.family_page import family_page
from tests.kit.how_much import sample
from tests.kit.portuguese_reading import unsay_amount
from tests.kit.sheets import worked_sheet

PORTUGUESE = LANGUAGES["pt-BR"]
USUAL = PORTUGUESE.usual
#: Denominators and wholes that are walked; `make walk` takes every one to a hundred.
PARTS, WHOLES = (
    sample((2, 3, 8, 10, 11, 12, 100), tuple(range(2, 101, 7)), tuple(range(2, 101))),
    (1, 2, 21, 30, 99),
)


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        # From memory, to be checked by a native speaker.
        ("1/2", "um meio"),
        ("5/12", "cinco doze avos"),
        ("30 2/3", "trinta inteiros e dois terços"),
        ("5 ft 2 in", "cinco pés e duas polegadas"),
        ("$3.50", "três dólares e cinquenta centavos"),
        ("1,205", "mil duzentos e cinco"),
        ("0.05", "zero ponto zero cinco"),
    ],
)
def test_a_number_is_said(typed: str, said: str) -> None:
    """With the noun of a mixed number, and agreeing with what is counted."""
    assert PORTUGUESE.say(read_statement(f"{typed} + {typed}")) == f"{said} mais {said}"


def test_every_number_reads_back_and_no_two_sound_alike() -> None:
    """Fractions and mixed numbers, proper and not, in one pot."""
    heard: dict[str, Fraction] = {}
    for bottom in PARTS:
        for wholes in (None, *WHOLES):
            for top in (0, 1, 2, bottom - 1, bottom, bottom + 1, 2 * bottom - 1):
                number = Quantity(mixed(bottom), (wholes, top))
                said = PORTUGUESE.say(number)
                assert unsay_amount(said) == number.value, said
                assert heard.setdefault(said, number.value) == number.value


def test_counts_agree_with_what_is_counted() -> None:
    """One, two and the hundreds have a feminine."""
    strip = Thing("tira", "tiras", feminine=True)
    assert [PORTUGUESE.count_words(count, strip) for count in (1, 2, 32, 201)] == [
        *("uma", "duas", "trinta e duas", "duzentas e uma"),
    ]
    assert [PORTUGUESE.count_words(count) for count in (16, 100, 101, 1000, 2100)] == [
        *("dezesseis", "cem", "cento e um", "mil", "dois mil e cem"),
    ]


def test_the_page_for_home_is_in_portuguese_and_what_is_not_has_its_tag() -> None:
    """A page on mixed numbers is Portuguese throughout; a reason that has no words yet is tagged English."""
    words = PORTUGUESE.read_whole("uma tira", USUAL)
    mixed_page = str(family_page(worked_sheet("whole: strip\n\n1. 7 2/6 - 3 5/6"), words).data)
    assert "en-US" not in mixed_page
    assert "Não há sextos suficientes" in mixed_page
    compared = str(family_page(worked_sheet("1. 5/6 ? 7/8"), words).data)
    assert "{'lang': 'en-US', 'says':" in compared


def test_a_caption_in_english_says_so() -> None:
    """WebVTT has a span for it; SubRip has none, and stays plain."""
    other = PORTUGUESE.working.reason(CountDecides(mixed(6).units[1], 3, 4), USUAL)
    assert {sentence.language for sentence in other} == {"en-US"}
    own = PORTUGUESE.opening.count(3)
    said = tuple((one, Fraction(at), Fraction(at + 1)) for at, one in enumerate((*own, *other)))
    cue = Timed(Cue(Role.LINE, (*own, *other)), Fraction(0), Fraction(9), said, ())
    chapter = TimedChapter("1", "Problema 1", Fraction(0), Fraction(9), (cue,))
    timeline = Timeline("", (chapter,), language="pt-BR")
    assert f"<lang en-US>{text_of(other)}</lang>" in vtt(timeline)
    assert "Esta noite há 3 problemas." in vtt(timeline).split("\n")
    assert "lang" not in srt(timeline)
