"""The forms of a page as a browser without scripts sends them."""

from collections.abc import Iterable
from dataclasses import dataclass, field
from html.parser import HTMLParser


@dataclass(slots=True)
class Form:
    """A form: where it goes, and its fields in their order, as they stand when nothing is typed.

    >>> (form,) = forms_in('<form action="/a"><input name="saw" value="1"><input name="no" type="checkbox">')
    >>> form.action, form.fields, form.filled(saw="2")
    ('/a', [('saw', '1')], [('saw', '2')])
    """

    action: str
    fields: list[tuple[str, str]] = field(default_factory=list)

    def value(self, name: str) -> str:
        """Return the value of a field. KeyError where there is none."""
        return dict(self.fields)[name]

    def filled(self, **typed: str) -> list[tuple[str, str]]:
        """Return the fields with others typed into some of them, or added."""
        left = dict(typed)
        found = [(name, left.pop(name, value)) for name, value in self.fields]
        return [*found, *left.items()]


class _Forms(HTMLParser):
    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.forms: list[Form] = []
        self.by_id: dict[str, Form] = {}
        self.sent_elsewhere: list[tuple[str, Form]] = []
        self.select, self.is_first = "", False

    def handle_starttag(self, tag: str, attrs: Iterable[tuple[str, str | None]]) -> None:
        has = {name: value or "" for name, value in attrs}
        if tag == "form":
            self.forms.append(Form(has.get("action", "")))
            self.by_id[has.get("id", "")] = self.forms[-1]
        if not self.forms:
            return
        fields = (self.by_id[has["form"]] if "form" in has else self.forms[-1]).fields
        left_out = has.get("type") in {"checkbox", "radio", "file", "submit"} and "checked" not in has
        if tag == "button" and "formaction" in has:
            form = self.by_id[has["form"]] if "form" in has else self.forms[-1]
            self.sent_elsewhere.append((has["formaction"], form))
        if tag == "input" and "name" in has and not left_out:
            fields.append((has["name"], has.get("value", "on" if "checked" in has else "")))
        if tag == "select" and "name" in has:
            self.select, self.is_first = has["name"], True
        if tag == "option" and self.select:
            chosen = (self.select, has.get("value", ""))
            if self.is_first:
                fields.append(chosen)
            elif "selected" in has:
                fields[-1] = chosen
            self.is_first = False

    def handle_endtag(self, tag: str) -> None:
        if tag == "select":
            self.select = ""


def forms_in(page: str) -> list[Form]:
    """Return the forms of a page; one that a button sends elsewhere stands there once more."""
    parser = _Forms()
    parser.feed(page)
    return [*parser.forms, *(Form(action, form.fields) for action, form in parser.sent_elsewhere)]


def form_to(page: str, action: str, **fields: str) -> Form:
    """Return the form of a page that goes to an address and has some fields so. KeyError for none."""
    for form in forms_in(page):
        if form.action == action and set(fields.items()) <= set(form.fields):
            return form
    raise KeyError(action)
