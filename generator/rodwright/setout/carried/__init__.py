"""What the unit is to carry, laid on its parts once they are all there."""
