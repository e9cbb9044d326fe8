"""Plans for a router, which cuts pieces out anywhere."""
