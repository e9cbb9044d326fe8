"""The way in: whether a unit can be carried in, stood up and put into its place."""
