"""Quotients: a number shared equally or measured out in groups, and the ways to find how many."""
