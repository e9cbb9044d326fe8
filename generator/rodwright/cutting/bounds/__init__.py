"""What no plan can do better than."""
