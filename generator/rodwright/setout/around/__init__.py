"""What stands under, over and beside the carcass, and what it is cut out round."""
