"""The words that stand on printed pages whatever is worked on them: titles, headings, labels."""

from msgspec import Struct


class PageWords(Struct, frozen=True):
    """Titles, headings and labels of the pages for pupils and families, and of their keys.

    ``page_of`` has {at} and {of} for the number of a page and of all pages, and ``another_way`` has {name}
    for a way to work; ``untitled`` names a page without a title; ``to_finish`` comes before a worked
    example with its last line left out; ``code`` before the boxes for a pupil's code; ``cross_out``
    tells how an answer is changed on paper. ``cut_strips`` stands under drawn amounts of which some are
    taken away, ``cut_to_join`` where they are added, ``cut_to_see`` elsewhere; ``blank_found`` under the
    bars of a story. ``film`` stands over the
    address of a film, and ``film_code`` says what the square code beside it is.
    """

    untitled: str
    name: str
    date: str
    page_of: str
    answer: str
    code: str
    cross_out: str
    draw_strips: str
    draw_jumps: str
    cut_strips: str
    cut_to_join: str
    cut_to_see: str
    blank_found: str
    wrong: str
    find_the_slip: str
    to_finish: str
    for_home: str
    how_we_do_it: str
    good_questions: str
    film: str
    film_code: str
    for_the_teacher: str
    answer_key: str
    practice_key: str
    earlier_skill: str
    number: str
    problem: str
    also_right: str
    note: str
    every_line: str
    lighter_lines: str
    the_answer: str
    estimate: str
    put_it_back: str
    the_problem: str
    check: str
    another_way: str
    ways: tuple[tuple[str, str], ...]

    def way(self, key: str) -> str:
        """Return what a way to work is called, by its key. Raises KeyError."""
        return dict(self.ways)[key]
