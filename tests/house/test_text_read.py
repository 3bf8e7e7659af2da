"""Who may look into a text, and why: what a person typed or a foreign file says, and never our own sentences.

A sentence of this program is a tree until a notation writes it. Whoever needs to know what it says takes the
meaning, not the words. A module that looks into text stands in this list with its reason; a new one has to be
argued for.
"""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.house.plan import PACKAGE, nodes

READS = {
    "partition",
    "rpartition",
    "startswith",
    "endswith",
    "replace",
    "removeprefix",
    "removesuffix",
    "split",
    "rsplit",
}

SHEET = "a typed sheet"
CELL = "a typed cell"
FILE = "a file that somebody made"
KEPT = "a record of our own, kept or sent"
ASKED = "a request of the browser"
WORD = "words are formed: plurals, ordinals, a letter sound"
SIZE = "written words are counted, broken or measured"
NAME = "the name of a file or an address"

#: Every module that looks into text: what it reads there.
READERS = {
    "cli/clock.py": "a moment: its microseconds are replaced",
    "cli/deleting.py": "what is typed where it asks",
    "cli/open_door.py": NAME,
    "cli/group_options.py": "how many and how large, typed at the terminal",
    "cli/odds.py": "odds typed at the terminal",
    "cli/verbs/film.py": "labels typed at the terminal",
    "marking/district/district_found.py": KEPT,
    "marking/district/page_asked.py": "the problems of a page, a line each, as a district's papers have them",
    "marking/district/shared_paper.py": "blanks in what a pupil wrote are made alike",
    "presses/district/counting.py": "a file that is whole takes its name",
    "presses/district/page_rows.py": "answers of a district's papers, a line a problem",
    "presses/district/pupils_back.py": "a file that is whole takes its name",
    "writers/district_html.py": SIZE,
    "writers/district_told.py": KEPT,
    "presses/paper/ink_text.py": "the digits of a slot are laid together as a child types them",
    "desk/classes/class_list.py": "a typed list of pupils",
    "desk/classes/class_records.py": "names of classes, compared as a teacher reads them",
    "desk/district/sharing.py": "a school's name and a class's, made plain for the name of a file",
    "desk/classes/every_night.py": "a date or part of a title that a teacher looks for",
    "desk/classes/night_summary.py": KEPT,
    "desk/classes/own_forms.py": "the form of a pupil's pages as a teacher types it",
    "desk/classes/page_for.py": "what a teacher types: groups, codes and names",
    "sheets/years/year_wishes.py": "a typed year: its settings, line by line",
    "writers/calendar_file.py": "a calendar has its own signs and cuts its lines",
    "cli/verbs/papers.py": "a code and a day typed at the terminal",
    "presses/open_document.py": FILE,
    "presses/handed_zip.py": NAME,
    "desk/exchange/roster_files.py": FILE,
    "desk/exchange/class_lists.py": FILE,
    "desk/exchange/results_package.py": "a title goes on one line of another program's file",
    "presses/question_reading.py": FILE,
    "writers/questions/item.py": "a formula: the plain text of it is put in the place of another",
    "presses/answer_workbook.py": "what a sheet of a workbook may be called",
    "presses/workbook_writing.py": "signs that XML cannot hold",
    "desk/classes/pupil_codes.py": "typed codes and names of pupils",
    "desk/keep/damage_told.py": SIZE,
    "desk/keep/place.py": NAME,
    "desk/keep/places.py": NAME,
    "desk/keep/locked_backup.py": "the first bytes of a file, and what a library says is wrong",
    "desk/keep/way_back.py": "where a file stands",
    "desk/marking/cells.py": CELL,
    "desk/marking/handed_table.py": FILE,
    "desk/marking/pastes.py": KEPT,
    "desk/paper/clearing_papers.py": CELL,
    "desk/paper/keep_papers.py": CELL,
    "desk/paper/paper_by.py": KEPT,
    "desk/paper/picture_files.py": NAME,
    "presses/paper/picture_kinds.py": "the first bytes of a file",
    "desk/page/patterns.py": "a typed problem, and its story behind a bar",
    "desk/page/clicks.py": ASKED,
    "desk/page/file_name.py": NAME,
    "desk/page/fitting.py": "a drawing of the typesetter: how much room it left",
    "desk/page/examples.py": "what a setting takes, in words of our own",
    "desk/page/kept_pages.py": SHEET,
    "desk/page/live_page.py": "a drawing of the typesetter: which problem stands on which page",
    "desk/page/parse_wishes.py": "typed wishes",
    "desk/page/class_prints.py": NAME,
    "desk/page/braille_files.py": NAME,
    "desk/page/own_pages_of_night.py": NAME,
    "notations/braille/nemeth.py": "cells of a number, which stand with an indicator or without one",
    "notations/braille/literary.py": "words are spelt, letter by letter",
    "notations/braille/running.py": "words are spelt, and parted where a line may end",
    "desk/page/print_choice.py": "an order of pages typed at the terminal",
    "desk/page/pupil_copies.py": "codes of pupils typed at the terminal",
    "desk/page/page_begun.py": SHEET,
    "desk/classes/talk_rows.py": KEPT,
    "desk/pupil/asked_answers.py": "a typed line: idle spaces are taken off",
    "desk/pupil/csv_cells.py": CELL,
    "desk/tomorrow/group_wishes.py": "codes and names of groups typed at the terminal",
    "desk/pupil/given_out.py": "a typed line: idle spaces are taken off",
    "desk/tomorrow/practice_pages.py": NAME,
    "desk/tomorrow/printed_names.py": NAME,
    "desk/tomorrow/talks.py": CELL,
    "desk/walkthrough/recordings.py": ASKED,
    "errors.py": "the end of a refusal gets a full stop where it has none",
    "languages/english/speech.py": WORD,
    "languages/english/own_story.py": WORD,
    "languages/english/words.py": WORD,
    "languages/spanish/own_story.py": WORD,
    "languages/spanish/problem_told.py": "o is u before a word that begins with o",
    "languages/spanish/speech.py": "what is counted behind a number of a typed text, which it agrees with",
    "languages/spanish/wordings.py": WORD,
    "languages/spanish/words.py": WORD,
    "languages/by_messages/message.py": "a message, at the bars where its sentence may end",
    "languages/by_messages/number_tables.py": WORD,
    "languages/portuguese.py": WORD,
    "languages/table.py": "the letters that stand for a language, as typed",
    "marking/diagnosis/history.py": "the name by which a set of ideas is kept",
    "marking/diagnosis/notebook_text.py": "where the reader of records says a fault is",
    "marking/reading/answer.py": CELL,
    "marking/reading/answers_table.py": FILE,
    "marking/reading/asked.py": "a problem that was asked: idle blanks, and its story behind a bar",
    "marking/reading/last_unit.py": CELL,
    "marking/reading/tables/class_names.py": FILE,
    "marking/reading/dates.py": CELL,
    "marking/reading/tables/cutting.py": FILE,
    "marking/reading/tables/pupil_columns.py": FILE,
    "marking/reading/tables/table_cell.py": FILE,
    "marking/reading/tables/labels.py": FILE,
    "marking/reading/units.py": CELL,
    "marking/reading/talk_word.py": "a word that a teacher typed; as it is kept, too",
    "misconceptions/wrong_steps/looked_at.py": "zeros after a point that a child leaves out",
    "misconceptions/wrong_steps/other_names.py": "the digits after a point, the first of them a zero",
    "misconceptions/wrong_steps/renaming.py": "digits that a child strikes out",
    "notations/sentences/layout.py": "whether a node begins with a sign that stands close",
    "notations/sentences/listened.py": "written words are parted, to be listened for one by one",
    "notations/sentences/speech.py": SIZE,
    "notations/spanish_syllables.py": WORD,
    "notations/syllables.py": WORD,
    "presses/listening/sounds.py": "the lines of the recognizer's dictionary, a word and its sounds",
    "presses/decoding.py": "how a process of ours says that it ended",
    "presses/files.py": "a file takes another's name",
    "presses/page_folder.py": NAME,
    "presses/pdf.py": "what the typesetter says is wrong",
    "presses/recording.py": FILE,
    "presses/settling.py": NAME,
    "presses/workbook.py": FILE,
    "presses/tidying.py": "wishes typed at the terminal, with commas between",
    "presses/video.py": "a file takes another's name",
    "problems/problem.py": SHEET,
    "sentences/node.py": "words that are to become a node are checked",
    "sentences/typed.py": "a text that a person typed: its numbers, once",
    "notations/mathml.py": "the words of an intent are joined",
    "sheets/class_languages.py": "the letters that stand for languages, as typed",
    "sheets/film_address.py": "the address of a film, typed at the top of a sheet",
    "sheets/apply_remedy.py": SHEET,
    "sheets/document.py": SHEET,
    "sheets/reading.py": SHEET,
    "sheets/reading_level.py": SIZE,
    "sheets/recipe.py": KEPT,
    "sheets/sheet_editor.py": SHEET,
    "sheets/settings.py": SHEET,
    "sheets/stories.py": "typed wishes",
    "sheets/told_numbers.py": "the words of a story that a teacher typed, without the stops around them",
    "sheets/story_cues.py": "a typed story: the words that tell what it asks",
    "sheets/story_readings.py": "a typed story: its numbers and the words after them",
    "sheets/typed_lines.py": SHEET,
    "sheets/unread_line.py": SHEET,
    "statements/asked_at_once.py": "a typed line that asks for two things",
    "statements/form_words.py": "a typed list of wordings",
    "statements/clock_sides.py": SHEET,
    "statements/numerals.py": SHEET,
    "statements/factor_reading.py": SHEET,
    "statements/groups_reading.py": SHEET,
    "statements/listing_reading.py": SHEET,
    "statements/ordering_reading.py": SHEET,
    "statements/plot_reading.py": SHEET,
    "statements/rounding_reading.py": SHEET,
    "statements/unit_words.py": "a typed list of spellings",
    "statements/tokens.py": SHEET,
    "store/digest_triggers.py": "lines of SQL are put together",
    "store/backups.py": NAME,
    "store/column_types.py": KEPT,
    "store/correction_rows.py": KEPT,
    "store/copying.py": "a file takes another's name",
    "store/handed_in/records.py": "where in a frame a decoder found what does not fit",
    "store/migrating.py": "a path in a file of settings",
    "store/orphan_cleanup.py": NAME,
    "store/recordings.py": KEPT,
    "store/schema.py": "the language of SQLite, and how a step is called",
    "walkthroughs/line_sizes.py": SIZE,
    "sheets/spaces/form.py": "the template of a problem, as it is typed",
    "walkthroughs/opening.py": "a date that a teacher typed",
    "walkthroughs/timing.py": SIZE,
    "web/access/bind_policy.py": "an address typed at the terminal",
    "web/access/guard.py": ASKED,
    "web/access/rate_limit.py": ASKED,
    "web/http/forms.py": ASKED,
    "web/http/handling.py": ASKED,
    "web/jobs.py": "how an address begins: which file it is of",
    "web/pages/page_desk.py": ASKED,
    "web/pages/paste.py": ASKED,
    "web/pages/photos.py": ASKED,
    "web/pages/printing.py": ASKED,
    "web/pages/recording.py": ASKED,
    "web/pages/welcome.py": NAME,
    "working/way.py": "a key as a person types it, and the name of a way that was typed",
    "writers/captions.py": SIZE,
    "writers/report_words.py": CELL,
    "writers/report_lines.py": CELL,
    "writers/talks_page.py": CELL,
    "writers/transcript.py": "signs of Markdown are escaped",
}


def test_only_these_modules_look_into_text() -> None:
    """Each has its reason; none stands in the list that does not do it."""
    found = {
        path.relative_to(PACKAGE).as_posix()
        for path in sorted(PACKAGE.rglob("*.py"))
        if next(_reads(path), None)
    }
    assert found - READERS.keys() == set(), "take the meaning, or say why text is read"
    assert READERS.keys() - found == set(), "strike these out"


@pytest.mark.parametrize("name", ["walkthroughs", "languages/english", "findings", "sentences", "pictures"])
def test_where_sentences_are_made_hardly_any_text_is_read(name: str) -> None:
    """Rooms of meanings and of sentences form words, check them and measure them, and nothing else."""
    allowed = {WORD, SIZE, "words that are to become a node are checked"}
    allowed |= {READERS["sentences/typed.py"], READERS["walkthroughs/opening.py"]}
    assert {why for module, why in READERS.items() if module.startswith(f"{name}/")} <= allowed


@pytest.mark.parametrize(
    "code",
    ["import re", "from re import sub", "said.partition(' because ')", "said.startswith('moved')"],
)
def test_the_rule_sees(code: str, tmp_path: Path) -> None:
    """Each way of reading text is found."""
    path = tmp_path / "some.py"
    path.write_text(code)
    assert list(_reads(path))


def test_the_rule_lets_pass(tmp_path: Path) -> None:
    """Records with another field, joined words and trimmed blanks are no reading."""
    path = tmp_path / "some.py"
    path.write_text("replace(line, says=other)\nwords = ' '.join(parts).strip()\n")
    assert not list(_reads(path))


def _reads(path: Path) -> Iterator[ast.AST]:
    """Yield what reads text: the module of regular expressions, or a method of text that looks inside."""
    for node in nodes(path):
        match node:
            case ast.Import(names=[*names]) if any(one.name == "re" for one in names):
                yield node
            case ast.ImportFrom(module="re"):
                yield node
            case ast.Call(func=ast.Attribute(attr=name)) if name in READS:
                yield node
            case _:
                pass
