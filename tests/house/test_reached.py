"""Nothing of the source is there for nobody: a door reaches it."""

from tests.house.reach import doors, modules, uncalled, unreached

#: What no door reaches and is kept all the same, each with its reason.
KEPT = {
    ("onewhole", "_FOLDERS"): "read by the package's own __getattr__",
}
#: Methods that SQLAlchemy calls on a column type of ours.
HOOKS = frozenset({"process_bind_param", "process_result_value"})
#: Rooms that no door reaches yet: paper that comes back is built from below.
COMING = (
    "onewhole.findings.in_pictures",
    "onewhole.marking.paper.",
    "onewhole.marking.diagnosis.decisive.",
    "onewhole.languages.english.in_pictures.",
    "onewhole.presses.paper.",
    "onewhole.presses.limited.limit_time",
    "onewhole.desk.paper.",
    "onewhole.presses.contact_sheet.",
    "onewhole.findings.in_papers.",
    "onewhole.desk.page.printed_ways.",
    "onewhole.presses.blank_pages.",
    "onewhole.presses.page_map.",
    "onewhole.presses.pdf.press_asked",
    "onewhole.sheets.page_map.",
    "onewhole.sheets.page_marks.read_corners",
    "onewhole.sheets.pupil_marks.pupil_marked",
    "onewhole.store.paper_cells.",
)


def test_a_door_reaches_everything() -> None:
    """Every name at the top of a module is used on the way from a door; tests alone are no use."""
    assert len(doors()) > 20
    assert len(modules()) > 400
    left = [f"{module}.{name}" for module, name in unreached() if (module, name) not in KEPT]
    assert [name for name in left if not name.startswith(COMING)] == []


def test_what_is_kept_is_there() -> None:
    """The list of what is kept names nothing that is reached or gone."""
    assert set(unreached()) >= set(KEPT)


def test_a_method_is_called() -> None:
    """Every method and property is read somewhere in the source or in a template."""
    left = [one for one in uncalled() if one.rpartition(".")[2] not in HOOKS]
    assert [one for one in left if not one.startswith(COMING)] == []
