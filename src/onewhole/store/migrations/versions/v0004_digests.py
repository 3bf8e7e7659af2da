"""A digest beside every row, and what each table holds; they are filled when all steps are taken."""

from alembic import op
from sqlalchemy import Column, Integer, Text

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None

_TABLES = (
    "classes",
    "pupils",
    "sheets",
    "sheet_versions",
    "nights",
    "answers",
    "corrections",
    "settings",
    "steps",
    "recordings",
    "reckonings",
    "given_out",
)


def upgrade() -> None:
    """Add the columns and the table."""
    for table in _TABLES:
        op.add_column(table, Column("digest", Integer))
    op.create_table(
        "table_heads",
        Column("name", Text, primary_key=True),
        Column("rows", Integer, nullable=False),
        Column("mark", Integer, nullable=False),
        Column("last", Integer, nullable=False),
        Column("digest", Integer),
    )
