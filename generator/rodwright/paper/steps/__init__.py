"""Pages of the work at the bench and on site: steps, fitting, finishing."""
