"""Cells of braille: six dots each, as Unicode and as the ASCII letters that embossers and displays take."""

#: An empty cell.
BLANK = "\N{BRAILLE PATTERN BLANK}"
#: The letter for each pattern of six dots, in the order of Unicode. Source: North American ASCII Braille,
#: from memory; tried against signs that are published in both ways (tests/notations/braille/test_cells.py).
_ASCII = " A1B'K2L@CIF/MSP\"E3H9O6R^DJG>NTQ,*5<-U8V.%[$+X!&;:4\\0Z7(_?W]#Y)="
_TO_ASCII = {ord(BLANK) + dots: letter for dots, letter in enumerate(_ASCII)}


def ascii_braille(cells: str) -> str:
    """Return cells as ASCII braille, one letter a cell.

    >>> ascii_braille("⠸⠩⠀⠹⠂⠌⠆⠼⠀⠸⠱")
    '_% ?1/2# _:'
    """
    return cells.translate(_TO_ASCII)


def raised(cell: str) -> tuple[int, ...]:
    """Return the raised dots of a cell: 1, 2, 3 down its left side, 4, 5, 6 down its right.

    >>> raised("⠹")
    (1, 4, 5, 6)
    """
    pattern = ord(cell) - ord(BLANK)
    return tuple(dot for dot in range(1, 7) if pattern >> dot - 1 & 1)
