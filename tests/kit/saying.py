"""Sentences of a film made by hand, and those of a film as they are written."""

from collections.abc import Iterable

from onewhole.notations.sentences.text import sentence_text
from onewhole.sentences.sentence import Sentence, Sentences
from onewhole.sentences.typed import typed_sentences


def says(*texts: str) -> Sentences:
    """Return texts as sentences that somebody typed."""
    return tuple(sentence for text in texts for sentence in typed_sentences(text, "en-US"))


def written(sentences: Iterable[Sentence]) -> list[str]:
    """Return each sentence as it is written."""
    return [sentence_text(sentence) for sentence in sentences]
