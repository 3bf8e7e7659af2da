"""HTTP: what a page is asked with and answers, how a form is read and an answer written."""
