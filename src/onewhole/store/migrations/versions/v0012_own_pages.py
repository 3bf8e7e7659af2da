"""In what form a pupil reads pages: in braille, or in large print."""

from alembic import op
from sqlalchemy import Column, ForeignKey, Integer, Text

revision = "0012"
down_revision = "0011"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the table."""
    op.create_table(
        "own_pages",
        Column("pupil_number", Integer, ForeignKey("pupils.number"), primary_key=True),
        Column("form", Text, nullable=False),
        Column("digest", Integer),
    )
