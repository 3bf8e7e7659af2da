"""Why a line follows, and what a picture shows, by messages; what has none is said in English."""

from msgspec import Struct

from onewhole.languages.by_messages.message import Nodes, Teller, bare, many, one, some
from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.pictured import pictured as english_picture
from onewhole.languages.english.pictured import scene_words
from onewhole.languages.english.reasons import reason_told as english_reason
from onewhole.number.digits import in_digits, named_places
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.pictures.caption import Caption, Count
from onewhole.pictures.description import CrossedOut, CutInto, Description, Gathered, Makes, Shown, StillThere
from onewhole.pictures.scene import Scene
from onewhole.sentences.node import Counted, Said, Thing
from onewhole.sentences.sentence import Sentences
from onewhole.working.reason import Reason
from onewhole.working.reasons.regrouping import (
    AreWorth,
    FullGroups,
    MakesLarger,
    OneIsWorth,
    OpensOne,
    OpensToMatch,
    PutTogether,
    WrittenTogether,
)
from onewhole.working.reasons.renaming import CutAgain, RenamedSameAmount, SameSizePieces, WholesInPieces
from onewhole.working.reasons.taking import (
    AddedUnitByUnit,
    InAll,
    LargerUnitFirst,
    Left,
    OpenedToTake,
    PiecesAdded,
    PiecesTaken,
    SetAside,
    SoFar,
    TakenFromWhole,
    TakenUnitByUnit,
    UnitsTaken,
)


class ReasonMessages(Struct, frozen=True):
    """The messages of reasons and pictures, named as their records are; several sentences stand in a row.

    Holes: {larger} is one of the larger unit or so many, {smaller} its pieces by name and {pieces} so many
    of them; {groups} counts ``full_group``; {regroups} is "we regroup" with what is regrouped; {had}, {more},
    {taken} and {left} are amounts; {result}, {wholes} and {opened} stand as they are written; {many:a/b}
    chooses by one and several.
    """

    full_group: Thing
    opens_first: str
    opens_one: str
    opens_to_match: str
    one_is_worth: str
    are_worth: str
    there_are_now: str
    put_together: str
    full_groups: str
    makes_larger: str
    written_together: str
    taken_each: str
    each_from_each: str
    added_each: str
    each_with_each: str
    pieces_taken: str
    pieces_added: str
    larger_first: str
    units_taken: str
    nothing_left: str
    left: str
    in_all: str
    so_far: str
    set_aside: str
    opened_to_take: str
    taken_from_whole: tuple[str, ...]
    taken_all: tuple[str, ...]
    wholes_in_pieces: str
    cut_again: str
    same_size_pieces: str
    renamed: str
    shown: str
    still_there: str
    crossed_out: str
    gathered: str
    makes: str
    cut_into: str


class ReasonsByMessages(Struct, frozen=True):
    """The reasons and pictures of a language that has these messages."""

    tells: Teller
    says: ReasonMessages

    def reason(self, reason: Reason, words: ClassWords) -> Sentences:
        """Say why a line follows; in English what has no message."""
        told, says = self.tells.told, self.says
        match reason:
            case OpensOne() | OpensToMatch() | OneIsWorth() | AreWorth() | PutTogether() | FullGroups():
                return self._opening(reason, words)
            case TakenUnitByUnit(units) if units:
                return told(says.taken_each, each=self._each(says.each_from_each, units, words))
            case AddedUnitByUnit(units) if units:
                return told(says.added_each, each=self._each(says.each_with_each, units, words))
            case PiecesTaken(small, have, gone):
                return told(says.pieces_taken, had=some(have, small), taken=some(gone, small))
            case PiecesAdded(small, have, more):
                return told(says.pieces_added, had=some(have, small), more=some(more, small))
            case LargerUnitFirst(unit, count):
                return told(says.larger_first, taken=some(count, unit, words))
            case UnitsTaken(unit, had, gone):
                left = some(had - gone, unit, words)
                return told(says.units_taken, had=bare(had), taken=bare(gone), left=left)
            case Left(result) if not result.parts:
                return told(says.nothing_left)
            case Left(result):
                return self._came_to(says.left, result, words)
            case InAll(result):
                return self._came_to(says.in_all, result, words)
            case SoFar(result):
                return self._came_to(says.so_far, result, words)
            case SetAside(wholes, pieces):
                return told(says.set_aside, pieces=Said(pieces), wholes=Said(wholes))
            case OpenedToTake(wholes, opened):
                return told(says.opened_to_take, wholes=Said(wholes), opened=Said(opened))
            case TakenFromWhole(wholes, left_over):
                messages = says.taken_from_whole if left_over.parts else says.taken_all
                return told(*messages, wholes=Said(wholes), left=Said(left_over))
            case WholesInPieces(large, small, ratio):
                worth = some(ratio, small)
                return told(
                    says.wholes_in_pieces, larger=one(large, words), pieces=worth, smaller=many(small)
                )
            case MakesLarger(large, small, times, had):
                return told(says.makes_larger, pieces=some(had, small), larger=_made(times, large, words))
            case WrittenTogether(result):
                return told(says.written_together, result=Said(result))
            case CutAgain(small):
                return told(says.cut_again, smaller=many(small))
            case SameSizePieces(small):
                return told(says.same_size_pieces, smaller=many(small))
            case RenamedSameAmount(small):
                return told(says.renamed, smaller=many(small))
            case _:
                return english_reason(reason, ClassWords(regroup=words.regroup))

    def _opening(
        self,
        reason: OpensOne | OpensToMatch | OneIsWorth | AreWorth | PutTogether | FullGroups,
        words: ClassWords,
    ) -> Sentences:
        told, says, regroups = self.tells.told, self.says, self.tells.regroups
        match reason:
            case OpensOne(large, small, have, need):
                act = regroups(words, one(large, words))
                message = says.opens_first if have >= need else says.opens_one
                return told(message, smaller=many(small), pieces=some(need, small), regroups=act)
            case OpensToMatch(large, small, times):
                act = regroups(words, _made(times, large, words))
                return told(says.opens_to_match, smaller=many(small), regroups=act)
            case OneIsWorth(large, small, ratio):
                return told(says.one_is_worth, larger=one(large, words), pieces=some(ratio, small))
            case AreWorth(large, small, times, worth):
                held = {"larger": _made(times, large, words), "pieces": some(worth, small)}
                return told(says.are_worth, many=times != 1, **held)
            case PutTogether(small, opened, had, now):
                if not had:
                    return told(says.there_are_now, pieces=some(now, small))
                held = {"more": some(opened, small), "had": some(had, small), "pieces": some(now, small)}
                return told(says.put_together, **held)
            case FullGroups(large, small, ratio, times):
                held = {"pieces": some(ratio, small), "larger": one(large, words)}
                return told(says.full_groups, groups=Counted(times, says.full_group), **held)

    def _each(self, message: str, units: tuple[Unit, ...], words: ClassWords) -> Nodes:
        """Say a message of every unit: wholes from wholes and sixths from sixths."""
        alone = self.tells.told
        return self.tells.listed([alone(message, units=many(unit, words))[0].nodes for unit in units])

    def _came_to(self, message: str, result: Quantity, words: ClassWords) -> Sentences:
        several = [count for count in result.counts if count] != [1]
        return self.tells.told(message, left=self._amount(result, words), many=several)

    def _amount(self, number: Quantity, words: ClassWords) -> Nodes:
        if number.ladder.style in {Style.PLACES, Style.DECIMAL}:
            if in_digits(number):
                return (Said(number),)
            return self.tells.listed([(some(*place),) for place in named_places(number)])
        of_class = words if number.ladder.style is Style.MIXED else None
        pairs = zip(number.counts, number.ladder.units, strict=True)
        return self.tells.listed(
            [(some(count, unit, of_class),) for count, unit in pairs if count is not None]
        )

    def picture(self, scene: Scene, words: ClassWords) -> Sentences:
        """Describe a scene of things that are counted; in English what has no message."""
        naming = scene_words(scene, words)
        parts = [self._seen(each, naming) for each in scene.descriptions]
        if not parts or not all(parts):
            return english_picture(scene, ClassWords())
        return tuple(sentence for part in parts for sentence in part)

    def _seen(self, each: Description, words: ClassWords) -> Sentences:
        told, says = self.tells.told, self.says
        match each:
            case Shown(amounts) if amounts:
                return told(says.shown, amounts=self._all(amounts, words))
            case StillThere(amounts) if amounts:
                return told(says.still_there, amounts=self._all(amounts, words))
            case CrossedOut(amounts) if amounts:
                return told(says.crossed_out, amounts=self._all(amounts, words))
            case Gathered(amounts) if amounts:
                return told(says.gathered, amounts=self._all(amounts, words))
            case Makes(small, made):
                return told(says.makes, pieces=_counted(small, words), larger=_counted(made, words))
            case CutInto(cut, parts):
                return told(says.cut_into, larger=_counted(cut, words), pieces=_counted(parts, words))
            case _:
                return ()

    def _all(self, amounts: tuple[Caption, ...], words: ClassWords) -> Nodes:
        return self.tells.listed([(_counted(amount, words),) for amount in amounts])


def _made(times: int, large: Unit, words: ClassWords) -> Counted:
    return one(large, words) if times == 1 else some(times, large, words)


def _counted(amount: Caption, words: ClassWords) -> Counted | Said:
    return some(amount.count, amount.unit, words) if isinstance(amount, Count) else Said(amount)
