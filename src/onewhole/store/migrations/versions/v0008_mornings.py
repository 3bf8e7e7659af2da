"""A cache of the pages for the morning."""

from alembic import op
from sqlalchemy import Column, ForeignKey, Integer, Text

revision = "0008"
down_revision = "0007"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the table."""
    op.create_table(
        "mornings",
        Column("night_number", Integer, ForeignKey("nights.number"), primary_key=True),
        Column("stamp", Text, nullable=False),
        Column("text", Text, nullable=False),
        Column("digest", Integer),
    )
