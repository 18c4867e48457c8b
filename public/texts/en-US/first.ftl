# What the first screen says, before the rest of the texts is here.

opening = Opening…
part-missing = Part of the app did not arrive. Check your connection, then try again. Your data is safe on this device.
