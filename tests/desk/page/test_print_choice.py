"""What is printed in one go."""

import pytest

from onewhole.desk.page.print_choice import PrintChoice, PrintPart, SheetPage, read_order
from onewhole.errors import InputError

PUPIL, KEY = SheetPage.PUPIL, SheetPage.KEY


@pytest.mark.parametrize("typed", ["27 pupil, key", "27 x pupil,key", " 27   PUPIL ,  1 key "])
def test_an_order_is_read(typed: str) -> None:
    """However it is spaced and capitalised."""
    assert read_order(typed) == (PrintPart(PUPIL, 27), PrintPart(KEY))


@pytest.mark.parametrize("typed", ["", "pupils", "pupil key", "pupil,", "-1 pupil", "1/2 pupil", "27pupil x"])
def test_what_is_no_order_is_refused(typed: str) -> None:
    """With an example of one."""
    with pytest.raises(InputError, match=r"no page to print\. Write such as: 27 pupil, key"):
        read_order(typed)


@pytest.mark.parametrize(
    ("parts", "why"),
    [
        ((), "Nothing is chosen"),
        ((PrintPart(PUPIL), PrintPart(PUPIL)), "chosen twice"),
        ((PrintPart(PUPIL, 0),), "1 to 60 times"),
        ((PrintPart(PUPIL, 61),), "1 to 60 times"),
        (tuple(PrintPart(page, 60) for page in SheetPage), "more than 150 copies"),
    ],
)
def test_what_no_printer_should_be_asked(parts: tuple[PrintPart, ...], why: str) -> None:
    """Each is refused."""
    with pytest.raises(InputError, match=why):
        PrintChoice(parts)


def test_what_is_told_is_read_back() -> None:
    """The words of a choice are an order again."""
    choice = PrintChoice((PrintPart(KEY), PrintPart(PUPIL, 27)))
    assert read_order(choice.told) == choice.parts
    assert (choice.copies(PUPIL), choice.copies(SheetPage.FAMILY)) == (27, 0)
