# What the page says by itself, before the app is here or when it cannot start.

slow-start = Esto tarda más de lo normal. Revise su conexión y vuelva a cargar. Sus datos están a salvo en este dispositivo.
needs-script = Brimwright corre en este dispositivo y necesita JavaScript. Actívelo para esta página y vuelva a cargar.
could-not-start = Brimwright no pudo abrir. Revise su conexión y vuelva a cargar. Sus datos están a salvo en este dispositivo.
reload = Volver a cargar
