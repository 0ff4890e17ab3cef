"""The window: note and facts side by side. The only room that imports Qt."""
