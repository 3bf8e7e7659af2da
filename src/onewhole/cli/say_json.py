"""JSON on standard output, for other programs."""

import json

from onewhole.cli.screen import plain


def say_json(found: object) -> None:
    """Print an object as JSON; what is exact is printed as a float."""
    print(json_text(found))


def json_text(found: object) -> str:
    r"""Return an object as JSON text; a sign that a terminal may not show is escaped, and not lost.

    >>> print(json_text({"title": "Zoé \x1b[2J \u202e"}))
    {
      "title": "Zoé \u001b[2J \u202e"
    }
    """
    written = json.dumps(found, indent=2, ensure_ascii=False, default=float)
    shown = plain(written)
    if shown == written:
        return written
    return "".join(
        sign if sign == kept else json.dumps(sign)[1:-1] for sign, kept in zip(written, shown, strict=True)
    )
