"""Run by Alembic inside the transaction that `Database` has begun."""

from alembic import context

from scanflow.storage.tables import metadata

context.configure(connection=context.config.attributes["connection"], target_metadata=metadata)
context.run_migrations()
