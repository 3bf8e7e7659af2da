"""A formula as a page takes it: what is set, and what is said."""

from onewhole.languages.english.tongue import ENGLISH
from onewhole.languages.language import Language
from onewhole.languages.table import LANGUAGES
from onewhole.notations.sentences.runs import runs
from onewhole.notations.typst_math import typst_math
from onewhole.sentences.sentence import Sentences
from onewhole.statements.writable import Writable

Formula = dict[str, str]


def formula(
    thing: Writable, *, leads: bool = False, asks: bool = False, language: Language = ENGLISH
) -> Formula:
    """Return a formula with its spoken words; ``leads`` begins and ``asks`` ends it with an equals sign.

    >>> from onewhole.statements.reading import read_expression
    >>> formula(read_expression("7 - 3"), asks=True)["alt"]
    'seven minus three equals blank'
    """
    math, alt = typst_math(thing, language), language.say(thing)
    if leads:
        math, alt = f"= {math}", f"{language.equals} {alt}"
    if asks:
        math, alt = f"{math} =", f"{alt} {language.equals} {language.blank}"
    return {"math": math, "alt": alt}


def chain(things: tuple[Writable, ...], language: Language = ENGLISH) -> Formula:
    """Return a chain of equal things as one formula."""
    return {
        "math": " = ".join(typst_math(thing, language) for thing in things),
        "alt": f" {language.equals} ".join(map(language.say, things)),
    }


def set_words(sentences: Sentences, *, every: bool = False) -> str | list[str | Formula]:
    """Return sentences as a page takes them: words, or words and formulas in turn where a formula is said.

    >>> from onewhole.sentences.sentence import Sentence
    >>> set_words((Sentence("en-US", ("nothing is left",)),))
    'Nothing is left.'
    """
    language = LANGUAGES[sentences[0].language] if sentences else ENGLISH
    found = [
        run if isinstance(run, str) else formula(run, language=language)
        for run in runs(sentences, every=every)
    ]
    words = [run for run in found if isinstance(run, str)]
    return "".join(words) if len(words) == len(found) else found
