"""The English words of printed pages: titles, headings, labels."""

from onewhole.languages.page_words import PageWords
from onewhole.working.strategies.table import STRATEGIES

ROUND_PAGE = PageWords(
    untitled="Fractions",
    name="Name",
    date="Date",
    page_of="page {at} of {of}",
    answer="Answer",
    code="Code",
    cross_out="A mistake? Cross it out and write beside it.",
    draw_strips="Draw the strips.",
    cut_strips="Cut and cross out.",
    draw_jumps="Draw your jumps.",
    wrong="A wrong answer to mend",
    find_the_slip="Somebody made a slip in this one. Which equals sign is not true? Mend it.",
    to_finish="Here is one to finish:",
    for_home="A page for home",
    how_we_do_it="How we do it in class",
    good_questions="Good questions to ask",
    for_the_teacher="For the teacher",
    answer_key="Answer key",
    practice_key="Practice: answer key",
    earlier_skill="From an earlier skill.",
    number="No.",
    problem="Problem",
    also_right="Also right",
    note="Note",
    every_line="Every line, with its reason",
    lighter_lines="The lighter lines are for saying aloud. A pupil need not write them.",
    the_answer="The answer.",
    estimate="Estimate",
    put_it_back="Put it back",
    the_problem="This is the problem.",
    check="Check:",
    another_way="Another way ({name}):",
    # A teacher chooses these by the same names in a sheet.
    ways=(
        *((strategy.key, strategy.name) for strategy in STRATEGIES),
        ("compare", "Compare"),
        ("put_in_order", "Put in order"),
        ("find_the_missing_number", "Find the missing number"),
        ("nearest_neighbor", "Between two neighbors, the nearer one"),
        ("write_another_way", "Write it another way"),
        ("join_in_steps", "Join the pieces in several steps"),
    ),
)
