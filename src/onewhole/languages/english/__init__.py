"""American English, one function a family of meanings.

=========================  =======================================================
:mod:`~.words`             counts, units, plurals, and the class's own words
:mod:`~.tongue`            what a notation asks English for
:mod:`~.making`            sentences, lists, counted units, amounts
:mod:`~.reasons`           why a line follows
:mod:`~.regrouping`        opening a larger unit, putting full groups together
:mod:`~.taking`            taking and adding, unit by unit
:mod:`~.jumping`           jumps along a number line, shifts, making a whole
:mod:`~.renaming`          the same amount in other units
:mod:`~.comparing`         which is more, and which number is missing
:mod:`~.facts`             how a hard fact is found
:mod:`~.unsuited`          why a strategy does not suit a problem
:mod:`~.pictured`          the words that do a picture's job
:mod:`~.amounts`           an amount that counts something: 2 1/6 strips
:mod:`~.stories`           the words of a word problem
:mod:`~.word_problems`     their sentences with holes, a file for each kind of amount
:mod:`~.own_story`         of whom a class's word problems tell, and what they do
:mod:`~.for_home`          what the page for home says
:mod:`~.home_questions`    good questions for home
:mod:`~.in_key`            what a key says beside an answer
:mod:`~.reteaching`        what to do with a group tomorrow
:mod:`~.morning_told`      what the morning page rests on
:mod:`~.round_page`        titles, headings and labels of printed pages
:mod:`~.unpictured`        why a picture does not suit a working
:mod:`~.in_page`           what an audit finds in a page, and what may be done
:mod:`~.standards`         what the standards expect of a page
:mod:`~.clicks`            what one click does to a page, and what it did
:mod:`~.placing`           why pupils work together, and whom to see first
:mod:`~.families`          what the families of error patterns are called
:mod:`~.asks`              what to ask a child about a pattern, by what it is about
:mod:`~.thoughts`          what a child may be thinking, by what it is about
:mod:`~.papers`            what tomorrow's printed pages are called
:mod:`~.in_answer`         what can be said about an answer, a finding, a pass mark
:mod:`~.skills`            what the skills are called that problems practise
:mod:`~.habits`            which habit of good pages a composed page leaves out
=========================  =======================================================
"""
