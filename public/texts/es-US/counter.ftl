# The counter: recipe cards, batches, what is on hand, the lock, and sheets to print.

## Places at the counter

cards = Tarjetas
batches = Tandas
batch = Tanda
on-hand = En existencia
can-make = Alcanza para
all-cards = Todas las tarjetas

## Choosing a card

no-cards-yet = Aún no hay tarjetas
no-cards-about = Cada tamaño de bebida tiene su tarjeta de receta. Agregue tamaños a sus bebidas en Bebidas.
no-matches = Sin resultados.
print-cards = Imprimir tarjetas

## A recipe card

sizes = Tamaños
drinks-at-once = Bebidas a la vez
how-many-drinks = Cuántas
for-drinks = { $drinks ->
    [one] Para 1 bebida
   *[other] Para { $drinks } bebidas
}
whole-number-of-drinks = Escriba un número entero de 1 a { $most }, como 12.
volume-each = { $volume } cada una
fill-to-the-line = { $prep }, hasta la línea
fill-to-the-line-alone = hasta la línea
brewed-from = Infusión de { $name }
scooped = { $place }, con cucharón
scoop-weighs = (pesa { $weight })
too-little-to-measure = muy poco para su báscula o taza: prepare varias
rounded-on-both = Cantidades redondeadas a { $scale } en su báscula y { $cup } en su taza medidora.
rounded-on-scale = Cantidades redondeadas a { $scale } en su báscula.
rounded-in-cup = Cantidades redondeadas a { $cup } en su taza medidora.
rounded-finer = Las cantidades pequeñas se miden con más precisión.
rounded-together = Juntas, llegan a la línea de llenado.
rounded-near = Juntas, quedan a { $volume } o menos de la línea de llenado.
loss-included = Estas cantidades incluyen { $volume } de pérdida al prensar o servir.
air-beaten-in = Aire del licuado: { $volume }
fill-to-line = Llene hasta la línea. Espacio libre: { $headspace }.
fill-to-line-below-rim = Llene hasta la línea, { $below } bajo el borde. Espacio libre: { $headspace }.
fill-to-volume = Llene hasta { $volume }. Espacio libre: { $headspace }.
fill-to-volume-below-rim = Llene hasta { $volume }, { $below } bajo el borde. Espacio libre: { $headspace }.
rounded-too-low = Con estas cantidades redondeadas faltan { $volume } para la línea de llenado. Las cantidades exactas sí llegan.
rounded-too-high = Con estas cantidades redondeadas se pasa { $volume } de la línea de llenado. Pare en la línea.
made-today = Hecha hoy.
other-cards = Otras tarjetas
previous = Anterior
next = Siguiente

## Cautions at the counter

untreated-packaged-ahead = Jugo sin tratar: cada envase debe llevar la etiqueta de advertencia (Estados Unidos).
untreated-by-the-glass = Jugo sin tratar por vaso: pregunte a su inspector local qué decir a los clientes.
untreated-either = Jugo sin tratar: si se envasa por adelantado, cada envase debe llevar la etiqueta de advertencia (Estados Unidos).
untreated-european = Jugo sin tratar: manténgalo frío y siga el plan de seguridad de alimentos. Pregunte a su gerente qué decir a los clientes.
raw-produce-not-checked = Fruta o verdura cruda: falta revisar. Maneje esta bebida como jugo sin tratar. Avise a su gerente.
low-acid = Jugo de baja acidez: refrigérelo en todo momento. Sin frío, este jugo puede causar botulismo.
may-be-low-acid = Este jugo puede ser de baja acidez: refrigérelo en todo momento. Sin frío, el jugo de baja acidez puede causar botulismo.
acidity-not-checked = Acidez sin revisar: refrigere en todo momento. Sin frío, el jugo de baja acidez puede causar botulismo.
under-labeled-size = Este llenado queda { $short } bajo el tamaño en etiqueta. Avise a su gerente.
allergens-as-entered = Los alérgenos solo son correctos si los datos que usted anotó lo son. Revise cada etiqueta, y lo que comparte licuadora o prensa.

## Batches

first-batch = Su primera tanda
first-batch-about = Anote cuántas hará de cada bebida. La tanda le dice qué pesar, limpiar y prensar.
todays-date = Hoy, { $day }
nothing-planned = Aún no hay nada planeado.
batch-totals = { $sizes ->
    [one] 1 tamaño: { $planned } bebidas por hacer, { $made } hechas.
   *[other] { $sizes } tamaños: { $planned } bebidas por hacer, { $made } hechas.
}
make-a-batch = Hacer tanda
usual-day-about = Un día normal es su venta semanal entre 7, redondeada hacia arriba, sin bebidas hechas al momento.
batch-day = Día de tanda
choose-a-day = Elija un día en el calendario.
copy-batch = Copiar tanda del { $day }
plan-usual-day = Planear día normal
start-empty-batch = Empezar tanda vacía
start-batch-of = Empezar tanda del { $day }
open-that-batch = Abrir esa tanda

## The plan of a batch

drinks-to-make = Bebidas por hacer
drinks-to-make-about = Marque cada bebida cuando la llene. Si cambia el número, márquela otra vez.
menu-is-empty = Su menú está vacío. Primero agregue una bebida y sus tamaños en { $drinks }.
no-drinks-planned = Aún no hay bebidas planeadas. Agregue las que va a hacer.
add-to-batch = Agregar a tanda
remove-drinks = Quitar bebidas
keep-drinks = Terminar
choose-drink-and-size = Elija una bebida
number-of = Cuántas: { $drink }
too-many-drinks = { $drinks } son demasiadas. Escriba { $most } o menos.
change-number-of = Cambiar cantidad de { $drink }
one-fewer = Una menos: { $drink }
one-more = Una más: { $drink }
card-of = Tarjeta de { $drink }
add-drink-to-batch = Agregar { $drink } a la tanda
remove-drink-from-batch = Quitar { $drink } de la tanda
check-off = Marcar { $item }
uncheck = Desmarcar { $item }
deducted = { $drinks ->
    [one] Descontada del inventario: 1 bebida. Cuenta una sola vez, por eso este renglón se queda.
   *[other] Descontadas del inventario: { $drinks } bebidas. Cada una cuenta una sola vez, por eso este renglón se queda.
}
not-in-plan = Aún no está en este plan: “{ $text }” en { $field }. Corrija el número en la tanda.

## What a batch needs

print-sheet = Imprimir hoja
amounts-needed = Cantidades necesarias
amounts-needed-about = Las cantidades se redondean hacia arriba, a lo que se puede medir, para que nunca le falte. La pérdida al prensar o servir va incluida.
prep-of = { $ingredient }, { $prep }
start-with = Empezar con
trimmed = En limpio
juice = Jugo
soaked-or-brewed = Tras remojo o infusión

## Filling and stock

after-filling = Después de llenar
deduct-about = Descuenta lo que usaron las bebidas que llenó, como se compra. Cada bebida cuenta una vez, aunque borre la tanda y empiece de nuevo.
deduct-from-stock = Descontar inventario
check-off-first = Primero marque las bebidas que llenó.
all-deducted = Ya descontó todas las bebidas hechas.
nothing-to-deduct = No tiene conteos de inventario para estas bebidas.
items-deducted = { $items ->
    [one] Se descontó del inventario 1 artículo. Con Deshacer regresa.
   *[other] Se descontaron del inventario { $items } artículos. Con Deshacer regresan.
}
used-more-than-counted = Usó más de lo que contó, así que no queda nada: { $items }. Cuente de nuevo.
delete-batch = Borrar tanda
batch-deleted = Borró la tanda del { $day }. Con Deshacer regresa.
deducted-batch-deleted = Borró la tanda del { $day }. Lo que usó sigue descontado. Con Deshacer regresa la tanda.

## Not enough on hand

short-on = { $items ->
    [one] Le falta 1 artículo.
   *[other] Le faltan { $items } artículos.
}
nothing-short = No falta nada de lo que contó.
count-items = Contar artículos
used-in = Se usa en { $drinks }.
made-of-planned = { $made } de { $planned } bebidas
best-plan = Mejor plan
not-enough-about = Compre más, cuente otra vez o cambie el plan. O use el mejor plan con lo que hay.
find-best-plan = Buscar mejor plan
use-this-plan = Usar este plan
use-best-plan = Usar mejor plan
planned-and-now = { $now } de { $planned } planeadas
made-as-planned = { $sizes ->
    [one] 1 tamaño queda como estaba planeado.
   *[other] { $sizes } tamaños quedan como estaban planeados.
}
# What follows { $unseen } is heard by a screen reader, and not seen.
make-all-of = Hacer todas{ $unseen } las de { $drink }
best-plan-about = El mejor plan da la mayor ganancia con sus precios de menú. Las bebidas sin precio o sin ganancia usan solo lo que sobra. Solo puede acabarse lo que usted contó.
enough-for-all = Lo que tiene alcanza para todas estas bebidas.
out-of-stock = No le queda { $items }, así que no puede hacer: { $drinks }.
best-by-profit = Ningún otro plan da más ganancia con su inventario.
best-by-number = Ningún otro plan da más bebidas con su inventario. Ninguna bebida tiene precio, así que el plan cuenta bebidas.
best-found = Este es el mejor plan que encontramos. Muchas bebidas comparten inventario y no se pueden probar todos los planes. Otro plan podría dar un poco más.
made-from-what-is-left = Se hacen con lo que sobra: { $drinks }.
left-out-not-counted = Quedan fuera, porque no contó nada de lo que usan: { $drinks }.
stock-left = { $item }: quedan { $amount }.
checked-need-too-much = Para las bebidas que marcó no alcanza: { $item }. Desmarque una o cuente de nuevo.
drink-gone-from-menu = { $drink } ya no está en el menú. Quite la bebida de la tanda o agregue el tamaño otra vez.
drink-trouble = { $drink }: { $problem }

## On hand

stock-count = Conteo
stock-count-about = Cuente lo que tiene, como se compra. Primero va lo que falta para la tanda de hoy.
search-stock = Buscar artículo
nothing-to-count = Aún no tiene ingredientes. Primero agréguelos en Compras.
counted-today = Conteo de hoy.
counted-yesterday = Conteo de ayer.
counted-days-ago = { $days ->
    [one] Conteo de hace 1 día.
   *[other] Conteo de hace { $days } días.
}
counted-on = Conteo del { $day }.
short = Faltan { $amount }.
short-of-rest = Faltan { $amount } para las bebidas que aún no se descontaron.
units-do-not-convert = El conteo y la receta usan unidades distintas.
seasons-yields = Con los rendimientos de esta temporada.
today-needs-this = Se necesita hoy. Cuéntelo.
today-short = Para hoy faltan { $amount }.
drinks-from-stock-about = Cada número es para ese tamaño solo, según su conteo. Toque varios para ver el mejor plan de todos.
can-make-of = { $drink }: { $number }
at-most = hasta { $number }
drinks-without-counts = Fuera de la lista, porque no contó nada de ellas: { $drinks }.
count-to-see-drinks = Cuente primero un artículo para ver cuántas bebidas puede hacer.
best-plan-together = Mejor plan en conjunto
runs-out-first = Se acaba primero: { $item }.
runs-out-first-of-rest = De lo demás, se acaba primero: { $item }.
items-not-counted = { $items ->
    [one] Falta contar 1 artículo.
   *[other] Falta contar { $items } artículos.
}
no-counts-for-drink = Aún no tiene conteos para esta bebida.
not-on-the-menu = Este tamaño no está en el menú.

## The lock

lock-this-device = Bloquear dispositivo
lock-about = Bloqueado, este dispositivo muestra solo tarjetas de receta, tandas e inventario. Los precios no se ven. Solo se deshacen tandas y conteos.
new-pin = PIN (4–8 dígitos)
repeat-pin = Repita el PIN
lock-to-counter = Bloquear en Mostrador
lock-caution = Un PIN frena a los curiosos, pero no es seguridad de verdad. “¿Olvidó el PIN?” muestra una frase que abre el dispositivo. Con herramientas del navegador o con otro navegador también se salta el bloqueo. El PIN se guarda tal como lo escribe: nunca use el de una tarjeta o un teléfono.
lock-not-kept = Este navegador no guarda ajustes, así que el bloqueo termina al cerrar la página. Permita guardar datos en esta página o use otro navegador.
unlock = Desbloquear
pin = PIN
unlock-device = Desbloquear dispositivo
forgot-pin = ¿Olvidó el PIN?
unlock-sentence = Frase de acceso
unlock-by-sentence = Desbloquear sin PIN
# What a person types to unlock a device without the PIN; upper and lower case do not matter.
sentence-without-pin = abrir sin el PIN
type-sentence = Escriba “{ $sentence }” para desbloquear este dispositivo. El bloqueo no es seguridad de verdad.
other-sentence = Esa es otra frase. Escriba “{ $sentence }”, palabra por palabra.
wrong-pin = Ese no es el PIN de este dispositivo. Intente las veces que quiera.
choose-digits = Elija de { $fewest } a { $most } dígitos, como 4207.
pin-empty = Falta escribir el PIN.
pin-not-digits = Un PIN lleva solo dígitos, del 0 al 9.
pin-too-short = { $digits ->
    [one] Un solo dígito es muy poco.
   *[other] { $digits } dígitos son muy pocos.
}
pin-too-long = { $digits ->
    [one] Un dígito es demasiado.
   *[other] { $digits } dígitos son demasiados.
}
pins-differ = Los dos PIN no son iguales. Escriba los mismos dígitos dos veces.
screen-may-go-dark = Este navegador no puede dejar la pantalla encendida. En los ajustes del dispositivo, elija el tiempo de pantalla más largo. Déjelo conectado al cargador.

## Sheets to print

paper = Papel
letter-paper = Carta
print = Imprimir
print-preview = Vista previa
printed-on = Impreso el { $day }
cards-for = Bebidas por imprimir
ingredient = Ingrediente
fill = Llenado
below-rim = { $below } bajo el borde
size-says = { $size }: { $said }
planned = Planeadas
made = Hechas
lot = Lote
initials = Iniciales
use-by-date = Usar a más tardar
cost-of = costo { $cost }
no-prices-yet = Ninguna bebida tiene precio. Póngalos en Bebidas.
owner-terms = Costo y margen: { $terms }.
no-cards-to-print = Aún no hay tarjetas para imprimir. Agregue tamaños a sus bebidas en Bebidas.
batch-sheet = Hoja de tanda
no-batch = Este día no tiene tanda. Regrese y empiece una.
to-fill = Por llenar
to-weigh = Por pesar
short-on-hand = Falta en inventario
cautions = Precauciones
storage = Conservación
allergens = Alérgenos
done = ya está
warning-labels = Etiquetas de advertencia
buying-list = Lista de compras
price-sheet = Hoja de precios
prices = Precios
unit-price = Precio por unidad
cost-and-margin = Costo y margen
no-drinks-to-print = Aún no tiene bebidas. Agréguelas en Bebidas para imprimir sus precios.
drink = Bebida
owner-copy = Copia del dueño: muestra lo que cuestan las bebidas. No es para clientes.
iced-sizes-include-ice = Los tamaños de bebidas con hielo incluyen el hielo.
no-sales-tax = Su libro no tiene impuesto de venta. Revise las reglas locales.
tax-included = Los precios incluyen { $rate } de impuesto de venta.
tax-added = En la caja se suma { $rate } de impuesto de venta.
no-tax-european = Su libro no tiene IVA ni impuesto. Revise las reglas locales.
tax-included-european = Los precios incluyen { $rate } de IVA o impuesto.
tax-added-european = En la caja se suma { $rate } de IVA o impuesto.
per-unit = por { $unit }
unit-price-of-menu-price = El precio por unidad es el precio de menú entre el tamaño en etiqueta. Sin tamaño en etiqueta, cuenta el llenado.
unit-price-of-customer-price = El precio por unidad es lo que paga el cliente entre el tamaño en etiqueta. Sin tamaño en etiqueta, cuenta el llenado.
several-tax-rates-included = Los precios incluyen impuesto, según la tasa de cada bebida.
several-tax-rates-added = El impuesto se suma en la caja, según la tasa de cada bebida.
deposits-come-back = El depósito se devuelve con el envase vacío.
several-tax-rates-included-european = Los precios incluyen IVA o impuesto, según la tasa de cada bebida.
several-tax-rates-added-european = El IVA o impuesto se suma en la caja, según la tasa de cada bebida.
