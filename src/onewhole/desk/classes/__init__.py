"""The classes and their nights: records, the week, and what each night showed."""
