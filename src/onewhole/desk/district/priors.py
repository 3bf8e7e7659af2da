"""A district's prior file, as a teacher's own copy takes it."""

from pathlib import Path

from onewhole.marking.diagnosis.prior import NOTHING, Learnt
from onewhole.marking.district.district_prior import district_learnt, read_prior
from onewhole.presses.texts import read_text


def learnt_elsewhere(path: Path | None) -> Learnt:
    """Return what a district learnt, from the file that `onewhole district` wrote; nothing without a file.

    Raises InputError for a file that is no prior.
    """
    return NOTHING if path is None else district_learnt(read_prior(read_text(path), str(path)))
