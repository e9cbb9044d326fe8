"""In which order parts go together: found from their solids and joints, and proven by sweeping.

A step brings one part, or one sub-assembly that stands made, straight in past what stands already.
"""
