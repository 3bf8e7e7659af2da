"""The newest answer of each night is found without reading the night: the Week asks for all of them."""

from alembic import op

revision = "0010"
down_revision = "0009"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the index."""
    op.create_index("answers_by_night", "answers", ["night_number", "number"])
