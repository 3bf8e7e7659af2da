"""Discs: equal sectors that fill the round."""

from onewhole.pictures.discs import discs
from onewhole.pictures.scene import Wedge
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.units_apart import UNITS_APART
from onewhole.working.work import work
from tests.kit.drawn import pictures
from tests.kit.drawn_laws import check, whole_size


def test_every_working_is_drawn_as_it_is_written() -> None:
    """Over the walk: counts agree with every line, names last, all lies on the paper."""
    drawn = pictures(discs)
    assert len(drawn) > 100
    for working, picture in drawn:
        check(working, picture, whole_size(picture, working))


def test_sectors_of_one_round_are_equal_and_fill_it() -> None:
    """3 7/5: five fifths meet in one place, each the fifth of a turn, none over another."""
    scene = discs(work(read_statement("2 4/5 + 1 3/5"), UNITS_APART)).scenes[2]
    wedges = [piece.shape for piece in scene.pieces if isinstance(piece.shape, Wedge)]
    full = [w for w in wedges if w.sweep != 1 and (w.x, w.y) == (wedges[0].x, wedges[0].y)]
    assert len({(w.x, w.y, w.start) for w in wedges}) == len(wedges)
    assert sorted(w.start for w in full) == sorted(w.sweep * at for at, w in enumerate(full))


def test_parts_of_the_second_number_keep_their_names_when_joined() -> None:
    """2 4/5 + 1 3/5: every piece of both numbers is there, by name, after they are put together."""
    first, _, joined, *_, last = discs(work(read_statement("2 4/5 + 1 3/5"), UNITS_APART)).scenes
    asked = {
        piece.name
        for piece in first.pieces
        if isinstance(piece.shape, Wedge) and piece.look.value == "filled"
    }
    assert len(asked) == 10
    assert asked <= {piece.name for piece in joined.pieces}
    assert len(asked & {piece.name for piece in last.pieces}) == 5
