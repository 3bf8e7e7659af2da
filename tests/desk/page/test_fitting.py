"""A page fitted on so many pages."""

from collections import Counter
from functools import cache

import pytest
from msgspec.structs import replace

from onewhole.desk.page.fitting import Fitted, PageFit
from onewhole.desk.page.print_pages import fitted_pupil_page
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from tests.kit import pdf
from tests.kit.pages import MILLIMETRES, SORTS, made, plain

LONG = (
    f"4 1/4 - 1 3/4 | A trail is 4 1/4 miles long. {'Sam walks on and on. ' * 3}He has walked 1 3/4 miles. "
    "How far is it to the end?"
)
#: Twenty problems: fractions, measures, decimals, whole numbers, and five stories, one of them long.
MIXED = (
    "title: Mixed review\nwhole: ribbon\n\n# Show each step.\n"
    + "\n".join(
        f"{at}. {asked}"
        for at, asked in enumerate(
            (
                *("7 2/6 - 3 5/6", "5 1/4 - 2 3/4", "4 3/8 + 2 7/8", "6 - 2 3/5", "5.2 - 2.7"),
                "6 1/3 - 2 2/3 | Maya has 6 1/3 ribbons and cuts off 2 2/3 ribbons. How much is left?",
                *("9 1/2 - 4 3/4", "3 ft 2 in - 1 ft 7 in", "52 - 27", "5/6 ? 7/8", "3 1/2 ? 7/2"),
                LONG,
                *("8 5/12 - 3 11/12", "2 3/10 + 4 9/10", "403 - 178", "7 = 6 ?/8", "? + 2 1/3 = 5"),
                "10 - 4 7/8 | Ten ribbons hang in a row. The wind takes 4 7/8 ribbons. How many still hang?",
                "2 h 10 min - 1 h 45 min",
                "12 1/6 - 7 5/6 | Of 12 1/6 ribbons the class cuts 7 5/6 ribbons. How many ribbons stay?",
            ),
            1,
        )
    )
    + "\n"
)


def rows(count: int) -> str:
    """So many problems alike."""
    return "\n".join(f"{at}. {7 + at % 3} {1 + at % 4}/6 - {2 + at % 4} 5/6" for at in range(1, count + 1))


@cache
def page(typed: str) -> tuple[Fitted, bytes]:
    """A typed sheet's page, and the same pressed."""
    found = fitted_pupil_page(WorkedSheet(read_sheet(typed)))
    return found, made(found.page)


@pytest.mark.parametrize(
    ("typed", "wanted", "pages", "share"),
    [
        (f"fit: 2\n{MIXED}", 2, 2, 55),
        (f"fit: 2\n{rows(20)}", 2, 2, 100),
        (f"fit: 1\n{rows(3)}", 1, 1, None),
        (f"fit: 1\npicture: strip\n{rows(6)}", 1, 1, 100),
        (f"fit: 1\n{rows(40)}", 1, 2, 45),
        (f"fit: 2\npaper: a4\n{SORTS}", 2, 2, 60),
        (f"fit: 1\nprint: large\n{rows(6)}", 1, 1, 80),
    ],
)
def test_as_many_pages_as_asked_or_the_nearest(
    typed: str, wanted: int, pages: int, share: int | None
) -> None:
    """Every problem is on it once, in order; what is told is so; the room is so large at least."""
    found, pressed = page(typed)
    assert found.fit is not None
    assert (found.fit.wanted, found.fit.pages, pdf.pages(pressed)) == (wanted, pages, pages)
    assert (found.fit.share is None) == (share is None)
    assert (found.fit.share or 0) >= (share or 0)
    words = plain(" ".join(pdf.words(pressed)))
    places = [words.find(f"{one.label}.") for one in read_sheet(typed).problems]
    assert places == sorted(places)
    assert -1 not in places


@pytest.mark.parametrize("head", ["", "paper: a4\nprint: large\n"])
def test_it_prints_as_well_as_any_page(head: str) -> None:
    """Inside the margins, nothing over anything, nothing small, every answer with a line of its own."""
    _, pressed = page(f"fit: 2\n{head}{MIXED}")
    width, height = MILLIMETRES["a4" if head else "letter"]
    signs = pdf.signs(pressed)
    side = 25.4 if head else 15
    assert min(box.points for box in signs) >= (18 if head else 12) - 0.05
    for box in signs:
        assert side - 0.1 <= box.left <= box.right <= width - side + 0.1, box
        assert 5 <= box.top <= box.bottom <= height - 5, box
    for first, second in pdf.overlapping(signs):
        high = min(first.bottom, second.bottom) - max(first.top, second.top)
        wide = min(first.right, second.right) - max(first.left, second.left)
        assert abs(first.bottom - second.bottom) < 0.1 or min(high, wide) < 0.4, (first, second)
    assert plain(" ".join(pdf.words(pressed))).count("Answer") == 16


def test_no_room_is_smaller_than_the_others_without_need() -> None:
    """With a page more every problem has more room: what is told is the largest share that fits."""
    worked = WorkedSheet(read_sheet(MIXED))
    shares = []
    for pages in (2, 3, 4, 6):
        header = replace(worked.header, fit=pages)
        fit = fitted_pupil_page(WorkedSheet(replace(worked.sheet, header=header))).fit
        assert fit is not None
        assert fit.fits
        shares.append(100 if fit.share is None else min(fit.share, 100))
    assert shares == sorted(shares)
    assert shares[0] < shares[-1] == 100


def test_what_is_told() -> None:
    """Plainly, and of little room what to do."""
    assert PageFit(2, 2, None).told == "It fits on 2 pages with all its boxes."
    assert (
        PageFit(2, 1, 130).told
        == "It fits on 1 page without boxes, with all the room that the workings need."
    )
    assert PageFit(1, 2, 45).told == (
        "It does not fit on 1 page: 2 pages are the least, with 45 % of the room that the workings need. "
        "Let them be written on other paper."
    )
    assert PageFit(1, 2, 45).as_object == {"wanted": 1, "pages": 2, "room": 45, "boxes": False}


@pytest.mark.parametrize("fit", [1, 2])
def test_a_wide_problem_shares_its_row(fit: int) -> None:
    """No problem stands alone beside empty paper where its neighbor has room for it, and the order stays."""
    asked = ("7 2/6 - 3 5/6", "5 1/4 - 2 3/4", "703 - 245", "5 - 1 3/8", "6 1/4 - 3 2/4", "9 5/8 - 4 6/8")
    problems = (fit + 1) * asked  # more than fit with their boxes
    typed = "\n".join(f"{at}. {one}" for at, one in enumerate(problems, 1))
    _, pressed = page(f"fit: {fit}\n{typed}")
    lines = Counter((box.page, round(box.bottom)) for box in pdf.signs(pressed) if box.sign == "A")
    assert sum(lines.values()) == len(problems)
    assert min(lines.values()) > 1
