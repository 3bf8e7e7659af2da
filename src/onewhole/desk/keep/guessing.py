"""How hard a password is to guess: common ones, names, dates and keys in a row are no secret."""

from collections.abc import Iterable

from zxcvbn import zxcvbn

from onewhole.errors import InputError

#: Words of this trade, which somebody who knows the program tries first.
WORDS = ("onewhole", "classroom", "fractions", "grade 4", "homework", "school", "teacher")
#: The library's marks go from 0 to 4; from 3 on it tells of a hundred million guesses and more.
_ENOUGH = 3
#: It looks at so many characters at most.
_LOOKED_AT = 72


def check_hard_to_guess(typed: str, words: Iterable[str] = ()) -> None:
    """Refuse what is guessed in few tries, with these words known. Raises InputError.

    The library knows the 30,000 passwords that were stolen most often, English words, names, keyboards and
    dates (D. L. Wheeler, "zxcvbn: Low-Budget Password Strength Estimation", USENIX Security 2016).

    >>> check_hard_to_guess("six kites over the hill")
    >>> check_hard_to_guess("onewhole1234")
    Traceback (most recent call last):
        ...
    onewhole.errors.InputError: This is guessed too easily. Take a few words that nobody would guess.
    """
    if zxcvbn(typed[:_LOOKED_AT], user_inputs=[*WORDS, *words])["score"] < _ENOUGH:
        raise InputError(
            "This is guessed too easily",
            remedy="Take a few words that nobody would guess.",
        )
