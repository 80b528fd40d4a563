"""The pages about the shop as a whole: Today, settings, the account, backups."""
