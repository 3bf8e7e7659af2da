"""Settings of stories that a class chooses by a name: of whom they tell, and what they count."""

import pytest

from onewhole.desk.page.stories import tell
from onewhole.languages.spanish.words import read_whole
from onewhole.languages.table import LANGUAGES
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.stories import story
from onewhole.sheets.writing import write_sheet
from onewhole.statements.reading import read_statement

ASKED = read_statement("5 1/3 - 2 2/3")


@pytest.mark.parametrize(
    ("language", "setting", "says"),
    [
        ("en", "kitchen", "All the cups of flour are the same size. The cooking club has 5 1/3 cups."),
        ("en", "Garden", "The garden club has 5 1/3 bags. It uses 2 2/3 bags."),
        ("en", "school hall", "The stage crew has 5 1/3 rolls. It uses 2 2/3 rolls."),
        ("en", "kite club", "The kite club has 5 1/3 strips."),
        ("es", "cocina", "El club de cocina tiene 5 1/3 tazas. Usa 2 2/3 tazas."),
        ("es", "huerto", "El club del huerto tiene 5 1/3 bolsas."),
        ("es", "salón de actos", "El grupo de teatro tiene 5 1/3 rollos."),
        ("es", "club de cometas", "El club de cometas tiene 5 1/3 tiras."),
    ],
)
def test_a_class_chooses_a_setting(language: str, setting: str, says: str) -> None:
    """Its stories tell of the setting and count its things; written down, the page is the same again."""
    sheet = read_sheet(f"languages: {language}\nstories: {setting}\n\n1. 5 1/3 - 2 2/3")
    assert says in story(ASKED, words=sheet.header.words).words
    assert read_sheet(write_sheet(sheet)) == sheet


def test_what_the_class_counts_stays() -> None:
    """A class that has named its whole keeps it."""
    sheet = read_sheet("whole: cup of rice\nstories: kitchen\n\n1. 5 1/3 - 2 2/3")
    assert "The cooking club has 5 1/3 cups." in story(ASKED, words=sheet.header.words).words
    assert sheet.header.words.wholes == "cups of rice"


def test_told_at_the_terminal() -> None:
    """The same by the command, with what it counts, and beside a whole of the class's own."""
    assert "cups of flour" in tell("5 1/3 - 2 2/3", stories="kitchen").words
    assert "2 2/3 pies" in tell("5 1/3 - 2 2/3", stories="kitchen", whole="pie").words
    assert tell("5 - 2", stories="kite club").words == tell("5 - 2").words


def test_every_setting_reads_as_it_is_written() -> None:
    """Each name is small letters, and its words are words of its language."""
    for language in LANGUAGES.values():
        for name, words in language.class_settings.items():
            assert name == name.lower()
            assert words.language == language.tag
            if words.story:
                assert language.read_story(words.story.typed) == words.story
    assert LANGUAGES["es-US"].class_settings["cocina"].feminine is read_whole("una taza").feminine
