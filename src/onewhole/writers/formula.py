"""A formula as a page takes it: what is set, and what is said."""

from itertools import groupby

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


#: Words in another language than the page's: its tag, and what is said in it.
Foreign = dict[str, object]


def set_on_page(sentences: Sentences, page: str) -> str | list[str | Formula] | list[Foreign]:
    """Return sentences as a page in a language takes them; those in another one have its tag with them.

    >>> from onewhole.sentences.sentence import Sentence
    >>> set_on_page((Sentence("en-US", ("nothing is left",)),), "pt-BR")
    [{'lang': 'en-US', 'says': 'Nothing is left.'}]
    """
    if all(sentence.language == page for sentence in sentences):
        return set_words(sentences)
    parts = groupby(sentences, key=lambda sentence: sentence.language)
    return [{"lang": language, "says": set_words(tuple(said))} for language, said in parts]


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
