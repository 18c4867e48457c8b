# What sold: weeks, the register’s file, trials of a change, scenarios, sizes side by side.

## Days and weeks

week-of = Semana del { $day }
batch-of = Tanda del { $day }
monday-to-sunday = Lun a dom

## Sales of a typical week

sales = Ventas
about-sales = Anote las ventas semanales de cada bebida y tamaño. Todas las comparaciones las usan.
what-sells = ¿Qué vende cada semana?
add-sizes-first = Primero agregue un tamaño a una bebida en Bebidas. Luego anote aquí las ventas semanales.
typical-week = Semana normal
about-typical-week = Escriba abajo las ventas de cada tamaño, o use el promedio de sus semanas.
no-sales-yet = Aún no hay ventas. Anote las ventas semanales abajo, o impórtelas de su caja.
typical-by-size = Ventas normales
about-typical-by-size = ¿Cuántas vende de cada una en una semana normal? Déjelo en blanco si no sabe.
use-average = Usar promedio de 4 semanas
average-over = { $count ->
    [one] El promedio toma la semana del { $weeks }.
   *[other] El promedio toma { $count } semanas: { $weeks }.
}
average-changes = { $sizes ->
    [one] 1 tamaño recibe un número nuevo.
   *[other] { $sizes } tamaños reciben un número nuevo.
}
average-of-none-sold = Un tamaño que falta en una semana cuenta como cero esa semana. Uno que falta en todas conserva su número.
average-skips = { $count ->
    [one] La semana del { $weeks } no tiene ventas anotadas, así que el promedio la salta.
   *[other] Estas semanas no tienen ventas anotadas, así que el promedio las salta: { $weeks }.
}

## How the figures of sales come about

week-in-math = Bebidas vendidas × ganancia por bebida, todo sumado: { $sum }.
entered-week-in-math = Bebidas vendidas × ganancia por bebida al anotarlas, todo sumado: { $sum }.
more-terms = { $count } renglones más
nothing-counted = Aún no se cuenta ninguna bebida.
nothing-entered = Aún no hay ventas anotadas.
not-counted = No cuentan: { $sizes }.
not-counted-and-more = No cuentan: { $sizes }; y { $more } más.
size-not-on-menu = { $size } (no está en el menú)
size-without-price = { $size } (aún sin precio)
size-without-sales = { $size } (sin ventas semanales)
size-stuck = { $size } (faltan datos)
not-on-menu = Este tamaño no está en el menú. Primero agréguelo a la bebida.
no-price-yet = Este tamaño aún no tiene precio. Primero ponga un precio de menú.
no-weekly-sales = Este tamaño no tiene ventas semanales. Escriba cuántas vende, por ejemplo 24.
profit-not-known = Aún no se sabe la ganancia por bebida.

## Weeks that were entered

sales-by-week = Ventas por semana
about-sales-by-week = Cada semana conserva la ganancia por bebida del día en que anotó las ventas.
no-weeks-yet = Aún no hay semanas. Anote una, o importe abajo las ventas de su caja.
enter-this-week = Anotar esta semana
update-this-week = Actualizar esta semana
drinks-in-week = { $drinks ->
    [one] 1 bebida vendida
   *[other] { $drinks } bebidas vendidas
}
about-week = Escriba cuántas vendió de cada una. Lo nuevo usa la ganancia por bebida de hoy. Lo que corrija conserva su primera ganancia. Deje el campo en blanco para quitar lo anotado.
week-not-over = Esta semana no ha terminado. Vaya sumando las ventas.
other-weeks = Otras semanas
previous-week = Semana anterior
next-week = Semana siguiente
drinks-sold = Bebidas vendidas
profit = Ganancia
sales-by-drink = Ventas por bebida
no-matches = Sin resultados. Pruebe otro nombre.
more-drinks = { $drinks ->
    [one] 1 bebida más. Busque por nombre para verla.
   *[other] { $drinks } bebidas más. Busque por nombre para verlas.
}

## Sales from the register’s file

register-sales = Ventas de la caja
about-register-sales = Exporte sus ventas como CSV desde la caja o una hoja de cálculo, una fila por bebida y tamaño. Elija aquí el archivo. Antes de importar, usted revisa las filas.
sales-file = Archivo de ventas (CSV)
match-columns = Identificar columnas
choose-columns = Elija las columnas de bebida y cantidad.
choose-column = Elija una columna
choose-date-order = Elija un orden
column-number = Columna { $number }
column-drink = Bebida
column-size = Tamaño
size-in-drink-column = La misma que bebida
column-quantity = Cantidad
column-date = Fecha
one-week-only = Sin fechas: una semana
which-week = Semana
date-order = Orden de fecha
day-first = Día primero: 23/11/2026
month-first = Mes primero: 11/23/2026
import-sales = Importar ventas
week-to-import = { $drinks ->
    [one] Semana del { $day }: 1 bebida vendida, ganancia { $profit }
   *[other] Semana del { $day }: { $drinks } bebidas vendidas, ganancia { $profit }
}
week-to-replace = { $drinks ->
    [one] Semana del { $day }: 1 bebida vendida, ganancia { $profit }. Esto reemplaza lo que anotó de estos tamaños.
   *[other] Semana del { $day }: { $drinks } bebidas vendidas, ganancia { $profit }. Esto reemplaza lo que anotó de estos tamaños.
}
more-not-shown = { $count } más sin mostrar
rows-ready = { $rows ->
    [0] No se puede importar ninguna fila.
    [one] Hay 1 fila lista para importar.
   *[other] Hay { $rows } filas listas para importar.
}
rows-to-skip = { $rows ->
    [one] Se va a saltar 1 fila:
   *[other] Se van a saltar { $rows } filas:
}
rows-imported = { $rows ->
    [one] Se importó 1 fila.
   *[other] Se importaron { $rows } filas.
}
rows-skipped = { $rows ->
    [one] Se saltó 1 fila.
   *[other] Se saltaron { $rows } filas.
}
undo-import = Deshacer quita estas ventas.

file-too-large = Este archivo pasa de 10 MB. Exporte menos semanas a la vez.
file-empty = Este archivo está vacío. Elija otro archivo.
file-not-text = Este archivo no es texto simple. Guarde la lista como CSV (UTF-8) y vuelva a elegir el archivo.
file-without-columns = Este archivo no tiene columnas. Guarde la lista como CSV, por ejemplo: Bebida, Tamaño, Cantidad, Fecha.
file-too-many-columns = Este archivo tiene más de 200 columnas. Deje solo bebida, tamaño, cantidad y fecha.
file-without-rows = Este archivo tiene nombres de columna, pero ninguna venta abajo. Elija otro.
file-open-quote = En la línea { $line } hay comillas que no se cierran. Guarde la lista como CSV otra vez.

row-skipped = Línea { $line }: “{ $row }”. { $why }
row-too-short = A esta fila le faltan columnas. Complete la fila o bórrela.
row-without-drink = Esta fila no dice qué bebida es. Escriba el nombre que tiene en su menú.
row-of-unknown-drink = Ninguna bebida del menú se llama “{ $drink }”. Use el nombre de su menú.
row-without-size = Esta fila no dice qué tamaño de { $drink }. Escriba un tamaño de su menú.
row-of-unknown-size = { $drink } no se vende en “{ $size }”. Use un tamaño de su menú.
row-of-several = Dos o más tamaños se llaman “{ $name }”. Cambie el nombre de uno.
row-below-zero = La cantidad es menos de cero. Reste las devoluciones de las ventas en su archivo.
row-not-a-number = “{ $text }” no es un número. Escriba cifras, por ejemplo 12.
row-without-date = Esta fila no tiene fecha. Use fechas como 2026-11-23.
row-not-a-date = “{ $text }” no es una fecha. Use fechas como 2026-11-23.
row-of-two-dates = “{ $text }” puede ser dos fechas. Elija arriba el orden de fecha.
row-too-large = El total de la semana tiene más de nueve cifras. Revise que no sobre una.

## Trials of a change

trials = Pruebas
about-trials = ¿Funcionó el cambio? Compare las semanas de antes con las de después.
did-it-work = ¿Funcionó el cambio?
teach-trials = Anote un cambio y en qué semana lo hizo: un tamaño, precio o vaso nuevo. Vea cuánto se movió la ganancia por semana, y si puede ser casualidad.
trials-need-weeks = Una prueba compara semanas de ventas. Usted aún no tiene.
enter-weekly-sales = Anotar ventas semanales
start-trial = Iniciar prueba
trial-since = { $drinks }, desde el { $day }
trial-from = { $drinks }, empieza el { $day }
new-trial = Prueba nueva
trial-name = Nombre de la prueba
example-change = Agregar vaso de 12 oz
delete-trial = Borrar prueba
day-of-week = Esto no es una fecha. Elija cualquier día de esa semana, por ejemplo el lunes.
trial-setup = Datos de la prueba
about-trial-setup = Las semanas empiezan en lunes. Sirve cualquier día de la semana.
drinks-compared = Bebidas comparadas
compare-from = Comparar desde
change-starts = Inicio del cambio
last-week = Última semana
blank-while-running = Déjelo en blanco mientras siga la prueba.
weekly-difference = Diferencia por semana
likely-range = Rango probable
likely-between = { $low } a { $high }
no-range = No se sabe: semanas iguales
week-by-week = Semana por semana
about-week-by-week = Ganancia de cada semana antes de gastos generales, como se anotó entonces. La escala puede no empezar en cero.
open-sales = Abrir ventas
before = Antes
with-change = Con el cambio
side-averages = Promedio por lado
trial-weeks = Semanas de la prueba
side = Lado

better = Mejor
worse = Peor
not-clear-yet = Aún no está claro
too-close = Muy parejo para saber
needs-more-weeks = Faltan semanas
nothing-sold = No hay ventas en ninguna de estas semanas, así que no hay qué comparar.
weeks-earned-more = Las semanas desde el cambio ganaron más que las de antes.
weeks-earned-less = Las semanas desde el cambio ganaron menos que las de antes.
chance-is-unlikely = La pura casualidad rara vez hace eso.
weeks-all-alike = Pero las semanas de cada lado salen todas iguales, y eso nunca pasa. Revise lo que anotó.
no-difference = Las semanas de antes y las de después ganaron lo mismo en promedio.
may-be-chance = { $weeks ->
    [one] La diferencia aún puede ser casualidad. Si las ventas siguen así, es probable que 1 semana más lo aclare.
   *[other] La diferencia aún puede ser casualidad. Si las ventas siguen así, es probable que { $weeks } semanas más lo aclaren.
}
too-small-to-tell = La diferencia puede ser casualidad. Las subidas y bajadas normales son mayores, y hay pocas semanas antes del cambio. Ni con { $weeks } semanas más, dos años, es probable que se aclare. Con semanas anteriores tal vez sí, si las tiene.
two-weeks-each-side = Una prueba necesita dos semanas de cada lado, para ver cuánto suben y bajan.
weeks-needed-before = { $weeks ->
    [one] Agregue 1 semana más antes del cambio.
   *[other] Agregue { $weeks } semanas más antes del cambio.
}
weeks-needed-since = { $weeks ->
    [one] Agregue 1 semana más con el cambio.
   *[other] Agregue { $weeks } semanas más con el cambio.
}
average-before = Promedio de antes: { $money } por semana en { $weeks } semanas.
average-since = Promedio con el cambio: { $money } por semana en { $weeks } semanas.
more-per-week = Diferencia: { $money } más por semana.
less-per-week = Diferencia: { $money } menos por semana.
no-range-in-math = Las semanas de cada lado son todas iguales, así que no se puede sacar un rango.
range-in-math = Las semanas se apartan de su promedio cerca de { $before } antes y { $since } con el cambio (desviación estándar). La prueba t de Welch con { $degrees } grados de libertad da un rango de { $low } a { $high }. En 95 de 100 casos, un rango así incluye la diferencia real.
weeks-missing = { $count ->
    [one] Nada anotado, así que queda fuera: la semana del { $weeks }.
   *[other] Nada anotado, así que quedan fuera estas semanas: { $weeks }.
}
weeks-missing-and-more = Nada anotado, así que quedan fuera estas semanas: { $weeks } y { $more } más.
running-week = La semana del { $day } no ha terminado, así que aún no cuenta.
trial-caution = Una prueba no demuestra nada por sí sola. El clima, la temporada, los días festivos, un vecino nuevo o un precio cercano también mueven las ventas. Entonces su cambio se lleva todo el mérito, o toda la culpa. Compare semanas parecidas y cambie una cosa a la vez.

## Scenarios

scenarios = Escenarios
about-scenarios = Pruebe cambios en una copia de su menú. Su menú real queda igual.
teach-scenarios = ¿Y si cambiara su menú?
teach-copy = Copie el menú de hoy. Cambie precios, tamaños y ventas semanales, y compare la ganancia por semana con la de hoy.
teach-plan = También puede guardar aquí un plan desde { $screen }.
copy-menu = Copiar menú de hoy
scenario-line = { $sizes } · { $difference }
scenario-name = Nombre del escenario
new-scenario = Escenario nuevo
example-scenario = Solo dos tamaños
make-menu = Usar como menú
scenario-made-menu = Usar escenario como menú
discard-scenario = Descartar escenario
about-make-menu = Antes se guarda un punto de restauración, y el escenario se queda. Deshacer recupera el menú de hoy.
scenario-assumes = Estas ventas semanales son las del escenario. Aún no son ventas reales.
change = Cambiar
change-drink = Cambiar { $drink }
close-drink = Cerrar { $drink }
choose-container = Elija un envase
add-size = Agregar tamaño
size-added = Agregar tamaño al escenario
size-removed = Quitar tamaño del escenario
menu-price-of = Precio de menú de { $size }
weekly-sales-of = Ventas semanales de { $size }
blank-if-unsure = en blanco si no sabe
scenario-price = Precio en escenario
scenario-sales = Ventas en escenario
compared-with-today = Comparado con hoy
in-this-scenario = En este escenario
difference = Diferencia
number-of-sizes = Tamaños
opening-stock = Inventario inicial
weeks-of-stock = Duración del inventario
weeks-to-stock = Semanas de inventario por comprar
scenario-leaves-out = En este escenario: { $what }
today-leaves-out = Hoy: { $what }
both-leave-out = En los dos: { $what }

## Sizes side by side

whole-menu = Todo el menú
side-by-side = lado a lado
no-size-chosen = No hay tamaño elegido. Elija al menos uno.
no-sizes-yet = Esta bebida aún no tiene tamaños.
which-sizes-pay = ¿Qué tamaños conviene vender?
teach-side-by-side = Agregue dos o más tamaños a una bebida en Bebidas. Luego compare aquí costo, ganancia y precio por medida.
sizes-left-out = { $sizes ->
    [one] A 1 tamaño le faltan datos y queda fuera.
   *[other] A { $sizes } tamaños les faltan datos y quedan fuera.
}
add-details = Agregar datos
open-drink = Abrir bebida
no-drink-in-all = Ninguna bebida viene en todos los tamaños mostrados. Quite un tamaño.
one-drink-in-all = 1 bebida viene en todos los tamaños mostrados. Los números son de esa bebida.
drinks-in-all-by-sales = { $drinks ->
    [one] 1 bebida viene en todos los tamaños mostrados. Los números son promedios según las ventas semanales.
   *[other] { $drinks } bebidas vienen en todos los tamaños mostrados. Los números son promedios según las ventas semanales.
}
drinks-in-all-alike = { $drinks ->
    [one] 1 bebida viene en todos los tamaños mostrados. Los números son promedios simples hasta que anote ventas semanales.
   *[other] { $drinks } bebidas vienen en todos los tamaños mostrados. Los números son promedios simples hasta que anote ventas semanales.
}
left-out-not-sold = { $drink }: no se vende en { $size }
left-out-stuck = { $drink }: faltan datos en { $size }
left-out-without-price = { $drink }: aún sin precio en { $size }
left-out-without-sales = { $drink }: sin ventas semanales
average-price-in-math = Precio promedio en { $size }: ({ $sum }) ÷ { $weight } = { $average }. Costos y ganancia se promedian igual. El margen sale de los totales de todas estas bebidas, antes de impuesto.
per-drink = Por bebida
reductions-taken = Descuentos
sizes-per-drink = Tamaños por bebida
profit-per-labor-minute = Ganancia por minuto de trabajo
target = Meta
on-target-of = { $on } de { $drinks }
not-possible = no se puede
was-today = hoy
is-tried = con el cambio
cost-breakdown = Desglose del costo
costs-by-size = Costos por tamaño
per-volume = Por { $volume } servida
sizes-by-volume = Tamaños por medida
price-against-smallest = Contra el más chico
smallest = el más chico
pays-most-and-least = Por medida, el cliente paga más en { $most } ({ $high }) y menos en { $least } ({ $low }).
pays-alike = Por medida, el cliente paga lo mismo en todos los tamaños.
no-size-has-price = Ningún tamaño tiene precio aún.
next-size-up = Siguiente tamaño
from-to = De { $small } a { $large }:
price-up = el precio sube { $by }.
price-down = el precio baja { $by }.
cost-up = El costo sube { $by }.
cost-down = El costo baja { $by }.
you-keep = Usted se queda con { $kept }: el { $share } del precio extra antes de impuesto.
price-rises = De { $small } a { $large }, el precio sube { $by }.
price-stays = De { $small } a { $large }, el precio queda igual.
price-falls = De { $small } a { $large }, el precio baja { $by }.
cost-rises = El costo sube { $by }.
cost-stays = El costo queda igual.
cost-falls = El costo baja { $by }.
tax-rises = El impuesto se lleva { $by } más.
tax-falls = El impuesto se lleva { $by } menos.
fees-rise = Los cargos se llevan { $by } más.
fees-fall = Los cargos se llevan { $by } menos.
reductions-rise = Los descuentos se llevan { $by } más.
reductions-fall = Los descuentos se llevan { $by } menos.
you-keep-nothing = Del precio extra no le queda nada.
biggest-cost = Lo que más pesa en el costo: { $part }, { $share } en { $size }.
biggest-cost-in-two = Lo que más pesa en el costo: { $part }, { $share } en { $size } y { $other_share } en { $other }.
no-costs-yet = Aún no hay costos.
profit-today = Ganancia hoy
price-today = Precio hoy
axis-fill = Llenado, { $unit }

## What if

what-if = ¿Y si…?
use-changes = Usar estos cambios
clear-changes = Quitar cambios
ingredient-cost-change = Cambio en costo de ingredientes
about-ingredient-cost = Para costos más bajos, escriba un menos. Los precios reales de los paquetes van en Compras.
change-too-far = Escriba un número de { $least } a { $most }, por ejemplo 20 para una quinta parte más.
target-of-book = La meta de su libro. Las bebidas con meta propia la conservan.
target-of-kind = Para todas las bebidas de este tipo.
target-of-drink = Para esta bebida.
price-of = { $size }: precio
raise-of = { $size }: aumento de precio
fill-of = { $size }: llenado
over-brimful = La capacidad al ras es { $brimful }. Escriba un llenado menor.
nothing-filled = El llenado es cero. Escriba más de cero, por ejemplo 12.

## The file of offers: heads of its columns

csv-drink = Bebida
csv-container = Envase
csv-fill = Llenado (mL)
csv-money = { $what } ({ $currency })
csv-your-price = Su precio
csv-price-before-tax = Precio antes de impuesto
csv-average-price = Precio promedio antes de impuesto
csv-tax-rate = Tasa de impuesto (fracción)
csv-fees = Cargo por tarjeta y comisión
csv-margin = Margen (fracción)
csv-target-margin = Margen meta (fracción)
csv-status = Estado
csv-reason = Motivo

## Charts

chart-of = { $what }: gráfica. Use las flechas para leer cada valor.
chart-figures = Cifras
chart-values = { $values ->
    [one] 1 valor
   *[other] { $values } valores
}
named-figure = { $name }: { $figure }

## Tried from a decision

try-it = Probarlo
try-it-for = { $weeks ->
    [one] Probarlo 1 semana
   *[other] Probarlo { $weeks } semanas
}
set-up-trial = Crear prueba
trial-length = { $weeks ->
    [one] Basta 1 semana, más o menos, para distinguir este cambio de los altibajos de siempre.
   *[other] Unas { $weeks } semanas bastan para distinguir este cambio de los altibajos de siempre.
}
trial-length-unknown = Anote antes las ventas de al menos dos semanas. La prueba dirá cuántas semanas necesita.
trial-length-elsewhere = Sus semanas no tienen ventas de estas bebidas. Anote algunas, y la prueba dirá cuántas semanas necesita.
trial-cannot-tell = { $weeks ->
    [one] Una prueba no puede distinguir esto. Tomaría cerca de 1 semana.
   *[other] Una prueba no puede distinguir esto. Tomaría cerca de { $weeks } semanas.
}
trial-never-tells = Una prueba no puede distinguir esto. La diferencia es muy chica.
trial-sets-up = Esto prepara una prueba
trial-runs = { $weeks ->
    [one] Dura 1 semana: del { $first } al { $last }.
   *[other] Dura { $weeks } semanas: del { $first } al { $last }.
}
trial-compares = Compara estas semanas con las de antes. Haga el cambio el primer día.
trial-planned = Planeada
trial-not-begun = El cambio aún no empieza. Anote las ventas de cada semana cuando termine.
trial-plan-from = Prueba planeada: del { $first } al { $last }
trial-began = Prueba desde el { $day }
trial-begins = La prueba empieza el { $day }
trial-ended = Prueba del { $first } al { $last }
open-trial = Abrir prueba

## What if: shares, suppliers, fees

mix-over = Los porcentajes suman más de 100%. Baje alguno.
mix-under = Los porcentajes suman menos de 100%. Deje un tamaño en blanco para el resto.
mix-without-sales = Aún no tiene ventas semanales. Anótelas en Ventas y luego pruebe porcentajes.
week-earned = Estos tamaños dejan { $profit } por semana
earns-more-a-week = Gana { $profit } más por semana
earns-less-a-week = Gana { $profit } menos por semana
earns-same-a-week = Gana lo mismo por semana
no-week-known = Aún no hay ventas semanales
enter-week-first = Anote sus ventas semanales para ver la ganancia por semana.
same-sales = { $drinks ->
    [one] Cuenta 1 vendida por semana, como hoy. Los gastos generales no cambian, así que no se cuentan.
   *[other] Cuenta { $drinks } vendidas por semana, como hoy. Los gastos generales no cambian, así que no se cuentan.
}
week-covers = { $compared ->
    [one] Cuentan { $drinks } bebidas. La tabla compara la única que se vende en todos los tamaños.
   *[other] Cuentan { $drinks } bebidas. La tabla compara las { $compared } que se venden en todos los tamaños.
}
week-of-drinks = { $counted ->
    [one] Esto cuenta 1 de { $all } bebidas: la que se vende en estos tamaños.
   *[other] Esto cuenta { $counted } de { $all } bebidas: las que se venden en estos tamaños.
}
new-prices-count = { $drinks ->
    [one] Los precios nuevos cuentan para 1 bebida, la que está en todos los tamaños. Se venden { $all } bebidas.
   *[other] Los precios nuevos cuentan para { $drinks } bebidas, las que están en todos los tamaños. Se venden { $all } bebidas.
}
even-at = Gana lo de hoy con { $buyers } de cada 100 clientes.
even-over = { $buyers ->
    [one] Necesita 1 cliente más por cada 100 para ganar lo de hoy.
   *[other] Necesita { $buyers } clientes más por cada 100 para ganar lo de hoy.
}
with-changes = Con cambios
size-to-change = Tamaño que cambia
goods-to-change = Ingrediente o empaque
choose-goods = Elija uno
pack-of = { $goods }: paquete
pack-price-of = { $goods }: precio del paquete
costs-and-fees = Costos y cargos
shares-of-sizes = Reparto de tamaños
share-of-buyers = { $size }: parte de los clientes
blank-takes-rest = Los tamaños en blanco se reparten el resto como hoy.
as-in-book = como hoy
count-changed = { $count ->
    [one] 1 cambio
   *[other] { $count } cambios
}
tried-wage-too-low = El sueldo por hora debe ser cero o más, como 18.
what-it-changes = Qué cambia
what-it-leaves = Qué queda fuera
nothing-to-use = Nada de esto puede pasar a su libro.
use-price = { $offer }: precio { $to } en vez de { $from }.
use-first-price = { $offer }: precio { $to }. Hoy no tiene.
prices-rise = { $size }: { $drinks } precios, cada uno { $by } más.
prices-fall = { $size }: { $drinks } precios, cada uno { $by } menos.
each-new-price = Cada precio nuevo
use-fill = { $drinks ->
    [one] { $size }: llenado { $to } en vez de { $from }, en 1 bebida.
   *[other] { $size }: llenado { $to } en vez de { $from }, en { $drinks } bebidas.
}
use-pack = { $goods }: compra { $to } en vez de { $from }.
use-target = { $drinks ->
    [0] Margen meta: { $to } en vez de { $from }, en su libro.
    [one] Margen meta: { $to } en vez de { $from }, en 1 bebida.
   *[other] Margen meta: { $to } en vez de { $from }, en { $drinks } bebidas.
}
use-waste = { $drinks ->
    [0] Merma: { $to } en vez de { $from }, en su libro.
    [one] Merma: { $to } en vez de { $from }, en 1 bebida.
   *[other] Merma: { $to } en vez de { $from }, en { $drinks } bebidas.
}
use-wage = Sueldo por hora: { $to } en vez de { $from }.
use-card-fee = Cargo por tarjeta: { $to } en vez de { $from }.
use-commission = Comisión de la app de entregas: { $to } en vez de { $from }.
leave-ingredients = Todos los ingredientes { $change }: los precios los ponen los proveedores. Anote cotizaciones reales en Compras.
leave-pack-price = { $goods } a { $price }: ese precio lo pone su proveedor. Anote una cotización real en Compras.
leave-share = El { $share } de los clientes elige { $size }: eso lo deciden ellos. Sus ventas semanales no cambian.
undo-brings-back = Deshacer recupera las cifras de hoy.
these-sizes-more = Las bebidas de estos tamaños dejan { $profit } más por semana.
menu-too-more = También cambian otras bebidas. Todo su menú gana { $profit } más por semana.
menu-too-less = También cambian otras bebidas. Todo su menú gana { $profit } menos por semana.
menu-too-same = También cambian otras bebidas. Todo su menú gana lo mismo por semana.
alone-more = La respuesta de arriba también cuenta esto. Sin esto, gana { $profit } más por semana.
alone-less = La respuesta de arriba también cuenta esto. Sin esto, gana { $profit } menos por semana.
alone-same = La respuesta de arriba también cuenta esto. Sin esto, gana lo mismo por semana.
beside-drink = Junto a otra bebida
beside-as-in-book = Estas cifras son las de su libro, sin lo que prueba aquí.
choose-drink = Elija una bebida
what-if-of = ¿Y si…? { $drinks }
margin-counts = El margen se calcula sobre: { $what }.
adds-up = El precio antes de impuesto, menos cargos, descuentos y costo total, deja la ganancia por bebida.
how-figures-add-up = Cómo se suman las cifras
price-and-cost = Precio y costo por tamaño
rows-rounded = Cada renglón se redondea aparte; la suma puede variar por centavos.
by-volume = Por medida
scenario-terms = Los dos lados muestran la ganancia de todo el menú antes de gastos generales. Los tamaños que se venden como hoy cuentan sus últimas semanas.
scenario-is-menu = Este ya es el menú de hoy.
make-these-changes = Hacer estos cambios
drinks-that-change = Qué es distinto
drinks-as-today = Igual que hoy
count-drinks = { $drinks ->
    [one] 1 bebida
   *[other] { $drinks } bebidas
}
scenarios-compared = Lado a lado

## The decision sheet

print-report = Imprimir informe
client-report = Informe del cliente
decision-sheet = Hoja de decisión
must-be-true = Qué tiene que cumplirse
one-time-and-payback = Costos únicos
trial-plan = Plan de prueba
assumptions = En qué se basa
labor-counted = La mano de obra cuenta: menos bebidas son menos horas pagadas.
labor-left-out = La mano de obra no cuenta: las horas pagadas no cambian.
sheet-caution = Nadie puede saber qué comprará la gente. Esta hoja dice qué tiene que cumplirse para que el cambio convenga. No es asesoría legal, fiscal ni de seguridad de alimentos.
plan-of-weeks = { $weeks ->
    [one] Pruebe el cambio cerca de 1 semana y compare con las semanas de antes.
   *[other] Pruebe el cambio unas { $weeks } semanas y compare con las semanas de antes.
}
plan-unknown = Anote antes las ventas de al menos dos semanas. Así la app dice cuántas semanas bastan.
even-share = { $buyers ->
    [one] Deja lo mismo que hoy con 1 cliente por cada 100 de hoy.
   *[other] Deja lo mismo que hoy con { $buyers } clientes por cada 100 de hoy.
}
drinks-not-listed = { $drinks ->
    [one] Cuenta 1 bebida más.
   *[other] Cuentan { $drinks } bebidas más.
}

## Charts of weeks

over-time = Ganancia en el tiempo
week-beginning = Semana del
same-terms = Las semanas normales y las anotadas cuentan la misma ganancia, con gastos generales. Las decisiones no los cuentan.
change-at = Empieza: { $change }
likely-range-line = Rango probable
count-weeks = { $weeks ->
    [one] 1 semana
   *[other] { $weeks } semanas
}
count-sizes = { $sizes ->
    [one] 1 tamaño
   *[other] { $sizes } tamaños
}
newest-seen = el último del { $day }
