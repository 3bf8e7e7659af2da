"""Products: so many times a number, and the ways in which a class is taught to find it."""
