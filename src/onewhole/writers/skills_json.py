"""A fitted skill model, and the profiles of pupils, as JSON objects: the contract of ``docs/json.md``."""

from onewhole.mastery.fitted import FittedProblem, FittedSkills, MeasuredNumber
from onewhole.mastery.profile import SkillProfile
from onewhole.mastery.q_matrix import QMatrix
from onewhole.mastery.skill_model import SkillModel, SkillSet

Json = dict[str, object]


def skills_object(fitted: FittedSkills) -> Json:
    """Return what was fitted; odds and shares are exact, and a door turns them into numbers of JSON."""
    climbed, q = fitted.climbed, fitted.q
    return {
        "model": fitted.model.value,
        "counted": {
            "pupils": fitted.pupils,
            "rows": fitted.rows,
            "problems": len(q.problems),
            "sets": 1 << len(q.skills),
            "groups": len(fitted.groups),
        },
        "fit": {
            "log_likelihood": climbed.log_likelihood,
            "parameters": climbed.parameters,
            "aic": fitted.deviance + 2 * climbed.parameters,
            "arrived": climbed.arrived,
            "steps": climbed.steps,
            "starts": climbed.climbs,
            "same": climbed.same,
            "lost": climbed.lost,
        },
        "skills": [
            {"skill": one.skill, "least": one.least, "most": one.most, "accuracy": one.accuracy}
            for one in fitted.skills
        ],
        "accuracy": fitted.accuracy,
        "pair_bound": fitted.pair_bound,
        "items": [_item(q, fitted.model, one) for one in fitted.problems],
        "groups": [
            {"sets": [_signs(q, one) for one in each.group.sets], **_estimate("share", each.share)}
            for each in fitted.groups
        ],
    }


def profile_object(profile: SkillProfile, pupils: int) -> Json:
    """Return a row of answers, how many pupils have it, and what it says of each skill."""
    return {
        "row": profile.row,
        "pupils": pupils,
        "group": profile.group,
        "odds": profile.odds,
        "skills": [
            {"sign": one.sign.value, "least": one.least, "even": one.even, "most": one.most}
            for one in profile.skills
        ],
    }


def _item(q: QMatrix, model: SkillModel, one: FittedProblem) -> Json:
    rather = one.check.rather
    return {
        "problem": one.problem,
        "needs": list(q.named(one.needs)),
        **_estimate("guess", one.guess),
        **_estimate("slip", one.slip),
        "chances": [
            {"with": _with(q, model, each.having), **_estimate("right", each.right)} for each in one.chances
        ],
        "misfit": one.misfit,
        "worst_pair": one.worst.problem if one.worst else None,
        "worst_deviate": one.worst.deviate if one.worst else None,
        "explained": one.check.explained,
        "rather": None if rather is None else list(q.named(rather)),
        "rather_explained": one.check.rather_explained,
    }


def _with(q: QMatrix, model: SkillModel, having: SkillSet) -> str | list[str]:
    """Return the skills that go with a chance: by name, or whether all or any of them are there."""
    if model is SkillModel.GDINA:
        return list(q.named(having))
    if not having:
        return "none" if model is SkillModel.DINO else "not all"
    return "any" if model is SkillModel.DINO else "all"


def _signs(q: QMatrix, skills: SkillSet) -> str:
    return "".join(str(skills >> at & 1) for at in range(len(q.skills)))


def _estimate(name: str, estimate: MeasuredNumber) -> Json:
    return {name: estimate.value, f"{name}_error": estimate.error}
