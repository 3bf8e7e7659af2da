"""Sentences as trees: words, numbers to be written, units, things; a notation turns them into text."""
