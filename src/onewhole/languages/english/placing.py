"""Why pupils work together, why one of them sits there, and whom to see first: for the teacher's eyes."""

from collections.abc import Iterable, Sequence
from typing import assert_never

from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import (
    AllRight,
    FindingSetAside,
    FitsFamilies,
    JoinsOthers,
    LeftBlank,
    LikelierThanNot,
    MaybeOneIdea,
    MaybeSlips,
    MovedHere,
    NoSteadyPattern,
    NothingWritten,
    NotReadable,
    OtherFormWanted,
    SpeaksAgainst,
    TooFewToTell,
    WhyFirst,
    WhyPlaced,
    Wrong,
    WrongEachItsWay,
)
from onewhole.languages.english.families import families_listed
from onewhole.languages.english.in_page import problems
from onewhole.languages.english.making import Nodes, bare, told
from onewhole.misconceptions.pattern import Family
from onewhole.sentences.node import Typed
from onewhole.sentences.sentence import End, Sentences


def placed_because(because: Sequence[WhyPlaced], end: End = End.STOP) -> Sentences:
    """Say in one sentence why a pupil sits in a group.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(placed_because((Wrong(("1", "2")), NoSteadyPattern())))
    'Wrong in 1 and 2; no steady pattern.'
    """
    return told(_clauses(because), end=end)


def first_because(why: WhyFirst) -> Sentences:
    """Say why a pupil is seen first.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(first_because(WrongEachItsWay(("1", "2"))))
    'Wrong in 1 and 2, each in its own way.'
    """
    match why:
        case WrongEachItsWay(labels):
            ways = (", each in its own way",) if len(labels) > 1 else ()
            return told("wrong in", problems(labels), ways)
        case MaybeOneIdea(labels):
            return told("answers to", problems(labels), "may come from one idea")
        case _:
            assert_never(why)


def group_about(kind: GroupKind, families: Sequence[Family] = ()) -> Sentences:
    """Say in a few words why pupils work together, as it stands beside the name of a group.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(group_about(GroupKind.FAMILY, (Family.NUMERATOR,)))
    'answers that fit patterns of one family (numerator)'
    """
    return told(_about(kind, families), end=End.TYPED)


def group_because(
    kind: GroupKind, families: Sequence[Family], pupils: Iterable[tuple[str, Sequence[WhyPlaced]]]
) -> Sentences:
    """Say in one sentence why pupils work together, and for each of them by code why.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(group_because(GroupKind.SLIPS, (), [("K01", (MaybeSlips(("1",)),))]))
    'slips only: K01: one step beside right, perhaps a slip, in 1'
    """
    each = [(Typed(pupil), ":", *_clauses(because)) for pupil, because in pupils]
    return told(_about(kind, families), ":", _joined(each), end=End.TYPED)


def _about(kind: GroupKind, families: Sequence[Family]) -> Nodes:
    about = _kind(kind)
    return (about, f"({families_listed(families)})") if families else (about,)


def _kind(kind: GroupKind) -> str:
    match kind:
        case GroupKind.ABSENT:
            return "absent or nothing written"
        case GroupKind.EXTENSION:
            return "all right, ready to go further"
        case GroupKind.FAMILY:
            return "answers that fit patterns of one family"
        case GroupKind.SLIPS:
            return "slips only"
        case GroupKind.INTERVIEW:
            return "no steady pattern, a talk first"
        case _:
            assert_never(kind)


def _clauses(because: Sequence[WhyPlaced]) -> Nodes:
    return _joined([_clause(why) for why in because])


def _joined(clauses: Sequence[Nodes]) -> Nodes:
    return tuple(node for at, clause in enumerate(clauses) for node in ((";", *clause) if at else clause))


def _clause(why: WhyPlaced) -> Nodes:
    match why:
        case NothingWritten():
            return ("nothing was written",)
        case AllRight(count):
            return "all", bare(count), "right"
        case OtherFormWanted(labels):
            return "another form is wanted in", *problems(labels)
        case FitsFamilies(labels, families):
            fit = f"fit a pattern ({families_listed(families)})"
            return "answers to", *problems(labels), fit
        case SpeaksAgainst(labels):
            return "against it:", *problems(labels)
        case MaybeSlips(labels):
            return "one step beside right, perhaps a slip, in", *problems(labels)
        case Wrong(labels):
            return "wrong in", *problems(labels)
        case TooFewToTell(labels):
            return *problems(labels), "may fit a pattern, which is too few to tell"
        case NoSteadyPattern():
            return ("no steady pattern",)
        case LeftBlank(labels):
            return "nothing written in", *problems(labels)
        case NotReadable(labels):
            return "not readable:", *problems(labels)
        case LikelierThanNot(families):
            return (f"likelier than not one of these ({families_listed(families)})",)
        case JoinsOthers():
            return ("joins these, as too few others need that talk",)
        case FindingSetAside():
            return ("you set the finding aside",)
        case MovedHere(group, because):
            return "moved here by the teacher; the answers said", Typed(group), ":", *_clauses(because)
        case _:
            assert_never(why)
