"""First start, asked without a browser: an empty class, or the demo in a file of its own."""

import pytest

from onewhole.desk.classes.class_records import rooms
from onewhole.desk.classes.demo import NAME
from tests.kit.doors import Opened

HOSTILE = ("<script>alert(1)</script>", '=HYPERLINK("x")', "\N{RIGHT-TO-LEFT OVERRIDE}gnp.live", "&lt;b&gt;")


def test_an_empty_file_leads_to_the_welcome(door: Opened) -> None:
    """The first address goes there; once there is a class, to its week."""
    assert door.get("/").goes == "/welcome"
    made = door.post("/welcome", name="Room 12", pupils="3", names="")
    assert (made.status, made.goes, door.get("/").goes) == (303, "/mine/1/week", "/mine/1/week")


def test_codes_always_and_names_only_if_typed(door: Opened) -> None:
    """Two names for three pupils; with the number left out, as many pupils as names."""
    door.post("/welcome", name="Room 12", pupils="3", names="Delta\nSled")
    door.post("/welcome", name="Room 7", pupils="", names="Moth")
    found = [[(one.code, one.name) for one in made.pupils] for made in rooms(door.door.books["mine"])]
    assert found == [[("K01", "Delta"), ("K02", "Sled"), ("K03", None)], [("K01", "Moth")]]


@pytest.mark.parametrize("name", HOSTILE)
def test_a_hostile_name_is_text_on_every_page(door: Opened, name: str) -> None:
    """Of a class and of a pupil: escaped, set apart from the text around it, kept as typed."""
    door.post("/welcome", name=name, pupils="1", names=name)
    assert rooms(door.door.books["mine"])[0].pupils[0].name == name
    for place in ("week", "class", "pupil/K01", "pupil/K01/held", "pupil/K01/erase"):
        page = door.get(f"/mine/1/{place}")
        assert page.status == 200
        assert "<script>alert" not in page.text
        assert "<b>" not in page.text
        assert "<bdi>" in page.text


@pytest.mark.parametrize(
    ("name", "pupils", "names", "said"),
    [
        ("", "3", "", "needs a name"),
        ("x" * 81, "3", "", "81 characters"),
        ("Room 12", "61", "", "from 0 to 60"),
        ("Room 12", "three", "", "from 0 to 60"),
        ("Room 12", "3", "Delta\n" + "y" * 10_000, "10000 characters"),
        ("Room 12", "3", "\n".join(["Kite"] * 61), "at most 60"),
    ],
)
def test_what_cannot_be_is_told_beside_what_was_typed(
    door: Opened, name: str, pupils: str, names: str, said: str
) -> None:
    """Nothing is kept, nothing typed is lost."""
    page = door.post("/welcome", name=name, pupils=pupils, names=names)
    assert page.status == 422
    assert said in page.text
    assert names in page.text
    assert name in page.text
    assert rooms(door.door.books["mine"]) == ()


def test_nul_and_escapes_are_refused(door: Opened) -> None:
    """In the name of a class and in a list of names."""
    for name, names in (("Ro\0om", ""), ("Room 12", "Del\0ta"), ("Room 12", "Delta\nSl\x1bed")):
        assert door.post("/welcome", name=name, pupils="3", names=names).status == 422
    assert rooms(door.door.books["mine"]) == ()


@pytest.mark.asvs("V8.4.1")
def test_the_demo_is_never_mixed_with_the_class(door: Opened) -> None:
    """It opens in a file of its own, twice is once, and its pages say what it is and lead back and away."""
    door.post("/welcome", name="Room 7", pupils="2", names="")
    assert door.post("/demo").goes == "/demo/1/week"
    assert door.post("/demo").goes == "/demo/1/week"
    books = door.door.books
    assert [made.name for made in rooms(books["mine"])] == ["Room 7"]
    assert [made.name for made in rooms(books["demo"])] == [NAME]
    banner, away = "Demo: invented class", 'href="/demo/away"'
    for place in ("week", "class", "pupil/K01", "pupil/K01/held"):
        page = door.get(f"/demo/1/{place}").text
        assert banner in page
        assert away in page
        assert banner not in door.get(f"/mine/1/{place}").text


@pytest.mark.more("desk/classes/test_demo.py")
def test_the_demo_is_put_away(door: Opened) -> None:
    """After a question; its file is gone, the class's own is as it was, and it can be opened anew."""
    door.post("/demo")
    path = door.door.books.paths["demo"]
    assert "Put the demo away?" in door.get("/demo/away").text
    assert path.exists()
    assert door.post("/demo/away").goes == "/"
    assert not path.exists()
    assert door.get("/demo/1/week").status == 404
    assert door.post("/demo").goes == "/demo/1/week"
