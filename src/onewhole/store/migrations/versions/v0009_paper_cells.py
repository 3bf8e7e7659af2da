"""Cells of papers that were read from pictures, kept until the teacher has checked them."""

from alembic import op
from sqlalchemy import Column, ForeignKey, Index, Integer, LargeBinary, Text

revision = "0009"
down_revision = "0008"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the table."""
    op.create_table(
        "paper_cells",
        Column("night_number", Integer, ForeignKey("nights.number"), primary_key=True),
        Column("pupil_number", Integer, ForeignKey("pupils.number"), primary_key=True),
        Column("problem", Text, primary_key=True),
        Column("reading", Integer, nullable=False),
        Column("verdict", Text, nullable=False),
        Column("text", Text, nullable=False),
        Column("choices", Text, nullable=False),
        Column("doubt", Integer, nullable=False),
        Column("alone", Integer, nullable=False),
        Column("why", Text, nullable=False),
        Column("by", Text, nullable=False),
        Column("written", Text, nullable=False),
        Column("crop", LargeBinary, nullable=False),
        Column("digest", Integer),
        Index("paper_cells_of_a_pupil", "pupil_number"),
    )
