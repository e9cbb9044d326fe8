"""Parts and bought-in pieces as bodies of a scene."""

from rodwright.photo.bodies.units import unit_bodies

__all__ = ["unit_bodies"]
