"""The page for home by messages: what is done tonight, how a whole is opened, what may be asked."""

from collections.abc import Collection, Mapping, Sequence
from fractions import Fraction
from typing import assert_never

from msgspec import Struct

from onewhole.languages.by_messages.message import Teller, many, named, one
from onewhole.languages.class_words import ClassWords
from onewhole.languages.told import HomeTold, acts_told
from onewhole.number.ladder import TEN
from onewhole.number.unit import ONE, Unit
from onewhole.problems.about import About, Units
from onewhole.problems.needs import Operation
from onewhole.sentences.node import Counted
from onewhole.sentences.sentence import Sentences

_TEN, _TENTH = Unit(Fraction(TEN)), Unit(Fraction(1, TEN))


class HomeMessages(Struct, frozen=True):
    """The messages of the page for home, each a sentence; several stand in a row.

    Holes: {act} is what is done with tonight's numbers; {regroups} is "we regroup one whole" with the class's
    words and {regroup} its verb; {one} is one whole, {pieces} its pieces, {tens}, {ten} and {ones} are tens,
    one ten and its ones, {tenths} tenths; {feminine:a/b} agrees with the class's whole.
    """

    acts: Mapping[Operation, str]
    tonight: str
    in_some: str
    opened: tuple[str, ...]
    alike: tuple[str, ...]
    known_from_taking: str
    known_from_adding: str
    wording: str
    closing: tuple[str, ...]
    enough_pieces: str
    enough_in_places: str
    enough_smaller: str
    size_for_all: str
    pieces_fill: str
    ten_in_a_place: str
    smaller_make_larger: str
    same_size: str
    first_place: str
    first_unit: str
    groups: str
    shared: str
    other_way: str
    both_sides: str
    least: str
    between: str
    each_mark: str
    pieces_in_one: str
    ones_in_ten: str
    tenths_in_one: str
    smaller_in_larger: str
    first_guess: str


class HomeByMessages(Struct, frozen=True):
    """The page for home of a language that has these messages."""

    tells: Teller
    says: HomeMessages

    @property
    def home(self) -> HomeTold:
        """Return all that it says."""
        return HomeTold(
            tonight=self._tonight,
            opening=self._opening,
            wording=self._wording,
            closing=lambda: self.tells.told(*self.says.closing),
            operation_asked=self._operation,
            unit_asked=self._unit,
            guess_asked=lambda: self.tells.asked(self.says.first_guess),
        )

    def _tonight(self, done: Collection[Operation]) -> Sentences:
        acts = self.says.acts
        first, *rest = [act for operation, act in acts.items() if operation in done] or [
            acts[Operation.RENAME]
        ]
        said = self.tells.told(self.says.tonight, act=first)
        others = (self.tells.told(self.says.in_some, act=self.tells.listed(acts)) for acts in acts_told(rest))
        return said + tuple(one for more in others for one in more)

    def _opening(self, parts: int, words: ClassWords) -> Sequence[Sentences]:
        whole = one(ONE, words)
        opened = self.tells.told(
            *self.says.opened,
            regroups=self.tells.regroups(words, whole),
            one=whole,
            feminine=self.tells.is_feminine(named(ONE, words)),
            pieces=Counted(parts, Unit(Fraction(1, parts)), spelt=True),
        )
        ones = Counted(TEN, ONE, spelt=True)
        return opened, self.tells.told(*self.says.alike, tens=many(_TEN), ten=one(_TEN), ones=ones)

    def _wording(self, words: ClassWords, *, taken: bool, added: bool) -> Sentences:
        known: Sentences = ()
        if taken:
            known = self.tells.told(self.says.known_from_taking)
        elif added:
            known = self.tells.told(self.says.known_from_adding)
        return known + self.tells.told(self.says.wording, regroup=self.tells.verbs[words.regroup][1])

    def _operation(self, about: About, words: ClassWords) -> Sentences:
        return self.tells.asked(self._asking(about), one=one(ONE, words))

    def _asking(self, about: About) -> str:
        says = self.says
        match about.operation:
            case Operation.SUBTRACT:
                return self._by_units(
                    about, says.enough_pieces, says.size_for_all, says.enough_in_places, says.enough_smaller
                )
            case Operation.ADD:
                return self._by_units(
                    about, says.pieces_fill, says.size_for_all, says.ten_in_a_place, says.smaller_make_larger
                )
            case Operation.COMPARE:
                return self._by_units(
                    about, says.same_size, says.same_size, says.first_place, says.first_unit
                )
            case Operation.MULTIPLY:
                return says.groups
            case Operation.DIVIDE:
                return says.shared
            case Operation.RENAME:
                return says.other_way
            case Operation.FIND:
                return says.both_sides
            case Operation.ORDER:
                return says.least
            case Operation.READ:
                return says.each_mark
            case Operation.ROUND:
                return says.between
            case _:
                assert_never(about.operation)

    @staticmethod
    def _by_units(about: About, pieces: str, unlike: str, places: str, measures: str) -> str:
        match about.units:
            case Units.PIECES:
                return pieces
            case Units.UNLIKE:
                return unlike
            case Units.PLACES | Units.DECIMALS:
                return places
            case Units.MEASURES:
                return measures
            case _:
                assert_never(about.units)

    def _unit(self, about: About, words: ClassWords) -> Sentences:
        asked = self.tells.asked
        match about.units:
            case Units.PIECES | Units.UNLIKE:
                return asked(self.says.pieces_in_one, one=one(ONE, words))
            case Units.PLACES if about.operation in {Operation.MULTIPLY, Operation.DIVIDE}:
                return ()
            case Units.PLACES:
                return asked(self.says.ones_in_ten, ones=many(ONE), ten=one(_TEN))
            case Units.DECIMALS:
                return asked(self.says.tenths_in_one, tenths=many(_TENTH))
            case Units.MEASURES:
                return asked(self.says.smaller_in_larger)
            case _:
                assert_never(about.units)
