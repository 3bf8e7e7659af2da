"""Nothing of the source is there for nobody: a door reaches it."""

import pytest

from tests.house.reach import doors, modules, uncalled, unreached

#: What no door reaches and is kept all the same, each with its reason.
KEPT = {
    ("onewhole", "_FOLDERS"): "read by the package's own __getattr__",
}
#: Methods that SQLAlchemy calls on a column type of ours.
HOOKS = frozenset({"process_bind_param", "process_result_value"})


def test_a_door_reaches_everything() -> None:
    """Every name at the top of a module is used on the way from a door; tests alone are no use."""
    assert len(doors()) > 20
    assert len(modules()) > 400
    left = [f"{module}.{name}" for module, name in unreached() if (module, name) not in KEPT]
    assert left == []


@pytest.mark.more("house/test_docs.py")
def test_what_is_kept_is_there() -> None:
    """The list of what is kept names nothing that is reached or gone."""
    assert set(unreached()) >= set(KEPT)


def test_a_method_is_called() -> None:
    """Every method and property is read somewhere in the source or in a template."""
    assert [one for one in uncalled() if one.rpartition(".")[2] not in HOOKS] == []
