"""What a district's papers say before a class's answers are read: a small file of shares.

For each hypothesis it has of how many pupils it could be told, and how many of them have it by the odds of
all together. A class takes them as so many pupils' worth of evidence (:func:`district_learnt`), beside what
is supposed where nobody counted and what its own nights show.
"""

import json
from collections.abc import Mapping
from fractions import Fraction

from msgspec import Struct

from onewhole.errors import InputError
from onewhole.marking.diagnosis.prior import THOUSAND, Learnt

#: What stands at the head of the file.
FORMAT = "onewhole prior 1"
#: A district's shares weigh as much as the answers of so many pupils; our own (lab/district.py).
WORTH_PUPILS = 60
#: The most keys and digits that a file may have.
_MOST_KEYS, _MOST_PUPILS, _LONGEST = 20_000, 10**12, 80


class DistrictPrior(Struct, frozen=True):
    """By the key of a hypothesis: how many pupils have it, of how many."""

    shares: Mapping[str, tuple[int, int]]

    def __post_init__(self) -> None:
        """Refuse a share above the whole. Raises ValueError."""
        if any(not 0 <= have <= of or not of for have, of in self.shares.values()):
            raise ValueError("a share is of some pupils, and not more than all of them")


def district_prior(shares: Mapping[str, tuple[Fraction, int]], least: int) -> DistrictPrior:
    """Return a prior of what many pages showed: by key how many pupils have it, of how many.

    What fewer than ``least`` have is not told by itself: single patterns, and two together, get what they
    have on average, if together they are enough. Left out they would seem rarer than they are, beside those
    that are told. As in a class nothing is learnt of ideas that are not listed, nor of a pattern on some
    problems only: on invented classes it makes the odds worse (docs/decisions/0063).

    >>> held = {"A01": (Fraction(30), 99), "A02": (Fraction(9), 99), "A03": (Fraction(5), 99)}
    >>> district_prior(held, 10).shares
    {'A01': (30, 99), 'A02': (14, 198), 'A03': (14, 198)}
    """
    few: dict[bool, list[str]] = {}
    told: dict[str, tuple[int, int]] = {}
    for key, (have, of) in shares.items():
        if "-" not in key:
            if have >= least:
                told[key] = min(round(have), of), of
            else:
                few.setdefault(" " in key, []).append(key)
    for keys in few.values():
        together = round(sum(shares[key][0] for key in keys))
        if together >= least:
            told |= dict.fromkeys(keys, (together, sum(shares[key][1] for key in keys)))
    return DistrictPrior(told)


def district_learnt(prior: DistrictPrior, worth: int = WORTH_PUPILS) -> Learnt:
    """Return a district's shares as what was learnt before a class's first night, and does not fade.

    >>> district_learnt(DistrictPrior({"A01": (500, 1000)}), 60).counts
    {'A01': 30000}
    """
    return Learnt(
        {key: count for key, (have, of) in prior.shares.items() if (count := have * worth * THOUSAND // of)}
    )


def prior_text(prior: DistrictPrior) -> str:
    """Write a prior file: JSON, keys in order."""
    rows = {key: {"have": have, "of": of} for key, (have, of) in sorted(prior.shares.items())}
    return json.dumps({"format": FORMAT, "shares": rows}, indent=1, sort_keys=True) + "\n"


def read_prior(text: str, file: str | None = None) -> DistrictPrior:
    """Read a prior file. Raises InputError, with what is wrong.

    >>> read_prior(prior_text(DistrictPrior({"A01": (5, 10)}))).shares
    {'A01': (5, 10)}
    """
    try:
        held = json.loads(text)
    except (ValueError, RecursionError) as refused:
        raise _refused("it is not JSON", file) from refused
    if not isinstance(held, dict) or held.get("format") != FORMAT:
        raise _refused(f"“format” is not “{FORMAT}”", file)
    rows = held.get("shares")
    if not isinstance(rows, dict) or len(rows) > _MOST_KEYS:
        raise _refused("“shares” is missing", file)
    return DistrictPrior({key: _share(key, row, file) for key, row in rows.items()})


def _share(key: str, row: object, file: str | None) -> tuple[int, int]:
    have, of = (row.get("have"), row.get("of")) if isinstance(row, dict) else (None, None)
    if type(have) is not int or type(of) is not int or not 0 <= have <= of <= _MOST_PUPILS or not of:
        raise _refused(f"“{key[:_LONGEST]}” has no “have” of “of” pupils", file)
    return have, of


def _refused(why: str, file: str | None) -> InputError:
    remedy = "Take the file prior.json that `onewhole district` wrote, as it is."
    return InputError(f"This is no prior of a district: {why}", file=file, remedy=remedy)
