"""What bare materials look like: wood's figure, plies, boards' flakes; by arithmetic, seeded."""

from rodwright.photo.woods.looks import Looks, looks_of

__all__ = ["Looks", "looks_of"]
