"""Nothing of the source is there for nobody: a door reaches it."""

from tests.house.reach import doors, modules, uncalled, unreached

_PAGE_MARKS = ("read_corners",)
_PUPIL_MARKS = ("PUPIL_MARKS", "pupil_marks", "pupil_marked", "_plain")
_PAGE_MAP = ("LINE_UP", "AnswerBox", "MappedPage", "PageBox", "PageMap")
_ASKED = ("UNITS", "_PARTS", "_Stands", "page_map", "_stands", "_hundredths", "_mapped", "_cell")
_BLANK = ("SCALE", "_POINT_MM", "_HAIR", "_WHEN", "blank_pages", "_grey")
#: What no door reaches and is kept all the same, each with its reason.
KEPT = {
    ("onewhole", "_FOLDERS"): "read by the package's own __getattr__",
    **dict.fromkeys(
        [
            *(("onewhole.sheets.page_marks", name) for name in _PAGE_MARKS),
            *(("onewhole.sheets.pupil_marks", name) for name in _PUPIL_MARKS),
            *(("onewhole.sheets.page_map", name) for name in _PAGE_MAP),
            *(("onewhole.presses.page_map", name) for name in _ASKED),
            *(("onewhole.presses.blank_pages", name) for name in _BLANK),
            ("onewhole.presses.pdf", "press_asked"),
            ("onewhole.writers.marked", "of_pupil"),
        ],
        "what a page that comes back is read by: its nouns stand before the acts that read it",
    ),
}
#: Methods that SQLAlchemy calls on a column type of ours.
HOOKS = frozenset({"process_bind_param", "process_result_value"})
#: Rooms that no door reaches yet: paper that comes back is built from below.
COMING = (
    "onewhole.findings.in_pictures",
    "onewhole.marking.paper.",
    "onewhole.marking.diagnosis.decisive.",
    "onewhole.presses.paper.",
    "onewhole.presses.limited.limit_time",
    "onewhole.desk.paper.",
    "onewhole.findings.in_papers.",
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
