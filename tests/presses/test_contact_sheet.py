"""A contact sheet shows every picture with its words, under headings."""

from io import BytesIO

from PIL import Image

from onewhole.presses.contact_sheet import MOST_ON_SHEET, ContactPart, contact_sheet


def _png(grey: int, size: tuple[int, int] = (240, 96)) -> bytes:
    made = BytesIO()
    Image.new("L", size, grey).save(made, "png")
    return made.getvalue()


def _greys(sheet: bytes) -> list[int]:
    """Return how many points there are of each grey, from 0 to 255."""
    with Image.open(BytesIO(sheet)) as picture:
        return picture.convert("L").histogram()


def test_every_picture_is_on_it() -> None:
    """Whole, four in a row, whatever its size; words that are too long are cut."""
    pictures = tuple((_png(100 + at), f"K{at:02}, 1: {'why ' * 40}", "3 3/6 | 3 5/6") for at in range(5))
    large = (_png(90, (480, 192)), "", "")
    sheet = contact_sheet("Look at these", (ContactPart("To be looked at", (*pictures, large)),))
    greys = _greys(sheet)
    assert all(greys[100 + at] >= 240 * 96 for at in range(5))
    assert greys[90] >= 240 * 96
    with Image.open(BytesIO(sheet)) as picture:
        assert picture.format == "PNG"
        assert picture.width == 2 * 24 + 4 * 264


def test_a_picture_that_is_none_leaves_its_frame() -> None:
    """The others are there; nothing at all is a sheet with its headings."""
    sheet = contact_sheet("", (ContactPart("a", ((b"no picture", "K01", ""), (_png(99), "K02", ""))),))
    assert 240 * 96 <= _greys(sheet)[99] < 2 * 240 * 96
    assert contact_sheet("Nothing", ()).startswith(b"\x89PNG")


def test_no_sheet_grows_without_end() -> None:
    """Beyond so many pictures nobody looks."""
    one = (_png(77), "", "")
    sheet = contact_sheet("", (ContactPart("a", (one,) * 300), ContactPart("b", (one,) * 300)))
    assert _greys(sheet)[77] // (240 * 96) == MOST_ON_SHEET
