"""What is said of a line and of a problem, where the ear can follow it."""

from onewhole.languages.class_words import ClassWords
from onewhole.languages.language import Language
from onewhole.languages.table import SPOKEN, spoken_by
from onewhole.sentences.sentence import Sentences
from onewhole.statements.expression import Sum
from onewhole.statements.row import Sign, flat
from onewhole.statements.writable import Writable
from onewhole.walkthroughs.lesson import Item
from onewhole.working.line import Line, LineContent
from onewhole.working.reasons.taking import AddedUnitByUnit, TakenUnitByUnit


def stands(says: LineContent, language: Language = SPOKEN) -> tuple[Sentences, ...]:
    """Say what stands on the line, in more than one wording; nothing where the ear could not follow it.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.statements.reading import read_expression
    >>> text_of(stands(read_expression("(6 - 3) + (8/6 - 5/6)"))[0])
    'First 6 - 3, then 8/6 - 5/6.'
    """
    if isinstance(says, Sum) and in_parts(says):
        parts = tuple(term.part for term in says.terms)
        if len(parts) == 1 or not all(plain(part) for part in parts):
            return ()
        return language.lines.parts_stand(parts)
    return language.lines.stands(says) if plain(says) else ()


def in_parts(says: LineContent) -> bool:
    """Say whether a line is worked in parts: a sum of sums."""
    return isinstance(says, Sum) and all(isinstance(term.part, Sum) and not term.taken for term in says.terms)


def plain(thing: Writable) -> bool:
    """Say whether the ear can follow a line: no brackets, and no fraction that is still being worked.

    >>> from onewhole.statements.reading import read_expression
    >>> plain(read_expression("6 8/6 - 3 5/6")), plain(read_expression("(44 - 23)/6"))
    (True, False)
    """
    return not any(piece in {Sign.OPEN, Sign.CLOSE} for piece in flat(thing))


def answers(item: Item, language: Language) -> tuple[Sentences, ...]:
    """Say the answer once more, in more than one wording."""
    return language.lines.answers(item.label, item.statement, item.answer)


def reason_said(line: Line, words: ClassWords) -> Sentences:
    """Say why a line follows; nothing for the problem itself, nor for a reason without a number (0 + 0)."""
    match line.because:
        case None | TakenUnitByUnit(()) | AddedUnitByUnit(()):
            return ()
        case reason:
            return spoken_by(words).working.reason(reason, words)
