"""The topics of the grades, and what the program does with each: tried, never claimed."""
