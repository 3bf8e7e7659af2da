"""A page as a tree: reading and writing it, and what is told about it."""
