"""Texts that would like to be something else: markup, a formula, a template, a path, half a sign."""

from itertools import count, cycle

#: `@` stands for a number that makes each text its own.
BASES = (
    "<script>fly(@)</script>",
    '"><img src=x onerror=fly(@)>',
    "'><svg/onload=fly(@)>",
    "</textarea><script>fly(@)</script>",
    "</title><script>fly(@)</script>",
    "</select><iframe src=/@>",
    "<!--@--><b>bold@</b>",
    "--><i>@</i>",
    "]]><mi>@</mi>",
    "</math><script>@</script>",
    '=HYPERLINK("http://kites.example/@","see")',
    "=1+@",
    "+1+@",
    "-1+@",
    "@SUM(A@)",
    "＝1+@",
    "\t=1+@",
    "=cmd|' /C calc'!A@",
    "{{7*7}}@",
    "{% raw %}@{% endraw %}",
    "${7*7}@",
    "#{7*7}@",
    "{@}{0.__class__}",
    "%s%n%@d",
    "javascript:fly(@)",
    "&lt;b&gt;@&amp;#60;",
    "&#x3c;script&#x3e;@",
    "\u202eevil@\u202c",
    "\u2066left@",
    "\u200bzero@\u200b",
    "e\u0301\u0302\u0303@" + "\u0301" * 20,
    "🪁🪁🏽‍🚀@",
    "kite ﷽ 𒐫 @",
    "../../etc/passwd@",
    "..\\..\\windows@",
    "C:\\con@",
    "/mine/1/../../keep@",
    "'; DROP TABLE pupils; --@",
    '" OR 1=1 --@',
    "' onclick='fly(@)' x='",
    '" style="position:fixed" x="@',
    "``@`` **bold** [a](b)",
    '#set text(red)[@] $x$ #read("/etc/passwd")',
    "\\input{/etc/passwd}@",
    "NULL@",
    "undefined@",
    "true@",
    "1e309@",
    "٣½@",
    "ﬀ ſ ß İ ı @",
)  # fmt: skip
#: Signs that a line of text cannot hold: they are refused or taken for blanks, and never a fault.
BREAKS = (
    "a\r\nSet-Cookie: kite=1",
    "a\x00b",
    "a\x1bb",
    "a\x7fb",
    "a\x85b",
    "a\u2028b",
    "x" * 10_000,
    "\ud800",
    " ",
    "",
)


def hostile(many: int) -> list[str]:
    """Return so many different hostile texts."""
    numbers = count(1000)
    return [base.replace("@", str(next(numbers))) for base, _ in zip(cycle(BASES), range(many), strict=False)]
