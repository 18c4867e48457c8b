# What the first screen says, before the rest of the texts is here.

opening = Abriendo…
part-missing = No llegó una parte de la app. Revise su conexión e intente de nuevo. Sus datos están a salvo en este dispositivo.

## Types of drinks, and states of a size

type-pressed = Prensado
type-blended = Licuado
type-over-ice = Con hielo
type-shot = Shot
on-target = En la meta
below-target = Bajo la meta
no-price-yet = Sin precio
needs-details = Faltan datos

## The frame around the screens

app-name = Brimwright
opening-book = Abriendo su libro…
skip-to-content = Ir al contenido
places = Secciones
drinks = Bebidas
buying = Compras
sizes = Tamaños
counter = Mostrador
book = Libro
containers = Envases
sample-data = Datos de ejemplo
undo-change = Deshacer: { $change }
redo-change = Rehacer: { $change }
all-changes = Todos los cambios
changes = Cambios

## The list of drinks

margin-on-goods = Margen sobre ingredientes y empaque
margin-on-labor = Margen sobre ingredientes, empaque y mano de obra
margin-on-all = Margen sobre todos los costos
margin-and-sold = { $margin } y ventas por semana
lowest-first = Menor margen primero

all-drinks = Todas
show-drinks = Mostrar bebidas
no-drink-matches = Sin resultados. Pruebe otro nombre o muestre todas las bebidas.
add-drink = Agregar bebida
price-sheet = Hoja de precios
drink-without-sizes = Aún no tiene tamaños. Abra la bebida para agregar uno.
no-price = Sin precio
clear-search = Borrar búsqueda
first-price-steps = Su primer precio
price-first-drink = Ponga su primer precio
price-first-drink-about = Cuatro pasos cortos: ingredientes, botella, cantidades y precio.

## The choice of books

tagline = Saque el costo, el tamaño y el precio de sus bebidas. Funciona en este dispositivo, aun sin internet.
your-books = Sus libros
start-book = Empezar libro nuevo
start-book-about = Tenga su primer precio de menú en pocos minutos.
look-around = Echar un vistazo
look-around-about = Marrowgate Juice Hall tiene 14 bebidas. Todos los nombres y precios son datos de ejemplo.
second-demo = Ver un bar en euros
second-demo-about = Kastanje Saftbar tiene 8 bebidas en mililitros, y depósitos. Nombres, precios e impuestos son datos de ejemplo.
find-other-books = Importar o recuperar
data-stays-here = Sus datos se quedan en este dispositivo. Sin registro y sin rastreo.
no-advice = Los números solo son correctos si los datos que usted anota lo son. No son asesoría legal, fiscal ni de seguridad de alimentos.
open-now = Abierto
damaged-book = Libro dañado
new-book-name = Mi libro
sample-book-missing = No se cargó el libro de ejemplo. Conéctese una vez a internet e intente de nuevo.
books-removed = Su navegador quitó sus libros. Abra el último archivo que guardó o empiece de nuevo.
named-books-removed = Su navegador quitó estos libros: { $books }. Abra el último archivo que guardó o empiece de nuevo.
deleted-in-other-tab = Ese libro se borró en otra pestaña. Búsquelo en “Libros borrados”.

## A new version

version-ready = Hay una versión nueva. Su libro queda igual.
update-now = Actualizar ya
update-later = Actualizar luego
update = Actualizar

## Whether all is saved

saved = Guardado
saving = Guardando…
not-saved = Sin guardar
books-not-open = Libros no disponibles
save-stored-data = Guardar datos
show-readable-parts = Ver partes legibles
open-other-book = Abrir otro libro
delete-book = Borrar libro
go-on-without-saving = Seguir sin guardar
delete-from-device = Borrar del dispositivo
delete-without-copy = Borrar sin copia
# Shown before a book is deleted.
book-kept-days = “{ $book }” se queda { $days } días en “Libros borrados”. Guarde un archivo para conservar una copia más tiempo.
damaged-book-kept-days = Este libro se queda { $days } días en “Libros borrados”. Guarde un archivo para conservar una copia más tiempo.
not-added = No se agregó “{ $book }”.
not-added-no-room = No se agregó “{ $book }”. Este dispositivo no tiene espacio. Borre lo que no necesite e intente de nuevo.
not-deleted = No se borró “{ $book }”.
damaged-not-deleted = No se borró el libro.
no-room-try-again = Este dispositivo no tiene espacio. Intente de nuevo.

## What can go wrong with storage

no-storage = Esta ventana no puede guardar. Quizá es una ventana privada. Lo que anote se pierde al cerrarla. Use una ventana normal.
no-answer = Sus libros no abrieron. Nada cambió. Espere un momento e intente de nuevo. Si no funciona, cierre todas las ventanas del navegador.
held-by-older = Otra pestaña tiene abierta una versión anterior. Cierre las otras pestañas y vuelva a cargar esta página.
newer-books = Una versión más nueva de Brimwright guardó sus libros. Nada cambió. Conéctese a internet y vuelva a cargar esta página.
newer-version-open = Otra pestaña tiene abierta una versión más nueva. Esta pestaña ya no guarda. Vuelva a cargar esta página para seguir.
connection-lost = Esta página perdió el enlace con sus libros. Intente de nuevo. Si no funciona, guarde una copia y vuelva a cargar esta página.
no-room = Este dispositivo no tiene espacio. Sus cambios siguen en la pantalla. Guarde una copia, libere espacio e intente de nuevo.
book-removed = Su navegador quitó este libro del dispositivo. Guarde lo que ve como libro nuevo.
book-deleted = Este libro se borró en otra pestaña. Guarde lo que ve como libro nuevo o ciérrelo.
book-moved-on = Este libro cambió en otra pestaña. Vuelva a cargar esta página para ver el cambio.
parts-unreadable = { $parts ->
    [one] No se puede leer 1 parte de este libro.
   *[other] No se pueden leer { $parts } partes de este libro.
}
nothing-deleted = No cambió ni se borró nada. Guarde los datos o vea las partes que se pueden leer.
browser-trouble = Su navegador tuvo un problema. Intente de nuevo o guarde una copia.


## What cannot be worked out with numbers

numbers-too-large = Estos números son demasiado grandes. Revise si sobra un dígito.
zero-not-allowed = Algo aquí es cero y no debe serlo. Revise contenidos de paquete, rendimientos y llenados.
below-zero-not-allowed = Algo aquí es menor que cero y no debe serlo. Revise si hay un signo de menos.

## Buttons and names that other screens have too

cancel = Cancelar
try-again = Intentar de nuevo
undo = Deshacer
redo = Rehacer
close = Cerrar
find-drink = Buscar bebida
