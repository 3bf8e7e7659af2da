"""Listening: a recording goes in, words with their times come out."""
