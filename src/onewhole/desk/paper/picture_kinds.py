"""Which files may be pictures of papers, by how they begin: told at once, before anything is read."""

#: How files of pictures begin that are read, and some that are not read but are no fault of the teacher's
#: choice either: what becomes of each is told by the reading. The signatures are those of the formats'
#: standards (JPEG: ISO/IEC 10918-1, PNG: ISO/IEC 15948, TIFF 6.0, GIF89a, RIFF for WebP: RFC 9649, BMP).
_BEGINS = (
    b"\xff\xd8\xff",
    b"\x89PNG\r\n\x1a\n",
    b"II*\0",
    b"MM\0*",
    b"II+\0",
    b"MM\0+",
    b"GIF8",
    b"RIFF",
    b"BM",
)
#: A PDF says so within so many bytes (ISO 32000-1, annex H), HEIC and AVIF at this place (ISO/IEC 14496-12).
_PDF_WITHIN, _BOX = 1024, slice(4, 8)


def is_picture(content: bytes) -> bool:
    """Say whether a file begins as a picture or a scan does.

    >>> is_picture(b"%PDF-1.7"), is_picture(b"<script>")
    (True, False)
    """
    return content.startswith(_BEGINS) or content[_BOX] == b"ftyp" or b"%PDF-" in content[:_PDF_WITHIN]
