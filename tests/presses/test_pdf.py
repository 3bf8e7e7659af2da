import datetime as dt
import io
import pickle
from concurrent.futures import ThreadPoolExecutor

import pikepdf
import pytest

from onewhole.errors import OnewholeError
from onewhole.presses.pdf import MissingSignError, PressError, press

WHEN = dt.datetime(2025, 3, 6, 7, 30, tzinfo=dt.UTC)
KITES = "#set document(title: [Kites])\n"


def test_press_gives_a_pdf() -> None:
    """The source's words become a PDF that calls itself PDF/UA-1."""
    document = pikepdf.open(io.BytesIO(press(KITES + "Six kites.", when=WHEN)))
    assert document.open_metadata()["pdfuaid:part"] == "1"
    assert document.docinfo["/Title"] == "Kites"


def test_plain_standard() -> None:
    """A page may be printed without the promise of PDF/UA-1; then no title is needed."""
    document = pikepdf.open(io.BytesIO(press("Six kites.", when=WHEN, standard="1.7")))
    assert "pdfuaid:part" not in document.open_metadata()


def test_data_reaches_the_source_and_does_not_stay() -> None:
    """Data is there for its own page and gone for the next one."""
    source = '#set document(title: sys.inputs.at("data", default: "none"))\nKites'
    first = pikepdf.open(io.BytesIO(press(source, data="Café ½".encode(), when=WHEN)))
    second = pikepdf.open(io.BytesIO(press(source, when=WHEN)))
    assert first.docinfo["/Title"] == "Café ½"
    assert second.docinfo["/Title"] == "none"


def test_date_is_the_given_one_wherever_it_was_written() -> None:
    """One moment written in two time zones gives one file; another moment gives another."""
    east = WHEN.astimezone(dt.timezone(dt.timedelta(hours=9)))
    assert press(KITES, when=WHEN) == press(KITES, when=east)
    assert press(KITES, when=WHEN) != press(KITES, when=WHEN + dt.timedelta(days=1))


def test_date_needs_a_time_zone() -> None:
    """A date without a time zone is a fault of the caller."""
    with pytest.raises(ValueError, match="time zone"):
        press(KITES, when=dt.datetime(2025, 3, 6))  # noqa: DTZ001  # the fault under test


def test_threads_take_turns() -> None:
    """Many threads press at the same time and every page comes out as if alone."""
    sources = [f"{KITES}Kite number {number}." for number in range(12)]
    alone = [press(source, when=WHEN) for source in sources]
    with ThreadPoolExecutor(6) as pool:
        assert list(pool.map(lambda source: press(source, when=WHEN), sources)) == alone


def test_no_fonts_of_the_machine() -> None:
    """A font that only the machine may have is passed over for the next one, which came along."""
    made = press(KITES + '#set text(font: ("DejaVu Sans", "Lexend"), fallback: false)\nKites', when=WHEN)
    with pikepdf.open(io.BytesIO(made)) as document:
        fonts = [item for item in document.objects if isinstance(item, pikepdf.Dictionary)]
        names = {str(item.BaseFont) for item in fonts if "/BaseFont" in item}
    assert len(names) == 1
    assert names.pop().endswith("+Lexend-Regular")


@pytest.mark.parametrize(
    ("source", "what", "where", "remedy"),
    [
        (
            KITES + "#kite(",
            "The page cannot be printed: unclosed delimiter",
            "the source, line 2",
            "This is a fault in how the page is made, not in what you typed: please report it.",
        ),
        (
            KITES + "$7$",
            "The page cannot be printed: PDF/UA-1 error: missing alt text",
            "the source, line 2",
            "Make sure your images and equations have alt text.",
        ),
        (
            (
                '#import "/look/ink.typ": refused\n'
                '#assert(false, message: refused("the kite is red", "Paint it blue."))'
            ),
            "The page cannot be printed: the kite is red",
            "the source, line 2",
            "Paint it blue.",
        ),
        (
            KITES + "A 🪁, a 🪁 and 漢",
            "No font here has the sign 🪁 漢",
            "the words of the page",
            "Take it out, or write it in letters.",
        ),
        (
            "Kites",
            "The page cannot be printed: PDF/UA-1 error: missing document title",
            "the page",
            "Set the title with `set document(title: [...])`.",
        ),
    ],
)
def test_refusals(source: str, what: str, where: str, remedy: str) -> None:
    """A page that cannot be printed is refused with what, where and what to do next, and no folder's name."""
    with pytest.raises(PressError) as caught:
        press(source, when=WHEN)
    refused = caught.value
    assert (refused.what, refused.where, refused.remedy) == (what, where, remedy)


def test_signs_that_no_font_has_are_told_by_themselves() -> None:
    """Nobody has to read them out of the words; the refusal survives being copied."""
    with pytest.raises(MissingSignError) as caught:
        press(KITES + "A 🪁, a 🪁 and 漢", when=WHEN)
    assert caught.value.signs == ("🪁", "漢")
    again = pickle.loads(pickle.dumps(caught.value))  # noqa: S301  # our own bytes
    assert (again.signs, str(again)) == (caught.value.signs, str(caught.value))


def test_a_refusal_spoils_nothing() -> None:
    """After a page that was refused the next one is printed as before."""
    before = press(KITES + "Six kites.", when=WHEN)
    with pytest.raises(PressError):
        press("#kite(", when=WHEN)
    assert press(KITES + "Six kites.", when=WHEN) == before


def test_press_error_is_one_of_ours_and_a_runtime_error() -> None:
    """Callers may catch the project's parent or Python's own kind; the error survives being copied."""
    error = PressError("No kite", where="page 2", remedy="Fold one.")
    assert isinstance(error, OnewholeError)
    assert isinstance(error, RuntimeError)
    assert str(pickle.loads(pickle.dumps(error))) == "No kite (page 2). Fold one."  # noqa: S301  # our own bytes
