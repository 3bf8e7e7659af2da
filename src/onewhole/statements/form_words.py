"""Reading the words for the form in which a number is wanted: in simplest form, as a mixed number."""

from onewhole.number.name_wanted import NumberForm
from onewhole.statements.cursor import Cursor
from onewhole.statements.tokens import TokenKind

_ARTICLES = ("a", "an", "one")
_SPELT = {
    NumberForm.SIMPLEST: ("simplest", "simplest form", "in simplest form", "in its simplest form"),
    NumberForm.MIXED: ("mixed number",),
    NumberForm.FRACTION: ("fraction", "improper fraction"),
    NumberForm.DECIMAL: ("decimal", "decimal number"),
}
#: The longest first, so that "simplest form" is not read as "simplest" and a word too much.
_PHRASES = sorted(
    (
        (tuple(phrase.split()), form)
        for form, spellings in _SPELT.items()
        for spelling in spellings
        for phrase in (
            (spelling,)
            if form is NumberForm.SIMPLEST
            else (f"as {spelling}", *(f"as {article} {spelling}" for article in _ARTICLES))
        )
    ),
    key=lambda one: -len(one[0]),
)
#: Every word that asks for a form.
FORM_WORDS = frozenset(word for phrase, _ in _PHRASES for word in phrase)
_REMEDY = "Write for example 12/18 simplest, 11/4 as a mixed number, 2 3/4 as a fraction, 3/4 as a decimal."


def form_ahead(cursor: Cursor, steps: int = 0) -> bool:
    """Say whether words that ask for a form begin so many tokens ahead."""
    here, after = cursor.ahead(steps), cursor.ahead(steps + 1)
    if here.sort is not TokenKind.WORD:
        return False
    return here.text in {"as", "simplest"} or (here.text == "in" and after.text in {"simplest", "its"})


def form_wanted(cursor: Cursor) -> NumberForm:
    """Read the words that ask for a form, or refuse them."""
    found = next((one for one in _PHRASES if _ahead(cursor, one[0])), None)
    if found is None:
        cursor.refuse("these words do not say how the number is to be written", _REMEDY)
    phrase, form = found
    for _ in phrase:
        cursor.take()
    return form


def _ahead(cursor: Cursor, phrase: tuple[str, ...]) -> bool:
    return all(cursor.word_ahead(at, frozenset({word})) for at, word in enumerate(phrase))
