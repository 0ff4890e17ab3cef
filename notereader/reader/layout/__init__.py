"""Step 2, layout: lines, headings, sentences, forms, grids and lists."""
