"""What word problems say in English: sentences with holes, a file for each kind of amount.

Each file has those of the kite club and those of a class that names its own things; :mod:`~.frames` puts
them together. Nobody in them has a name. The last sentence asks. The holes:

==========================  =================================================================================
``{a}`` ``{b}`` ``{c}``     the amounts with their units, in the order of the problem
``{some}``                  an amount that is not known yet
``{many}`` ``{more}``       begin the question: How many strips, or How much of a strip; with ``{fewer}``, and
                            ``{are}`` for the verb. No other verb depends on whether an amount is one or many
``{pieces}`` ``{kept}``     the pieces asked for, and the wholes beside them
``{each}`` ``{color}``      an amount of several, and the color of its thing: once for each
``{ends}``                  from least to greatest, or from greatest to least
``{form}`` ``{nearest}``    as a decimal, in simplest form; to the nearest hundred
``{factor}`` ``{other}``    the factors of a product without a unit
``{kites}`` ``{rows}`` ...  the factor that counts things, with what it counts
``{one}`` ``{brief}``       one whole: a strip of kite paper, strip
``{who}`` ``{does}``        of whom a class's own stories tell, what they do with its wholes, ``{do}`` after
                            "did". Who does it is one: a class, a club, a team. Nothing else is said of
                            the wholes: the verb may be any
==========================  =================================================================================
"""
