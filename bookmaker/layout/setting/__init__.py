"""Setting text: measures of the fonts, paragraphs into lines, lines into columns."""
