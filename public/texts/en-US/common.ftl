# Words that many screens share. A button is a verb and its object.

cancel = Cancel
try-again = Try again
undo = Undo
redo = Redo
close = Close
name = Name
cost = Cost
margin = Margin
done = Done
