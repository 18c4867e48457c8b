# The counter: batches, what is on hand, recipe cards on the tablet.

deducted = { $drinks ->
    [one] Deducted from stock: 1 drink. It counts once, so this row stays.
   *[other] Deducted from stock: { $drinks } drinks. Each counts once, so this row stays.
}
