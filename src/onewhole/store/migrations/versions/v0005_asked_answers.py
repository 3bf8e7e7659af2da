"""What pupils were asked in talks, what they said, and the teacher's word: a writing for each."""

from alembic import op
from sqlalchemy import Column, ForeignKey, Index, Integer, Text

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the table."""
    op.create_table(
        "asked_answers",
        Column("number", Integer, primary_key=True),
        Column("night_number", Integer, ForeignKey("nights.number"), nullable=False),
        Column("pupil_number", Integer, ForeignKey("pupils.number"), nullable=False),
        Column("asked", Text, nullable=False),
        Column("wrote", Text, nullable=False),
        Column("said", Text, nullable=False),
        Column("about", Text, nullable=False),
        Column("takes_back", Integer, nullable=False),
        Column("written", Text, nullable=False),
        Column("by", Text, nullable=False),
        Column("digest", Integer),
        Index("asked_answers_of_a_night", "night_number"),
        Index("asked_answers_of_a_pupil", "pupil_number"),
        sqlite_autoincrement=True,
    )
