"""Parts and bought-in pieces as bodies of a scene."""

from rodwright.photo.bodies.flush import flush_in
from rodwright.photo.bodies.units import unit_bodies

__all__ = ["flush_in", "unit_bodies"]
