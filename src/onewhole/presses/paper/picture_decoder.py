"""The process that decodes a photo for `decoding`. What a file is is decided by what it holds."""

from collections.abc import Iterator
from importlib import import_module
from io import BytesIO
from typing import Final

import pillow_heif
from PIL import Image, UnidentifiedImageError

from onewhole.findings.in_pictures import Unread
from onewhole.presses.limited import limit_time
from onewhole.presses.paper.sending import MOST_PAGES, Refused, send_pages

#: The most millions of picture elements that a picture has. A JPEG can be made smaller while it is decoded,
#: in little memory, so it may have more: phones take 200.
MOST_PIXELS: Final = 64
MOST_PIXELS_JPEG: Final = 256
#: No picture leaves this process larger than this along its longer side: 14 for each millimetre of a page.
LONGEST: Final = 4200
#: A JPEG is made smaller while it is decoded where so many are left.
_ENOUGH: Final = 3500

#: What is decoded, by the names of the library; it knows many more, that nobody photographs with.
_PLUGINS: Final = ("Jpeg", "Png", "Tiff", "WebP")
_FORMATS: Final = ("JPEG", "PNG", "TIFF", "WEBP", "HEIF")
_MILLION: Final = 1_000_000
#: Sixteen bits a picture element; the upper eight are what is seen.
_DEEP: Final = ("I;16", "I;16B", "I;16L", "I;16N", "I")
#: The number of the line in EXIF and TIFF that says how the camera was held, and what puts each right.
#: Source: CIPA DC-008 (Exif 2.3), 0x0112.
_TURNED: Final = 0x0112
_TURNS: Final = {
    2: Image.Transpose.FLIP_LEFT_RIGHT,
    3: Image.Transpose.ROTATE_180,
    4: Image.Transpose.FLIP_TOP_BOTTOM,
    5: Image.Transpose.TRANSPOSE,
    6: Image.Transpose.ROTATE_270,
    7: Image.Transpose.TRANSVERSE,
    8: Image.Transpose.ROTATE_90,
}
#: What the library raises for a file that is not as it should be.
_BROKEN: Final = (OSError, SyntaxError, ValueError, RuntimeError, EOFError)


def decode_for_parent() -> None:
    """Send the picture in grey; of a TIFF every page, of others the picture that is shown first."""
    Image.MAX_IMAGE_PIXELS = None  # our own limit stands below, and says what it is
    for kind in _PLUGINS:
        import_module(f"PIL.{kind}ImagePlugin")
    pillow_heif.register_heif_opener(thumbnails=False)
    send_pages(_decoded)


def _decoded(content: bytes, first: int, seconds: int) -> Iterator[tuple[int, Image.Image] | int]:
    limit_time(seconds)
    try:
        file = Image.open(BytesIO(content), formats=_FORMATS)
        there = getattr(file, "n_frames", 1) if file.format == "TIFF" else 1
    except UnidentifiedImageError as error:
        raise Refused(Unread.NO_PICTURE if content else Unread.EMPTY) from error
    except _BROKEN as error:
        raise Refused(Unread.DAMAGED) from error
    for number in range(first, min(there, MOST_PAGES) + 1):
        limit_time(seconds)
        try:
            file.seek(number - 1)
        except _BROKEN as error:
            raise Refused(Unread.DAMAGED) from error
        yield number, _grey(file)
    yield there


def _grey(file: Image.Image) -> Image.Image:
    """Return a picture in grey, the right way up, no larger than wanted, on white where it is clear."""
    most = MOST_PIXELS_JPEG if file.format in {"JPEG", "MPO"} else MOST_PIXELS
    if file.width * file.height > most * _MILLION:
        raise Refused(Unread.PIXELS, most)
    longest = max(file.size)
    file.draft("L", (file.width * _ENOUGH // longest, file.height * _ENOUGH // longest))
    if file.width * file.height > MOST_PIXELS * _MILLION:
        raise Refused(Unread.PIXELS, MOST_PIXELS)
    try:
        file.load()
        turn = _TURNS.get(file.getexif().get(_TURNED, 1))
    except _BROKEN as error:
        raise Refused(Unread.CUT if "truncated" in str(error) else Unread.DAMAGED) from error
    grey = _without_colour(file)
    factor = -(-max(grey.size) // LONGEST)
    if factor > 1:
        grey = grey.reduce(factor)
    return grey if turn is None else grey.transpose(turn)


def _without_colour(picture: Image.Image) -> Image.Image:
    if picture.mode in _DEEP:
        picture = picture.convert("I").point(lambda value: value * (1 / 256))
    elif picture.has_transparency_data:
        clear = picture.convert("RGBA")
        picture = Image.new("RGBA", clear.size, "white")
        picture.alpha_composite(clear)
    return picture.convert("L")
