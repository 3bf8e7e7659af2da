"""A page as a district gets it: its problems read again, and what an answer to each of them may show."""

from msgspec import Struct

from onewhole.findings.skill import Skill
from onewhole.marking.diagnosis.prior import key_of
from onewhole.marking.diagnosis.reply import RIGHT, Reply, reply
from onewhole.marking.diagnosis.tables import Tables, tables
from onewhole.marking.diagnosis.weighing import column
from onewhole.marking.district.shared_paper import BETWEEN
from onewhole.marking.reading.answer import Blank, Unreadable, read_written
from onewhole.marking.reading.expected import Expected, expect
from onewhole.marking.reading.mark import mark
from onewhole.problems.problem import Problem
from onewhole.problems.skill import skill
from onewhole.statements.reading import read_statement


class AnswerSeen(Struct, frozen=True):
    """What one writing says on one problem.

    ``reply`` is None where nothing was written or it cannot be read; ``fits`` are the patterns of which a
    wrong answer is just what they write.
    """

    reply: Reply | None
    fits: tuple[str, ...] = ()

    @property
    def right(self) -> bool:
        """Say whether the amount is right."""
        return self.reply == RIGHT


class PageAsked(Struct, frozen=True):
    """A page: its problems with what answers to them are compared with, and the tables of its odds."""

    problems: tuple[str, ...]
    expected: tuple[Expected, ...]
    tables: Tables

    @property
    def skills(self) -> tuple[Skill, ...]:
        """Return what each problem practises."""
        return tuple(skill(one.problem.statement) for one in self.expected)

    @property
    def keys(self) -> tuple[str, ...]:
        """Return the name of every hypothesis (:func:`~onewhole.marking.diagnosis.prior.key_of`)."""
        return tuple(key_of(one) for one in self.tables.hypotheses)

    @property
    def sets(self) -> tuple[str, ...]:
        """Return for every hypothesis what is told of it: the patterns that it supposes, "-" for an idea that
        is not listed, and nothing for no steady idea.
        """
        return tuple(
            " ".join(one.ids) or ("-" if one.unlisted is not None else "") for one in self.tables.hypotheses
        )

    def chances(self, at: int, given: Reply) -> tuple[int, ...]:
        """Return the chance per million of a reply to a problem, by hypothesis and way of working."""
        return column(self.tables.hypotheses, self.tables.chances[at], given, self.tables.meaning[at])


def page_asked(problems: str) -> PageAsked:
    r"""Read a page as a district has it, a problem a line. Raises ReadingError.

    >>> page_asked("9 5/8 - 4 6/8\n8 1/6 - 3 5/6").problems
    ('9 5/8 - 4 6/8', '8 1/6 - 3 5/6')
    """
    typed = tuple(problems.split(BETWEEN))
    asked = [expect(Problem(str(at), read_statement(one), one)) for at, one in enumerate(typed, start=1)]
    return PageAsked(typed, tuple(asked), tables(asked))


def answer_seen(asked: Expected, written: str) -> AnswerSeen:
    """Say what a writing says on a problem.

    >>> asked = page_asked("9 5/8 - 4 6/8").expected[0]
    >>> [answer_seen(asked, said).right for said in ("4 7/8", "39/8", "5 1/8", "?")]
    [True, True, False, False]
    >>> answer_seen(asked, "5 1/8").fits[0]
    'A01'
    """
    read = read_written(written, asked.problem)
    if isinstance(read.read, Blank | Unreadable):
        return AnswerSeen(None)
    return AnswerSeen(reply(asked, read.read), mark(asked, read).fits)
