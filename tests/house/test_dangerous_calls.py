"""What the code never does with a text from outside: run it, unpack it, or send it anywhere."""

import ast
from functools import cache
from pathlib import Path

import pytest

from tests.house.plan import PACKAGE, nodes, place

SOURCES = sorted(PACKAGE.rglob("*.py"))
#: A text that becomes code, a command, an object of any class, or a template.
RUNS = {
    *("eval", "exec", "compile", "__import__"),
    *("os.system", "os.popen", "os.execv", "os.execvp", "os.spawnv", "os.posix_spawn"),
    *("pickle.loads", "pickle.load", "marshal.loads", "shelve.open", "yaml.load", "msgspec.yaml.decode"),
    *("jinja2.Template", "from_string"),
}
#: What speaks to another machine, or reads XML with what it may name outside.
REACHES = {
    *("http.client", "urllib.request", "ftplib", "smtplib", "imaplib", "telnetlib", "xmlrpc", "poplib"),
    *("requests", "httpx", "httpx2", "aiohttp", "urllib3", "websockets", "ldap3"),
    *("xml.sax", "xml.dom", "xml.parsers", "lxml", "pickle", "marshal", "shelve", "yaml"),
}
#: A hash or a source of chance that nothing secret may rest on.
WEAK = {"md5", "sha1", "hashlib.md5", "hashlib.sha1", "hashlib.new"}
#: Reads XML; `Element` and `tostring` only write it.
PARSES = {"fromstring", "XML", "parse", "iterparse", "XMLParser", "XMLPullParser"}
#: What reads XML of a file that was handed in, by defusedxml and with every document type refused.
READ_DEFUSED = {
    "src/onewhole/presses/open_document.py",
    "src/onewhole/presses/question_reading.py",
}


def _name(node: ast.expr) -> str:
    """The dotted name of what is called."""
    match node:
        case ast.Name(name):
            return name
        case ast.Attribute(of, name):
            inner = _name(of)
            return f"{inner}.{name}" if inner else name
        case _:
            return ""


@cache
def _called(path: Path) -> list[tuple[ast.Call, str]]:
    return [(node, _name(node.func)) for node in nodes(path) if isinstance(node, ast.Call)]


@cache
def _imported(path: Path) -> list[tuple[ast.stmt, str]]:
    found: list[tuple[ast.stmt, str]] = []
    for node in nodes(path):
        match node:
            case ast.Import(names):
                found += [(node, one.name) for one in names]
            case ast.ImportFrom(module=str(module), names=names):
                found += [(node, module), *((node, f"{module}.{one.name}") for one in names)]
            case _:
                pass
    return found


def _runs(name: str, call: ast.Call) -> bool:
    """Say whether a call makes code, a command or an object of a text; `re.compile` does not."""
    shell = any(one.arg == "shell" for one in call.keywords)
    return shell or name in RUNS or name.endswith(".from_string")


@pytest.mark.asvs("V1.2.5", "V1.3.2", "V1.3.7", "V1.5.2")
def test_no_text_is_run() -> None:
    """No code, command, pickled object or template is made of a text."""
    ran = [place(path, node) for path in SOURCES for node, name in _called(path) if _runs(name, node)]
    assert ran == []


@pytest.mark.asvs("V1.3.6", "V1.5.1", "V12.3.1", "V13.2.4", "V13.2.5", "V14.2.3", "V15.3.2")
def test_nothing_is_sent_and_no_xml_is_read() -> None:
    """No client of any protocol is imported; XML is read by defusedxml alone, without document types."""
    reaches = [
        place(path, node)
        for path in SOURCES
        for node, name in _imported(path)
        if any(name == one or name.startswith(f"{one}.") for one in REACHES)
    ]
    assert reaches == []
    writers = [path for path in SOURCES if any(name.startswith("xml.etree") for _, name in _imported(path))]
    assert writers
    parses = [
        place(path, node) for path in writers for node, name in _called(path) if name.split(".")[-1] in PARSES
    ]
    assert [one for one in parses if one.partition(":")[0] not in READ_DEFUSED] == []
    for name in READ_DEFUSED:
        calls = [node for node, called in _called(PACKAGE.parent.parent / name) if called in PARSES]
        assert calls
        assert all(any(one.arg == "forbid_dtd" for one in call.keywords) for call in calls)


@pytest.mark.asvs("V11.4.1", "V11.2.3")
def test_no_weak_hash_is_used() -> None:
    """SHA-256 or better, whatever it is for."""
    weak = [place(path, node) for path in SOURCES for node, name in _called(path) if name in WEAK]
    assert weak == []


@pytest.mark.asvs("V1.2.9", "V1.3.10")
def test_no_pattern_and_no_format_is_made_of_a_text() -> None:
    """A pattern put together holds constants and what `re.escape` gave; a format is written in the code."""
    wrong = []
    for path in SOURCES:
        constants = _constants(path)
        for call, name in _called(path):
            if name.startswith("re.") and name != "re.escape" and call.args:
                wrong += [] if _is_fixed(call.args[0], constants) else [place(path, call)]
            if isinstance(call.func, ast.Attribute) and call.func.attr == "format" and not _is_ours(name):
                wrong += [] if _is_fixed(call.func.value, constants) else [place(path, call)]
    assert wrong == []


def _is_ours(name: str) -> bool:
    """Say whether a format is a language's own words, or lays out JSON."""
    return name.startswith("language.") or name.endswith("json.format")


def _constants(path: Path) -> frozenset[str]:
    """The names that a file gives to something once, in capitals."""
    return frozenset(
        target.id
        for node in nodes(path)
        if isinstance(node, ast.Assign | ast.AnnAssign)
        for target in (node.targets if isinstance(node, ast.Assign) else [node.target])
        if isinstance(target, ast.Name) and target.id.lstrip("_").isupper()
    )


def _is_fixed(node: ast.expr, constants: frozenset[str]) -> bool:
    """Say whether a text is written in the code, or put together from such texts and escaped ones."""
    match node:
        case ast.Constant():
            return True
        case ast.Name(name):
            return name in constants or name.lstrip("_").isupper()
        case ast.Call(func=ast.Name("Markup"), args=[first]):
            return _is_fixed(first, constants)
        case ast.Call(func, args):
            inner = all(_is_fixed(one, constants) for one in args)
            return _name(func) in {"re.escape", "map"} or (_name(func).split(".")[-1] == "join" and inner)
        case ast.Attribute(ast.Name("re"), name):
            return name == "escape" or name.isupper()
        case ast.Attribute(of, "pattern"):
            return _is_fixed(of, constants)
        case ast.JoinedStr(values):
            return all(_is_fixed(one, constants) for one in values)
        case ast.FormattedValue(value):
            return _is_fixed(value, constants)
        case ast.BinOp(left, ast.Add(), right):
            return _is_fixed(left, constants) and _is_fixed(right, constants)
        case ast.GeneratorExp(element, [ast.comprehension()]):
            return _is_fixed(element, constants)
        case _:
            return False


@pytest.mark.asvs("V1.2.4")
def test_no_statement_is_made_of_a_text() -> None:
    """What is asked of SQLite is written in the code or made by SQLAlchemy; values travel beside it."""
    asks = {"execute", "exec_driver_sql", "executescript", "text"}
    wrong = [
        f"{place(path, call)} {ast.unparse(call.args[0])}"
        for path in SOURCES
        if path.is_relative_to(PACKAGE / "store")
        for call, name in _called(path)
        if name.split(".")[-1] in asks and call.args and not _is_statement(call.args[0])
        if not _names_ours(path, call)
    ]
    assert wrong == []


def _names_ours(path: Path, call: ast.Call) -> bool:
    """Say whether the line says that only names of our own tables are put together there."""
    lines = path.read_text(encoding="utf-8").splitlines()[call.lineno - 1 : call.end_lineno]
    return any("# noqa: S608 - our own name" in line for line in lines)


def _is_statement(node: ast.expr) -> bool:
    """Say whether a statement is not glued; only a pragma, which takes no values, may be put together.

    Whole numbers and names in capitals may stand in others.
    """
    match node:
        case ast.JoinedStr([ast.Constant(str(begins)), *_]) if begins.startswith("PRAGMA "):
            return True
        case ast.JoinedStr(values):
            return all(_is_statement(one) for one in values)
        case ast.FormattedValue(ast.Call(func=ast.Attribute(ast.Name("int")))):
            return True
        case ast.FormattedValue(ast.Name(name)):
            return name.lstrip("_").isupper()
        case ast.FormattedValue() | ast.BinOp(op=ast.Mod()):
            return False
        case ast.BinOp(left, ast.Add(), right):
            return _is_statement(left) and _is_statement(right)
        case ast.Call(func=ast.Attribute(ast.Constant(), "format" | "join")):
            return False
        case _:
            return True


@pytest.mark.parametrize(
    ("code", "found"),
    [
        ("eval(typed)", True),
        ("subprocess.run(typed, shell=True)", True),
        ("environment.from_string(typed)", True),
        ("re.compile(typed)", False),
    ],
)
def test_the_rule_sees_what_is_run(code: str, found: bool) -> None:
    """Code, a command and a template; a pattern is none of these."""
    (call,) = [node for node in ast.walk(ast.parse(code)) if isinstance(node, ast.Call)]
    assert _runs(_name(call.func), call) == found


@pytest.mark.parametrize(
    ("code", "fixed"),
    [
        ("'a|b'", True),
        ("f'({\"|\".join(map(re.escape, WORDS))})'", True),
        ("f'{WORDS}+'", True),
        ("typed", False),
        ("f'{typed}+'", False),
        ("'a' + typed", False),
    ],
)
def test_the_rule_sees_what_a_pattern_is_made_of(code: str, fixed: bool) -> None:
    """Texts of the code and escaped ones; not what a variable holds."""
    (statement,) = ast.parse(code).body
    assert isinstance(statement, ast.Expr)
    assert _is_fixed(statement.value, frozenset()) == fixed


@pytest.mark.parametrize(
    ("code", "fits"),
    [
        ("insert(tables.answers)", True),
        ("'BEGIN'", True),
        ("f'PRAGMA {name}'", True),
        ("f'SELECT {column} FROM pupils'", False),
        ("'SELECT %s' % column", False),
        ("'SELECT {}'.format(column)", False),
    ],
)
def test_the_rule_sees_what_a_statement_is_made_of(code: str, fits: bool) -> None:
    """What SQLAlchemy makes, constants and pragmas; not what is glued."""
    (statement,) = ast.parse(code).body
    assert isinstance(statement, ast.Expr)
    assert _is_statement(statement.value) == fits
