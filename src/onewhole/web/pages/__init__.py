"""The pages: one noun a file, each from a form to the desk to a template."""
