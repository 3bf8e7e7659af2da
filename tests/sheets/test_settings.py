"""Settings are read and written by one table."""

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.sheets.header import Header, Paper, PictureSetting, Print, SettingError
from onewhole.sheets.settings import SETTINGS, header_lines, header_of, setting_named
from onewhole.working.strategies.table import strategy_named


@pytest.mark.parametrize(
    ("name", "value", "header"),
    [
        ("title", "Kites", Header(title="Kites")),
        ("class", "Room 12", Header(class_name="Room 12")),
        ("grade", "5", Header(grade=5)),
        ("strategy", "Count up from the smaller number", Header(strategy=strategy_named("count_up"))),
        ("whole", "loaf of bread", Header(words=ClassWords("loaf of bread", "loaves of bread"))),
        ("wholes", "kites", Header(words=ClassWords("whole", "kites"))),
        ("say", "Trade", Header(words=ClassWords(regroup="trade"))),
        ("paper", "A4", Header(paper=Paper.A4)),
        ("print", "large", Header(print=Print.LARGE)),
        ("picture", "number line", Header(picture=PictureSetting.LINE)),
        ("picture", "strips", Header(picture=PictureSetting.STRIP)),
        ("picture", "Amounts", Header(picture=PictureSetting.AMOUNTS)),
        ("picture", "strips for stories", Header(picture=PictureSetting.STRIP, picture_stories=True)),
        ("picture", "number  line For Stories", Header(picture=PictureSetting.LINE, picture_stories=True)),
        ("fit", "2", Header(fit=2)),
        ("fit", "Room", Header()),
        ("columns", "1", Header(columns=1)),
        ("minutes", "20", Header(minutes=20)),
        ("mixed form", "yes", Header(mixed_form=True)),
        ("simplest form", "ON", Header(simplest_form=True)),
        ("simplest form", "no", Header()),
        ("title", "", Header()),
    ],
)
def test_read(name: str, value: str, header: Header) -> None:
    """What a value makes of the usual header."""
    assert header_of({name: value}) == (header, {})


def test_the_plural_speaks_after_the_singular() -> None:
    """In whatever order they are typed."""
    header, _ = header_of({"wholes": "kite papers", "whole": "kite paper"})
    assert header.words == ClassWords("kite paper", "kite papers")
    assert header_lines(header) == ("whole: kite paper",)


def test_wrong_values_leave_the_others_alone() -> None:
    """And are told one by one."""
    said = {"grade": "9", "minutes": "soon", "say": "borrow", "picture": "strip for all", "fit": "7"}
    header, wrong = header_of({"title": "Kites", **said})
    assert header == Header(title="Kites")
    assert {name: error.what for name, error in wrong.items()} == {
        "grade": "grade is set to 9",
        "minutes": "“soon” is not a number",
        "say": "“borrow” is none of the choices here",
        "picture": "“strip for all” is none of the choices here",
        "fit": "fit is set to 7",
    }


@pytest.mark.parametrize("setting", SETTINGS, ids=lambda setting: setting.name)
def test_every_setting_is_found_by_its_name(setting: object) -> None:
    """However it is spaced and capitalised."""
    name = getattr(setting, "name", "")
    assert setting_named(name.upper().replace(" ", "_")) is setting


def test_an_unknown_name() -> None:
    """Refused with the nearest."""
    with pytest.raises(SettingError, match="Did you mean grade"):
        setting_named("grad")


def test_the_usual_header_is_not_written() -> None:
    """Nothing to say, nothing said."""
    assert header_lines(Header()) == ()


@pytest.mark.parametrize("words", [" Kites", "Kites\n", "K\x07", "K" * 201])
def test_words_that_do_not_fit_a_line(words: str) -> None:
    """A header refuses what it could not be written as."""
    with pytest.raises(SettingError, match="cannot stand on one line"):
        Header(title=words)
