"""A page of problems as questions for another program: QTI 3.0 (1EdTech, 1 May 2022)."""
