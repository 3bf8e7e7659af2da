"""Standards by their identifiers in an open framework: CASE, Competencies and Academic Standards Exchange.

The identifiers are those of a multi-state assessment consortium's mathematics content specification, the
document 255adad7-2854-47d7-9aa4-c5e1750eb8ca (read); what has none here has no source. An identifier belongs
to one framework: another publisher of the same standard has another one.
"""

_ITEMS = {
    "4.NF.B.3": "ddaed366-fefb-11e7-9378-c9617459c62b",
    "4.NF.B.3.a": "d79178e1-3138-5c45-8a35-0ced236b025e",
    "4.NF.B.3.b": "1326fc5a-6767-546e-860a-39bdb1d61915",
    "4.NF.B.3.c": "a044d6df-82ca-5175-abdc-ac4589ef330d",
    "4.NF.B.3.d": "e6c35b9a-8ad1-5fda-ad0a-0373835c9c04",
    "4.NF.A.1": "17a16ab7-3bae-5b6a-bc02-ef4823ef6d0f",
    "4.NBT.B.4": "d0f57d92-ea0b-5cd4-974d-3dc795e6841c",
    "5.NF.A.1": "d16f0855-994a-51d6-bea0-6042c6faa81b",
    "5.NF.A.2": "4ce74968-962f-5421-b5f8-4bce272255df",
    "3.NF.A.3.c": "cbb48087-03cc-5293-8545-baf2384428c9",
}


def case_item(code: str) -> str | None:
    """Return the identifier of a standard, by its code as this program writes it; None where none is known.

    >>> case_item("4.NF.B.3.c"), case_item("4.OA.B.4")
    ('a044d6df-82ca-5175-abdc-ac4589ef330d', None)
    """
    return _ITEMS.get(code)
