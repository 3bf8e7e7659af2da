"""A file's name made of a title that a teacher typed: one that every system takes."""

import re

#: What no name may hold on Windows, and control signs. Source of this and of the words below: "Naming Files,
#: Paths, and Namespaces" (Microsoft), from memory; the tests ask Python's own `ntpath`.
_NOT_TAKEN = re.compile(r'[<>:"/\\|?*\x00-\x1f\x7f]')
_DEVICES = re.compile(r"(con|prn|aux|nul|conin\$|conout\$|(com|lpt)[0-9¹²³]) *(\.|$)", re.IGNORECASE)
#: A name is so many signs long at most, without its ending: of four bytes each, it still fits on a disk.
LONGEST = 60


def file_name(title: str, ending: str) -> str:
    """Return a name for a file: the title, with dashes where a system takes no such sign.

    It begins with no blank or full stop (a hidden file), ends with none before its ending, and is no device.

    >>> file_name("Kites: 3/8 or more?", "pdf"), file_name("aux", "pdf"), file_name(" .. ", "pdf")
    ('Kites- 3-8 or more-.pdf', '_aux.pdf', 'page.pdf')
    """
    name = _NOT_TAKEN.sub("-", title).strip(" .")[:LONGEST].rstrip(" .") or "page"
    return f"_{name}.{ending}" if _DEVICES.match(f"{name}.") else f"{name}.{ending}"
