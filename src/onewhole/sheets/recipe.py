"""The recipe of a composed page: all that it was made of, on one line, so that it can be made again."""

from collections.abc import Callable, Mapping
from fractions import Fraction

from msgspec import Struct

from onewhole.errors import InputError, OnewholeError
from onewhole.findings.wished_skill import WishedSkill
from onewhole.sheets.wishes import OpenQuestion, Review, Wishes
from onewhole.working.strategies.table import strategy_named


class RecipeError(InputError):
    """A recipe cannot be read."""


class Recipe(Struct, frozen=True):
    """The version of the program that composed a page, and what was wished for.

    The same recipe gives the same page with the same version; another version may choose otherwise.
    """

    version: str
    wishes: Wishes


def write_recipe(recipe: Recipe) -> str:
    """Write a recipe as one line; ``read_recipe(write_recipe(recipe)) == recipe``.

    >>> write_recipe(Recipe("0.1.0", Wishes(denominators=(4, 8), seed=7)))
    '0.1.0 seed=7 skill=subtract problems=12 denominators=4,8 wholes=9 regrouping=2/3 strategy=regroup_first'
    """
    wishes = recipe.wishes
    said = {
        "seed": wishes.seed,
        "skill": wishes.skill.value.replace(" ", "_"),
        "problems": wishes.number,
        "denominators": ",".join(map(str, wishes.denominators)),
        "wholes": wishes.largest,
        "digits": wishes.digits or "",
        "regrouping": "any" if wishes.regrouping is None else wishes.regrouping,
        "strategy": wishes.strategy.key,
        "minutes": wishes.minutes or "",
        "review": _joined(one.value for one in wishes.review),
        "back": _joined(wishes.back),
        "faded": "yes" if wishes.faded else "",
        "doubles": "yes" if wishes.doubles else "",
        "told": wishes.told or "",
        "avoid": _joined(wishes.avoid),
        "ask": ",".join(map(_question, wishes.questions)),
    }
    return " ".join((recipe.version, *(f"{key}={value}" for key, value in said.items() if value != "")))


def read_recipe(line: str) -> Recipe:
    """Read a recipe. Raises RecipeError for what is no recipe, with the part that cannot be read.

    >>> read_recipe("0.1.0 seed=7 skill=add problems=8").wishes.skill.value
    'add'
    """
    version, *parts = line.split() or [""]
    if not version or "=" in version:
        msg = "the recipe does not begin with the version that made it"
        raise RecipeError(msg, remedy=_REMEDY)
    said: dict[str, object] = {}
    for part in parts:
        key, _, value = part.partition("=")
        if key not in _READ or not value or _READ[key][0] in said:
            msg = f"“{part[:40]}” is no part of a recipe"
            raise RecipeError(msg, remedy=_REMEDY)
        name, read = _READ[key]
        try:
            said[name] = read(value)
        except OnewholeError:
            raise
        except (ValueError, LookupError, ArithmeticError) as error:
            msg = f"“{part[:40]}” cannot be read in a recipe"
            raise RecipeError(msg, remedy=_REMEDY) from error
    return Recipe(version, Wishes(**said))  # type: ignore[arg-type] # each part is read into its own type


_REMEDY = "Take the recipe as it stands in the sheet that was composed, or compose the page anew."


def _joined(many: object) -> str:
    assert not isinstance(many, str)
    return ",".join(one.replace(" ", "_") for one in many)  # type: ignore[attr-defined]


def _question(one: OpenQuestion) -> str:
    return f"{'+'.join(one.first)}~{'+'.join(one.second)}:{one.weight}"


def _questions(said: str) -> tuple[OpenQuestion, ...]:
    return tuple(map(_one_question, said.split(",")))


def _one_question(said: str) -> OpenQuestion:
    pair, _, weight = said.partition(":")
    first, _, second = pair.partition("~")
    return OpenQuestion(_patterns(first), _patterns(second), int(weight))


def _patterns(said: str) -> tuple[str, ...]:
    return tuple(said.split("+")) if said else ()


def _texts(said: str) -> tuple[str, ...]:
    return tuple(one.replace("_", " ") for one in said.split(","))


def _share(said: str) -> Fraction | None:
    return None if said == "any" else Fraction(said)


def _numbers(said: str) -> tuple[int, ...]:
    return tuple(map(int, said.split(",")))


def _reviews(said: str) -> tuple[Review, ...]:
    return tuple(map(Review, _texts(said)))


#: From the name in a recipe to that in Wishes, and how it is read.
_READ: Mapping[str, tuple[str, Callable[[str], object]]] = {
    "seed": ("seed", int),
    "skill": ("skill", lambda said: WishedSkill(said.replace("_", " "))),
    "problems": ("number", int),
    "denominators": ("denominators", _numbers),
    "wholes": ("largest", int),
    "digits": ("digits", int),
    "regrouping": ("regrouping", _share),
    "strategy": ("strategy", strategy_named),
    "minutes": ("minutes", int),
    "review": ("review", _reviews),
    "back": ("back", _texts),
    "faded": ("faded", {"yes": True}.__getitem__),
    "doubles": ("doubles", {"yes": True}.__getitem__),
    "told": ("told", int),
    "avoid": ("avoid", _texts),
    "ask": ("questions", _questions),
}
