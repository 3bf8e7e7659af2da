"""What a film says beside the reasons, by messages; what has none is said in English."""

from collections.abc import Sequence

from msgspec import Struct
from msgspec.structs import replace

from onewhole.languages.by_messages.message import Hole, Nodes, Teller, many, nodes_of, one, some
from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.tongue import ENGLISH
from onewhole.languages.film_told import AfterTold, LinesTold, OpeningTold
from onewhole.number.quantity import Quantity
from onewhole.number.unit import ONE, Unit
from onewhole.sentences.node import Counted, Label, Naming, Said, Thing
from onewhole.sentences.sentence import Sentences
from onewhole.sentences.typed import typed, typed_sentences
from onewhole.statements.expression import Expression
from onewhole.statements.statement import AnotherName, Comparison, Question, Relation, RightAnswer, Statement
from onewhole.working.line import LineContent
from onewhole.working.reason import Reason
from onewhole.working.reasons.regrouping import OpensOne
from onewhole.working.reasons.taking import PiecesAdded, PiecesTaken


class FilmMessages(Struct, frozen=True):
    """The messages of a film; several sentences stand in a row.

    ``problem``, ``whole`` and ``piece`` are the words for these, ``larger`` one larger unit. Holes: {words}
    is what a teacher typed, {label} a problem's number, {line} a line as it is written, {deed} what is done,
    {larger}, {smaller}, {pieces} and {regroups} as in reasons, {kept} and {other} two forms of an answer.
    """

    problem: Thing
    whole: Thing
    piece: Thing
    larger: str
    tonight: str
    the_end: str
    hello: str
    hello_class: str
    date: str
    title: str
    count: str
    one_whole: str
    in_all: str
    in_some: str
    not_enough: str
    need_more: str
    one_adds: str
    one_takes: str
    try_first: str
    your_turn: tuple[str, ...]
    turn_written: str
    closing: tuple[str, ...]
    tens: tuple[str, ...]
    problem_alone: str
    problem_story: str
    we_work: str
    we_look_for: str
    that_is: str
    now_we_have: str
    taken: str
    added: str
    then: str
    as_before: str
    answer: str
    so: str
    in_problem: str
    same_amount: str
    one_fraction: str
    may_stay: str
    both_right: str
    check: str


class FilmByMessages(Struct, frozen=True):
    """The film of a language that has these messages."""

    tells: Teller
    says: FilmMessages

    @property
    def opening(self) -> OpeningTold:
        """Return its beginning and end."""
        told, says = self.tells.told, self.says
        return replace(
            ENGLISH.opening,
            tonight=says.tonight,
            the_end=says.the_end,
            greeting=lambda of: told(says.hello_class, words=typed(of)) if of else told(says.hello),
            date=lambda date: told(says.date, words=typed(date)),
            title=lambda title: told(says.title, words=typed(title)),
            count=lambda problems: told(says.count, problems=Counted(problems, says.problem)),
            whole=lambda words: told(
                says.one_whole, whole=Counted(1, says.whole, spelt=True), larger=one(ONE, words)
            ),
            opened=self._opened,
            one_adds=lambda label: told(says.one_adds, label=Label(label)),
            one_takes=lambda label: told(says.one_takes, label=Label(label)),
            try_first=lambda: told(says.try_first),
            your_turn=lambda: told(*says.your_turn),
            turn_written=says.turn_written,
            tens=self._tens,
            closing=lambda: told(*says.closing),
        )

    @property
    def lines(self) -> LinesTold:
        """Return what is said of problems and their lines."""
        return LinesTold(
            asked=self._asked,
            stands=self._stands,
            parts_stand=self._parts_stand,
            deed=self._deed,
            done=lambda deed: self.tells.told("{deed}", deed=deed),
            then=lambda deed: self.tells.told(self.says.then, deed=deed),
            as_before=lambda deed, label: (
                self.tells.told(self.says.as_before, deed=deed, label=Label(label)),
            ),
            outcome=self._outcome,
            answers=self._answers,
        )

    @property
    def after(self) -> AfterTold:
        """Return what may follow an answer."""
        told, says = self.tells.told, self.says
        return AfterTold(
            same_amount=lambda kept, other: (told(says.same_amount, kept=Said(kept), other=Said(other)),),
            one_fraction=lambda kept, other: told(says.one_fraction, kept=Said(kept), other=Said(other)),
            may_stay=lambda kept: (told(says.may_stay, kept=Said(kept)), told(says.both_right)),
            check=lambda back: told(says.check, line=Said(back)),
        )

    def _opened(
        self,
        count: int,
        every: int,
        small: Unit | None,
        large: Unit | None,
        words: ClassWords,
        *,
        lacking: bool,
    ) -> Sentences:
        says = self.says
        where = says.in_all if count == every else says.in_some
        holes: dict[str, Hole] = {
            "problems": Counted(count, says.problem),
            "smaller": many(small) if small else Naming(says.piece),
            "regroups": self.tells.regroups(words, one(large, words) if large else says.larger),
        }
        return self.tells.told(f"{where} {says.not_enough if lacking else says.need_more}", **holes)

    def _tens(self, large: Unit, small: Unit, tens: Sequence[Unit], words: ClassWords) -> Sentences:
        ten, single = tens
        worth = (large.size / small.size).numerator
        held = {"ten": one(ten), "ones": some(10, single)}
        return self.tells.told(*self.says.tens, larger=one(large, words), pieces=some(worth, small), **held)

    def _asked(self, label: str, statement: Statement, story: str, _at: int) -> Sentences:
        told, says = self.tells.told, self.says
        asks = isinstance(statement, Question)
        if asks and not story:
            return told(says.problem_alone, label=Label(label), line=Said(statement))
        said = told(says.problem_story, label=Label(label)) + typed_sentences(story, self.tells.tag)
        return said + told(says.we_work if asks else says.we_look_for, line=Said(statement))

    def _stands(self, line: LineContent) -> tuple[Sentences, ...]:
        messages = (self.says.that_is, self.says.now_we_have)
        return tuple(self.tells.told(message, line=Said(line)) for message in messages)

    def _parts_stand(self, parts: tuple[Expression, ...]) -> tuple[Sentences, ...]:
        lines = self.tells.listed([(Said(part),) for part in parts])
        return (self.tells.told(self.says.now_we_have, line=lines),)

    def _deed(self, reason: Reason | None, words: ClassWords) -> Nodes | None:
        match reason:
            case OpensOne(large=large):
                return self.tells.regroups(words, one(large, words))
            case PiecesTaken(small, _, count):
                return nodes_of(self.says.taken, {"pieces": some(count, small)})
            case PiecesAdded(small, _, count):
                return nodes_of(self.says.added, {"pieces": some(count, small)})
            case _:
                return None

    def _outcome(self, statement: Statement, answer: RightAnswer) -> Nodes:
        match statement, answer:
            case Question(asking) | AnotherName(asking), Quantity():
                return (Said(Comparison(asking, answer, Relation.EQUAL)),)
            case Comparison(left, right), Relation():
                return (Said(Comparison(left, right, answer)),)
            case _:
                return nodes_of(self.says.answer, {"line": Said(answer)})

    def _answers(self, label: str, statement: Statement, answer: RightAnswer) -> tuple[Sentences, ...]:
        said = self._outcome(statement, answer)
        messages = (self.says.so, self.says.in_problem)
        return tuple(self.tells.told(message, line=said, label=Label(label)) for message in messages)
