"""A district's report as one HTML file that needs nothing else, and runs nothing."""

from html import escape

from onewhole.marking.district.district_found import DistrictFound
from onewhole.writers.district_picture import difficulty_picture
from onewhole.writers.district_told import DISTRICT_TITLE, ToldTable, district_sentences, district_tables

_STYLE = """
body { font: 1rem/1.5 Lexend, system-ui, sans-serif; color: #1a1a1a; background: #fff;
  margin: 0 auto; padding: 1rem; max-width: 70rem; }
h1 { font-size: 1.6rem; } h2 { font-size: 1.2rem; margin-top: 2rem; }
svg { width: 100%; min-width: 34rem; max-width: 46rem; height: auto; }
.wide { overflow-x: auto; } .wide:focus-visible { outline: 3px solid #1a1a1a; }
table { border-collapse: collapse; font-size: .9rem; }
th, td { text-align: right; padding: .25rem .6rem; border-bottom: 1px solid #767676;
  vertical-align: top; font-variant-numeric: tabular-nums; }
th[scope=row], th:first-child { text-align: left; font-weight: 400; min-width: 11rem;
  position: sticky; left: 0; background: #fff; }
thead th, thead th:first-child { border-bottom: 2px solid #1a1a1a; font-weight: 700;
  vertical-align: bottom; }
thead th:not(:first-child) { white-space: nowrap; }
@media (max-width: 40rem) { th[scope=row], th:first-child { min-width: 8.5rem; } }
tbody tr:last-child > * { font-weight: 700; }
.words td { text-align: left; } .words tbody tr:last-child > * { font-weight: 400; }
@media print { .wide { overflow: visible; } table { font-size: .7rem; } }
"""
_POLICY = "default-src 'none'; style-src 'unsafe-inline'"


def district_html(found: DistrictFound) -> str:
    """Write the report."""
    said = "".join(f"<p>{escape(one)}</p>" for one in district_sentences(found))
    tables = "".join(_table(at, one) for at, one in enumerate(district_tables(found)))
    title, picture = escape(DISTRICT_TITLE), difficulty_picture(found.difficulty)
    return (
        '<!doctype html>\n<html lang="en"><head><meta charset="utf-8">'
        '<meta name="viewport" content="width=device-width, initial-scale=1">'
        f'<meta http-equiv="Content-Security-Policy" content="{_POLICY}">'
        f"<title>{title}</title><style>{_STYLE}</style></head><body><main><h1>{title}</h1>{said}"
        f'<h2 id="hard">How hard each kind is</h2>{_wide("hard", picture)}{tables}</main></body></html>\n'
    )


def _table(at: int, told: ToldTable) -> str:
    heads = "".join(f'<th scope="col">{escape(one).replace(", ", ",<br>")}</th>' for one in told.heads)
    kind = ' class="words"' if told.heads[0] == "Problem" else ""
    table = (
        f"<table{kind}><thead><tr>{heads}</tr></thead><tbody>{''.join(map(_row, told.rows))}</tbody></table>"
    )
    title = f'<h2 id="t{at}">{escape(told.title)}</h2>'
    return f"{title}<p>{escape(told.says)}</p>{_wide(f't{at}', table)}"


def _row(row: tuple[str, ...]) -> str:
    cells = "".join(f"<td>{escape(one)}</td>" for one in row[1:])
    return f'<tr><th scope="row">{escape(row[0])}</th>{cells}</tr>'


def _wide(named: str, inside: str) -> str:
    """Let what is wider than the window be moved by keys too."""
    return f'<div class="wide" tabindex="0" role="region" aria-labelledby="{named}">{inside}</div>'
