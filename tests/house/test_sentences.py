"""A sentence is a tree until a notation writes it: it has no methods of text, and words are not read back."""

import ast

from onewhole.sentences.sentence import Sentence
from tests.house.plan import PACKAGE, nodes

#: Rooms through which sentences go, and what is done to text in order to read it or to change its words.
ROOMS = ("sentences", "languages/english", "notations/sentences", "walkthroughs")
READS = {"partition", "rpartition", "startswith", "replace", "removeprefix", "removesuffix", "split", "lower"}
#: Words before they stand in a sentence (a node checked, plurals, what a teacher typed), and written words
#: measured: their number, their width.
APART = {
    "languages/english/speech.py",
    "languages/english/own_story.py",
    "languages/english/words.py",
    "notations/sentences/layout.py",
    "notations/sentences/listened.py",
    "notations/sentences/speech.py",
    "sentences/node.py",
    "sentences/typed.py",
    "walkthroughs/line_sizes.py",
    "walkthroughs/opening.py",
    "walkthroughs/timing.py",
}


def test_a_sentence_has_no_methods_of_text() -> None:
    """What str can do with words, a sentence cannot."""
    of_text = {name for name in dir(str) if not name.startswith("__")}
    assert (of_text | {"__add__", "__mod__", "__contains__"}) & set(dir(Sentence)) == set()


def test_no_sentence_is_read_back() -> None:
    """No regular expression and no method of text is used where sentences are made and passed."""
    found: dict[str, int] = {}
    for room in ROOMS:
        for path in sorted((PACKAGE / room).rglob("*.py")):
            name = path.relative_to(PACKAGE).as_posix()
            if name not in APART and (count := sum(map(_reads, nodes(path)))):
                found[name] = count
    assert found == {}


def _reads(node: ast.AST) -> bool:
    """Say whether something reads text: a method of text, or the module of regular expressions."""
    match node:
        case ast.Call(func=ast.Attribute(value=ast.Name("re"))):
            return True
        case ast.Call(func=ast.Attribute(attr=name)):
            return name in READS
        case _:
            return False
