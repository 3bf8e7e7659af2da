"""What was given out on a pupil: what, to whom, what for, when."""

from alembic import op
from sqlalchemy import Column, ForeignKey, Index, Integer, Text

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the table."""
    op.create_table(
        "given_out",
        Column("number", Integer, primary_key=True),
        Column("pupil_number", Integer, ForeignKey("pupils.number"), nullable=False),
        Column("what", Text, nullable=False),
        Column("to", Text, nullable=False),
        Column("why", Text, nullable=False),
        Column("day", Text, nullable=False),
        Column("written", Text, nullable=False),
        Column("by", Text, nullable=False),
        Index("given_out_of_a_pupil", "pupil_number"),
        sqlite_autoincrement=True,
    )
