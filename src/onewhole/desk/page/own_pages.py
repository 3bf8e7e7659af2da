"""The own pages of pupils who do not read the print of the class: in braille, or in large print."""

from collections.abc import Iterator, Sequence
from datetime import datetime
from typing import assert_never

from msgspec.structs import replace

from onewhole.desk.classes.forms import Forms
from onewhole.desk.page.braille_files import BrailleFile, braille_ready
from onewhole.desk.page.print_pages import fitted_pupil_page, for_pupils, pressed
from onewhole.desk.page.put_pages import Ready
from onewhole.findings.own_page import OwnPage
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import Print
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.tactile_page import tactile_paper


def own_pages(sheet: Sheet, forms: Forms, when: datetime) -> tuple[Ready, ...]:
    """Return the own pages of pupils by code, ready for a folder: K07-pupil.brf, K09-pupil-large.pdf.

    In braille there are the page and the answers, each as BRF and as Unicode, and the amounts as raised
    lines where a problem has some that are drawn as strips. Raises NoBrailleError, RoomError, PressError.
    """
    braille = tuple(_in_braille(sheet, when)) if OwnPage.BRAILLE in forms.values() else ()
    readers = tuple(code for code, form in forms.items() if form is OwnPage.LARGE)
    large = dict(zip(readers, _in_large_print(sheet, readers, when), strict=True)) if readers else {}
    found: list[Ready] = []
    for code, form in forms.items():
        match form:
            case OwnPage.BRAILLE:
                found += [replace(one, page=f"{code}-{one.page}") for one in braille]
            case OwnPage.LARGE:
                found.append(large[code])
            case _:
                assert_never(form)
    return tuple(found)


def _in_braille(sheet: Sheet, when: datetime) -> Iterator[Ready]:
    """Yield what everybody who reads braille gets."""
    worked = WorkedSheet(sheet)
    yield from braille_ready(worked, BrailleFile)
    if (raised := tactile_paper(worked)) is not None:
        yield from pressed([("raised-lines", raised)], when=when)


def _in_large_print(sheet: Sheet, codes: Sequence[str], when: datetime) -> tuple[Ready, ...]:
    """Return a page for each code, which stands at its foot."""
    worked = WorkedSheet(replace(sheet, header=replace(sheet.header, print=Print.LARGE, fit=None)))
    page = fitted_pupil_page(worked).page
    return pressed([(f"{code}-pupil-large", for_pupils(page, worked, (code,))) for code in codes], when=when)
