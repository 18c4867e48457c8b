# The open book: its settings, files, copies and restore points; what fields say; what is not saved.

# Something new that is typed in and lacks something.
new-ingredient-unsaved = El ingrediente nuevo aún no está en su libro.
new-packaging-unsaved = El empaque nuevo aún no está en su libro.
new-kit-unsaved = El juego de empaque nuevo aún no está en su libro.
new-container-unsaved = El envase nuevo aún no está en su libro.
new-drink-unsaved = La bebida nueva aún no está en su libro.
new-trial-unsaved = La prueba nueva aún no está en su libro.
new-local-price-unsaved = El precio local nuevo aún no está en su libro.
new-scenario-unsaved = El escenario nuevo aún no está en su libro.
new-pack-unsaved = El paquete nuevo de { $of } aún no está en su libro.
new-volume-price-unsaved = El precio por mayoreo nuevo de { $of } aún no está en su libro.
new-headspace-unsaved = El espacio libre nuevo de { $of } aún no está en su libro.
new-capacity-unsaved = La capacidad al ras nueva de { $of } aún no está en su libro.
new-kit-item-unsaved = El empaque nuevo para { $of } aún no está en su libro.
new-recipe-line-unsaved = El ingrediente nuevo en { $of } aún no está en su libro.
new-piece-size-unsaved = El tamaño de pieza nuevo en { $of } aún no está en su libro.
still-needs = { $fields ->
    [one] Falta: { $needs }.
   *[other] Faltan: { $needs }.
}
more-cases-wait = { $cases ->
    [one] Falta terminar 1 más.
   *[other] Falta terminar { $cases } más.
}
needs-name = nombre
needs-pack-size = contenido del paquete
needs-case-price = precio del paquete
needs-surcharge = entrega o depósito
needs-supplier = proveedor
needs-headspace = espacio libre
needs-number-per-drink = cantidad por bebida
needs-base-width = base por dentro
needs-rim-width = borde por dentro
needs-inside-height = altura por dentro
needs-brimful-capacity = capacidad al ras
needs-height-1 = altura 1
needs-volume-1 = volumen 1
needs-height-2 = altura 2
needs-volume-2 = volumen 2
needs-number-of-packs = mínimo de paquetes
needs-recipe-makes = cuánto rinde la receta
needs-piece-size = tamaño de pieza
needs-ingredient = ingrediente
needs-ingredient-name = nombre del ingrediente
needs-amount = cantidad en receta
discard-draft = Descartar borrador
finish-now = Terminar ahora
fix-field-to-see = Corrija “{ $field }” para ver esto.
fix-field-first = Primero corrija “{ $field }”.

## What is not saved

keep-mine = Conservar lo mío
take-theirs = Aceptar lo otro
save-as-new-book = Guardar libro nuevo
save-copy = Guardar copia
still-saving = Sus cambios aún se están guardando. Si sale ahora, puede perderlos.
on-this-screen-only = Este libro está solo en esta pantalla. Si sale ahora, lo pierde.
changes-not-saved = Sus cambios no están guardados. Si sale ahora, los pierde.
delete-anyway = Borrar aun así
update-anyway = Actualizar aun así
switch-anyway = Cambiar aun así
close-anyway = Cerrar aun así
stay-here = Quedarse aquí

## Things in a book, by kind

kind-settings = ajustes
kind-ingredient = ingrediente
kind-packaging = empaque
kind-kit = juego de empaque
kind-container = envase
kind-drink = bebida
kind-size = tamaño
kind-week = semana
kind-local-price = precio local
kind-trial = prueba
kind-scenario = escenario
kind-batch = tanda
kind-buying-list = lista de compras
kind-named = { $kind } “{ $name }”
kind-numbered = { $kind } { $number }
kind-week-of = semana del { $day }
kind-batch-of = tanda del { $day }

## Reading a book file

file-too-large = Este archivo pasa de 10 MB. Ningún libro es tan grande. Elija otro archivo.
file-empty = Este archivo está vacío. Elija otro archivo.
file-not-text = Este archivo no es de texto. Elija un archivo de libro que guardó Brimwright.
file-damaged = Este archivo está dañado en la línea { $line }. Elija otra copia.
file-cut-short = Este archivo se corta en la línea { $line }. Descárguelo de nuevo.
file-foreign = Este archivo no es un libro de Brimwright. Elija un archivo de libro.
file-foreign-named = Este archivo es “{ $format }”, no un libro de Brimwright. Elija un archivo de libro.
file-no-version = Este archivo no dice su versión. Elija otra copia.
file-newer = Este archivo tiene la versión { $version }, más nueva que este Brimwright. Primero actualice Brimwright.
file-not-read = Su navegador no pudo leer el archivo. Elíjalo otra vez.
at-line = Línea { $line }: { $problem }
at-place = Línea { $line }, { $place }: { $problem }
file-field = campo “{ $field }”
in-file-twice = Está dos veces en el archivo. Deje uno.
not-in-file = Falta en el archivo: { $kind }. Agregue eso o elija otra copia.
not-imported = No se importó.
does-not-fit-file = No va con el resto del archivo. Elija otra copia.
field-unknown = “{ $field }” no va aquí. Quite ese campo.
field-missing = Falta “{ $field }”. Agregue ese campo o elija otra copia.
field-twice = “{ $field }” está dos veces. Deje uno.
list-too-long = Esta lista tiene más de { $most } renglones. Ningún libro necesita más. Elija otra copia.
part-too-large = Esta parte pasa de { $megabytes } MB. Ningún libro necesita más. Elija otra copia.
value-wrong = “{ $found }” no sirve aquí.
type-amount = Escriba un número y una unidad, como "40 lb" o "16 fl oz".
type-length = Escriba un número y una unidad, como "90 mm" o "3.5 in".
type-temperature = Escriba un número y F o C, como "40 F" o "4 C".
type-day = Escriba año, mes y día, como "2026-11-23".
type-currency = Escriba un código de moneda, como "USD".
type-decimal = Escriba hasta 9 dígitos, un punto y hasta 8 más, como "25.80".
type-id = Escriba de 1 a 16 caracteres, del 0 al 9 y de la a a la f, como "1a".
type-choice = Escriba un valor conocido, como { $choices }.
type-in-quotes = { $bare } necesita comillas. Escriba "{ $bare }".
type-text = Escriba un texto entre comillas, como "Manzanas" o "25.80".
type-list = Escriba una lista entre corchetes, como [].
type-yes-no = Escriba true o false.
type-volume = Escriba un volumen, como "16 fl oz".
type-one-field = Escriba un campo entre llaves, como {"{"}"share": "0.05"{"}"}.
type-group = Escriba los campos entre llaves, como {"{"}"name": "Manzanas"{"}"}.
type-anew = Este valor no se puede leer. Escriba uno nuevo o elija otra copia.

## What an import or a restore point would change

same-as-open = Igual que el libro abierto.
import-counts = { $kind }: { $added } por agregar, { $changed } por cambiar, { $removed } por quitar
buying-list-changed = Lista de compras: cambia
settings-changed = Ajustes: cambian

## What of a damaged book is left out

settings-lost = Sus ajustes se perdieron. En Libro, revise moneda, unidades, impuesto, sueldo y margen meta.
record-lost = Un registro dañado no tiene nombre. Compare este libro con su última copia.
entry-damaged = Dañado. Agréguelo otra vez.
settings-too-large = Sus ajustes pasan de 1 MB. En Libro, revise moneda, unidades, impuesto, sueldo y margen meta.
record-too-large = Un registro pasa de 1 MB. Compare este libro con su última copia.
entry-too-large = Quedó fuera porque pasa de 1 MB. Agréguelo otra vez.
repaired-book = Libro reparado
title-damaged = El título del libro está dañado. No se perdió nada más.
entry-twice = Está dos veces. Se usa el más nuevo.
entry-needs-lost = Quedó fuera. Se perdió: { $lost }. Primero agregue eso y luego esto.
entry-without-lines = { $lines ->
    [one] 1 renglón queda fuera. Se perdió lo que nombra.
   *[other] { $lines } renglones quedan fuera. Se perdió lo que nombran.
}
left-out = Quedó fuera.
entry-does-not-fit = Quedó fuera. No va con lo demás. Agréguelo otra vez.
and-more = Y { $more } más.

## Restore points and deleted books

no-points-yet = Aún no hay puntos de restauración. El primer cambio de cada día crea uno.
point-gone = Este punto de restauración ya no está. Elija otro.
before-first-change = Antes del primer cambio de ese día
before-import = Antes de importar
before-merge = Antes de juntar cambios de dos pestañas
before-scenario = Antes de usar un escenario como menú
before-yields = Antes de usar rendimientos pesados
before-restore = Antes de volver a un punto de restauración
before-deletion = Antes de borrar el libro
points-kept = Los puntos de restauración duran { $days } días, y los últimos { $points } duran más. Todos los libros comparten { $megabytes } MB. Los más viejos se borran primero.
point-ingredients = { $ingredients ->
    [one] 1 ingrediente
   *[other] { $ingredients } ingredientes
}
point-size = { $kilobytes } kB
point-made-room = { $points ->
    [one] Se borró 1 punto más viejo para hacer espacio.
   *[other] Se borraron { $points } puntos más viejos para hacer espacio.
}
no-point-first-change = No se creó punto de restauración antes del primer cambio de hoy.
no-point-import = No se creó punto de restauración antes de importar.
no-point-merge = No se creó punto de restauración antes de juntar cambios de dos pestañas.
no-point-scenario = No se creó punto de restauración antes de usar el escenario como menú.
no-point-yields = No se creó punto de restauración antes de usar rendimientos pesados.
no-point-restore = No se creó punto de restauración antes de volver atrás.
no-point-deletion = No se creó punto de restauración antes de borrar.
no-point-no-room = Este dispositivo no tiene espacio. Su cambio sí está guardado. Libere espacio. Con su próximo cambio se intenta de nuevo.
no-point-browser = Su navegador no pudo guardar el punto. Su cambio sí está guardado. Con su próximo cambio se intenta de nuevo.
deleted-until = Borrado el { $deleted }. Se queda hasta el { $until }.
deleted-gone = Este libro ya no está. Abra un archivo guardado.
deleted-back = Este libro ya regresó. Ábralo en “Sus libros”.
not-back-no-room = El libro no regresó. Este dispositivo no tiene espacio. Libere espacio e intente de nuevo, o guarde un archivo.
not-back-browser = El libro no regresó. Su navegador no lo pudo guardar. Intente de nuevo o guarde un archivo.
deleted-not-whole = Hay partes de este libro que no se pueden leer. Revise las que sí.
book-contents = En este libro: { $contents }

## Copies outside the browser

allow-again = Su navegador necesita su permiso otra vez para guardar copias en el archivo.
last-copy = Última copia: { $day }.
changes-since-copy = { $changes ->
    [0] Sin cambios desde entonces.
    [one] 1 cambio desde entonces.
   *[other] { $changes } cambios desde entonces.
}
no-copy-yet = Aún no hay copia guardada.
changes-so-far = { $changes ->
    [0] Sin cambios hasta ahora.
    [one] 1 cambio hasta ahora.
   *[other] { $changes } cambios hasta ahora.
}
no-copy-for-days = Este libro lleva { $days } días sin copia.
no-copy-for-changes = Este libro lleva { $changes } cambios sin copia.
browser-keeps = Su navegador aceptó conservar sus libros hasta que usted los borre.
browser-may-remove = Su navegador puede quitar sus libros si falta espacio en el dispositivo. Guarde copias.
browser-silent = Su navegador no dice cuánto tiempo conserva sus libros. Guarde copias.
copies-go-to = Las copias van a { $file }.
copies-go-to-saved = Las copias van a { $file }. Última vez: { $when }.
copy-not-saved = No se guardó copia en { $file }.
copy-file-gone = El archivo o su carpeta ya no está. Elija un archivo otra vez.
copy-not-allowed = Su navegador no lo permitió. Permita guardar otra vez.
copy-disk-full = El disco está lleno. Libere espacio. Con su próximo cambio se intenta de nuevo.
copy-file-held = Otro programa tiene abierto el archivo. Ciérrelo. Con su próximo cambio se intenta de nuevo.
copy-failed = Su navegador no pudo guardar el archivo. Elija un archivo otra vez.
copy-later = Guardar luego
allow-saving = Permitir guardar
stop-copies = Dejar de guardar copias
choose-file = Elegir archivo
copies = Copias
copy-to-file = Guardar en archivo

## Sharing a text

share-sent = Enviado a donde usted eligió.
share-closed = No se compartió. Usted cerró la lista de apps.
share-copied = Copiado. Pegue el texto en un mensaje.
share-by-hand = Su navegador no puede compartir ni copiar. Seleccione el texto de abajo y cópielo.

## What was typed and does not read

typed-nothing = Este campo está vacío. Escriba un número, como { $example }.
not-a-number = “{ $text }” no es un número. Escriba dígitos, como { $example }.
two-numbers = “{ $text }” puede ser dos números. Escriba { $one } o { $other }.
did-you-mean = ¿{ $typed }? ¿Quiso decir { $other }?
unknown-unit = “{ $unit }” no es una unidad conocida. Use fl oz, mL, taza, lb, oz, g o pza, como { $example }.
not-a-length = “{ $unit }” no es una unidad de largo. Use mm, cm o pulg, como { $example }.
not-a-time = “{ $text }” no es un tiempo. Escriba minutos y segundos, como { $example }.
not-a-temperature = “{ $unit }” no es una escala de temperatura. Use °F o °C, como { $example }.
unit-of-volume = “{ $unit }” es un volumen.
unit-of-weight = “{ $unit }” es un peso.
unit-of-count = “{ $unit }” cuenta piezas.
type-a-volume = Escriba un volumen, como { $example }.
type-a-weight = Escriba un peso, como { $example }.
type-pieces = Escriba un número de piezas, como { $example }.
type-volume-or-weight = Escriba un volumen o un peso, como { $example }.
type-an-amount = Escriba una cantidad, como { $example }.
not-one-amount = “{ $text }” no es una sola cantidad. Escriba un número y su unidad, como { $example }.
not-an-ending = “{ $text }” no es una terminación de precio. Escríbalas con espacios entre ellas, como { $example }.
no-minus = No puede ser menor que cero. Escríbalo sin el signo de menos, como { $example }.
too-many-digits = Este número tiene más de nueve dígitos. Revise si sobra uno.
too-many-decimals = Este número tiene más de seis decimales. Redondee a seis.
price-above-zero = El precio debe ser mayor que cero. Escriba un precio, como { $example }.
gone-from-book = Esto ya no está en su libro. Deshaga el cambio o regrese.
use-reading = Usar { $reading }
unit-of-field = Unidad de { $field }
slider-of-field = Deslizador: { $field }
check-this = Revise esto
keep-value = Dejar { $value }
back-to-value = Volver a { $value }
back-to-blank = Dejar en blanco
keep = Dejar
back = Volver

## Changes, and undoing them

no-changes-yet = Aún no hay cambios. Los suyos aparecen aquí.
changes-about = Lo más nuevo va primero. Deshaga el cambio que quiera, si ninguno más nuevo depende de él.
undone = Deshecho
undo-change-at = Deshacer { $change }, { $when }
undone-change = Deshecho: { $change }
redone-change = Rehecho: { $change }
another-tab = Otra pestaña

## Pieces of many screens

remove-named = Quitar { $name }
not-in-book = No se encontró
not-in-book-about = Si lo quitó aquí, toque Deshacer. Si lo quitó en otra pestaña, deshágalo allá.
used-in = Se usa en
not-used = Ninguna bebida lo usa aún.
replace-with = Reemplazar con
replace-and-remove = Reemplazar y quitar

## Settings

this-book = Este libro
book-name = Nombre de libro
units = Unidades
currency = Moneda
change-country = Cambiar de país
units-about = Las unidades cambian cómo se ven y se escriben las cantidades. La moneda cambia el signo y los dígitos, no los montos.
margin-figured-on = El margen se calcula con
price-endings = Terminaciones de precio
any-ending = todas
price-endings-about = Como { $example }, con un espacio entre ellas. Los precios sugeridos suben a la siguiente terminación.
tax-about = Pregunte a su contador qué tasa aplica y a qué bebidas.
tax-of-sample = Las tasas de este libro de ejemplo son inventadas.
sales-tax-rate = Tasa de impuesto
tax-rate-european = Tasa de IVA
card-fee = Cargo por tarjeta
card-fee-about = Porcentaje de lo que paga el cliente.
share-and-fixed = { $share } + { $fixed }
app-commission = Comisión de la app de entregas
app-commission-about = Se resta del precio de cada bebida. Escriba el promedio de todas las ventas: { $share } en una quinta parte es { $average }.
counter-about = Las marcas más chicas de su báscula y de sus tazas medidoras. Las tandas redondean hacia arriba. Las tarjetas redondean a lo más cercano. En blanco, las tandas redondean a { $weight } y { $volume }. Entonces las tarjetas dan cantidades exactas.
scale-rounds-to = La báscula marca cada
cup-marks = Marcas de la taza
supplier-prices = Precios de proveedor
supplier-prices-about = En Compras se marcan los precios que nadie ha revisado en este tiempo.
flag-prices-older = Marcar precios de más de
days = días
after-days = { $days ->
    [one] tras 1 día
   *[other] tras { $days } días
}
never = nunca
shop-costs = Gastos del local
wage-and-overhead = { $wage } por hora, { $overhead } de gastos generales
hourly-wage = Sueldo por hora
hourly-wage-about = Con impuestos de nómina y prestaciones.
overhead-about = Renta, luz y otras cuentas, repartidas entre las bebidas que vende.
waste-about = Porcentaje de bebidas que hace y tira.

## The screen of the book

sample-book-about = Este es un libro de ejemplo. El pueblo, el local, los proveedores, las bebidas y los precios son inventados. Cambie lo que quiera.
all-books = Todos los libros
open-sample-book = Abrir libro de ejemplo
close-book = Cerrar libro
cautions = Precauciones
caution-untreated = En Estados Unidos, el jugo sin tratar envasado por adelantado debe llevar una advertencia en la etiqueta. El que se vende a otro negocio debe recibir tratamiento bajo un plan HACCP. El jugo de baja acidez debe estar siempre refrigerado.
caution-untreated-european = Mantenga frío el jugo sin tratar y siga su plan de seguridad de alimentos. Su autoridad local decide qué debe decir la etiqueta. El jugo de baja acidez debe estar siempre refrigerado.
caution-allergens = Los alérgenos solo son correctos si los datos que usted anota lo son.
caution-advice = Nada de esto es asesoría legal, fiscal ni de seguridad de alimentos. Deciden los códigos locales y los profesionales con licencia.
files = Archivos
files-about = Un archivo de libro lleva todo. Guarde uno fuera de este navegador, que puede borrar sus datos.
save-book-file = Guardar archivo de libro
save-sizes-csv = Guardar tamaños (CSV)
import-book = Importar libro
import-book-file = Importar archivo de libro
book-unchanged = Su libro no cambió.
replace-with-book = ¿Reemplazar este libro con “{ $book }”?
replace-book = Reemplazar este libro
add-as-new-book = Agregar libro nuevo
import-about = Esto se puede deshacer. El libro de hoy se guarda como punto de restauración.
reading-file = Leyendo el archivo
missing-or-damaged = Falta o está dañado
open-book-file = Abrir archivo de libro
restore-points = Puntos de restauración
restore-points-about = Su libro completo, guardado antes de cambios grandes y antes del primer cambio de cada día.
show-changes = Ver cambios
save-file = Guardar archivo
go-back-to = Volver a: { $when }
restore-point = Restaurar este punto
deleted-books = Libros borrados
bring-back = Recuperar libro
delete-for-good = Borrar para siempre
delete-for-good-ask = Borrar para siempre…
delete-for-good-caution = Esto borra el libro para siempre. No lo podrá recuperar.

## Costs that vary
tax-by-kind = Impuesto por bebida
drinks-per-payment = Bebidas por pago
discounts = Descuentos
free-drinks = Bebidas gratis
marked-down = Rebajadas
marked-down-to = Precio rebajado
blank-uses-rate = Déjelo en blanco para usar { $rate }.
tax-of-kind = Impuesto de { $kind }
deposit-taxed = Impuesto sobre depósitos
deposit-taxed-about = Márquelo si su estado cobra impuesto sobre el depósito de los envases.
drinks-per-payment-about = Bebidas por pago en promedio, como { $example }. Entre ellas se reparte el cargo por transacción.
commission-on = Comisión sobre
price-without-tax = precio antes de impuesto
price-with-tax = precio con impuesto
overhead-per = Gastos generales por
drink-sold = bebida vendida
drink-made = bebida hecha
each-week = semana
overhead-needs-sales = Anote primero las ventas por semana, o ponga los gastos generales en 0. Solo las ventas dan un monto a partir del otro.
overhead-of-week = { $drinks ->
    [one] { $each } por bebida: { $money } por semana para 1 bebida vendida.
   *[other] { $each } por bebida: { $money } por semana entre { $drinks } bebidas vendidas.
}
overhead-over-week = { $drinks ->
    [one] { $each } por bebida suman { $money } por semana con 1 bebida vendida.
   *[other] { $each } por bebida suman { $money } por semana con { $drinks } bebidas vendidas.
}
overhead-of-made = Las bebidas tiradas y gratis también cargan { $each }.
below-menu-price = Menos que el menú
below-menu-price-about = Deje en blanco lo que su local no hace.
discounts-about = Parte de las ventas a precio de menú, como { $example }.
free-drinks-about = Parte de todas las bebidas que entrega, como { $example }.
marked-down-about = Parte de las bebidas vendidas más baratas al final del día, como { $example }.
marked-down-to-about = Parte del precio de menú, como { $example }.
