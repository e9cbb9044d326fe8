"""Pictures for the client and the bench: the unit in many views, its opening, and plans to cut by.

Importing this package loads nothing: plans and openings are drawn without any solids.
"""
