"""One SQLite file a barn: opened, migrated, one transaction at a time."""
