"""A fitted skill model in lines for the teacher."""

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from onewhole.mastery.fitted import FittedProblem, FittedSkills, MeasuredNumber
from onewhole.mastery.profile import SkillProfile, SkillSign
from onewhole.mastery.q_matrix import QMatrix

CAUTION = (
    "A model that knows right and wrong only, and no thought behind them: a hint for a talk with the child, "
    "never a label."
)
#: Fewer pupils than this are few for these models (studies of them have some hundreds; the limit is ours).
FEW = 200
#: Skills that explain less than this of a problem are looked at (de la Torre & Chiu 2016).
ENOUGH = Fraction(19, 20)
SIGNS = {SkillSign.THERE: "+", SkillSign.NOT_THERE: "-", SkillSign.UNSURE: "?", SkillSign.UNTOLD: "o"}
LEGEND = "+ there   - not there   ? unsure   o these problems cannot tell it for this pupil"


def skills_lines(fitted: FittedSkills) -> Iterator[str]:
    """Give what was fitted to a class: how it was found, the skills, the problems, and what to look at."""
    yield from _found(fitted)
    yield ""
    width = max(len("skill"), *(len(one.skill) for one in fitted.skills))
    yield f"{'skill':{width}}  pupils with it  calls that are right"
    for skill in fitted.skills:
        yield f"{skill.skill:{width}}  {_band(skill.least, skill.most):14}  {_percent(skill.accuracy)}"
    yield ""
    width = max(len("problem"), *(len(one.problem) for one in fitted.problems))
    yield f"{'problem':{width}}  guessed         slipped         misfit  needs"
    for one in fitted.problems:
        needs = ", ".join(fitted.q.named(one.needs))
        yield (
            f"{one.problem:{width}}  {_measured(one.guess):14}  {_measured(one.slip):14}"
            f"  {float_text(one.misfit, 2):6}  {needs}"
        )
    if looks := [*_looks(fitted)]:
        yield from ("", "Look at:", *(f"  {look}" for look in looks))


def profile_lines(
    q: QMatrix, profiles: Iterable[tuple[str, SkillProfile]], pupils: Sequence[str]
) -> Iterator[str]:
    """Give a line a pupil: the code, and a sign for each skill."""
    width = max(len("pupil"), *map(len, pupils))
    yield f"{'pupil':{width}}  {'  '.join(q.skills)}"
    for code, profile in profiles:
        signs = (f"{SIGNS[one.sign]:{len(name)}}" for one, name in zip(profile.skills, q.skills, strict=True))
        yield f"{code:{width}}  {'  '.join(signs)}".rstrip()
    yield LEGEND


def float_text(value: Fraction, places: int) -> str:
    """Write a number with so many decimals, half upwards.

    >>> float_text(Fraction(1, 8), 2), float_text(Fraction(-44022877, 10000), 2)
    ('0.13', '-4402.29')
    """
    scale = 10**places
    wholes, rest = divmod((2 * abs(value) * scale + 1) // 2, scale)
    sign = "-" if value < 0 else ""
    return f"{sign}{wholes}.{rest:0{places}}"


def _found(fitted: FittedSkills) -> Iterator[str]:
    climbed, sets = fitted.climbed, 1 << len(fitted.q.skills)
    yield (
        f"{fitted.model.name}: {fitted.pupils:,} pupils ({fitted.rows:,} different rows), "
        f"{len(fitted.problems)} problems, {len(fitted.skills)} skills."
    )
    if len(fitted.groups) < sets:
        yield (
            f"These problems tell {len(fitted.groups)} groups apart, of {sets:,} mixtures of skills. "
            "Where they leave a skill open, it is told from at least to at most."
        )
    if fitted.pupils < FEW:
        yield "Few pupils for such a model: take every number as rough."
    yield f"Log-likelihood {float_text(climbed.log_likelihood, 5)}, {_starts(fitted)}"
    if not climbed.arrived:
        yield f"NOT SETTLED after {climbed.steps} steps: these numbers are only the best that was seen."


def _starts(fitted: FittedSkills) -> str:
    climbed = fitted.climbed
    if climbed.climbs == 1:
        return "from one start."
    told = f"the highest from {climbed.climbs} starts; {climbed.same} came to it."
    if climbed.lost:
        told += f" {climbed.lost} did not settle."
    if climbed.same == 1:
        told += " Another start may find a higher one: take more starts."
    return told


def _looks(fitted: FittedSkills) -> Iterator[str]:
    for one in fitted.problems:
        yield from _look(fitted, one)


def _look(fitted: FittedSkills, one: FittedProblem) -> Iterator[str]:
    if one.worst and abs(one.worst.deviate) > fitted.pair_bound:
        more = "more" if one.worst.deviate > 0 else "less"
        yield (
            f"{one.problem}: right and wrong go together with {one.worst.problem} {more} than the skills say "
            f"({float_text(one.worst.deviate, 1)}; by chance at most {float_text(fitted.pair_bound, 1)})."
        )
    if (
        one.check.rather is not None
        and one.check.rather_explained is not None
        and one.check.explained < ENOUGH
    ):
        named = ", ".join(fitted.q.named(one.check.rather))
        yield (
            f"{one.problem}: its skills explain {_percent(one.check.explained)} of what it tells; "
            f"{named} would explain {_percent(one.check.rather_explained)}."
        )


def _band(least: Fraction, most: Fraction) -> str:
    low, high = _percent(least), _percent(most)
    return low if low == high else f"{low[:-2]} to {high}"


def _measured(estimate: MeasuredNumber) -> str:
    value = float_text(estimate.value, 3)
    return value if estimate.error is None else f"{value} ± {float_text(estimate.error, 3)}"


def _percent(part: Fraction) -> str:
    return f"{round(100 * part)} %"
