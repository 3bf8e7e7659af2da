"""Spanish: settings that a class may choose by a name: of whom its stories tell, and what they count."""

from collections.abc import Mapping
from types import MappingProxyType

from msgspec.structs import replace

from onewhole.languages.class_words import ClassWords, OwnStory
from onewhole.languages.spanish.words import read_whole

#: Each name, with what one whole is and who does what with it. The kite club's stories need no own words.
CLASS_SETTINGS: Mapping[str, ClassWords] = MappingProxyType(
    {
        "club de cometas": read_whole("una tira de papel"),
        "cocina": replace(read_whole("una taza de harina"), story=OwnStory("el club de cocina", "usa")),
        "huerto": replace(read_whole("una bolsa de tierra"), story=OwnStory("el club del huerto", "usa")),
        "salón de actos": replace(
            read_whole("un rollo de tela"), story=OwnStory("el grupo de teatro", "usa")
        ),
    }
)
