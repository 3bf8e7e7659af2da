"""A package, so that a fixture can be there for all of its files: pytest knows no such folder."""
