"""A language that is one file: its words stand in tables, and what every language says alike is said here.

==========================  ====================================================================
:mod:`~.message`            words with holes, and nodes of a sentence put into them
:mod:`~.number_tables`      numbers, units and lines read aloud, from tables of words
:mod:`~.home_messages`      what the page for home says and asks
:mod:`~.reason_messages`    why a line follows, and what a picture of counted things shows
:mod:`~.film_messages`      what a film says beside the reasons
:mod:`~.one_file`           a language made of these
==========================  ====================================================================
"""
