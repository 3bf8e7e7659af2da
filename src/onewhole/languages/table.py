"""The languages there are, by tag. A new language is one package and a function here."""

from collections.abc import Callable, Iterator, Mapping

from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.tongue import ENGLISH
from onewhole.languages.language import Language


def _english() -> Language:
    return ENGLISH


def _spanish() -> Language:
    from onewhole.languages.spanish.tongue import SPANISH  # noqa: PLC0415

    return SPANISH


def _portuguese() -> Language:
    from onewhole.languages.portuguese import PORTUGUESE  # noqa: PLC0415

    return PORTUGUESE


class _Languages(Mapping[str, Language]):
    """A language is loaded when something is said in it: most commands speak one."""

    _by_tag: Mapping[str, Callable[[], Language]] = {
        "en-US": _english, "es-US": _spanish, "pt-BR": _portuguese,
    }  # fmt: skip

    def __getitem__(self, tag: str) -> Language:
        return self._by_tag[tag]()

    def __iter__(self) -> Iterator[str]:
        return iter(self._by_tag)

    def __len__(self) -> int:
        return len(self._by_tag)


LANGUAGES: Mapping[str, Language] = _Languages()

#: What a class speaks that has not said what it speaks.
SPOKEN = ENGLISH


def language_named(typed: str) -> Language:
    """Return a language by the letters that stand for it: en, es. Raises InputError with those there are.

    >>> language_named("es").name
    'español'
    """
    plain = typed.strip().lower()
    for tag, language in LANGUAGES.items():
        if plain in {tag.lower(), code_of(language)}:
            return language
    msg = f"“{typed[:40]}” is no language that pages are printed in"
    remedy = (
        f"Write one or more of: {', '.join(f'{code_of(one)} ({one.name})' for one in LANGUAGES.values())}."
    )
    raise InputError(msg, remedy=remedy)


def code_of(language: Language) -> str:
    """Return the letters that stand for a language in a sheet and in the name of a file.

    >>> code_of(SPOKEN)
    'en'
    """
    return language.tag.partition("-")[0]


def words_at_home(words: ClassWords, own: ClassWords) -> ClassWords:
    """Return the words for a page in another language than the class's: what was typed, or what is known.

    ``own`` are the words in that language. Regrouping is called as in class.

    >>> from onewhole.languages.english.words import words_for
    >>> words_at_home(words_for("strip"), LANGUAGES["es-US"].usual).whole
    'tira'
    """
    language = spoken_by(own)
    known = language.known(words.whole.lower())
    if known and own.whole == language.usual.whole:
        own = language.read_whole(known, own)
    return replace(own, regroup=words.regroup, story=None)


def spoken_by(words: ClassWords) -> Language:
    """Return the language of a class's words.

    >>> spoken_by(ClassWords("strip", "strips")).tag
    'en-US'
    """
    return LANGUAGES[words.language]
