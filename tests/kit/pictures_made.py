"""Files of pictures for tests: every format that is read, and files that do harm."""

import zlib
from io import BytesIO
from typing import Final

import pillow_heif
from PIL import Image, ImageDraw

#: The picture of the tests: wider than high, dark at its left upper corner alone.
WIDTH, HEIGHT, CORNER = 120, 80, 30


def corner(mode: str = "L") -> Image.Image:
    """Return a white picture with a black square at the left above."""
    picture = Image.new("L", (WIDTH, HEIGHT), 255)
    ImageDraw.Draw(picture).rectangle((0, 0, CORNER, CORNER), fill=0)
    return picture.convert(mode)


def saved(picture: Image.Image, kind: str, **how: object) -> bytes:
    """Return a picture as a file of a kind."""
    file = BytesIO()
    if kind == "HEIF":
        pillow_heif.register_heif_opener()
    picture.save(file, kind, **how)
    return file.getvalue()


def turned(number: int) -> Image.Exif:
    """Return what a camera writes that was held in one of eight ways, and where it was."""
    exif = Image.Exif()
    exif[0x0112] = number
    exif[0x010F] = "KITE CAMERAS"
    return exif


def pdf(*pages: str, size: str = "0 0 612 792", pack: bool = True, more: tuple[bytes, ...] = ()) -> bytes:
    """Return a PDF of pages from their drawing commands; ``more`` are objects from 3 on, named X3, X4 ..."""
    first = 3 + len(more)
    kids = " ".join(f"{first + 2 * at} 0 R" for at in range(len(pages)))
    named = " ".join(f"/X{number} {number} 0 R" for number in range(3, first))
    objects = [
        b"<< /Type /Catalog /Pages 2 0 R >>",
        f"<< /Type /Pages /Kids [{kids}] /Count {len(pages)} >>".encode(),
        *more,
    ]
    for at, drawn in enumerate(pages):
        number = first + 2 * at
        page = (
            f"<< /Type /Page /Parent 2 0 R /MediaBox [{size}] /Contents {number + 1} 0 R"
            f" /Resources << /XObject << {named} >> >> >>"
        )
        objects += [page.encode(), stream(drawn.encode(), pack=pack)]
    return _file(objects)


def stream(content: bytes, head: str = "", *, pack: bool = True) -> bytes:
    """Return an object of a PDF that holds bytes."""
    body = zlib.compress(content, 9) if pack else content
    how = " /Filter /FlateDecode" if pack else ""
    return f"<< {head} /Length {len(body)}{how} >>\nstream\n".encode() + body + b"\nendstream"


#: Draws a black square at the left above of a page of US Letter.
SQUARE: Final = "0 600 192 192 re f"


def _file(objects: list[bytes]) -> bytes:
    file = bytearray(b"%PDF-1.7\n")
    places = []
    for number, content in enumerate(objects, start=1):
        places.append(len(file))
        file += f"{number} 0 obj\n".encode() + content + b"\nendobj\n"
    start = len(file)
    file += f"xref\n0 {len(objects) + 1}\n0000000000 65535 f \n".encode()
    for place in places:
        file += f"{place:010} 00000 n \n".encode()
    file += f"trailer\n<< /Size {len(objects) + 1} /Root 1 0 R >>\nstartxref\n{start}\n%%EOF\n".encode()
    return bytes(file)
