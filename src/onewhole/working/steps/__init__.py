"""Several steps, one after another in the usual order, each named.

Brackets first, then products and quotients, then sums and differences, each from left to right. A step leans
on the working of its own: a step that takes several lines is begun with its name. What is left over in
dividing is worked on with as a fraction.

Source: 5.OA.A.1 and the note to 3.OA.D.8, CCSSM (2010).
"""
