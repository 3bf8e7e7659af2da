"""The pupils that a teacher means by codes, numbers or names."""

from collections.abc import Sequence

from onewhole.desk.classes.class_records import Classroom
from onewhole.errors import InputError
from onewhole.store.classes import Pupil


def codes_typed(of: Classroom, text: str) -> tuple[str, ...]:
    """Return the pupils that a teacher typed: codes (K07, k7), their numbers (7), or names with no blank.

    They are divided by blanks, commas or semicolons. Raises InputError that names every word of no pupil, or
    of more than one.

    >>> ada = Pupil(1, 1, "K01", "Ada")
    >>> codes_typed(Classroom(1, "Room 12", (ada, Pupil(2, 1, "K02", None))), "k2, ada")
    ('K02', 'K01')
    """
    words = text.replace(",", " ").replace(";", " ").split()
    found = {word: [pupil.code for pupil in of.pupils if _means(word, pupil)] for word in words}
    if wrong := [word for word, codes in found.items() if len(codes) != 1]:
        raise no_pupils(wrong)
    return tuple(dict.fromkeys(code for codes in found.values() for code in codes))


def _means(word: str, pupil: Pupil) -> bool:
    number = word[1:] if word[:1] in "Kk" else word
    if number.isascii() and number.isdigit():
        return int(number) == int(pupil.code[1:])
    return pupil.name is not None and word.casefold() in pupil.name.casefold().split()


def no_pupils(words: Sequence[str]) -> InputError:
    """Return the refusal of words that mean no pupil, or more than one."""
    shown = ", ".join(f"“{word[:20]}”" for word in words[:5])
    return InputError(
        f"These are no pupils of the class, or more than one: {shown}",
        remedy="Type codes such as K07, or their numbers. Nothing was filled in.",
    )
