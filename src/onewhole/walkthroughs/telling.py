"""One problem told: in full the first time, pointing back the next times, straight through after that."""

from collections.abc import Sequence
from fractions import Fraction

from msgspec.structs import replace

from onewhole.languages.film_told import Clause
from onewhole.languages.table import spoken_by
from onewhole.notations.text import printed
from onewhole.sentences.sentence import Sentences
from onewhole.statements.statement import Comparison, MissingNumber, Relation
from onewhole.walkthroughs.afterwards import check_cues, form_cues
from onewhole.walkthroughs.cue import Act, Chapter, Cue, Draw, Fresh, Role, Write
from onewhole.walkthroughs.in_columns import beside, is_column, laid_cues
from onewhole.walkthroughs.lesson import Item
from onewhole.walkthroughs.manner import MOST_MERGED, Manner, Telling
from onewhole.walkthroughs.memory import Memory
from onewhole.walkthroughs.mistakes import mistake_cues
from onewhole.walkthroughs.phrases import answers, in_parts, reason_said, stands
from onewhole.walkthroughs.tens import tens_cues
from onewhole.working.line import Line, leads
from onewhole.working.reasons.comparing import PlaceDecides, WholesDecide
from onewhole.working.reasons.taking import InAll, Left
from onewhole.working.working import Working

#: Seconds of quiet before an answer.
THINK = Fraction(2)

#: Reasons of a last line that tell the whole answer.
_TELL_ALL = Left | InAll | WholesDecide | PlaceDecides


def problem_chapter(item: Item, manner: Manner, memory: Memory) -> Chapter:
    """Tell one problem on a fresh board. ``memory`` grows by what is said."""
    cues = [_problem(item, manner, memory)]
    if item.try_first:
        cues.append(Cue(Role.TRY, memory.tell(spoken_by(manner.words).opening.try_first())))
    worked = _worked(item, item.working, manner, memory) if item.working else []
    *lines, answer = _pictured(item, worked or [_only_answered(item, manner, memory)])
    cues += [*lines, *_turn(item, manner, memory), answer]
    cues += form_cues(item, manner, memory)
    cues += check_cues(item, memory, spoken_by(manner.words))
    cues += mistake_cues(item, manner, memory)
    return Chapter(item.label, printed(item.statement, spoken_by(manner.words)), tuple(cues))


def _problem(item: Item, manner: Manner, memory: Memory) -> Cue:
    acts: list[Act] = [Fresh(), Write("problem", item.statement, label=item.label)]
    scene = item.bars or (item.picture.scenes[0] if item.picture else None)
    if scene:
        acts.append(Draw(scene))
    asked = spoken_by(manner.words).lines.asked(item.label, item.statement, item.story, manner.at)
    return Cue(Role.PROBLEM, memory.tell(asked, always=True), tuple(acts))


def _pictured(item: Item, cues: list[Cue]) -> list[Cue]:
    """Let the picture of a working follow the bars of its story, when it is worked."""
    if item.bars is None or item.picture is None:
        return cues
    first, *rest = cues
    return [replace(first, acts=(Draw(item.picture.scenes[0]), *first.acts)), *rest]


def _turn(item: Item, manner: Manner, memory: Memory) -> list[Cue]:
    """Leave the answer to the family, where the teacher wishes; the board stays as it is."""
    if not item.your_turn:
        return []
    says = memory.tell(spoken_by(manner.words).opening.your_turn(), always=True)
    return [Cue(Role.TURN, says)]


def _only_answered(item: Item, manner: Manner, memory: Memory) -> Cue:
    says = memory.pick(manner.at, *answers(item, spoken_by(manner.words)))
    if isinstance(item.statement, Comparison) and isinstance(item.answer, Relation):
        return Cue(Role.ANSWER, says, (Write("answer", replace(item.statement, sign=item.answer)),), THINK)
    leads = not isinstance(item.statement, MissingNumber)
    return Cue(Role.ANSWER, says, (Write("answer", item.answer, leads=leads),), THINK)


def _worked(item: Item, working: Working, manner: Manner, memory: Memory) -> list[Cue]:
    """Tell the lines; the last one after a pause to think."""
    if len(working.lines) == 1:
        return [_only_answered(item, manner, memory)]
    last = len(working.lines) - 1
    cues = laid_cues(working, memory, spoken_by(manner.words)) if manner.telling is Telling.FULL else []
    for at, group in enumerate(_groups(working, last, manner)):
        says = _told(working, group, manner, memory, first=not at)
        cues.append(Cue(Role.LINE, says, _acts(item, working, group, manner), line=group[-1]))
        if manner.telling is Telling.FULL:
            cues += tens_cues([working.lines[number] for number in group], manner, memory)
    says = _answer(item, working.lines[last], manner, memory)
    return [*cues, Cue(Role.ANSWER, says, _acts(item, working, (last,), manner), THINK, last)]


def _groups(working: Working, last: int, manner: Manner) -> list[tuple[int, ...]]:
    """Put the lines before the last together, as many to a cue as are told at once."""
    if manner.telling is Telling.STRAIGHT:
        return [tuple(range(1, last))] if last > 1 else []
    if manner.telling is Telling.FULL and manner.merge < MOST_MERGED:
        return [(number,) for number in range(1, last)]
    return _up_to_written(working, range(1, last))


def _up_to_written(working: Working, numbers: Sequence[int]) -> list[tuple[int, ...]]:
    groups: list[tuple[int, ...]] = []
    waiting: tuple[int, ...] = ()
    for number in numbers:
        waiting = (*waiting, number)
        if not working.lines[number].aside:
            groups.append(waiting)
            waiting = ()
    return [*groups, waiting] if waiting else groups


def _told(
    working: Working, group: tuple[int, ...], manner: Manner, memory: Memory, *, first: bool
) -> Sentences:
    lines = [working.lines[number] for number in group]
    if manner.telling is Telling.FULL:
        return tuple(said for line in lines for said in _in_full(line, manner, memory))
    if manner.telling is Telling.BACK:
        says = _pointing_back(lines, manner, memory, first=first)
        return (*says, *(said for line in lines for said in _facts(line, manner, memory)))
    parts = [[working.lines[number] for number in part] for part in _up_to_written(working, group)]
    if len(parts) > 1 and parts[-1][-1].aside:
        parts.pop()
    return tuple(said for part in parts for said in _straight(part, manner, memory))


def _in_full(line: Line, manner: Manner, memory: Memory) -> Sentences:
    """Say why, what then stands there, and a hard fact beside it."""
    why = reason_said(line, manner.words)
    says = memory.tell(why)
    also = [one for one in _stands(line, manner) if not why or one[0].nodes[0] != why[0].nodes[0]]
    if also and (not line.aside or in_parts(line.says)):
        says += memory.pick(manner.at, *also)
    return says + _facts(line, manner, memory)


def _pointing_back(lines: list[Line], manner: Manner, memory: Memory, *, first: bool) -> Sentences:
    lines_told = spoken_by(manner.words).lines
    done = _deed(lines, manner)
    says: Sentences = ()
    if done is None:
        says = memory.tell(reason_said(lines[-1], manner.words))
    elif first:
        says = memory.pick(manner.at, *lines_told.as_before(done, manner.like))
    else:
        says = memory.tell(lines_told.done(done)) or memory.tell(lines_told.then(done))
    also = _stands(lines[-1], manner)
    return says + (memory.pick(manner.at, *also) if also else ())


def _straight(lines: list[Line], manner: Manner, memory: Memory) -> Sentences:
    lines_told = spoken_by(manner.words).lines
    done = _deed(lines, manner)
    also = _stands(lines[-1], manner)
    if done is None:
        return memory.pick(manner.at, *(also or (reason_said(lines[-1], manner.words),)))
    if not also:
        return memory.tell(lines_told.done(done))
    return memory.pick(manner.at, *(lines_told.done(done) + one for one in also))


def _stands(line: Line, manner: Manner) -> tuple[Sentences, ...]:
    """Say what stands on a line; of a column nothing, because it is seen in the columns and not as a sum."""
    return () if is_column(line) else stands(line.says, spoken_by(manner.words))


def _deed(lines: list[Line], manner: Manner) -> Clause | None:
    """Return what is done first in some lines, as a part of a sentence."""
    deed = spoken_by(manner.words).lines.deed
    return next(filter(None, (deed(line.because, manner.words) for line in lines)), None)


def _answer(item: Item, line: Line, manner: Manner, memory: Memory) -> Sentences:
    why = reason_said(line, manner.words)
    tells_all = isinstance(line.because, _TELL_ALL)
    if manner.telling is Telling.STRAIGHT:
        return memory.pick(manner.at, *answers(item, spoken_by(manner.words)), *([why] if tells_all else []))
    says = memory.tell(why)
    if manner.telling is Telling.FULL or not tells_all or not says:
        says += memory.pick(0, *answers(item, spoken_by(manner.words)))
    return says + _facts(line, manner, memory)


def _facts(line: Line, manner: Manner, memory: Memory) -> Sentences:
    """Say how a hard fact is found, each once in a film; none when time is short."""
    if manner.merge and manner.telling is not Telling.FULL:
        return ()
    fact_told = spoken_by(manner.words).working.fact
    fresh = [fact for fact in line.facts if memory.once(fact.asked)]
    return memory.tell(tuple(said for fact in fresh for said in fact_told(fact)))


def _acts(item: Item, working: Working, group: tuple[int, ...], manner: Manner) -> tuple[Act, ...]:
    """Write the lines and change the picture; a line that a pupil need not write only in full.

    A column is no line on the board: its sum is written beside the columns, in full.
    """
    acts: list[Act] = []
    full = manner.telling is Telling.FULL
    shown = item.picture.scenes[group[0] - 1] if item.picture else None
    for number in group:
        line = working.lines[number]
        sum_beside = beside(line) if full else None
        if sum_beside:
            acts.append(Write(f"column-{number}", sum_beside, aside=True))
        if not line.aside or (full and not is_column(line)):
            led = leads(working.lines, number)
            acts.append(Write(f"line-{number}", line.says, leads=led, aside=line.aside))
        if item.picture and (manner.telling is not Telling.STRAIGHT or number == group[-1]):
            scene = item.picture.scenes[number]
            if scene != shown:
                acts.append(Draw(scene))
            shown = scene
    return tuple(acts)
