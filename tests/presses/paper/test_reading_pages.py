"""Pictures of papers: every page is found, told whose, and cut where answers stand, or it is said why not."""

from dataclasses import replace

import cv2
import numpy as np
import pytest

from onewhole.findings.in_pictures import (
    HalfPage,
    Nobody,
    NoPage,
    NotFlat,
    OtherPage,
    PageMissing,
    PicturesLeft,
    PictureUnread,
    SameTwice,
    Unread,
)
from onewhole.presses.paper import reading_pages
from onewhole.presses.paper.cells import HIGH, WIDE
from onewhole.presses.paper.decoding import decoded
from onewhole.presses.paper.reading_pages import KnownPaper, PagesRead, ReadPage, read_pages
from onewhole.sheets.page_marks import PageMarks, corner_marks
from tests.kit.papers import LARGE, LINES, mapped
from tests.kit.photos import EASY, KINDS, Grey, Shot, jpeg, photographed, scanned, table
from tests.kit.written_papers import FINE, dotted, known, paper, without_marks

CODES = ["K01", "K02", "K03"]
#: Answers of LINES whose place is empty but for a line further down.
OVER_A_LINE = {"1", "4", "5", "7"}


def _shot(page: Grey, shot: Shot = EASY, seed: int = 3) -> bytes:
    return jpeg(photographed(page, FINE, replace(shot, longest=min(shot.longest, 2000)), seed), shot.quality)


def _read(*files: bytes, text: str = LINES) -> PagesRead:
    named = [(f"{number}.jpg", content) for number, content in enumerate(files, start=1)]
    return read_pages(named, [known(text)], CODES)


def _off(page: ReadPage) -> float:
    """How far the dot in the middle of a place is from there at most, in picture elements."""
    found = []
    for cell in page.cells:
        dark = (220 - cell.crop.astype(np.float64)).clip(0)
        if cell.label not in OVER_A_LINE:
            continue
        dark[:, : WIDE // 2 - 20] = dark[:, WIDE // 2 + 20 :] = 0
        dark[: HIGH // 2 - 20] = dark[HIGH // 2 + 20 :] = 0
        down, across = ((dark * grid).sum() / dark.sum() for grid in np.indices(dark.shape))
        found.append(max(abs(across - (WIDE - 1) / 2), abs(down - (HIGH - 1) / 2)))
    return float(max(found))


@pytest.mark.parametrize("kind", KINDS)
def test_places_are_cut_where_they_are(kind: str) -> None:
    """Aslant, upside down, bent by 3 mm, in shadow, blurred: a dot stays in the middle, to 1/3 mm."""
    found = _read(_shot(paper(LINES, 2, write=dotted), KINDS[kind]))
    assert found.found == ()
    (page,) = found.pages
    assert (page.key, page.page) == (mapped(LINES).key, 2)
    assert [cell.label for cell in page.cells] == [cell.label for cell in mapped(LINES).pages[1].cells]
    assert {cell.crop.shape for cell in page.cells} == {(HIGH, WIDE)}
    print(f"{kind}: {_off(page):.2f}")
    assert _off(page) <= 4 / 3


ODD = {
    "on its side": replace(EASY, turn=91),
    "on its other side": replace(EASY, turn=268),
    "a dark table": replace(EASY, table=20, light=0.6),
    "a white table": replace(EASY, table=235, paper=240),
    "a lamp in a clear folder": replace(EASY, glare=(0.5, 0.5, 0.12)),
    "a lamp on one mark": replace(EASY, glare=(0.1, 0.08, 0.08)),
}


@pytest.mark.parametrize("kind", ODD)
def test_an_odd_place_to_take_a_picture(kind: str) -> None:
    """On its side, on a dark or a white table, in a clear folder under a lamp: the page is whose it is."""
    found = _read(_shot(paper(LARGE, pupil="K02"), ODD[kind]), text=LARGE)
    assert [(page.pupil, page.page) for page in found.pages] == [("K02", 1)]
    assert [type(one) for one in found.found] == [PageMissing]


def test_a_folder_that_is_all_glare_is_told() -> None:
    """Nothing is read off it, and it is said what may be done."""
    found = _read(_shot(paper(LARGE, pupil="K02"), replace(EASY, glare=(0.5, 0.5, 2.0))), text=LARGE)
    assert (found.pages, found.found) == ((), (NoPage("1.jpg"),))


@pytest.mark.more("desk/paper/test_press_reading.py")
def test_several_papers_on_a_table() -> None:
    """Copies of one page have the same marks: each is found, with the code of its pupil."""
    pages = [paper(LINES, 1, "K01", dotted), paper(LINES, 2, "K01", dotted), paper(LINES, 1, "K02", dotted)]
    pages.append(paper(LINES, 1, "K03", dotted))
    places = [(0.26, 0.26), (0.74, 0.27), (0.26, 0.75), (0.74, 0.74)]
    seen = table(pages, FINE, places, EASY, 4, (2400, 3000), over=2.05)
    found = _read(jpeg(seen))
    assert sorted((str(page.pupil), page.page) for page in found.pages) == [
        ("K01", 1),
        ("K01", 2),
        ("K02", 1),
        ("K03", 1),
    ]
    assert found.found == (PageMissing("K02", (2,)), PageMissing("K03", (2,)))
    assert max(_off(page) for page in found.pages) <= 1.2


@pytest.mark.more("desk/paper/test_press_reading.py")
@pytest.mark.parametrize("bitonal", [False, True])
def test_a_stack_through_a_scanner(bitonal: bool) -> None:
    """Every page of its PDF, in grey and in black and white."""
    pages = [paper(LINES, number, pupil) for pupil in ("K01", "K02") for number in (1, 2)]
    found = read_pages([("scan.pdf", scanned(pages, bitonal=bitonal))], [known(LINES)], CODES)
    assert [(page.picture, page.pupil, page.page) for page in found.pages] == [
        ("scan.pdf, page 1", "K01", 1),
        ("scan.pdf, page 2", "K01", 2),
        ("scan.pdf, page 3", "K02", 1),
        ("scan.pdf, page 4", "K02", 2),
    ]
    assert found.found == ()


@pytest.mark.parametrize("hidden", range(4))
def test_a_thumb_on_one_mark_loses_nothing(hidden: int) -> None:
    """Three marks are enough, on bent paper too."""
    one = mapped(LINES).pages[1]
    found = _read(_shot(without_marks(paper(LINES, 2, write=dotted), one, hidden), KINDS["curled"]))
    (page,) = found.pages
    print(f"{hidden}: {_off(page):.2f}")
    assert _off(page) <= 1.2


def test_a_blurred_page_is_looked_at_again() -> None:
    """Where the quick look misses a mark, the picture is sharpened and made larger."""
    blurred = Shot(longest=1600, turn=12, tilt=(9, -7), blur=1.7, noise=3, paper=190)
    (page,) = _read(_shot(paper(LINES, 2, "K01", dotted), blurred, 5)).pages
    assert _off(page) <= 1.2


def test_half_a_page_is_told() -> None:
    """Two marks are too few, and so is a page that the picture cuts through."""
    one = mapped(LARGE).pages[0]
    two_hidden = _shot(without_marks(paper(LARGE), one, 0, 1))
    whole = photographed(paper(LARGE), FINE, replace(EASY, longest=2000), 3)
    found = _read(two_hidden, jpeg(whole[: len(whole) // 2]), text=LARGE)
    assert found.pages == ()
    assert found.found == (HalfPage("1.jpg", 2), HalfPage("2.jpg", 2))


def test_what_is_no_page_is_told() -> None:
    """A table, and a printed page without marks; the one between them is read."""
    wood = table([], FINE, [], EASY, 1, (900, 1200), over=1)
    one = mapped(LARGE).pages[0]
    found = _read(
        jpeg(wood), _shot(paper(LARGE)), _shot(without_marks(paper(LARGE), one, 0, 1, 2, 3)), text=LARGE
    )
    assert [page.picture for page in found.pages] == ["2.jpg"]
    assert found.found == (NoPage("1.jpg"), NoPage("3.jpg"))


@pytest.mark.parametrize("hidden", [(), (2,)])
def test_a_page_of_another_night_or_teacher_is_told_by_its_key(hidden: tuple[int, ...]) -> None:
    """What its marks say tells which one it is, also where a thumb is on one of them."""
    there = without_marks(paper(LINES, 2), mapped(LINES).pages[1], *hidden)
    found = _read(_shot(there), text=LARGE)
    assert found.pages == ()
    assert found.found == (OtherPage("1.jpg", mapped(LINES).key, 2),)


@pytest.mark.parametrize("hidden", [(0,), (2,)])
def test_a_pupil_s_copy_of_another_night_is_told_with_a_thumb_on_it(hidden: tuple[int, ...]) -> None:
    """The marks of the pupil's code, which stand between the corners, are not taken for these."""
    there = without_marks(paper(LINES, 2, "K01"), mapped(LINES).pages[1], *hidden)
    assert _read(_shot(there), text=LARGE).found == (OtherPage("1.jpg", mapped(LINES).key, 2),)


def test_three_marks_are_never_called_too_few() -> None:
    """A page folded over, with three of its marks or more in the picture, lies in no way flat."""
    one = mapped(LARGE).pages[0]
    whole = without_marks(paper(LARGE), one, 3)
    half = whole.shape[0] // 2
    apart = np.vstack([whole[:half], np.full((half, whole.shape[1]), 255, np.uint8), whole[half:]])
    assert _read(_shot(apart), text=LARGE).found == (NotFlat("1.jpg"),)


@pytest.mark.more("desk/paper/test_press_reading.py")
def test_another_version_is_asked_for_once_and_read() -> None:
    """A page of a key that is not known is read at once where the key is known elsewhere."""
    asked = []

    def more(key: int) -> KnownPaper | None:
        asked.append(key)
        return known(LINES) if key == mapped(LINES).key else None

    files = [(name, _shot(paper(LINES, 2, "K01"))) for name in ("1.jpg", "2.jpg")]
    found = read_pages(files, [known(LARGE)], CODES, more=more)
    assert {(page.key, page.page, page.pupil) for page in found.pages} == {(mapped(LINES).key, 2, "K01")}
    assert [type(one) for one in found.found] == [SameTwice, PageMissing]
    assert asked == [mapped(LINES).key]


def test_marks_that_fit_no_flat_page_are_told() -> None:
    """A page cut in two and laid together wrongly has all four marks."""
    whole = paper(LARGE)
    half = whole.shape[0] // 2
    apart = np.vstack([whole[:half], np.full((half, whole.shape[1]), 255, np.uint8), whole[half:]])
    assert _read(_shot(apart), text=LARGE).found == (NotFlat("1.jpg"),)


def test_a_page_with_the_right_marks_and_other_print_is_not_cut() -> None:
    """What is printed on it is not what our page has: nothing is read off it."""
    one = mapped(LARGE).pages[0]
    grey = paper(LARGE)
    middle = grey[one.marks[0].top * FINE // 100 + 8 * FINE : one.marks[2].top * FINE // 100 - FINE]
    middle[:] = np.roll(middle[:, ::-1], 300, axis=0)
    assert _read(_shot(grey), text=LARGE).found == (NotFlat("1.jpg"),)


@pytest.mark.more("desk/paper/test_press_reading.py")
def test_of_one_page_of_one_pupil_the_sharper_picture_is_taken() -> None:
    """Whichever came first, and it is told; a page that lacks is told by pupil."""
    sharp, blurred = _shot(paper(LINES, 1, "K02")), _shot(paper(LINES, 1, "K02"), KINDS["blurred"])
    for order, taken in (((sharp, blurred), "1.jpg"), ((blurred, sharp), "2.jpg")):
        found = _read(*order)
        assert [page.picture for page in found.pages] == [taken]
        left = {"1.jpg": "2.jpg", "2.jpg": "1.jpg"}[taken]
        assert found.found == (SameTwice("K02", 1, taken, left), PageMissing("K02", (2,)))


@pytest.mark.more("desk/paper/test_press_reading.py")
def test_whose_page_it_is() -> None:
    """By its two marks; those of another class are told; without any the boxes for a code are cut out."""
    found = _read(_shot(paper(LINES, 2, "K03")), _shot(paper(LINES, 2, "K77")), _shot(paper(LINES, 2)))
    assert [page.pupil for page in found.pages] == ["K03", None, None]
    assert found.found == (Nobody("2.jpg", 2, stranger=True), PageMissing("K03", (1,)))
    assert [letter.label for letter in found.pages[2].letters] == ["1", "2", "3"]


def test_a_bad_file_never_stops_the_others() -> None:
    """Each is told by its name."""
    found = _read(b"Kites fly.", _shot(paper(LARGE)), _shot(paper(LARGE))[:3000], text=LARGE)
    assert [page.picture for page in found.pages] == ["2.jpg"]
    assert found.found == (
        PictureUnread("1.jpg", Unread.NO_PICTURE),
        PictureUnread("3.jpg", Unread.CUT),
    )


def test_too_many_files_are_told(monkeypatch: pytest.MonkeyPatch) -> None:
    """Those in front of them are read, and no more are asked for."""
    monkeypatch.setattr(reading_pages, "MOST_FILES", 2)
    files = iter([(f"{number}.txt", b"Kites fly.") for number in range(5)])
    found = read_pages(files, [known(LARGE)])
    assert found.found == (
        PictureUnread("0.txt", Unread.NO_PICTURE),
        PictureUnread("1.txt", Unread.NO_PICTURE),
        PicturesLeft(2),
    )
    assert [name for name, _ in files] == ["3.txt", "4.txt"]


@pytest.mark.more("presses/paper/test_decoding.py")
def test_a_picture_that_takes_hours_to_look_at_is_ended() -> None:
    """Forty thousand squares may each be a mark; the limit of time holds for looking as for decoding."""
    across, down = np.indices((4000, 4000)) // 20
    squares = ((across + down) % 2 * 255).astype(np.uint8)
    (found,) = decoded(_png(squares), "a.png", seconds=0)
    assert found == PictureUnread("a.png", Unread.EFFORT)


def _png(grey: Grey) -> bytes:
    """Return a picture as PNG."""
    done, file = cv2.imencode(".png", grey)
    assert done
    return file.tobytes()


@pytest.mark.more("presses/paper/test_decoding.py")
def test_a_picture_full_of_marks_gives_no_page_and_ends() -> None:
    """The marks of one page, a thousand times; how often they are put together has a limit."""
    numbers = corner_marks(PageMarks(mapped(LARGE).key, 1))
    marks = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_5X5_1000)
    grey = np.full((1400, 1400), 255, np.uint8)
    for at in range(400):
        x, y = 20 + at % 20 * 68, 20 + at // 20 * 68
        grey[y : y + 49, x : x + 49] = cv2.aruco.generateImageMarker(marks, numbers[at % 7 % 4], 49)
    found = _read(_png(grey), text=LARGE)
    assert found.pages == ()
    assert found.found in {(NotFlat("1.jpg"),), (OtherPage("1.jpg", mapped(LARGE).key, 1),)}
