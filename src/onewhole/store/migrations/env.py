"""What Alembic runs for every command: all steps in the one transaction that the caller has begun."""

from alembic import context

#: The table that says which step a file is at.
VERSION_TABLE = "schema_version"


def _run() -> None:
    context.configure(
        connection=context.config.attributes["connection"],
        version_table=VERSION_TABLE,
        transactional_ddl=True,
    )
    with context.begin_transaction():
        context.run_migrations()


if __name__ == "env_py":  # the name under which Alembic runs this file
    _run()
