"""Examples of what may be typed on the Page desk, for the page of help; each is read and worked by a test."""

from collections.abc import Mapping
from types import MappingProxyType

from msgspec import Struct

from onewhole.findings.click import TellAs
from onewhole.languages.english.clicks import button
from onewhole.notations.sentences.text import text_of
from onewhole.sheets.reading import read_part
from onewhole.sheets.settings import SETTINGS
from onewhole.sheets.unread_line import UnreadLine

#: A story as it stands in a book; what it asks is written before it by one click.
STORY = "Maya has 4 1/4 yards of ribbon. She uses 1 3/4 yards. How much is left?"
#: What may be typed, by what it shows.
EXAMPLES: Mapping[str, str] = MappingProxyType(
    {
        "plain": "7 2/6 - 3 5/6\n52 - 27\n5.2 - 2.7",
        "labels": "1. 7 2/6 - 3 5/6\n2a) 52 - 27\n#3 5.2 - 2.7",
        "kinds": "3/4 + 2/4\n7 2/6 - 3 5/6\n5 - 1 3/8\n1/2 + 1/3\n52 - 27\n5.2 - 2.7\n"
        "5 ft 2 in - 2 ft 7 in\n2 1/2 + 3 1/2 - 1 1/2",
        "measures": "5 ft 2 in - 2 ft 7 in\n3 yd 1 ft - 5 ft\n1 lb 14 oz + 9 oz\n5 gal - 2 gal 3 qt\n"
        "3 km 250 m - 1 km 800 m\n2 m 70 cm + 45 cm\n4 kg 50 g - 1 kg 975 g\n5 L 200 mL - 2 L 900 mL\n"
        "3 h 20 min - 1 h 45 min\n2 min 15 s - 48 s\n3 wk 2 d - 1 wk 5 d",
        "units": "5 5/8 in - 2 7/8 in\n4 5/8 cups + 1 3/8 cups\n5.2 km - 2.75 km",
        "money": "$3.25 + $1.80\n$5 - $2.35\n75¢ + 50¢",
        "clock": "9:45 to 11:20\n9:45 + 1 h 35 min\n11:20 - 45 min\n9:50 a.m. to 2:15 p.m.",
        "missing": "9 - ? = 3 1/2\n7 2/6 = 6 ?/6\n3/4 = ?/8",
        "which": "5/6 ? 7/8\n2 1/2 ? 2 2/4",
        "order": "order 2/3, 1/2, 3/4\norder 345, 354, 1,205 from greatest\norder 0.5, 0.45, 0.405\n"
        "order 5 ft, 4 ft 11 in, 61 in",
        "name": "6/8\n11/4\n1 1/2\n0.75\n26 in",
        "form": "12/18 simplest\n11/4 as a mixed number\n2 3/4 as a fraction\n3/4 as a decimal\n"
        "0.75 as a fraction\n3 ft = ? in\n26 in = ? ft ? in",
        "groups": "50 ÷ 8, groups needed\n50 ÷ 8, full groups\n50 ÷ 8, left over\n1,128 ÷ 36; up",
        "rounding": "round 4,567 to the nearest hundred\nround 3.46 to tenths\n"
        "round 2 5/8 to the nearest whole number\nround 5 ft 8 in to the nearest foot",
        "plot": "plot 1/4: 2, 1/2: 3, 5/8 in: 1; count above 1/4\nplot 1/4: 2, 1/2: 3, 5/8 in: 1; spread\n"
        "plot 1/4, 1/2, 1/4, 3/4 in; total\nplot 3: 2, 5: 4; most\nplot 1/2: 3, 1: 2, 1 1/2: 1; share",
        "signs": "7\N{VULGAR FRACTION TWO THIRDS} \N{EN DASH} 3\N{VULGAR FRACTION ONE THIRD} = ____",
        "story": f"4 1/4 - 1 3/4 | {STORY}",
        "words": "# Look at the pieces first. Are there enough?\n7 2/6 - 3 5/6",
        "settings": "title: Kite tails\nwhole: strip\nminutes: 20\n\n7 2/6 - 3 5/6",
    }
)
#: A value of each setting that has no fixed choice.
_VALUES = {
    "title": "Kite tails",
    "date": "Thursday",
    "class": "Room 12",
    "grade": "4",
    "strategy": "count up",
    "multiply": "multiply in columns",
    "divide": "long division",
    "whole": "strip",
    "wholes": "strips",
    "minutes": "20",
    "picture": "strip for stories",
    "story bars": "no",
    "stories": "the trail club walks",
    "fit": "2",
    "corner marks": "windows",
    "languages": "en, es",
    "whole at home": "una tira",
    "to finish": "304 - 128",
    "film": "https://films.example.org/kites",
}


class SettingExample(Struct, frozen=True):
    """A setting: what may stand there, and the line as it is typed."""

    name: str
    takes: str
    typed: str


def setting_examples() -> tuple[SettingExample, ...]:
    """Return every setting that a teacher types, with an example.

    >>> setting_examples()[0].typed
    'title: Kite tails'
    """
    return tuple(
        SettingExample(one.name, one.takes, f"{one.name}: {_value(one.name, one.takes)}")
        for one in SETTINGS
        if one.name != "recipe"
    )


def story_buttons() -> tuple[str, ...]:
    """Return the words of the buttons that stand beside the story when it is typed as it is.

    >>> story_buttons()
    ('4 1/4 - 1 3/4?', '4 1/4 + 1 3/4?')
    """
    (mistake,) = read_part(STORY).mistakes
    assert isinstance(mistake, UnreadLine)
    return tuple(text_of(button(TellAs(1, STORY, asked))) for asked in mistake.story.asked)


def _value(name: str, takes: str) -> str:
    """Return an example of what a setting takes: the last of its choices, which is not the usual one."""
    return _VALUES.get(name) or takes.replace(" or ", ", ").split(", ")[-1 if "yes" not in takes else 0]
