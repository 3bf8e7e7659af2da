"""Hand-made scenes: Room 12's strips of kite paper in every look, discs in parts, a number line."""

from fractions import Fraction

from onewhole.number.ladder import decimal, mixed
from onewhole.number.quantity import Quantity, whole
from onewhole.number.unit import ONE, Unit
from onewhole.pictures.caption import Count
from onewhole.pictures.description import Shown
from onewhole.pictures.scene import Box, Hop, Look, Piece, Scene, Stroke, Wedge, Words

F = Fraction

SIXTH = Unit(F(1, 6))
LOOKS = tuple(Look)


def box(name: str, x: F | int, y: int, width: F | int, look: Look = Look.PLAIN) -> Piece:
    """A box of a width, 12 mm high."""
    return Piece(name, Box(F(x), F(y), F(width), F(12)), look)


def strips() -> Scene:
    """Four strips and four cut into sixths, all looks, with numbers beside and on them."""
    pieces = []
    for row, look in enumerate(LOOKS):
        pieces.append(box(f"whole{row}", 10, 10 + 20 * row, 60, look))
        cells = [
            box(f"part{row}/{at}", 80 + at * F(55, 6), 10 + 20 * row, F(55, 6), LOOKS[(row + at) % 4])
            for at in range(6)
        ]
        pieces.extend(cells)
        count = Count(row + 1, SIXTH if row % 2 else ONE)
        pieces.append(Piece(f"count{row}", Words(F(158), F(16 + 20 * row), count, F(4))))
    pieces.append(Piece("mixed", Words(F(40), F(100), Quantity(mixed(6), (7, 2)), F(6))))
    pieces.append(Piece("gone", Words(F(100), F(100), Quantity(mixed(12), (None, 11)), F(6)), Look.STRUCK))
    return Scene(F(180), F(115), tuple(pieces), (Shown((Quantity(mixed(6), (7, 2)),)),))


def discs() -> Scene:
    """Whole discs, discs in five to eight parts, and two thirds of a disc, in all looks."""
    pieces = []
    for at, look in enumerate(LOOKS):
        x, parts = F(22 + 36 * at), 5 + at
        pieces.append(Piece(f"disc{at}", Wedge(x, F(22), F(15), F(0), F(1)), look))
        pieces.append(Piece(f"most{at}", Wedge(x, F(95), F(12), F(at, 7), F(2, 3)), look))
        for part in range(parts):
            wedge = Wedge(x, F(60), F(15), F(part, parts), F(1, parts))
            pieces.append(Piece(f"part{at}/{part}", wedge, LOOKS[(at + part) % 4]))
    return Scene(F(160), F(115), tuple(pieces))


def number_line() -> Scene:
    """A number line with jumps to the left and to the right in all looks."""
    pieces = [Piece("axis", Stroke(F(10), F(60), F(170), F(60)))]
    for at in range(9):
        x = F(10 + 20 * at)
        pieces.append(Piece(f"tick{at}", Stroke(x, F(58), x, F(62)), LOOKS[at % 3]))
        pieces.append(Piece(f"number{at}", Words(x, F(70), whole(at), F(4))))
    pieces.append(Piece("decimal", Words(F(140), F(85), Quantity(decimal(1, 1), (5, 2)), F(4))))
    ends = ((150, 90, 25), (90, 70, 15), (10, 50, 8), (70, 60, 12))
    for (start, end, height), look in zip(ends, LOOKS, strict=True):
        pieces.append(Piece(f"jump{start}", Hop(F(start), F(60), F(end), F(height)), look))
    return Scene(F(180), F(90), tuple(pieces))
