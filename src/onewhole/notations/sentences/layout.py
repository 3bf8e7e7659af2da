"""What every notation of a sentence has in common: the capital, the full stop, the blanks between nodes."""

from collections.abc import Callable, Iterable, Iterator
from typing import TypeVar

from onewhole.languages.language import Language
from onewhole.languages.table import LANGUAGES
from onewhole.notations.text import printed
from onewhole.sentences.node import Node, Said, Seam
from onewhole.sentences.sentence import End, Sentence

#: There is no space before words that begin with one of these.
_CLOSE = (",", ":", ";")

_Set = TypeVar("_Set")


def pieces(sentence: Sentence, render: Callable[[Node, Language], str | _Set]) -> Iterator[str | _Set]:
    """Give a sentence node by node as ``render`` writes them, with the blanks between, capital and full stop.

    A sentence that somebody typed keeps its own beginning and end.
    """
    language = LANGUAGES[sentence.language]
    if sentence.end is End.ASKS and language.asks:
        yield language.asks
    for at, node in enumerate(sentence.nodes):
        words = node.joined if isinstance(node, Seam) else node
        written = render(words, language)
        if at and not (isinstance(words, str) and words.startswith(_CLOSE)):
            yield " "
        if not at and sentence.end is not End.TYPED and isinstance(written, str):
            written = f"{written[:1].upper()}{written[1:]}"
        yield written
    if not (sentence.end is End.STOP and _has_its_stop(sentence.nodes[-1])):
        yield sentence.end.value


def _has_its_stop(node: Node) -> bool:
    """Say whether the last word of a sentence brings its own full stop: You land on 1:25 p.m."""
    return isinstance(node, Said) and printed(node.thing).endswith(".")


def laid_out(sentence: Sentence, render: Callable[[Node, Language], str]) -> str:
    """Return a sentence as one string."""
    return "".join(pieces(sentence, render))


def joined(sentences: Iterable[Sentence], write: Callable[[Sentence], str]) -> str:
    """Write several sentences one after another."""
    return " ".join(map(write, sentences))
