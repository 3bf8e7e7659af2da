"""Files of pictures decoded in a process of their own: any format, right way up, and no bomb goes off."""

import io
from collections.abc import Callable

import numpy as np
import pikepdf
import pytest
from PIL import Image, ImageOps

from onewhole.findings.in_pictures import PagesLeft, PictureRefused, PictureUnread, Unread
from onewhole.presses.paper.decoding import LARGEST, GreyPage, decoded
from onewhole.presses.paper.pdf_drawer import DRAWN
from onewhole.presses.paper.picture_decoder import LONGEST, MOST_PIXELS
from onewhole.presses.paper.sending import MOST_PAGES
from tests.kit.pictures_made import CORNER, HEIGHT, SQUARE, WIDTH, corner, pdf, saved, stream, turned


def _pages(content: bytes, name: str = "a.jpg", seconds: int = 15) -> list[GreyPage | PictureRefused]:
    return list(decoded(content, name, seconds=seconds))


def _one(content: bytes) -> GreyPage:
    (found,) = _pages(content)
    assert isinstance(found, GreyPage)
    return found


def _like_corner(grey: np.ndarray) -> bool:
    """Whether a picture is dark at the left above and white elsewhere."""
    high, wide = grey.shape
    dark = grey[: high * CORNER // HEIGHT - 2, : wide * CORNER // WIDTH - 2]
    return bool(dark.mean() < 30 and grey[high // 2 :].mean() > 225 and grey[:, wide // 2 :].mean() > 225)


@pytest.mark.parametrize(
    ("kind", "mode"),
    [
        *(("JPEG", mode) for mode in ("L", "RGB", "CMYK")),
        *(("PNG", mode) for mode in ("1", "L", "LA", "P", "RGB", "RGBA", "I;16")),
        *(("TIFF", mode) for mode in ("1", "L", "RGB")),
        ("WEBP", "RGB"),
        ("HEIF", "RGB"),
    ],
)
def test_a_picture_is_read_whatever_its_name_says(kind: str, mode: str) -> None:
    """What the file holds decides; grey comes out in the size that it has."""
    picture = (
        Image.fromarray(np.asarray(corner()).astype(np.uint16) * 257) if mode == "I;16" else corner(mode)
    )
    (found,) = _pages(saved(picture, kind), "a.txt")
    assert isinstance(found, GreyPage)
    assert found.name == ("a.txt, page 1" if kind == "TIFF" else "a.txt")
    assert found.grey.shape == (HEIGHT, WIDTH)
    assert _like_corner(found.grey)


@pytest.mark.parametrize(
    ("kind", "number"), [*(("JPEG", number) for number in range(1, 9)), ("PNG", 6), ("TIFF", 6), ("WEBP", 8)]
)
def test_a_picture_comes_the_right_way_up(kind: str, number: int) -> None:
    """However the camera was held: the file is one that a viewer shows upright.

    The ways back are Pillow's own, one by one.
    """
    back = Image.Exif()
    back[0x0112] = {6: 8, 8: 6}.get(number, number)
    held = corner()
    held.info["exif"] = back.tobytes()
    held = ImageOps.exif_transpose(held)
    found = _one(saved(held, kind, exif=turned(number)))
    assert found.grey.shape == (HEIGHT, WIDTH)
    assert _like_corner(found.grey)


def test_a_picture_of_a_phone_with_heic_comes_the_right_way_up() -> None:
    """The box that says how it was held is followed once, and what EXIF says beside it not again."""
    held = corner("RGB").transpose(Image.Transpose.ROTATE_90)
    assert _like_corner(_one(saved(held, "HEIF", exif=turned(6).tobytes())).grey)


def test_what_is_clear_is_white() -> None:
    """A drawing on nothing is one on paper."""
    clear = Image.new("RGBA", (WIDTH, HEIGHT), (0, 0, 0, 0))
    clear.paste(Image.new("RGBA", (CORNER, CORNER), "black"), (0, 0))
    assert _like_corner(_one(saved(clear, "PNG")).grey)


def test_every_page_of_a_scan_comes() -> None:
    """Of a PDF and of a TIFF, in their order, each named by its number; in no size that the file chooses."""
    found = _pages(pdf(SQUARE, "", SQUARE), "scan.pdf")
    assert [one.name for one in found if isinstance(one, GreyPage)] == [
        f"scan.pdf, page {number}" for number in (1, 2, 3)
    ]
    for one, square in zip(found, (True, False, True), strict=True):
        assert isinstance(one, GreyPage)
        assert max(one.grey.shape) == DRAWN
        assert bool(one.grey[100, 100] < 10) is square
    white = Image.new("L", (WIDTH, HEIGHT), 255)
    tiff = saved(corner(), "TIFF", save_all=True, append_images=[white, corner()])
    assert [_like_corner(one.grey) for one in _pages(tiff) if isinstance(one, GreyPage)] == [
        True,
        False,
        True,
    ]


def test_no_picture_is_larger_than_wanted() -> None:
    """A photo of 108 megapixels is made smaller while it is decoded."""
    large = saved(corner().resize((12000, 8000)), "JPEG")
    found = _one(large)
    assert LONGEST // 2 < max(found.grey.shape) <= LONGEST
    assert _like_corner(found.grey)


@pytest.mark.parametrize(
    ("content", "why", "most"),
    [
        (lambda: b"", Unread.EMPTY, 0),
        (lambda: b"Kites fly.", Unread.NO_PICTURE, 0),
        (lambda: b"%PDF-1.7\nkites", Unread.DAMAGED, 0),
        (pdf, Unread.DAMAGED, 0),
        (lambda: saved(corner(), "GIF"), Unread.NO_PICTURE, 0),
        (lambda: saved(corner(), "EPS"), Unread.NO_PICTURE, 0),
        (lambda: saved(Image.effect_noise((400, 400), 50), "JPEG")[:9000], Unread.CUT, 0),
        (lambda: saved(Image.effect_noise((400, 400), 50), "PNG")[:9000], Unread.CUT, 0),
        (lambda: saved(Image.effect_noise((400, 400), 50).convert("RGB"), "HEIF")[:9000], Unread.DAMAGED, 0),
        (lambda: saved(Image.new("1", (20_000, 10_000), 1), "PNG"), Unread.PIXELS, MOST_PIXELS),
        (
            lambda: saved(Image.new("1", (20_000, 10_000), 1), "TIFF", compression="group4"),
            Unread.PIXELS,
            MOST_PIXELS,
        ),
    ],
    ids=["empty", "text", "no pdf", "no pages", "gif", "eps", "jpeg", "png", "heic", "png 200", "tiff 200"],
)
def test_what_cannot_be_read_says_why(content: Callable[[], bytes], why: Unread, most: int) -> None:
    """A file that is no picture, is cut short, or has 200 megapixels in a few kilobytes."""
    (found,) = _pages(content())
    assert isinstance(found, PictureUnread)
    assert (found.picture.partition(",")[0], found.why, found.most) == ("a.jpg", why, most)


def test_a_locked_pdf_says_that_it_is_locked() -> None:
    """Without its password nothing is drawn."""
    file = io.BytesIO()
    with pikepdf.open(io.BytesIO(pdf(SQUARE))) as made:
        made.save(file, encryption=pikepdf.Encryption(owner="kite", user="kite"))
    assert _pages(file.getvalue(), "scan.pdf") == [PictureUnread("scan.pdf, page 1", Unread.LOCKED)]


def test_a_file_that_is_too_large_is_not_even_looked_at() -> None:
    """Its bytes are counted first."""
    assert _pages(bytes(LARGEST * 1_000_000 + 1)) == [PictureUnread("a.jpg", Unread.BYTES, LARGEST)]


@pytest.mark.more("presses/paper/test_reading_pages.py")
def test_a_pdf_of_very_many_pages_is_read_up_to_the_limit() -> None:
    """Those behind are told; nothing is drawn twice."""
    found = list(decoded(pdf(*[""] * (MOST_PAGES + 4), size="0 0 30 1"), "scan.pdf"))
    assert found[-1] == PagesLeft("scan.pdf", MOST_PAGES, MOST_PAGES + 4)
    assert len(found) == MOST_PAGES + 1


def _image(side: int) -> bytes:
    """Return an object that says it is an image of many picture elements, packed very tightly."""
    head = f"/Type /XObject /Subtype /Image /Width {side} /Height {side} /ColorSpace /DeviceRGB"
    return stream(bytes(3 * 4_000_000), f"{head} /BitsPerComponent 8")


_FORM = "/Type /XObject /Subtype /Form /BBox [0 0 612 792] /Resources << /XObject << /X3 3 0 R >> >>"
BOMBS: dict[str, Callable[[], bytes]] = {
    "a page of two kilometres": lambda: pdf(SQUARE, size="0 0 5669291 5669291"),
    "an image of 3,600 megapixels": lambda: pdf("600 0 0 700 0 0 cm /X3 Do", more=(_image(60_000),)),
    "a form within itself": lambda: pdf("/X3 Do", more=(stream(b"/X3 Do /X3 Do", _FORM),)),
    "a hundred thousand states in each other": lambda: pdf("q " * 100_000 + SQUARE),
    "arrays in each other": lambda: pdf("[" * 1_000_000),
    "pages within themselves": lambda: pdf(SQUARE).replace(b"/Kids [3 0 R]", b"/Kids [2 0 R]"),
}


@pytest.mark.parametrize("content", BOMBS.values(), ids=BOMBS)
def test_no_bomb_goes_off(content: Callable[[], bytes]) -> None:
    """Whatever a PDF says of itself, a page of usual size comes, or why there is none."""
    for found in _pages(content(), "scan.pdf", seconds=2):
        match found:
            case GreyPage():
                assert max(found.grey.shape) <= DRAWN
            case PictureUnread():
                assert found.why in {Unread.DAMAGED, Unread.EFFORT, Unread.EMPTY}
            case _:
                pytest.fail(f"{found}")


@pytest.mark.more("presses/paper/test_reading_pages.py")
def test_a_page_that_takes_too_long_is_not_in_the_way_of_the_next() -> None:
    """Its process is ended, and another reads on behind it."""
    slow = "0.5 w " + "0 0 m 612 792 l 0 792 l 612 0 l 9 9 m 300 700 l S " * 300_000
    found = _pages(pdf(SQUARE, slow, SQUARE), "scan.pdf", seconds=0)
    assert [type(one) for one in found] == [GreyPage, PictureUnread, GreyPage]
    assert found[1] == PictureUnread("scan.pdf, page 2", Unread.EFFORT)
    assert isinstance(found[2], GreyPage)
    assert found[2].name == "scan.pdf, page 3"


@pytest.mark.more("presses/paper/test_reading_pages.py")
def test_the_largest_that_is_read_fits_the_memory() -> None:
    """64 megapixels in colour, which no JPEG, are read; a picture of one more is not."""
    assert max(_one(saved(Image.new("RGB", (8000, 8000), "white"), "PNG")).grey.shape) <= LONGEST
    (found,) = _pages(saved(Image.new("RGB", (8001, 8000), "white"), "PNG"))
    assert found == PictureUnread("a.jpg", Unread.PIXELS, MOST_PIXELS)
