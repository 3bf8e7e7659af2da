"""What word problems say in Spanish: sentences with holes, a file for each kind of amount.

The holes are those of :mod:`onewhole.languages.english.word_problems`. Nobody in them has a name or a gender.
``{left}``, ``{good}``, ``{gets}`` and ``{is}`` are verbs that depend on whether an amount is one or many;
``{at_a}`` is a time with its "a la" or "a las", ``{of_brief}`` a whole with "del" or "de la", and
``{color_o}`` the color of a masculine thing. A verb of the class's own stands in the present
alone, because no rule gives its past. All of them are to be checked by a native speaker.
"""
