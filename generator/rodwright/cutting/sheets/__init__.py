"""Plans for sheets: guillotine cuts for saws."""
