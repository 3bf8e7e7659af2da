"""JSON on standard output, for other programs."""

import json
from collections.abc import Iterable, Mapping

from onewhole.cli.screen import plain


def say_json(found: object) -> None:
    """Print an object as JSON; what is exact is printed as a float."""
    print(json_text(found))


def say_json_lists(found: Mapping[str, object], **lists: Iterable[object]) -> None:
    """Print an object as JSON with more lists in it, a line each of theirs as it comes: none of them is kept.

    >>> say_json_lists({"kites": 2}, tails=({"of": at} for at in range(2)), knots=())
    {
      "kites": 2,
      "tails": [
        {"of": 0},
        {"of": 1}
      ],
      "knots": []
    }
    """
    print(json_text(found)[: -len("\n}")], end="")
    for name, items in lists.items():
        print(f",\n  {json_text(name)}: [", end="")
        some = False
        for item in items:
            print(f"{',' * some}\n    {json_text(item, indent=None)}", end="")
            some = True
        print("\n  ]" if some else "]", end="")
    print("\n}")


def json_text(found: object, *, indent: int | None = 2) -> str:
    r"""Return an object as JSON text; a sign that a terminal may not show is escaped, and not lost.

    >>> print(json_text({"title": "Zoé \x1b[2J \u202e"}))
    {
      "title": "Zoé \u001b[2J \u202e"
    }
    """
    written = json.dumps(found, indent=indent, ensure_ascii=False, default=float)
    shown = plain(written)
    if shown == written:
        return written
    return "".join(
        sign if sign == kept else json.dumps(sign)[1:-1] for sign, kept in zip(written, shown, strict=True)
    )
