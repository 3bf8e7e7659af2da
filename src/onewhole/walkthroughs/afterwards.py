"""What may follow an answer: equal forms, named and not demanded, and how to check it."""

from onewhole.languages.language import Language
from onewhole.languages.table import spoken_by
from onewhole.number.quantity import Quantity
from onewhole.sentences.sentence import Sentences
from onewhole.statements.statement import Comparison, Question, Relation
from onewhole.walkthroughs.cue import Cue, Role, Write
from onewhole.walkthroughs.lesson import Item
from onewhole.walkthroughs.manner import MOST_MERGED, Manner
from onewhole.walkthroughs.memory import Memory, Once, fits
from onewhole.working.checks import Undone
from onewhole.working.working import equal_forms


def form_cues(item: Item, manner: Manner, memory: Memory) -> list[Cue]:
    """Name the form with the fewest pieces where it is another one, and one fraction once in a film.

    Only forms that the page takes are named, and not the one that the problem gave.
    """
    if item.working is None or not isinstance(item.answer, Quantity):
        return []
    if not isinstance(item.statement, Question):
        return []
    given = item.statement.asked
    found = [form for form in equal_forms(item.answer) if item.wanted.meets(form) and form != given]
    fewest = [form for form in found if form.ladder != item.answer.ladder]
    others = [form for form in found if form.ladder == item.answer.ladder and not manner.at]
    wanted = (*fewest[:1], *others[:1]) if manner.merge < MOST_MERGED else fewest[:1]
    if not wanted:
        return []
    first = memory.once(Once.FORMS)
    if manner.merge == MOST_MERGED and not first:
        return []
    says: Sentences = ()
    told = spoken_by(manner.words).after
    for form in fewest[:1]:
        says += memory.pick(manner.at, *told.same_amount(item.answer, form))
    if wanted[-1:] == tuple(others[:1]):
        says += memory.pick(0, told.one_fraction(item.answer, wanted[-1]))
    if first or not manner.merge:
        says += memory.pick(manner.at, *told.may_stay(item.answer))
    acts = tuple(
        Write(f"form-{at}", Comparison(item.answer, form, Relation.EQUAL), aside=True)
        for at, form in enumerate(wanted, start=1)
    )
    return [Cue(Role.FORMS, says, acts)]


def check_cues(item: Item, memory: Memory, language: Language) -> list[Cue]:
    """Undo the first problem that can be undone, and no other."""
    checks = item.working.checks if item.working else ()
    undone = next((check for check in checks if isinstance(check, Undone)), None)
    if undone is None:
        return []
    back = Comparison(undone.links[0], undone.links[-1], Relation.EQUAL)
    told = language.after.check(back)
    if not fits(told) or not memory.once(Once.CHECK):
        return []
    says = memory.tell(told)
    return [Cue(Role.CHECK, says, (Write("check", back, aside=True),))]
