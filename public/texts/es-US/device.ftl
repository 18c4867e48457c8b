# What is chosen for this device: languages, numbers and dates.

this-device = Este dispositivo
about = Estas opciones se quedan en este dispositivo. Sus libros no cambian.
language = Idioma
counter-language = Idioma del mostrador
as-in-browser = Como el navegador
owners-language = Idioma del dueño
same-language = Igual que arriba
numbers-and-dates = Números y fechas
written-like = Ejemplo: { $sample }
language-not-here = Este dispositivo aún no tiene { $language }. Conéctese una vez para tenerlo.
laptop-spacing = Espacio en laptop
roomy = Amplio
compact = Compacto
