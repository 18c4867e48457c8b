# Words that many screens share. A button is a verb and its object.

cancel = Cancel
try-again = Try again
