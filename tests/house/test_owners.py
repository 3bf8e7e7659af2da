"""A class name has one owner, and a name is imported from the file that defines it."""

import ast
from collections import defaultdict

from tests.house.plan import PACKAGE, nodes, place
from tests.house.reach import modules, passed_on, taken

#: Class names that two files may share, each with its reason. There is none.
SHARED: dict[str, str] = {}


def test_a_class_name_has_one_owner() -> None:
    """No two classes of the source have one name, private ones included."""
    owners: dict[str, list[str]] = defaultdict(list)
    for path in sorted(PACKAGE.rglob("*.py")):
        for node in nodes(path):
            if isinstance(node, ast.ClassDef):
                owners[node.name].append(place(path, node))
    assert len(owners) > 200
    assert {name: where for name, where in owners.items() if len(where) > 1 and name not in SHARED} == {}


def test_a_name_is_imported_from_its_owner() -> None:
    """Only the doors take a name from a file that passes it on: they may import nothing below the desk."""
    known = modules()
    elsewhere = [
        f"{name} takes {wanted} from {source}"
        for name, module in known.items()
        if not name.startswith(("onewhole.cli.", "onewhole.web."))
        for source, wanted in module.taken
        if f"{source}.{wanted}" not in known and source in known and wanted not in known[source].defined
    ]
    assert elsewhere == []


def test_what_is_passed_on_is_taken() -> None:
    """A name that a file passes on is taken from there; the package itself passes its acts on to scripts."""
    known = {name: passed_on(module) for name, module in modules().items() if name != "onewhole"}
    assert sum(map(len, known.values())) > 20
    there = taken()
    assert [
        f"{name}.{one}" for name, names in known.items() for one in names if (name, one) not in there
    ] == []
