"""Which questions for home are asked, from what tonight's page is about."""

from collections.abc import Sequence

from onewhole.languages.class_words import ClassWords
from onewhole.languages.table import spoken_by
from onewhole.problems.about import About
from onewhole.problems.needs import Operation
from onewhole.sentences.sentence import Sentences

#: So many questions about what is on the page are enough.
MOST = 2


def questions_to_ask(found: Sequence[About], words: ClassWords) -> tuple[Sentences, ...]:
    """Return questions about what most of a page is about, then one about its units, then the guess."""
    home = spoken_by(words).home
    asked = [home.operation_asked(one, words) for one in found[:MOST]]
    if any(one.operation is not Operation.COMPARE for one in found):
        asked += [*(home.unit_asked(one, words) for one in found[:1]), home.guess_asked()]
    return tuple(dict.fromkeys(filter(None, asked)))
