"""Problems that are drawn for pages of multiplying, dividing, several steps, factors and multiples."""

from random import Random

DENOMINATORS = (2, 3, 4, 5, 6, 8)
#: Smaller units in a larger one, of measures that are shared out.
_SHARED = (("ft", "in", 12), ("lb", "oz", 16), ("yd", "ft", 3), ("gal", "qt", 4), ("wk", "d", 7))
#: How often a number is drawn that has a 0 inside or at its end.
_ZEROS = 0.35


def times_whole(chance: Random) -> str:
    """Draw two to four digits by one, or two by two, some with zeros: 4.NBT.B.5 (CCSSM 2010)."""
    if chance.random() < 0.4:
        return f"{_two_digits(chance)} x {_two_digits(chance)}"
    top = chance.choice((chance.randrange(12, 100), chance.randrange(100, 1000), _zero_inside(chance)))
    return f"{top} x {chance.randrange(2, 10)}"


def _two_digits(chance: Random) -> int:
    return chance.randrange(2, 10) * 10 if chance.random() < _ZEROS else chance.randrange(11, 100)


def _zero_inside(chance: Random) -> int:
    return chance.randrange(1, 10) * 100 + chance.randrange(1, 10)


def times_fraction(chance: Random) -> str:
    """Draw a whole number times a fraction or a mixed number: 4.NF.B.4, 5.NF.B.6 (CCSSM 2010)."""
    whole = chance.choice((0, chance.randrange(1, 6)))
    return f"{chance.randrange(2, 9)} x {_mixed(chance, whole)}"


def fractions_times(chance: Random) -> str:
    """Draw two fractions, two mixed numbers, or one of each: 5.NF.B.4, B.6 (CCSSM 2010)."""
    wholes = chance.choice(((0, 0), (0, 0), (chance.randrange(1, 5), chance.randrange(1, 5)), (0, 3)))
    bottoms = [chance.choice(DENOMINATORS) for _ in wholes]
    if chance.random() < _ZEROS:
        bottoms[1] = bottoms[0]
    both = zip(wholes, bottoms, strict=True)
    return " x ".join(_mixed(chance, whole, bottom) for whole, bottom in both)


def _mixed(chance: Random, whole: int, bottom: int = 0) -> str:
    bottom = bottom or chance.choice(DENOMINATORS)
    return f"{whole or ''} {chance.randrange(1, bottom)}/{bottom}".strip()


def divided_whole(chance: Random) -> str:
    """Draw two to four digits by one, some with a zero in the number or in the quotient: 4.NBT.B.6."""
    by = chance.randrange(2, 10)
    if chance.random() < _ZEROS:
        quotient = chance.choice((chance.randrange(1, 10) * 10, _zero_inside(chance)))
        return f"{quotient * by + chance.randrange(by)} / {by}"
    number = chance.choice((chance.randrange(20, 100), chance.randrange(100, 1000), _zero_inside(chance)))
    return f"{max(number, by * 2)} / {by}"


def divided_short(chance: Random) -> str:
    """Draw a whole number by 2, 4, 5 or 8, which comes out even after three decimal places or fewer."""
    by = chance.choice((2, 4, 4, 5, 5, 8))
    quotient = chance.choice((chance.randrange(11, 100), _zero_inside(chance), chance.randrange(2, 10) * 10))
    return f"{quotient * by + chance.randrange(by)} / {by}"


def divided_fraction(chance: Random) -> str:
    """Draw a fraction by a whole number, or a whole number by a unit fraction or a larger one: 5.NF.B.7."""
    match chance.randrange(4):
        case 0:
            return f"1/{chance.choice(DENOMINATORS)} / {chance.randrange(2, 8)}"
        case 1:
            return f"{chance.randrange(2, 9)} / 1/{chance.choice(DENOMINATORS)}"
        case 2:
            by = chance.randrange(3, 13)
            return f"{chance.randrange(1, by)} / {by}"
        case _:
            by = chance.randrange(2, 5)
            bottom = chance.choice([one for one in DENOMINATORS if one > by])
            return f"{by * chance.randrange(1, 4)} {chance.randrange(1, bottom)}/{bottom} / {by}"


def divided_units(chance: Random) -> str:
    """Draw a decimal, a mixed number or a measure by a whole number that comes out even."""
    by = chance.randrange(2, 7)
    match chance.randrange(3):
        case 0:
            parts = by * chance.randrange(3, 40)
            return f"{parts // 10}.{parts % 10} / {by}"
        case 1:
            bottom = chance.choice(DENOMINATORS[1:])
            parts = by * chance.randrange(bottom, 4 * bottom)
            return f"{parts // bottom} {parts % bottom}/{bottom} / {by}"
        case _:
            large, small, ratio = chance.choice(_SHARED)
            parts = by * chance.randrange(ratio, 4 * ratio)
            return f"{parts // ratio} {large} {parts % ratio} {small} / {by}"


def steps(chance: Random) -> str:
    """Draw three numbers with a product, a quotient, brackets, or with less and more: 5.OA.A.1 (CCSSM)."""
    one, other, small = chance.randrange(2, 10), chance.randrange(2, 10), chance.randrange(2, 10)
    large = chance.randrange(20, 100)
    shapes = (
        f"{large} + {one} x {other}",
        f"{large + 61} - {one} x {other}",
        f"{one} x ({chance.randrange(11, 40)} + {other})",
        f"({chance.randrange(11, 40)} - {other}) x {one}",
        f"{large} - ({one} + {other})",
        f"{large} - {one + other} + {small}",
        f"{one * other * small} / {one} x {other}",
        f"{one * other} / {one} + {small}",
    )
    return chance.choice(shapes)


def listed(chance: Random) -> str:
    """Draw factors of a number to 100, or multiples of one digit: 4.OA.B.4 (CCSSM 2010)."""
    if chance.random() < 0.5:
        return f"factors of {chance.randrange(6, 101)}"
    step = chance.randrange(3, 13)
    return f"multiples of {step} to {step * chance.randrange(4, 9) + chance.randrange(step)}"
