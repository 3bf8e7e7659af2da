"""The year of a class, as its teacher typed it."""

from alembic import op
from sqlalchemy import Column, ForeignKey, Integer, Text

revision = "0011"
down_revision = "0010"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the table."""
    op.create_table(
        "years",
        Column("class_number", Integer, ForeignKey("classes.number"), primary_key=True),
        Column("typed", Text, nullable=False),
        Column("written", Text, nullable=False),
        Column("digest", Integer),
    )
