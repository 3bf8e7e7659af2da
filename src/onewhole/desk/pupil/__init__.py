"""One pupil: the story of the nights, the report, and what is held for the family."""
