"""How the finished repair behaved: gap, glide, tension, bulk, and how it was tested."""
