import pytest
from hypothesis import given

from onewhole.errors import InputError
from onewhole.sheets.header import Header
from onewhole.sheets.recipe import Recipe, RecipeError, read_recipe, write_recipe
from onewhole.sheets.wishes import Wishes
from tests.kit.wishes import wishes


@given(wishes(40))
def test_a_recipe_reads_back(some: Wishes) -> None:
    """All that was wished for is in it, on one line that a header can hold."""
    written = write_recipe(Recipe("0.1.0", some))
    assert read_recipe(written) == Recipe("0.1.0", some)
    assert Header(recipe=written).recipe == written


@pytest.mark.parametrize(
    ("line", "what"),
    [
        ("", "the recipe does not begin with the version that made it"),
        ("seed=1", "the recipe does not begin with the version that made it"),
        ("0.1.0 sed=1", "“sed=1” is no part of a recipe"),
        ("0.1.0 seed=", "“seed=” is no part of a recipe"),
        ("0.1.0 seed=1 seed=2", "“seed=2” is no part of a recipe"),
        ("0.1.0 seed=one", "“seed=one” cannot be read in a recipe"),
        ("0.1.0 skill=divide", "“skill=divide” cannot be read in a recipe"),
        ("0.1.0 regrouping=1/0", "“regrouping=1/0” cannot be read in a recipe"),
        ("0.1.0 faded=no", "“faded=no” cannot be read in a recipe"),
        ("0.1.0 review=history", "“review=history” cannot be read in a recipe"),
        ("0.1.0 ask=A01", "“ask=A01” cannot be read in a recipe"),
    ],
)
def test_what_is_no_recipe_is_refused(line: str, what: str) -> None:
    """With the part that cannot be read, and what to do."""
    with pytest.raises(RecipeError) as refused:
        read_recipe(line)
    assert refused.value.what == what
    assert refused.value.remedy is not None


@pytest.mark.parametrize("line", ["0.1.0 problems=99", "0.1.0 strategy=magic", "0.1.0 ask=A99~A01:3"])
def test_a_recipe_for_no_page_is_refused(line: str) -> None:
    """Each wish is checked as if it were typed."""
    with pytest.raises(InputError):
        read_recipe(line)
