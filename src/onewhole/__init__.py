"""A typed page of problems becomes exact workings, printed pages, marks and tomorrow's groups."""

__version__ = "0.1.0"
