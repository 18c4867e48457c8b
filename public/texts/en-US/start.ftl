# What the page says by itself, before the app is here or when it cannot start.

slow-start = This takes longer than it should. Check your connection, then reload. Your data is safe on this device.
needs-script = Brimwright runs on this device and needs JavaScript. Turn it on for this page, then reload.
could-not-start = Brimwright could not start. Check your connection, then reload. Your data is safe on this device.
reload = Reload
