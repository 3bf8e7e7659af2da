"""What kind of picture a file is, by how it begins and whatever its name says.

The signatures are those of the formats: JPEG (ISO/IEC 10918-1), PNG (ISO/IEC 15948), TIFF 6.0, WebP (RFC
9649), HEIC and AVIF (ISO/IEC 14496-12), GIF89a, BMP.
"""

from typing import Final

_PDF: Final = b"%PDF-"
#: Other bytes may stand before the mark of a PDF. Source: ISO 32000-1, annex H.3, note 13, from memory.
_PDF_WITHIN: Final = 1024 + len(_PDF)
_TIFF: Final = (b"II*\0", b"MM\0*", b"II+\0", b"MM\0+")
_OTHERS: Final = (b"\xff\xd8\xff", b"\x89PNG\r\n\x1a\n", b"RIFF", b"GIF8", b"BM")
_BOX: Final = slice(4, 8)


def is_pdf(content: bytes) -> bool:
    """Say whether a file is a PDF."""
    return _PDF in content[:_PDF_WITHIN]


def has_pages(content: bytes) -> bool:
    r"""Say whether a file is of a kind that can have several pages.

    >>> has_pages(b"II*\0"), has_pages(b"BM")
    (True, False)
    """
    return is_pdf(content) or content.startswith(_TIFF)


def is_picture(content: bytes) -> bool:
    """Say whether a file begins as a picture or a scan does, also as one of a kind that is not read.

    >>> is_picture(b"%PDF-1.7"), is_picture(b"<script>")
    (True, False)
    """
    return has_pages(content) or content.startswith(_OTHERS) or content[_BOX] == b"ftyp"
