"""Listening: a recording goes in, words with their times come out; and a recording is made pleasant to hear."""
