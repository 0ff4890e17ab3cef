"""The core and the peripheral suture: strands, stitch, thread, hold, purchase and knots."""
