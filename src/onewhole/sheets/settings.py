"""The names of the settings in a typed header, how each is read and how each is written."""

from collections.abc import Callable, Sequence
from difflib import get_close_matches

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import InputError, OnewholeError
from onewhole.languages.class_words import ClassWords
from onewhole.languages.table import SPOKEN, code_of, language_named, spoken_by
from onewhole.notations.text import text
from onewhole.sentences.node import Thing
from onewhole.sheets.header import CornerMarks, Header, Paper, PictureSetting, Print, SettingError
from onewhole.statements.reading import read_statement
from onewhole.working.products.table import PRODUCT_WAYS
from onewhole.working.quotients.remainder_shared import RemainderForm
from onewhole.working.quotients.table import QUOTIENT_WAYS
from onewhole.working.strategies.table import strategy_named
from onewhole.working.way import NamedWay, named_among

_YES = {"yes": True, "on": True, "no": False, "off": False}
#: Behind a picture: beside the stories and no other problems.
STORIES_ALONE = " for stories"
#: The setting ``fit`` where nothing is to be fitted.
WHOLE_ROOM = "room"
#: The setting that says how a page comes back from a photo.
MARKS = "corner marks"
_SAY = ("regroup", "open", "rename", "trade")


class Setting(Struct, frozen=True):
    """One setting: its name, what may stand there, how it is read into a header and written out of it."""

    name: str
    takes: str
    read: Callable[[Header, str], Header]
    write: Callable[[Header], str]


def setting_named(name: str) -> Setting:
    """Return a setting by its name, however spaced and capitalised.

    Raises SettingError with the nearest name there is.

    >>> setting_named("Titel")
    Traceback (most recent call last):
    ...
    onewhole.sheets.header.SettingError: there is no setting “Titel”. Did you mean title?
    """
    plain = " ".join(name.lower().replace("_", " ").replace("-", " ").split())
    for setting in SETTINGS:
        if setting.name == plain:
            return setting
    names = [setting.name for setting in SETTINGS]
    near = get_close_matches(plain, names, n=1)
    remedy = f"Did you mean {near[0]}?" if near else f"The settings are: {', '.join(names)}."
    msg = f"there is no setting “{name}”"
    raise SettingError(msg, remedy=remedy)


def header_of(said: dict[str, str]) -> tuple[Header, dict[str, InputError]]:
    """Return the header that typed values make, and what is wrong with each that cannot be used.

    ``said`` has the names of settings as they stand in the table. A value that cannot be used changes
    nothing. They are taken in the table's order: ``wholes`` speaks after ``whole``, wherever it stands.
    """
    header, wrong = Header(), {}
    for setting in SETTINGS:
        value = said.get(setting.name, "")
        if not value:
            continue
        try:
            header = setting.read(header, value)
        except InputError as error:
            wrong[setting.name] = error
    return header, wrong


def header_lines(header: Header) -> tuple[str, ...]:
    """Return the lines that a header is typed as; a setting that is as usual is left out.

    >>> header_lines(Header(title="Kites", minutes=20))
    ('title: Kites', 'minutes: 20')
    """
    usual = Header()
    written = ((setting, setting.write(header)) for setting in SETTINGS)
    return tuple(f"{one.name}: {value}" for one, value in written if value and value != one.write(usual))


def _number(said: str) -> int:
    if not (said.isascii() and said.isdigit() and len(said) <= 3):
        msg = f"“{said[:40]}” is not a number"
        raise SettingError(msg, remedy="Write a number in digits, such as 4.")
    return int(said)


def _one_of(said: str, choices: tuple[str, ...]) -> str:
    plain = " ".join(said.lower().replace("_", " ").replace("-", " ").split())
    if plain not in choices:
        msg = f"“{said[:40]}” is none of the choices here"
        raise SettingError(msg, remedy=f"Write one of: {', '.join(choices)}.")
    return plain


def _yes(said: str) -> bool:
    return _YES[_one_of(said, tuple(_YES))]


def _remainder(header: Header, said: str) -> Header:
    form = _one_of(said, ("any", *RemainderForm))
    return replace(header, remainder=None if form == "any" else RemainderForm(form))


def _paper(said: str) -> Paper:
    return Paper(_one_of(said, tuple(Paper)))


def _print(said: str) -> Print:
    return Print(_one_of(said, tuple(Print)))


def _picture(header: Header, said: str) -> Header:
    plain = " ".join(said.lower().split())
    which = plain.removesuffix(STORIES_ALONE)
    if which not in tuple(PictureSetting):
        which = which.removesuffix("s")
    if which not in tuple(PictureSetting):
        msg = f"“{said[:40]}” is none of the choices here"
        remedy = (
            f"Write one of: {', '.join(PictureSetting)}; with{STORIES_ALONE} behind, where you want that."
        )
        raise SettingError(msg, remedy=remedy)
    return replace(
        header, picture=PictureSetting(which), picture_stories=which != plain and STORIES_ALONE in plain
    )


def _picture_typed(header: Header) -> str:
    return header.picture.value + (STORIES_ALONE if header.picture_stories else "")


def _fit(said: str) -> int | None:
    plain = " ".join(said.lower().split())
    return None if plain == WHOLE_ROOM else _number(plain)


def _words(
    header: Header, *, whole: str = "", wholes: str = "", regroup: str = "", story: str = ""
) -> Header:
    old = header.words
    try:
        new = replace(
            old,
            wholes=wholes or old.wholes,
            regroup=regroup or old.regroup,
            story=spoken_by(old).read_story(story) if story else old.story,
        )
        if whole:
            new = spoken_by(old).read_whole(whole, new)
    except InputError:
        raise
    except OnewholeError as error:
        raise SettingError(error.what, remedy=error.remedy) from error
    return replace(header, words=new)


def _story(header: Header, said: str) -> Header:
    """Read of whom stories tell: a setting by its name, or who does what.

    A setting says what one whole is too, where the class has not.
    """
    language, own = spoken_by(header.words), header.words
    named = language.class_settings.get(" ".join(said.lower().split()))
    if named is None:
        return _words(header, story=said)
    if own.whole == language.usual.whole:
        own = replace(own, whole=named.whole, wholes=named.wholes, feminine=named.feminine)
    return replace(header, words=replace(own, story=named.story))


def _yes_or_nothing(value: bool) -> str:
    return "yes" if value else ""


def _other_plural(header: Header) -> str:
    words = header.words
    usual = spoken_by(words).read_whole(_typed_whole(words), words)
    return "" if words.wholes == usual.wholes else words.wholes


def _typed_whole(words: ClassWords) -> str:
    """Return what a whole is called as it is typed: with the word before it where its gender is not plain."""
    language = spoken_by(words)
    plain = language.read_whole(words.whole, words)
    if plain.feminine == words.feminine:
        return words.whole
    return (
        f"{language.count_words(1, Thing(words.whole, words.wholes, feminine=words.feminine))} {words.whole}"
    )


def _languages(header: Header, said: str) -> Header:
    """Read in which languages a class's pages are: the first is that of the class, others are for home."""
    named = {language.tag: language for language in map(language_named, said.split(","))}
    first, *others = named.values()
    words = header.words if header.words.language == first.tag else first.usual
    return replace(header, words=words, home=tuple(one.usual for one in others))


def _languages_typed(header: Header) -> str:
    if header.home is None and spoken_by(header.words) is SPOKEN:
        return ""
    return ", ".join(code_of(spoken_by(words)) for words in (header.words, *(header.home or ())))


def _whole_at_home(header: Header, said: str) -> Header:
    """Read what a whole is called in the further languages, one after another."""
    typed, home = said.split(";"), header.home or ()
    if len(typed) > len(home):
        many = f"{len(typed)} languages" if len(typed) > 1 else "another language"
        msg = f"“{said[:40]}” names a whole in {many} beside the class's own"
        remedy = "Name the languages first, as in: languages: en, es."
        raise SettingError(msg, remedy=remedy)
    named = [
        spoken_by(words).read_whole(one, words) if one.strip() else words
        for one, words in zip(typed, home, strict=False)
    ]
    return replace(header, home=(*named, *home[len(named) :]))


def _whole_at_home_typed(header: Header) -> str:
    named = [
        ""
        if words == spoken_by(words).usual
        else f"{spoken_by(words).count_words(1, Thing(words.whole, words.wholes, feminine=words.feminine))} "
        f"{words.whole}, {words.wholes}"
        for words in header.home or ()
    ]
    return "; ".join(named).rstrip("; ")


def _any_of(ways: Sequence[NamedWay]) -> str:
    """List the ways that may stand in a setting, as they are typed."""
    *others, last = [way.typed for way in ways]
    return f"{', '.join(others)} or {last}"


def _to_finish(header: Header, said: str) -> Header:
    """Read the problem that is begun on the page."""
    try:
        return replace(header, to_finish=read_statement(said))
    except OnewholeError as error:
        raise SettingError(error.what, remedy=error.remedy) from error


SETTINGS = (
    Setting("title", "words", lambda h, said: replace(h, title=said), lambda h: h.title),
    Setting("date", "words", lambda h, said: replace(h, date=said), lambda h: h.date),
    Setting("class", "words", lambda h, said: replace(h, class_name=said), lambda h: h.class_name),
    Setting("grade", "a number", lambda h, said: replace(h, grade=_number(said)), lambda h: str(h.grade)),
    Setting(
        "strategy",
        "the strategy that the class was taught",
        lambda h, said: replace(h, strategy=strategy_named(said)),
        lambda h: h.strategy.typed,
    ),
    Setting(
        "multiply",
        _any_of(PRODUCT_WAYS),
        lambda h, said: replace(h, multiply=named_among(said, PRODUCT_WAYS)),
        lambda h: h.multiply.typed if h.multiply else "",
    ),
    Setting(
        "divide",
        _any_of(QUOTIENT_WAYS),
        lambda h, said: replace(h, divide=named_among(said, QUOTIENT_WAYS)),
        lambda h: h.divide.typed if h.divide else "",
    ),
    Setting(
        "languages", "en, es, pt or several of them, the class's own first", _languages, _languages_typed
    ),
    Setting(
        "whole",
        "what one whole is called",
        lambda h, said: _words(h, whole=said),
        lambda h: _typed_whole(h.words),
    ),
    Setting("wholes", "more than one of them", lambda h, said: _words(h, wholes=said), _other_plural),
    Setting(
        "stories",
        "kitchen, garden, school hall or kite club, or who does what, such as: the trail club walks",
        _story,
        lambda h: h.words.story.typed if h.words.story else "",
    ),
    Setting(
        "say",
        " or ".join(_SAY),
        lambda h, said: _words(h, regroup=_one_of(said, _SAY)),
        lambda h: h.words.regroup,
    ),
    Setting(
        "whole at home",
        "what one whole is called in the other language, such as: una tira",
        _whole_at_home,
        _whole_at_home_typed,
    ),
    Setting("paper", "letter or a4", lambda h, said: replace(h, paper=_paper(said)), lambda h: h.paper.value),
    Setting(
        "print", "ordinary or large", lambda h, said: replace(h, print=_print(said)), lambda h: h.print.value
    ),
    Setting(
        "picture",
        "none, strip, number line, amounts or bar; with “for stories” behind for these alone",
        _picture,
        _picture_typed,
    ),
    Setting(
        "story bars",
        "yes or no",
        lambda h, said: replace(h, story_bars=_yes(said)),
        lambda h: "" if h.story_bars else "no",
    ),
    Setting(
        "columns",
        "1 or 2",
        lambda h, said: replace(h, columns=_number(said)),
        lambda h: str(h.columns or ""),
    ),
    Setting(
        "minutes",
        "a number",
        lambda h, said: replace(h, minutes=_number(said)),
        lambda h: str(h.minutes or ""),
    ),
    Setting(
        "fit",
        "room, or a number of pages",
        lambda h, said: replace(h, fit=_fit(said)),
        lambda h: str(h.fit or ""),
    ),
    Setting(
        "mixed form",
        "yes or no",
        lambda h, said: replace(h, mixed_form=_yes(said)),
        lambda h: _yes_or_nothing(h.mixed_form),
    ),
    Setting(
        "simplest form",
        "yes or no",
        lambda h, said: replace(h, simplest_form=_yes(said)),
        lambda h: _yes_or_nothing(h.simplest_form),
    ),
    Setting(
        "remainder",
        "any, remainder, fraction or decimal",
        _remainder,
        lambda h: h.remainder.value if h.remainder else "",
    ),
    Setting(
        MARKS,
        "none, lines or windows",
        lambda h, said: replace(h, marks=CornerMarks(_one_of(said, tuple(CornerMarks)))),
        lambda h: h.marks.value,
    ),
    Setting(
        "braille",
        "yes or no",
        lambda h, said: replace(h, braille=_yes(said)),
        lambda h: _yes_or_nothing(h.braille),
    ),
    Setting(
        "to finish",
        "a problem that is begun at the top of the page",
        _to_finish,
        lambda h: text(h.to_finish) if h.to_finish else "",
    ),
    Setting("film", "an address (https://…)", lambda h, said: replace(h, film=said), lambda h: h.film),
    Setting(
        "recipe",
        "how the page was composed",
        lambda h, said: replace(h, recipe=said),
        lambda h: h.recipe,
    ),
)
