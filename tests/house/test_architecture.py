"""ARCHITECTURE.md's floors are drawn from the contract file and the rooms' own first sentences."""

import ast
import re

from tests.house.plan import PACKAGE, ROOT, floors

PAGE = ROOT / "ARCHITECTURE.md"
BLOCK = re.compile(
    r"(?<=<!-- floors: made by tests/house/test_architecture.py -->\n).*?(?=<!-- floors end -->)", re.DOTALL
)


def _sentence(room: str) -> str:
    """The first sentence of a room's docstring."""
    file = next(
        (file for file in (PACKAGE / room / "__init__.py", PACKAGE / f"{room}.py") if file.exists()), None
    )
    if file is None:
        return "*(not there yet)*"
    docstring = ast.get_docstring(ast.parse(file.read_text())) or "*(says nothing yet)*"
    return docstring.split("\n\n")[0].replace("\n", " ")


def _drawing() -> str:
    rows = [
        f"| {number if room == rooms[0] else ''} | `{room}` | {_sentence(room)} |"
        for number, rooms in floors()
        for room in rooms
    ]
    return "\n".join(["", "| floor | room | what it holds |", "| --- | --- | --- |", *rows, "", ""])


def test_the_floors_in_the_page_are_those_of_the_contract(accept: bool) -> None:
    """The drawing tells the contract's floors and each room's own words; ONEWHOLE_ACCEPT=1 draws it anew."""
    page = PAGE.read_text()
    drawn = BLOCK.findall(page)
    assert len(drawn) == 1
    if accept:
        PAGE.write_text(BLOCK.sub(lambda _: _drawing(), page))
    else:
        assert drawn == [_drawing()], (
            "draw it anew: ONEWHOLE_ACCEPT=1 pytest tests/house/test_architecture.py"
        )
