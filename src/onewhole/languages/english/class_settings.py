"""English: settings that a class may choose by a name: of whom its stories tell, and what they count."""

from collections.abc import Mapping
from types import MappingProxyType

from msgspec.structs import replace

from onewhole.languages.class_words import ClassWords, OwnStory
from onewhole.languages.english.words import words_for

#: Each name, with what one whole is and who does what with it. The kite club's stories need no own words.
CLASS_SETTINGS: Mapping[str, ClassWords] = MappingProxyType(
    {
        "kite club": words_for("strip of kite paper"),
        "kitchen": replace(words_for("cup of flour"), story=OwnStory("the cooking club", "uses")),
        "garden": replace(words_for("bag of soil"), story=OwnStory("the garden club", "uses")),
        "school hall": replace(words_for("roll of cloth"), story=OwnStory("the stage crew", "uses")),
    }
)
