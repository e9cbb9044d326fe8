"""The whole unit by finite elements, beside the formulas; nothing else needs PyNiteFEA."""
