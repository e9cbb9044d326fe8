"""The carcass: panels, what divides it, shelves, and the back."""
