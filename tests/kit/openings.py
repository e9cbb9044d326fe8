"""A spec whose opening was read in every way there is."""

from __future__ import annotations

FULLY_READ = """
opening:
  width: {bottom: 1216, middle: 1211, top: 1209, others: [{at: 500, width: 1213}]}
  height: {left: 2032, right: 2027}
  depth: 318
  diagonals: {rising: 2366, falling: 2362}
  plumb: {left: {out: 6, over: 1800, leans: in}, right: {out: 1, over: 1800, leans: out}}
  level: {floor: {out: 2, over: 1200, rises: right}, top: {out: 2, over: 1200, rises: left}}
  back: {width: {bottom: 1212, top: 1207}, plumb: {left: {out: 5, over: 1800, leans: in}}}
interior: {shelves: {count: 3}}
face_frame: {stock: ash, width: 45}
"""
