"""Small spreadsheets of the OpenDocument kind (ODS) for the tests, written by hand."""

import zipfile
from collections.abc import Sequence
from datetime import date
from io import BytesIO
from xml.sax.saxutils import escape, quoteattr

MIMETYPE = "application/vnd.oasis.opendocument.spreadsheet"
_SPACES = " ".join(
    f'xmlns:{short}="urn:oasis:names:tc:opendocument:xmlns:{name}:1.0"'
    for short, name in (("office", "office"), ("table", "table"), ("text", "text"), ("config", "config"))
)

OpenValue = str | float | date | tuple[float, str] | None


def sheet_xml(name: str, rows: Sequence[Sequence[OpenValue]]) -> str:
    """Return a sheet: text, numbers, days; a pair is a number and the fraction that it shows as."""
    lines = "".join(f"<table:table-row>{''.join(map(_cell, row))}</table:table-row>" for row in rows)
    return f"<table:table table:name={quoteattr(name)}>{lines}</table:table>"


def _cell(value: OpenValue) -> str:
    match value:
        case None:
            return "<table:table-cell/>"
        case str() if value.startswith("="):
            return f"<table:table-cell table:formula={quoteattr('of:' + value)}/>"
        case str():
            kind, shown = 'office:value-type="string"', value
        case date():
            kind, shown = (
                f'office:value-type="date" office:date-value="{value.isoformat()}"',
                f"{value:%b %d}",
            )
        case (number, shown):
            kind = f'office:value-type="float" office:value="{number}"'
        case _:
            kind, shown = f'office:value-type="float" office:value="{value}"', str(value)
    return f"<table:table-cell {kind}><text:p>{escape(shown)}</text:p></table:table-cell>"


def open_document(sheets: str, *, active: str = "", **parts: str) -> bytes:
    """Return an ODS file of these sheets; ``active`` was open last, ``parts`` stand beside or instead."""
    body = f"<office:body><office:spreadsheet>{sheets}</office:spreadsheet></office:body>"
    held = {"content": f"<office:document-content {_SPACES}>{body}</office:document-content>"}
    if active:
        item = f'<config:config-item config:name="ActiveTable">{escape(active)}</config:config-item>'
        held["settings"] = f"<office:document-settings {_SPACES}>{item}</office:document-settings>"
    file = BytesIO()
    with zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED) as made:
        made.writestr("mimetype", MIMETYPE, zipfile.ZIP_STORED)
        for name, text in {**held, **parts}.items():
            made.writestr(f"{name}.xml", text)
    return file.getvalue()
