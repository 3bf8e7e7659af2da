"""Papers of a small district: two schools, two nights, of which each has a page of three problems."""

from datetime import date
from pathlib import Path

from onewhole.marking.district.shared_paper import SharedPaper
from onewhole.presses.district.paper_files import paper_bytes

PAGE = "9 5/8 - 4 6/8\n8 1/6 - 3 5/6\n6 1/4 - 3 2/4"
OTHER = "4 - 1 3/8\n2 3/5 + 1 4/5\n6 7/8 - 3 2/8"
RIGHT, A01, SLIP, ODD = "4 7/8\n4 2/6\n2 3/4", "5 1/8\n5 4/6\n3 1/4", "4 6/8\n4 2/6\n2 3/4", "77\n\n?"
RIGHT_OTHER, WRONG_OTHER = "2 5/8\n4 2/5\n3 5/8", "3 3/8\n4 2/5\n3 5/8"


def put_papers(
    folder: Path, school: str, night: date, problems: str, answers: dict[str, int], tag: str = ""
) -> Path:
    """Write a file of papers: so many of each row of answers."""
    rows = [row for row, times in answers.items() for _ in range(times)]
    papers = [
        SharedPaper(f"{school}{tag}{at:026}", "Room 12", school, night, 4, problems, row)
        for at, row in enumerate(rows)
    ]
    place = folder / school.lower()
    place.mkdir(parents=True, exist_ok=True)
    path = place / f"room-12-{night.isoformat()}-{len(rows)}{tag}.parquet"
    path.write_bytes(paper_bytes(papers))
    return path


def small_district(folder: Path) -> Path:
    """Write the papers of two schools; in one of them four papers fit the idea that 60 fit in the other."""
    first, second = date(2026, 9, 1), date(2026, 9, 9)
    put_papers(folder, "Elm", first, PAGE, {RIGHT: 400, A01: 60, SLIP: 40, ODD: 3})
    put_papers(folder, "Oak", first, PAGE, {RIGHT: 300, A01: 4, SLIP: 30})
    put_papers(folder, "Elm", second, OTHER, {RIGHT_OTHER: 80, WRONG_OTHER: 20})
    return folder
