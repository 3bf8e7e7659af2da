"""Which skills stand behind right and wrong: tables are read, a model is fitted, profiles are told."""

from collections.abc import Iterator
from pathlib import Path

from msgspec import Struct

from onewhole.errors import InputError
from onewhole.mastery.fitted import FittedSkills
from onewhole.mastery.profile import SkillProfile, SkillSign
from onewhole.mastery.q_table import read_q_matrix
from onewhole.mastery.right_wrong import RightWrong
from onewhole.mastery.right_wrong_table import pupil_rows, read_right_wrong
from onewhole.mastery.skill_model import SkillModel
from onewhole.pictures.skill_bars import SkillCounts
from onewhole.presses.files import write
from onewhole.presses.skills.fit import fit_skills, profiles_of
from onewhole.presses.table_file import table_lines
from onewhole.writers.skills_json import profile_object, skills_object
from onewhole.writers.skills_lines import CAUTION, profile_lines, skills_lines
from onewhole.writers.skills_picture import skills_picture

Json = dict[str, object]

#: Starts that are climbed from, left out: DINA and DINO end at one summit nearly always, G-DINA has many.
STARTS = {SkillModel.DINA: 4, SkillModel.DINO: 4, SkillModel.GDINA: 20}
MOST_STARTS = 200
#: Pupils who are told line by line at the terminal; JSON tells all.
MOST_LINES = 60
MODELS = tuple(model.value for model in SkillModel)


class SkillsShown(Struct, frozen=True):
    """A fitted model, the table that it was fitted to, and the file with the pupils' codes."""

    fitted: FittedSkills
    table: RightWrong
    responses: Path


def skills_of_files(
    responses: Path, q_matrix: Path, *, model: str = "dina", starts: int | None = None, seed: int = 1
) -> SkillsShown:
    """Fit a model to a table of right and wrong and a Q-matrix, both CSV files.

    ``starts`` is how many starts are climbed from (None: 4, for G-DINA 20), all but the first by lot from
    ``seed``. Raises TableRefused with the places of what cannot be read, and InputError for settings that
    cannot be.
    """
    if model not in MODELS:
        raise InputError(f"there is no model “{model}”", remedy=f"Choose from: {', '.join(MODELS)}.")
    chosen = SkillModel(model)
    climbs = STARTS[chosen] if starts is None else starts
    if not 1 <= climbs <= MOST_STARTS:
        raise InputError(f"{climbs} starts cannot be climbed from", remedy=f"Give 1 to {MOST_STARTS}.")
    if seed < 0:
        raise InputError(f"the seed is {seed}", remedy="Give a whole number that is not below 0.")
    q = read_q_matrix(table_lines(q_matrix), str(q_matrix))
    table = read_right_wrong(lambda: table_lines(responses), q.problems, str(responses))
    return SkillsShown(fit_skills(table, q, chosen, climbs=climbs, seed=seed), table, responses)


def told(shown: SkillsShown) -> Iterator[str]:
    """Give the lines for the teacher: what was fitted, a line a pupil where there are at most 60, the
    caution.
    """
    yield from skills_lines(shown.fitted)
    yield ""
    if shown.table.pupils <= MOST_LINES:
        profiles = dict(zip(shown.table.rows, _profiles(shown), strict=True))
        pupils = tuple(_pupils(shown))
        rows = ((code, profiles[row]) for code, row in pupils)
        yield from profile_lines(shown.fitted.q, rows, [code for code, _ in pupils])
        yield ""
    yield CAUTION


def draw(shown: SkillsShown, path: Path) -> None:
    """Draw how many pupils have each skill into an SVG file, for its owner alone. Raises FileRefused."""
    skills = shown.fitted.q.skills
    counts = [dict.fromkeys(SkillSign, 0) for _ in skills]
    for profile, times in zip(_profiles(shown), shown.table.times, strict=True):
        for of, one in zip(counts, profile.skills, strict=True):
            of[one.sign] += times
    rows = [
        (
            name,
            SkillCounts(
                of[SkillSign.THERE],
                of[SkillSign.UNSURE] + of[SkillSign.UNTOLD],
                of[SkillSign.NOT_THERE],
            ),
        )
        for name, of in zip(skills, counts, strict=True)
    ]
    write(path, skills_picture(shown.fitted.model.name, rows, CAUTION).encode(), private=True)


def as_object(shown: SkillsShown) -> Json:
    """Return what was fitted as a JSON object, with the caution; ``answers`` and ``pupils`` belong in it
    too.
    """
    return {**skills_object(shown.fitted), "caution": CAUTION}


def answers(shown: SkillsShown) -> Iterator[Json]:
    """Give each row of answers that occurs, and what it says of each skill."""
    for profile, times in zip(_profiles(shown), shown.table.times, strict=True):
        yield profile_object(profile, times)


def pupils(shown: SkillsShown) -> Iterator[Json]:
    """Give each pupil's code and the place of the row among the answers, in the order of the file."""
    places = {row: at for at, row in enumerate(shown.table.rows)}
    for code, row in _pupils(shown):
        yield {"pupil": code, "answers": places[row]}


def _profiles(shown: SkillsShown) -> Iterator[SkillProfile]:
    return profiles_of(shown.fitted, shown.table.rows)


def _pupils(shown: SkillsShown) -> Iterator[tuple[str, str]]:
    return pupil_rows(table_lines(shown.responses), shown.fitted.q.problems, str(shown.responses))
