"""What to do with a group tomorrow: one idea for each family of patterns. Common practice, no source."""

from onewhole.marking.grouping.group import Group
from onewhole.marking.grouping.placement import GroupKind
from onewhole.misconceptions.pattern import Family
from onewhole.notations.words import ClassWords

_IDEAS = {
    Family.REGROUPING: "Cut one {whole} into its pieces and lay it back. How many pieces is it? How many "
    "{wholes} are left now? Write both numbers, before and after: the amount did not change.",
    Family.NUMERATOR: "Build the first number from {wholes} and pieces. Take the pieces away one by one. "
    "What do you do when they run out?",
    Family.DENOMINATOR: "Say the pieces like a noun: 8 sixths take away 5 sixths. The name stays.",
    Family.WHOLES: "Say the {wholes} and the pieces of both numbers aloud, then work on one after the other.",
    Family.OPERATION: "Read the sign aloud and guess first: will there be more or less than before?",
    Family.CONVERSION: "Build 2 {wholes} and 1 piece. Count all of it in pieces. Where is each piece in the "
    "number you wrote?",
    Family.FORM: "Lay out the pieces of the answer and put full {wholes} together. Which ways are there to "
    "write it?",
    Family.FACT: "Work the hard facts beside the line: make a ten, or think of the addition.",
    Family.EQUIVALENCE: "Cut every piece again. Has the amount changed? How many pieces are there now?",
    Family.COMPARISON: "Lay both numbers side by side on equal {wholes} and look.",
    Family.PLACE_VALUE: "Line the numbers up by their units and name each unit aloud.",
}
_PLACES = {
    GroupKind.ABSENT: "Give tonight's page again, and find out whether it came home.",
    GroupKind.EXTENSION: "Let each write a kite story for one problem, and the answer in two more ways.",
    GroupKind.SLIPS: "Let each find the slip alone: put the answer back and see whether it fits.",
    GroupKind.INTERVIEW: "Ask each child to show one problem with {wholes}. Listen first, help after.",
}
#: More than two ideas are too many for ten minutes.
MOST = 2


def reteaching(group: Group, words: ClassWords) -> str:
    """Return what to do with a group, in a few sentences."""
    ideas = [_IDEAS[family] for family in group.families[:MOST]] or [_PLACES[group.place]]
    return " ".join(ideas).format(whole=words.whole, wholes=words.wholes)
