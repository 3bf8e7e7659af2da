"""A district's report as files: HTML, and PDF to print."""

from datetime import UTC, datetime
from pathlib import Path

from onewhole.marking.district.district_found import DistrictFound
from onewhole.presses.files import write
from onewhole.presses.pdf import press
from onewhole.writers.district_html import district_html
from onewhole.writers.district_page import district_page

REPORT_HTML, REPORT_PDF = "report.html", "report.pdf"
#: The day that stands in the file of the PDF: the same papers give the same bytes.
_NO_DAY = datetime(2026, 1, 1, tzinfo=UTC)


def put_report(found: DistrictFound, folder: Path) -> None:
    """Write the report into a folder. Raises FileRefused."""
    page = district_page(found)
    write(folder / REPORT_HTML, district_html(found).encode())
    write(folder / REPORT_PDF, press(page.source, data=page.content, when=_NO_DAY))
