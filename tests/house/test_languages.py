"""One floor knows language: words for a child or a family stand there, all of them, and none is idle."""

import ast
import re
from collections import Counter
from collections.abc import Iterator
from enum import Enum
from functools import cache
from importlib import import_module
from inspect import isclass, isfunction
from pathlib import Path
from types import UnionType
from typing import get_args, get_type_hints

import pytest
from msgspec import Struct

from onewhole.languages.film_words import FilmWords
from onewhole.languages.page_words import PageWords
from onewhole.languages.table import LANGUAGES
from onewhole.languages.told import HomeTold, KeyTold, StoriesTold, WorkingTold
from onewhole.problems.needs import Operation
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure
from onewhole.sentences.node import check_words
from onewhole.working.fact import Way
from tests.house.plan import PACKAGE, nodes, tree

#: Rooms and files that make what a child or a family reads, sees or hears.
FOR_FAMILIES = (
    *("walkthroughs", "pictures", "notations", "sentences", "working"),
    *(f"sheets/{name}.py" for name in ("faded_example", "find_the_slip", "handwriting", "stories")),
    *(f"sheets/{name}.py" for name in ("composed", "labelled", "practice", "told_numbers", "worked")),
    *(f"writers/{name}.py" for name in ("board", "captions", "drawing", "formula", "frame", "plain")),
    *(f"writers/{name}.py" for name in ("family_page", "pupil_page", "questions_to_ask", "printed")),
    *(f"writers/{name}.py" for name in ("key_page", "practice_key", "workings_page", "json_lines")),
    *(f"writers/{name}.py" for name in ("transcript", "walkthrough_html")),
)
#: How the Typst files of their pages are called.
LOOKS = ("board", "drawing", "family", "frame", "key", "pupil", "room", "workings")
#: More than one word of letters in a row.
SENTENCE = re.compile(r"[A-Za-z]{2,} [A-Za-z]")
#: What stands in those files and is no sentence, and how often: names of ways that a teacher types in a
#: sheet, markup, the head of a file, a font.
NO_SENTENCES = {
    **{
        f"working/strategies/{name}.py": 1
        for name in ("columns", "count_up", "equal_shift", "from_whole", "jump_on")
    },
    **{f"working/strategies/{name}.py": 1 for name in ("make_a_whole", "regroup_first", "to_fractions")},
    **{f"working/strategies/{name}.py": 1 for name in ("units_apart", "wholes_first")},
    **{f"working/products/{name}.py": 1 for name in ("by_heart", "each_unit", "equal_jumps", "in_columns")},
    **{
        f"working/products/{name}.py": 1
        for name in ("partial_products", "share_then_times", "tops_and_bottoms")
    },
    **{
        f"working/quotients/{name}.py": 1
        for name in ("as_fraction", "known_quotient", "long_division", "measure_out")
    },
    **{f"working/quotients/{name}.py": 1 for name in ("partial_quotients", "share_units")},
    "working/steps/ways.py": 2,
    "writers/captions.py": 1,
    "writers/walkthrough_html.py": 5,
}
#: Closed families that a language says and no function of it takes by itself.
INSIDE: tuple[type[Enum], ...] = (Asks, Structure, Operation, Way)
#: Rooms whose families are parts of a line or of a sentence, and no meanings.
PARTS = ("onewhole.number", "onewhole.statements", "onewhole.sentences")


def test_no_sentence_for_a_family_stands_outside_languages() -> None:
    """No literal of several English words is in what makes their pages, pictures, stories and films."""
    found: Counter[str] = Counter()
    for name in FOR_FAMILIES:
        place = PACKAGE / name
        assert place.exists(), name
        for path in sorted(place.rglob("*.py")) if place.is_dir() else [place]:
            count = sum(1 for literal in _literals(tree(path)) if SENTENCE.search(literal))
            if count:
                found[path.relative_to(PACKAGE).as_posix()] = count
    assert found == NO_SENTENCES


@pytest.mark.parametrize("look", LOOKS)
def test_no_word_for_a_family_stands_in_a_look(look: str) -> None:
    """A Typst file of their pages holds no quoted word with a capital but what is told when it refuses."""
    typst = (PACKAGE / "writers" / "look" / f"{look}.typ").read_text()
    typst = re.sub(r"//.*|refused\((?:[^()]|\((?:[^()]|\([^()]*\))*\))*\)", "", typst)
    assert re.findall(r'"[A-Z][a-z]+[^"]*"', typst) == []


def test_the_search_finds_sentences() -> None:
    """A sentence in a list, a call or a joined string is found; docstrings, refusals and enums are not."""
    source = '''
"""Words that tell of a file."""
class Kind(Enum):
    TENS = "tens and ones"
def shown(count):
    """Words that tell of a function."""
    if count < 0:
        msg = "there are too few"
        raise InputError(msg, remedy="Give some more.")
    return [f"You have {count} strips", told("there are", "some left")]
'''
    assert [one for one in _literals(ast.parse(source)) if SENTENCE.search(one)] == [
        "You have ",
        "there are",
        "some left",
    ]


def _literals(parsed: ast.Module) -> Iterator[str]:
    """Give every text in a file but docstrings, refusals, keys of an Enum, patterns and assertions."""
    left_out = {id(node) for part in ast.walk(parsed) if _left_out(part) for node in ast.walk(part)}
    for node in ast.walk(parsed):
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in left_out:
            yield node.value


def _left_out(node: ast.AST) -> bool:
    match node:
        case ast.Expr(value=ast.Constant()) | ast.Raise() | ast.Assert() | ast.keyword(arg="remedy"):
            return True
        case ast.Assign(targets=[ast.Name("msg" | "remedy")]):
            return True
        case ast.ClassDef(bases=[*_, ast.Name("Enum" | "StrEnum")]):
            return True
        case ast.Call(func=ast.Name(name)):
            return name.endswith(("Error", "Fault", "Refused"))
        case ast.Call(func=ast.Attribute(attr="compile")):
            return True
        case ast.Call(func=ast.Attribute(ast.Call(ast.Name("super")), "__init__")):
            return True
        case _:
            return False


def packages() -> list[Path]:
    """The folder of every language that says all."""
    return sorted(path.parent for path in (PACKAGE / "languages").glob("*/tongue.py"))


def files() -> list[Path]:
    """The one file of every other language."""
    return sorted(path for path in (PACKAGE / "languages").glob("*.py") if ").language" in path.read_text())


@cache
def for_family() -> frozenset[str]:
    """The files of English words that its tongue reaches: what a child or a family reads or hears."""
    found, waiting = set[str](), ["tongue"]
    while waiting:
        name = waiting.pop()
        if name not in found:
            found.add(name)
            written = (PACKAGE / "languages" / "english" / f"{name}.py").read_text()
            waiting += re.findall(r"^from onewhole\.languages\.english\.(\w+) import", written, re.MULTILINE)
    return frozenset(found)


@cache
def meanings(*, of_family: bool = False) -> frozenset[str]:
    """The name of every member of a closed family that a function of the English words takes.

    ``of_family`` leaves out what only a teacher reads, which is in English alone.
    """
    found = {f"{family.__name__}.{one.name}" for family in INSIDE for one in family}
    for path in sorted((PACKAGE / "languages" / "english").glob("*.py")):
        if of_family and path.stem not in for_family():
            continue
        module = import_module(f"onewhole.languages.english.{path.stem}")
        for function in vars(module).values():
            if isfunction(function) and function.__module__ == module.__name__:
                for taken in get_type_hints(function).values():
                    found |= members(taken)
    return frozenset(found)


def members(taken: object) -> set[str]:
    """The names of all meanings of a family; none for anything else."""
    if isinstance(taken, UnionType):
        every = get_args(taken)
        ours = all(one.__module__.startswith("onewhole.") for one in every)
        return {one.__name__ for one in every} if ours and not _parts(every[0]) else set()
    if isclass(taken) and issubclass(taken, Enum) and not _parts(taken):
        return {f"{taken.__name__}.{one.name}" for one in taken}
    return set()


def _parts(one: type) -> bool:
    return one.__module__.startswith(PARTS)


def said(package: Path) -> set[str]:
    """Every class and every member of an Enum that the files of a language name, imports left out."""
    found: set[str] = set()
    for path in package.rglob("*.py"):
        for node in nodes(path):
            match node:
                case ast.Name(name):
                    found.add(name)
                case ast.Attribute(ast.Name(name), member):
                    found.add(f"{name}.{member}")
                case _:
                    pass
    return found


def lacking(package: Path) -> frozenset[str]:
    """The meanings that a language has no words for: English of all, another one of those for families."""
    return meanings(of_family=package.name != "english") - said(package)


def test_what_only_a_teacher_reads_is_not_asked_of_another_language() -> None:
    """A reason is for the family, why pupils sit together is not."""
    assert "CountDecides" in meanings(of_family=True)
    assert {"NoSteadyPattern", "CountDecides"} <= meanings()
    assert "NoSteadyPattern" not in meanings(of_family=True)


def test_every_language_is_in_the_table() -> None:
    """A folder of words that is in no table is no language, and the other way round."""
    assert len(packages()) + len(files()) == len(LANGUAGES)
    assert all(tag == language.tag for tag, language in LANGUAGES.items())


@pytest.mark.parametrize("package", packages(), ids=lambda path: path.name)
def test_no_language_lacks_a_meaning(package: Path) -> None:
    """Every reason, finding, picture, question and story has its words."""
    assert lacking(package) == frozenset()


def test_a_language_without_words_lacks_every_meaning(tmp_path: Path) -> None:
    """The list names what is lacking: all of it, and all but one when one is there."""
    every = lacking(tmp_path)
    assert len(every) > 120
    (tmp_path / "comparing.py").write_text("match reason:\n    case CountDecides(small):\n        pass\n")
    assert every - lacking(tmp_path) == {"CountDecides"}


@pytest.mark.parametrize("tag", LANGUAGES)
def test_no_word_round_a_page_or_a_film_is_lacking(tag: str) -> None:
    """None is empty, and holes are those that the English words have."""
    language, english = LANGUAGES[tag], LANGUAGES["en-US"]
    for own, first in ((language.page, english.page), (language.film, english.film)):
        for name in own.__struct_fields__:
            written, known = getattr(own, name), getattr(first, name)
            assert written, name
            assert re.findall(r"\{\w+\}", str(written)) == re.findall(r"\{\w+\}", str(known))
    assert [key for key, _ in language.page.ways] == [key for key, _ in english.page.ways]


def _said_by(language: Struct, name: str = "") -> Iterator[tuple[str, object]]:
    """Every message of a language: each function that says a meaning, each text round a page or film."""
    for one in language.__struct_fields__:
        value = getattr(language, one)
        if isinstance(value, Struct):
            yield from _said_by(value, f"{name}{one}.")
        else:
            yield f"{name}{one}", value


def test_spanish_says_every_message_in_its_own_words() -> None:
    """Every one: no function is borrowed from English, and no text is the English one."""
    english, spanish = (dict(_said_by(LANGUAGES[tag])) for tag in ("en-US", "es-US"))
    assert set(english) == set(spanish)
    borrowed = {
        name
        for name, value in spanish.items()
        if ".english." in getattr(value, "__module__", "") or (value == english[name] and value)
    }
    print(f"{len(spanish) - len(borrowed - ALIKE)} of {len(spanish)} messages are Spanish")
    assert len(spanish) > 140
    assert borrowed == ALIKE


#: What English and Spanish have alike: the setting that says how a class calls regrouping.
ALIKE = frozenset({"usual.regroup"})


def test_no_words_are_idle() -> None:
    """Every function and every table of a language, and every word round a page or a film, is used."""
    used = Counter(name for path in PACKAGE.rglob("*.py") for name in _named(path))
    pages = "".join(path.read_text() for path in (PACKAGE / "writers" / "walkthrough").iterdir())
    idle = {
        f"{path.stem}.{node.name}"
        for path in (*(one for package in packages() for one in sorted(package.rglob("*.py"))), *files())
        for node in tree(path).body
        if isinstance(node, ast.FunctionDef | ast.ClassDef) and not used[node.name]
    }
    families = (PageWords, FilmWords, HomeTold, KeyTold, StoriesTold, WorkingTold)
    words = {name for family in families for name in family.__struct_fields__}
    assert idle | {word for word in words if not used[word] and f"${word}" not in pages} == set()


def _named(path: Path) -> Iterator[str]:
    for node in nodes(path):
        match node:
            case ast.Name(name, ast.Load()) | ast.Attribute(attr=name):
                yield name
            case _:
                pass


def test_words_in_a_sentence_hold_no_number() -> None:
    """What the nodes of a sentence refuse is what this file counts on: digits are never words."""
    with pytest.raises(ValueError, match="give it a node of its own"):
        check_words("take 5 sixths")
