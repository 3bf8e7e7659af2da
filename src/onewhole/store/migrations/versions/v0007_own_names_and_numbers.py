"""A night's own name; and numbers of classes, pages and nights that are given once, also after deleting."""

from alembic import op
from sqlalchemy import Column, ForeignKey, Integer, Text

revision = "0007"
down_revision = "0006"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the tables, and note the highest number that stands in each of the three."""
    op.create_table(
        "night_names",
        Column("night_number", Integer, ForeignKey("nights.number"), primary_key=True),
        Column("name", Text, nullable=False),
        Column("digest", Integer),
    )
    op.create_table(
        "numbers_given",
        Column("name", Text, primary_key=True),
        Column("last", Integer, nullable=False),
        Column("digest", Integer),
    )
    for table in ("classes", "sheets", "nights"):
        highest = f"SELECT max(number) AS last FROM {table}"  # noqa: S608 - our own names
        op.execute(
            f"INSERT INTO numbers_given (name, last) SELECT '{table}', last FROM ({highest}) "  # noqa: S608 - our own names
            "WHERE last IS NOT NULL"
        )
