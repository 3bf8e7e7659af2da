"""A typed page of problems becomes exact workings, printed pages, marks and tomorrow's groups.

The teacher's acts from Python::

    import onewhole

    onewhole.work("7 2/6 - 3 5/6")  # a working, every line checked
    onewhole.check("7 2/6 = 6 8/6")  # every equals sign true, or the false one
    onewhole.patterns("9 5/8 - 4 6/8")  # what each error pattern would write
    onewhole.audit(sheet)  # a typed sheet looked over
    onewhole.mark(sheet, answers)  # the answers of a class marked

Each is loaded when it is first asked for, so that the command starts quickly.
"""

from importlib import import_module

TYPE_CHECKING = False  # type checkers know the name; importing it from typing would cost more than all else
if TYPE_CHECKING:
    from onewhole.desk.marking.mark import mark
    from onewhole.desk.page.audit import audit
    from onewhole.desk.page.check import check
    from onewhole.desk.page.patterns import patterns
    from onewhole.desk.page.work import work

__version__ = "0.1.0"
__all__ = ["audit", "check", "mark", "patterns", "work"]

_FOLDERS = {"audit": "page", "check": "page", "mark": "marking", "patterns": "page", "work": "page"}


def __getattr__(name: str) -> object:
    """Load an act of the desk by its name."""
    if name in _FOLDERS:
        return getattr(import_module(f"onewhole.desk.{_FOLDERS[name]}.{name}"), name)
    msg = f"module {__name__!r} has no attribute {name!r}"
    raise AttributeError(msg)


def __dir__() -> list[str]:
    """Return the names to choose from, those that are not loaded yet included."""
    return sorted({*globals(), *__all__})
