"""Whose each row of a table is: sure, asked for all alike, or asked one by one."""

from collections import Counter
from collections.abc import Mapping

from onewhole.marking.reading.tables.answer_grid import AnswerGrid
from onewhole.marking.reading.tables.asking import (
    ADD,
    ALL,
    EACH,
    FIRST,
    HERE,
    SKIP,
    TableAsks,
    TableQuestion,
    TableTalk,
)
from onewhole.marking.reading.tables.class_names import MatchedBy, PupilMatch, match_pupil
from onewhole.marking.reading.tables.layout import TableLayout
from onewhole.marking.reading.tables.pupil_columns import is_other_word

#: What stands before the row of a pupil who is to be added, in place of a code.
NEW = "+"
_ARROW = "\N{RIGHTWARDS ARROW}"


def row_pupils(layout: TableLayout, grid: AnswerGrid, talk: TableTalk) -> dict[int, str]:
    """Return the code of the pupil of each row that is settled; what is not is asked.

    A code or a whole name that is of one pupil is sure, where nothing beside it says otherwise and no other
    row has the same. Names matched by a part, and numbers, are asked once for all of them. The key of a pupil
    who is to be added begins with a plus sign.
    """
    if not layout.pupils:
        return _in_order(layout, grid, talk)
    rows = [row for row in layout.rows if any(layout.at(row, at) for at in layout.columns)]
    named = {row: _named(layout, row) for row in rows}
    matches = {row: _whose(layout, row, grid) for row in rows}
    sure = {row for row, one in matches.items() if len(one.codes) == 1 and not one.doubted}
    waiting: set[int] = set()
    for by, asks in ((MatchedBy.PART, TableAsks.PARTLY), (MatchedBy.NUMBER, TableAsks.NUMBERS)):
        alike = sorted(row for row in sure if matches[row].by is by)
        if not alike:
            continue
        about = tuple(f"{named[row]} {_ARROW} {matches[row].codes[0]}" for row in alike)
        said = talk.ask(asks.value, asks, about, (ALL, EACH))
        if said != ALL:
            sure -= set(alike)
        if said is None:
            waiting |= set(alike)
    if _all_strange(matches) and len(rows) <= len(grid.codes_shown):
        said = talk.ask(
            "pupil-order", TableAsks.PUPIL_ORDER, tuple(named[row] for row in rows), (FIRST, EACH)
        )
        if said != EACH:
            return dict(zip(rows, grid.codes_shown, strict=False)) if said else {}
    sure -= {row for row in sure if f"row:{row}" in talk.decided}  # asked before, as another had the same
    counted = Counter(matches[row].codes[0] for row in sure)
    twice = {row for row in sure if counted[matches[row].codes[0]] > 1}
    found = {row: matches[row].codes[0] for row in sure - twice}
    for row in rows:
        if row in found or row in waiting:
            continue
        if row in twice:
            about, options = (named[row], *matches[row].codes), (*grid.codes, SKIP)
            said = talk.ask(f"row:{row}", TableAsks.TWICE, about, options, line=row + 1)
        else:
            said = _asked_whose(row, named[row], matches[row], grid, talk)
        if said == ADD:
            found[row] = f"{NEW}{row}"
            talk.added.append((found[row], named[row]))
        elif said == SKIP:
            talk.left_out.append(named[row])
        elif said is not None:
            found[row] = said
    return _nobody_twice(found, named, grid, talk)


def _all_strange(matches: Mapping[int, PupilMatch]) -> bool:
    return len(matches) > 1 and not any(one.codes for one in matches.values())


def _named(layout: TableLayout, row: int) -> str:
    return " ".join(layout.at(row, at) for at in layout.pupils if layout.at(row, at))


def _whose(layout: TableLayout, row: int, grid: AnswerGrid) -> PupilMatch:
    """Return whom the pupil columns of a row mean together, doubted where one speaks against another."""
    texts = [layout.at(row, at) for at in layout.pupils if layout.at(row, at)]
    matches = [match_pupil(text, grid.pupils) for text in texts]
    if len(matches) > 1:
        matches = [one for one in matches if one.by is not MatchedBy.NUMBER] or matches
    meant = [one for one in matches if one.codes]
    if not meant:
        return PupilMatch(MatchedBy.NOTHING)
    common = [code for code in meant[0].codes if all(code in one.codes for one in meant)]
    best = min((one.by for one in meant), key=list(MatchedBy).index)
    if not common:
        return PupilMatch(
            best, tuple(dict.fromkeys(code for one in meant for code in one.codes)), doubted=True
        )
    names = {one.code: one.name for one in grid.pupils}
    against = len(meant) < len(matches) and any(names[code] for code in common)
    whole = len(meant) > 1 and best is MatchedBy.PART  # a first and a last name, each in its column
    doubted = against or any(one.doubted for one in meant)
    return PupilMatch(MatchedBy.NAME if whole else best, tuple(common), doubted=doubted)


def _asked_whose(row: int, named: str, match: PupilMatch, grid: AnswerGrid, talk: TableTalk) -> str | None:
    usual = SKIP if is_other_word(named) and not match.codes else None
    options = (*grid.codes, SKIP, *((ADD,) if named else ()))
    about = (named, *match.codes)
    return talk.ask(f"row:{row}", TableAsks.PUPIL, about, options, line=row + 1, usual=usual)


def _nobody_twice(
    found: dict[int, str], named: Mapping[int, str], grid: AnswerGrid, talk: TableTalk
) -> dict[int, str]:
    """Ask again about rows that came to be of one pupil; return the others."""
    double = _double(found)
    for row in sorted(double):
        about = (named[row], found.pop(row))
        options = (*grid.codes, SKIP)
        talk.ask_anew(TableQuestion(f"row:{row}", TableAsks.TWICE, about, options, None, row + 1))
    return found


def _double(found: Mapping[int, str]) -> set[int]:
    counted = Counter(found.values())
    return {at for at, one in found.items() if counted[one] > 1}


def _in_order(layout: TableLayout, grid: AnswerGrid, talk: TableTalk) -> dict[int, str]:
    """Lay rows without pupils in the order of the class, from where the teacher says."""
    if not layout.rows:
        return {}
    offers = {HERE: grid.codes_here, FIRST: grid.codes_shown}
    if offers[HERE] == offers[FIRST]:
        del offers[HERE]
    fits = {name: codes for name, codes in offers.items() if len(codes) >= len(layout.rows)}
    size = (str(len(layout.rows)), str(len(layout.columns)))
    said = talk.ask("order", TableAsks.ORDER, size, (*fits, SKIP))
    return dict(zip(layout.rows, fits[said], strict=False)) if said in fits else {}
