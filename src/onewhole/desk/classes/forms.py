"""The forms of the pages of pupils by code, of those who have another than the class."""

from collections.abc import Mapping

from onewhole.findings.own_page import OwnPage

Forms = Mapping[str, OwnPage]
