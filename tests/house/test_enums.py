"""A stored key is never shown text: an enumeration passes for text only where a person types its values."""

import ast

from tests.house.plan import PACKAGE, nodes

#: The enumerations whose values may pass for text, each with its reason. A new one has to be argued for.
TEXTUAL = {
    "ExchangeAct": "typed at the terminal",
    "KeepAct": "typed at the terminal",
    "WishedSkill": "typed at the terminal and in a recipe",
    "Review": "typed at the terminal and in a recipe",
    "Paper": "typed in a sheet",
    "Print": "typed in a sheet",
    "PictureSetting": "typed in a sheet",
    "CornerMarks": "typed in a sheet",
    "RemainderForm": "typed in a sheet",
    "NightStep": "sent by a form, and kept",
    "Kind": "the kind of a unit, in refusals of two numbers that do not go together",
    "Sign": "written as it stands",
    "Relation": "written as it stands",
    "TokenKind": "the name of a group in the reader's one expression",
}


def test_an_enumeration_is_no_text() -> None:
    """Words for a value are chosen by the languages, which a value that is text would get round."""
    found = {
        node.name
        for path in sorted(PACKAGE.rglob("*.py"))
        for node in nodes(path)
        if isinstance(node, ast.ClassDef) and {"StrEnum", "str"} & {ast.unparse(base) for base in node.bases}
    }
    assert found == TEXTUAL.keys()
