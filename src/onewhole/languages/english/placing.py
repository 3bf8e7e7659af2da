"""Why pupils work together, why one of them sits there, and whom to see first: for the teacher's eyes."""

from collections.abc import Iterable, Sequence
from typing import assert_never

from onewhole.findings.attendance import PaperWord
from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import (
    AllRight,
    AnotherIdea,
    FindingSetAside,
    FitsIdea,
    KeptHere,
    LeftBlank,
    LikelierThanNot,
    MaybeOneIdea,
    MaybeSlips,
    MayFit,
    MeetingsUsedUp,
    MovedHere,
    NoPaper,
    NoSteadyPattern,
    NothingWritten,
    NotReadable,
    NotToldApart,
    OtherFormWanted,
    SpeaksAgainst,
    SteadyNotOurs,
    TooFewAlike,
    TooManyAlike,
    WhyFirst,
    WhyPlaced,
    Wrong,
    WrongEachItsWay,
)
from onewhole.languages.english.families import families_listed
from onewhole.languages.english.in_page import problems
from onewhole.languages.english.making import Nodes, bare, told
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import Family
from onewhole.sentences.node import Counted, Thing, Typed
from onewhole.sentences.sentence import End, Sentences

#: Pupils of a group of whom no idea is named.
OTHERS = "others here"
_MORE = Thing("more idea", "more ideas", None)
_OTHER = Thing("other idea", "other ideas", None)
_GROUP = Thing("group", "groups", None)


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
        case SteadyNotOurs(labels):
            return told("steady in", problems(labels), ", and not one of ours")
        case MaybeOneIdea(labels):
            return told("answers to", problems(labels), "may come from one idea")
        case _:
            assert_never(why)


def group_about(kind: GroupKind, ideas: Sequence[str] = (), families: Sequence[Family] = ()) -> Sentences:
    """Say in a few words what a group is about, as it stands beside its name: its ideas in plain words.

    ``ideas`` are the ids of their patterns, that of most pupils first; ``families`` stand for none.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(group_about(GroupKind.FAMILY, ["A01"]))
    'takes the smaller number of pieces from the larger'
    """
    return told(_about(kind, ideas, families), end=End.TYPED)


def group_because(about: Sentences, pupils: Iterable[tuple[str, Sequence[WhyPlaced]]]) -> Sentences:
    """Say in one sentence what a group is ``about``, and for each of its pupils by code why they are there.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(group_because(group_about(GroupKind.SLIPS), [("K01", (MaybeSlips(("1",)),))]))
    'slips only, a word at the desk: K01: one step beside right, perhaps a slip, in 1'
    """
    each = [(Typed(pupil), ":", *_clauses(because)) for pupil, because in pupils]
    nodes = tuple(node for sentence in about for node in sentence.nodes)
    return told(nodes, ":", _joined(each), end=End.TYPED)


def idea_called(idea: str) -> str:
    """Return an idea in plain words, from the id of its pattern.

    >>> idea_called("A12")
    'wholes only'
    """
    return by_id(idea).name


def _quoted(idea: str) -> Typed:
    return Typed(f"“{idea_called(idea)}”")


def _about(kind: GroupKind, ideas: Sequence[str], families: Sequence[Family]) -> Nodes:
    names = tuple(dict.fromkeys(map(idea_called, ideas)))
    match names:
        case ():
            return (_kind(kind, families),)
        case (one,):
            return (Typed(one),)
        case (one, other):
            return (Typed(f"{one}; {other}"),)
        case _:
            return Typed(f"{names[0]}; {names[1]}"), "; and", Counted(len(names) - 2, _MORE)


def _kind(kind: GroupKind, families: Sequence[Family]) -> str:
    match kind:
        case GroupKind.ABSENT:
            return "absent or nothing written"
        case GroupKind.EXTENSION:
            return "all right, ready to go further"
        case GroupKind.FAMILY if families:
            return f"perhaps an idea about {families_listed(families)}"
        case GroupKind.FAMILY:
            return "kept together"
        case GroupKind.SLIPS:
            return "slips only, a word at the desk"
        case GroupKind.INTERVIEW:
            return "a talk first, one by one"
        case GroupKind.OWN_IDEA:
            return "steady, and not one of ours: ask each to show it"
        case _:
            assert_never(kind)


def no_paper(word: PaperWord) -> str:
    """Say of a paper that is not there what the teacher said of it.

    >>> no_paper(PaperWord.LATE), no_paper(PaperWord.EXCUSED)
    ('the paper is late', 'excused')
    """
    match word:
        case PaperWord.HERE:
            return "nothing was written"
        case PaperWord.ABSENT:
            return "absent"
        case PaperWord.EXCUSED:
            return "excused"
        case PaperWord.LATE:
            return "the paper is late"
        case _:
            assert_never(word)


def _clauses(because: Sequence[WhyPlaced]) -> Nodes:
    return _joined([_clause(why) for why in because])


def _joined(clauses: Sequence[Nodes]) -> Nodes:
    return tuple(node for at, clause in enumerate(clauses) for node in ((";", *clause) if at else clause))


def _clause(why: WhyPlaced) -> Nodes:
    match why:
        case NothingWritten():
            return ("nothing was written",)
        case NoPaper(word):
            return (no_paper(word),)
        case AllRight(count):
            return "all", bare(count), "right"
        case OtherFormWanted(labels):
            return "another form is wanted in", *problems(labels)
        case FitsIdea(labels, idea):
            return "answers to", *problems(labels), "fit", _quoted(idea)
        case NotToldApart((one,)):
            return "they do not tell it from", _quoted(one)
        case NotToldApart(ideas):
            return "they do not tell it from", Counted(len(ideas), _OTHER)
        case SpeaksAgainst(labels):
            return "against it:", *problems(labels)
        case MaybeSlips(labels):
            return "one step beside right, perhaps a slip, in", *problems(labels)
        case Wrong(labels):
            return "wrong in", *problems(labels)
        case MayFit(labels):
            return *problems(labels), "may fit an idea, and one more answer would tell"
        case NoSteadyPattern():
            return ("no steady pattern",)
        case SteadyNotOurs(labels):
            return "steady, and not one of ours: ask the child to show", *problems(labels)
        case LeftBlank(labels):
            return "nothing written in", *problems(labels)
        case NotReadable(labels):
            return "not readable:", *problems(labels)
        case LikelierThanNot(families):
            return (f"likelier than not one of these ({families_listed(families)})",)
        case TooFewAlike(1):
            return ("joins these, as nobody else has an idea of that kind",)
        case TooFewAlike(count):
            return "joins these, as only", bare(count), "have an idea of that kind"
        case MeetingsUsedUp(meets):
            return "joins these, as you meet", Counted(meets, _GROUP)
        case AnotherIdea():
            return ("another kind of idea than most here",)
        case TooManyAlike(count):
            return bare(count), "fit this, more than one group holds"
        case FindingSetAside():
            return ("you set the finding aside",)
        case MovedHere(group, because):
            return "moved here by the teacher; the answers said", Typed(group), ":", *_clauses(because)
        case KeptHere(group, because):
            return "kept here; the answers now say", Typed(group), ":", *_clauses(because)
        case _:
            assert_never(why)
