"""English as it is heard: the words of numbers, what may be said in their place, and words between them.

The word lists are our own choice, from how lessons are told; no source. The recognizer leaves out a word
that its dictionary lacks.
"""

from types import MappingProxyType
from typing import Final

from onewhole.languages.english.words import count_words, piece_name

#: Counts of one word: zero to nineteen.
SMALL: Final = tuple(count_words(count) for count in range(20))
#: Tens of one word, and the digits that may follow them.
TENS: Final = tuple(count_words(ten) for ten in range(20, 100, 10))
DIGITS: Final = SMALL[1:10]
#: What is said behind other counts: three hundred, two thousand.
LARGE: Final = ("hundred", "thousand")

_PIECES: Final = (*range(2, 13), 15, 16, 18, 20, 100)
#: The names of equal pieces, one and many, and the one word that each is compared by.
PIECES: Final = MappingProxyType(
    {piece_name(parts, count): piece_name(parts, 1) for parts in _PIECES for count in (1, 2)}
    | {"quarter": "fourth", "quarters": "fourth"}
)
#: How names of pieces are said that the recognizer's dictionary lacks, in the sounds of CMUdict; and how they
#: are said in haste, with a sound less (our own ear, no source).
SAID_AS: Final = MappingProxyType(
    {
        "elevenths": ("IH L EH V AH N TH S",),
        "twelfths": ("T W EH L F TH S", "T W EH L F S"),
        "fifteenths": ("F IH F T IY N TH S",),
        "eighteenths": ("EY T IY N TH S",),
        "twentieths": ("T W EH N T IY AH TH S", "T W EH N IY AH TH S"),
        "eighths": ("EY T TH S", "EY T S", "EY TH S"),
        "sixths": ("S IH K S TH S", "S IH K S S"),
    }
)
#: What joins wholes and pieces.
JOINS: Final = "and"
#: What a teacher may say behind the wholes: five wholes and four sixths.
WHOLES: Final = ("whole", "wholes")

#: What may be said for a word of the script.
SAME: Final = MappingProxyType(
    {
        "minus": (("take", "away"), ("less",), ("subtract",)),
        "plus": (("and",), ("add",)),
        "equals": (("is",), ("makes",), ("gives",), ("is", "equal", "to")),
        "makes": (("make",), ("is",), ("gives",)),
        "make": (("makes",), ("are",), ("is",), ("gives",)),
        "regroup": (
            ("trade",),
            ("open",),
            ("break", "up"),
            ("rename"),
        ),
    }
)

# fmt: off
#: Words that may be said anywhere between the numbers.
FILLERS: Final = (
    "a", "about", "actually", "add", "again", "all", "alright", "also", "am", "and", "another", "are",
    "as", "at", "away", "back", "be", "because", "but", "by", "can", "check", "come", "cut", "do", "done",
    "down", "each", "enough", "equal", "equals", "everybody", "first", "for", "from", "get", "gives",
    "go", "going", "good", "got", "great", "have", "here", "how", "i", "if", "in", "into", "is", "it",
    "just", "keep", "kids", "know", "least", "left", "less", "let", "let's", "like", "line", "look",
    "looking", "make", "makes", "many", "mean", "minus", "more", "much", "my", "need", "next", "no",
    "not", "now", "number", "of", "off", "okay", "on", "oops", "open", "or", "our", "out", "over", "part",
    "parts", "pick", "picture", "piece", "pieces", "please", "plus", "put", "ready", "really", "regroup",
    "remember", "right", "same", "say", "see", "should", "show", "so", "some", "something", "sorry",
    "start", "still", "strip", "strips", "subtract", "sure", "take", "taking", "than", "that", "that's",
    "the", "them", "then", "there", "there's", "these", "they", "thing", "think", "this", "those", "time",
    "to", "together", "trade", "try", "uh", "um", "until", "up", "us", "use", "very", "wait", "want",
    "was", "watch", "we", "we'll", "we're", "well", "what", "what's", "when", "where", "which", "whole",
    "wholes", "why", "will", "with", "write", "yes", "you", "your",
)
# fmt: on

#: Words by which a number is put right.
CORRECTING: Final = frozenset({"no", "wait", "sorry", "oops", "actually", "know"})
