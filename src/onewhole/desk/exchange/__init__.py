"""Files for other programs, and from them: workbooks, grade books, calendars, class lists, questions."""
