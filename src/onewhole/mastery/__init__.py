"""Which skills stand behind right and wrong: the two tables, the model, and what it says of a class and a
pupil.
"""
