# Deciding on sizes: the front page of Sizes, how many sizes, switching sizes, a price limit, local prices.

## The front page

your-data = Sus datos
nothing-sold-yet = Aún no vende tamaños
nothing-sold-yet-about = Dé a una bebida dos o más tamaños con precio. Luego compárelos aquí.
open-drinks = Abrir Bebidas
## What several questions ask

which-drinks = Qué bebidas
sizes-to-compare = Tamaños por comparar
drinks-and-sizes = Bebidas y tamaños
named-reason = { $name }: { $reason }
drinks-left-out = { $drinks ->
    [one] 1 bebida queda fuera
   *[other] { $drinks } bebidas quedan fuera
}
and-more = { $more ->
    [one] y 1 más
   *[other] y { $more } más
}
gone-choose-another = Esto ya no está en su libro. Elija otra opción.
most-to-type = Escriba { $most } o menos, por ejemplo { $example }.
use-what-if = Usar cambios “¿Y si…?”

## How many sizes

how-many-sizes = Cuántos tamaños
rule-of-thumb-sizes = Regla general (sin fuente publicada): uno es lo más sencillo, dos funcionan bien, tres son muchos. Sus propios números van primero.
weeks-to-stock = Semanas de inventario por comprar
upkeep-per-size = Gasto semanal por tamaño
container-types = Tipos de envase
lid-types = Tipos de tapa
opening-stock = Inventario inicial
weeks-of-stock = Duración del inventario
count-of-sizes = { $sizes ->
    [1] Un tamaño
    [2] Dos tamaños
    [3] Tres tamaños
   *[other] { $sizes } tamaños
}
weeks = { $weeks ->
    [one] { $weeks } semana
   *[other] { $weeks } semanas
}
weeks-of-kinds = { $weeks ->
    [one] { $weeks } semana: { $kinds }
   *[other] { $weeks } semanas: { $kinds }
}
no-sales-yet = aún sin ventas

save-plan = Guardar como escenario
no-sales-uncounted = { $sizes ->
    [one] 1 tamaño de bebida no tiene ventas semanales y no cuenta.
   *[other] { $sizes } tamaños de bebida no tienen ventas semanales y no cuentan.
}
no-price-uncounted = { $sizes ->
    [one] 1 tamaño de bebida no tiene precio y no cuenta.
   *[other] { $sizes } tamaños de bebida no tienen precio y no cuentan.
}
incomplete-uncounted = { $sizes ->
    [one] A 1 tamaño de bebida le faltan datos y no cuenta.
   *[other] A { $sizes } tamaños de bebida les faltan datos y no cuentan.
}
## A scenario beside today’s menu

scenario-earns-more = { $profit } más por semana que hoy.
scenario-earns-less = { $profit } menos por semana que hoy.
scenario-earns-same = Lo mismo por semana que hoy.
size-as-today = { $size }: { $facts }, igual que hoy.
size-changed = { $size }: { $facts }. Hoy: { $today }.
size-added = { $size }: { $facts }. Hoy no se vende.
size-dropped = { $size }: no se vende en este escenario. Hoy: { $today }.
size-not-sold = { $size }: no se vende.
fact-no-price = sin precio
fact-sold = { $drinks } por semana
fact-no-sales = sin ventas semanales
fact-profit = { $profit } de ganancia
fact-incomplete = faltan datos

## Switching sizes

by-drink = Por bebida
profit-now = Ganancia hoy
one-time-costs = Costos únicos
labels-and-printing = Etiquetas e impresión
leftover-stock = Inventario sobrante
no-new-packaging = No hace falta empaque nuevo.
first-order = { $packs ->
    [one] { $name }: 1 paquete para empezar, { $cost }.
   *[other] { $name }: { $packs } paquetes para empezar, { $cost }.
}
first-order-in-use = { $name }: ya lo usa otro tamaño de su menú, así que aquí no cuesta.
first-order-no-price = { $name }: aún sin precio del paquete, así que no cuenta. Anótelo en Compras.
## A price limit

price-limit-teach = ¿Qué alcanza con su precio?
price-limit-teach-about = Primero venda una bebida en un tamaño. Luego escriba aquí un precio para ver qué alcanza.
sell-for-no-more-than = Vender a no más de
limit-before-tax = Precio del menú, antes de impuesto.
limit-with-tax = Precio del menú, con impuesto.
sizes-shown = Tamaños mostrados
type-a-price = Escriba un precio para ver qué alcanza.
choose-a-size = Elija un tamaño para ver si alcanza.
all-sizes-fit = { $sizes ->
    [one] Esta bebida se puede vender a { $price } con su meta
   *[other] Los { $sizes } tamaños de bebida se pueden vender a { $price } con su meta
}
some-sizes-fit = { $fit ->
    [one] Alcanza 1 de { $sizes } tamaños de bebida a { $price }
   *[other] Alcanzan { $fit } de { $sizes } tamaños de bebida a { $price }
}
no-size-fits = No alcanza ninguno de { $sizes } tamaños de bebida a { $price }
sizes-that-miss = No llegan a su meta a este precio: { $sizes }.
sizes-that-miss-and-more = No llegan a su meta a este precio: { $sizes }; y { $more } más.
by-size = Por tamaño
ingredient-limit = Tope de ingredientes
ingredients-now = Ingredientes hoy
fits-exactly = Alcanza justo, no sobra nada.
fits-with-room = Alcanza. Puede gastar { $room } más en ingredientes.
nothing-for-ingredients = Este precio no deja nada para ingredientes. Los demás costos y su meta se pasan por { $short }.
raise-or-repack = Suba el precio o use un envase más barato.
save-on-ingredients = Ahorre { $saving } en ingredientes: { $share } de los { $cost } que cuestan hoy.
or-pour-less = O sirva { $less } menos: { $fill } en vez de { $now }.
no-smaller-fill = Ni con menos llenado alcanza. Los costos que no cambian con el tamaño son muy altos.
cut-first = Empiece por { $ingredient } ({ $cost }). Use { $share } menos y complete el tamaño con el resto de la receta.
cut-not-enough = Empiece por { $ingredient } ({ $cost }). Bajar solo esto no basta, porque el resto ocupa su lugar.

## Local prices

local-prices = Precios locales
local-prices-explained = Cuánto cobran los demás y dónde quedan sus tamaños.
where-you-stand = Dónde queda usted
all-types = Todos los tipos
drink-type = Tipo de bebida
place = Lugar
recent-places = Lugares recientes
their-price = Precio que cobran
date-seen = Visto el
add-price = Agregar precio
choose-date-seen = Elija el día en que vio el precio.
year-too-early = Escriba el año con cuatro cifras, por ejemplo 2026.
date-ahead = { $date } aún no llega. ¿Dejar esta fecha?
add-local-price = Agregar precio local
seen-at = { $place }, { $date }
seen-at-long-ago = { $place }, { $date } (hace más de un año)
price-per = { $price } por { $unit }
edit-place = Editar lugar
edit-size = Editar tamaño
edit-price = Editar precio
edit-type = Editar tipo
edit-date = Editar fecha
remove-price = Quitar precio
change-place = Cambiar lugar de precio local
change-size = Cambiar tamaño de precio local
change-price = Cambiar precio local
change-type = Cambiar tipo de precio local
change-date = Cambiar fecha de precio local
remove-local-price = Quitar precio local

prices-from-to = { $prices ->
    [one] 1 precio local, de { $smallest } a { $largest }.
   *[other] { $prices } precios locales, de { $smallest } a { $largest }.
}
double-costs-more = El doble de tamaño cuesta { $share } más.
double-costs-less = El doble de tamaño cuesta { $share } menos.
double-costs-same = El doble de tamaño cuesta lo mismo.
your-standing = Su { $size }: { $standing }.
farthest-standing = El tamaño más alejado de la curva: { $size }, { $standing }.
on-curve = en la curva
above-curve = { $share } arriba de la curva
below-curve = { $share } abajo de la curva
on-curve-beyond = en la curva, fuera de los tamaños vistos
above-curve-beyond = { $share } arriba de la curva, fuera de los tamaños vistos
below-curve-beyond = { $share } abajo de la curva, fuera de los tamaños vistos
too-far-beyond = muy fuera de los tamaños vistos
no-curve-yet = aún sin curva
curve-math = Precio = { $price } × (tamaño en { $unit }) elevado a { $exponent }.
curve-math-hundreds = Precio = { $price } × (tamaño en cientos de mL) elevado a { $exponent }.
curve-method = Es una recta de mínimos cuadrados con los logaritmos de tamaños y precios.
curve-fit = R² es { $fit }: 1 es ajuste perfecto, 0 es ningún ajuste.
curve-prices-equal = Todos los precios son iguales.
no-prices-yet = Aún no hay precios locales. Agregue tres o más de distintos tamaños para ver dónde quedan los suyos.
one-price-so-far = Va un precio. Una curva necesita tres o más de distintos tamaños.
two-prices-so-far = Van dos precios. Una curva necesita tres o más para ver cuánto varían.
prices-of-one-size = Estos precios son casi todos de un mismo tamaño. Agregue uno más chico o más grande.
prices-too-far-apart = Estos tamaños o precios son muy distintos para compararlos. Revise que no sobre una cifra.
market-caution = Son los precios que piden, no ventas. Los demás tienen otros costos, porciones y clientes.
market-no-advice = Su lugar en la curva no es un consejo sobre cuánto cobrar.
prices-over-a-year-old = { $prices ->
    [one] 1 precio tiene más de un año y pudo cambiar.
   *[other] { $prices } precios tienen más de un año y pudieron cambiar.
}
your-sizes-among-prices = Sus tamaños y precios locales
your-price = Su precio
per-unit = Por { $unit }
per-labeled = Por { $unit } de etiqueta
local-curve = Curva local
your-position = Su lugar
none-of-yours-priced = Ninguno de sus tamaños de este tipo tiene precio aún.
your-sizes = Sus tamaños
size-in-unit = Tamaño, { $unit }

## What the numbers of the book say

numbers-say = Lo que dicen sus números
no-findings = Aún no hay nada que decir. Venda una bebida en dos tamaños, con precio y ventas semanales. No se comparan tamaños ni precios de más del doble.
ask = Preguntar
switch-a-size = Cambiar un tamaño
drop-a-size = Quitar un tamaño
add-a-size = Agregar un tamaño
sell-under = Vender a no más de un precio
compare-sizes = Comparar tamaños
newest-price = { $prices ->
    [one] 1, visto el { $day }
   *[other] { $prices }, el último del { $day }
}
trials-running = { $trials ->
    [one] 1 en curso
   *[other] { $trials } en curso
}
drink-types = Tipos de bebida

finding-cannot-drop = Quitar { $size } no conviene con los clientes de hoy
finding-drop = { $stay ->
    [one] Quitar { $size } conviene si 1 de 100 clientes toma otro tamaño
   *[other] Quitar { $size } conviene si { $stay } de 100 clientes toman otro tamaño
}
finding-drop-can = { $stay ->
    [one] Quitar { $size } conviene si 1 de 100 que pueden tomar otro tamaño lo toma
   *[other] Quitar { $size } conviene si { $stay } de 100 que pueden tomar otro tamaño lo toman
}
finding-drop-to = { $stay ->
    [one] Quitar { $size } conviene si 1 de 100 clientes toma { $other }
   *[other] Quitar { $size } conviene si { $stay } de 100 clientes toman { $other }
}
finding-drop-always = Quitar { $size } conviene aunque se vayan todos sus clientes
finding-guess-drop-yes = Según usted, quitar { $size } conviene
finding-guess-drop-no = Según usted, quitar { $size } no conviene
finding-guess-only-no = Según usted, vender solo { $size } no conviene
finding-only = { $stay ->
    [one] Vender solo { $size } conviene si se queda 1 de 100 clientes de otros tamaños
   *[other] Vender solo { $size } conviene si se quedan { $stay } de 100 clientes de otros tamaños
}
finding-only-can = { $stay ->
    [one] Vender solo { $size } conviene si se queda 1 de 100 clientes que pueden quedarse
   *[other] Vender solo { $size } conviene si se quedan { $stay } de 100 clientes que pueden quedarse
}
finding-only-always = Vender solo { $size } conviene aunque se vayan los demás clientes
finding-only-about = El { $share } de los clientes ya lo elige. Tarjetas de receta: hoy { $now }, después { $then }.
only-more = { $buyers ->
    [one] Si el otro cliente se queda, gana { $profit } más por semana.
   *[other] Si se quedan los otros { $buyers } clientes, gana { $profit } más por semana.
}
finding-turns = { $lost ->
    [one] Si 10% más de precio aleja a más de 1 de 100 clientes, ganan más los tamaños chicos
   *[other] Si 10% más de precio aleja a más de { $lost } de 100 clientes, ganan más los tamaños chicos
}
finding-turns-unknown = Aún no ha dicho cómo reaccionan sus clientes.
finding-turns-larger = Según su propia respuesta, ganan más los tamaños grandes.
finding-turns-smaller = Según su propia respuesta, ganan más los tamaños chicos.
finding-not-under = { $cannot ->
    [one] 1 de { $drinks } bebidas no llega a su meta a { $price } en ningún tamaño
   *[other] { $cannot } de { $drinks } bebidas no llegan a su meta a { $price } en ningún tamaño
}
nearest-needs = { $drink } necesita { $price } para llegar a su meta.
some-pay-more = { $buyers ->
    [one] 1 de los que se quedan paga { $price } más por { $volume } más.
   *[other] { $buyers } de los que se quedan pagan { $price } más por { $volume } más.
}
some-pay-less = { $buyers ->
    [one] 1 de los que se quedan paga { $price } menos por { $volume } menos.
   *[other] { $buyers } de los que se quedan pagan { $price } menos por { $volume } menos.
}
some-pay-else = { $buyers ->
    [one] 1 de los que se quedan paga { $then } en lugar de { $now }.
   *[other] { $buyers } de los que se quedan pagan { $then } en lugar de { $now }.
}
buyers-pay-more = Pagan { $price } más por { $volume } más.
buyers-pay-less = Pagan { $price } menos por { $volume } menos.
buyers-pay-else = Pagan { $then } en lugar de { $now }.
pay-range = Según la bebida, pagan de { $least } a { $most }.

## One decision on sizes

decide-sizes = Decidir los tamaños
decide-switch = Cambiar { $from } por { $to }
decide-drop = Quitar { $size }
decide-add = Agregar { $size }
decide-only = Vender solo { $size }
decide-none = ¿Qué tamaño cambiaría?
decide-none-about = Elija un tamaño que sale, uno que entra, o los dos.
goes = Tamaño que sale
comes = Tamaño que entra
no-size = Ninguno

drop-pays-from = { $stay ->
    [one] Conviene si se queda 1 de 100 clientes
   *[other] Conviene si se quedan { $stay } de 100 clientes
}
drop-pays-can = { $stay ->
    [one] Conviene si se queda 1 de 100 clientes que pueden quedarse
   *[other] Conviene si se quedan { $stay } de 100 clientes que pueden quedarse
}
drop-pays-to = { $stay ->
    [one] Conviene si 1 de 100 clientes toma { $size }
   *[other] Conviene si { $stay } de 100 clientes toman { $size }
}
pays-if-all-leave = Conviene aunque se vayan todos los clientes
drop-cannot-pay = Con los clientes de hoy, no conviene
guess-pays = Según usted, conviene
guess-pays-not = Según usted, no conviene
guess-aside = Sin su cálculo: { $verdict }.
add-cannot-pay = No conviene nunca
switch-needs-new = { $buyers ->
    [one] Necesita 1 cliente más por semana, o gana menos
   *[other] Necesita { $buyers } clientes más por semana, o gana menos
}
switch-may-lose = { $buyers ->
    [one] Conviene si no pierde más de 1 cliente por semana
   *[other] Conviene si no pierde más de { $buyers } clientes por semana
}
switch-may-lose-none = Conviene solo si se quedan todos los clientes
add-pays-until = { $taken ->
    [one] Conviene si a lo más 1 de 100 clientes viene de otro tamaño
   *[other] Conviene si a lo más { $taken } de 100 clientes vienen de otro tamaño
}
add-pays-always = Conviene aunque todos vengan de otro tamaño
all-stay-more = { $buyers ->
    [one] Si el único cliente se queda, usted gana { $profit } más por semana.
   *[other] Si se quedan los { $buyers } clientes, usted gana { $profit } más por semana.
}
all-stay-less = { $buyers ->
    [one] Aunque el único cliente se quede, usted pierde { $profit } por semana.
   *[other] Aunque se queden los { $buyers } clientes, usted pierde { $profit } por semana.
}
all-take-less = { $buyers ->
    [one] Aunque el único cliente tome { $size }, usted pierde { $profit } por semana.
   *[other] Aunque los { $buyers } clientes tomen { $size }, usted pierde { $profit } por semana.
}
all-take-more = { $buyers ->
    [one] Si el único cliente toma { $size }, usted gana { $profit } más por semana.
   *[other] Si los { $buyers } clientes toman { $size }, usted gana { $profit } más por semana.
}
all-new-more = { $buyers ->
    [one] Si el único cliente es nuevo, usted gana { $profit } más por semana.
   *[other] Si los { $buyers } clientes son nuevos, usted gana { $profit } más por semana.
}
all-new-less = { $buyers ->
    [one] Aunque el único cliente sea nuevo, usted pierde { $profit } por semana.
   *[other] Aunque los { $buyers } clientes sean nuevos, usted pierde { $profit } por semana.
}
can-stay-more = { $buyers ->
    [one] Si el único cliente que puede quedarse se queda, usted gana { $profit } más por semana.
   *[other] Si se quedan los { $buyers } clientes que pueden quedarse, usted gana { $profit } más por semana.
}
can-stay-less = { $buyers ->
    [one] Aunque se quede el único cliente que puede, usted pierde { $profit } por semana.
   *[other] Aunque se queden los { $buyers } clientes que pueden quedarse, usted pierde { $profit } por semana.
}
all-leave-more = Nadie puede quedarse, y aun así gana { $profit } más por semana.
must-leave = { $buyers ->
    [one] Se va 1 cliente.
   *[other] Se van { $buyers } clientes.
}
stays-same = Gana lo mismo que hoy.

profit-week-now = Ganancia semanal hoy
profit-with = Con { $buyers } de 100
profit-per-100 = Con { $buyers } por cada 100 de hoy
profit-taken = Si { $buyers } de 100 cambian de tamaño
buyers-who-stay = Clientes que se quedan
buyers-per-100 = Clientes por 100
buyers-taken = De otros tamaños
of-100-today = Por cada 100 que compran hoy: { $buyers }
of-100-expected = De cada 100 que espera, de otros tamaños: { $buyers }
breaks-even-at = iguala con { $buyers }
overhead-left-out = La renta y la luz no cambian, así que no se cuentan.
others-pay-more = Quienes ya compran { $size } también pagan un precio que usted cambió: { $profit } más por semana, ya contados aquí.
others-pay-less = Quienes ya compran { $size } también pagan un precio que usted cambió: { $profit } menos por semana, ya contados aquí.
turns-far = { $buyers ->
    [one] A 1 de estos clientes le tocaría más del doble, o menos de la mitad, de volumen o precio. Pocos cambian a eso.
   *[other] A { $buyers } de estos clientes les tocaría más del doble, o menos de la mitad, de volumen o precio. Pocos cambian a eso.
}

customers-see = Lo que ve el cliente
price-less = { $share } menos
price-more = { $share } más
price-same = Igual
change-range = De { $least } a { $most }
now-to-then = { $now } → { $then }
shown-for = Se muestra { $drink }, la que más eligen estos clientes. Las demás son distintas.
nearby-at = Precio local, { $size }
from-local-prices = { $prices ->
    [one] De 1 precio que vio
   *[other] De { $prices } precios que vio
}
about-price = cerca de { $price }
tips-if-fewer = { $lost ->
    [one] Conviene si con un precio 10% más alto se va menos de 1 de 100 clientes.
   *[other] Conviene si con un precio 10% más alto se van menos de { $lost } de 100 clientes.
}
tips-if-more = { $draws ->
    [one] Conviene si con un precio 10% más bajo llega más de 1 cliente nuevo por cada 100.
   *[other] Conviene si con un precio 10% más bajo llegan más de { $draws } clientes nuevos por cada 100.
}
tips-cannot = { $draws ->
    [one] Necesitaría { $buyers } clientes por cada 100 de hoy. Un precio 10% más bajo debe atraer a más de 1 por cada 100.
   *[other] Necesitaría { $buyers } clientes por cada 100 de hoy. Un precio 10% más bajo debe atraer a más de { $draws } por cada 100.
}
studies-average = En estudios de comida fuera de casa, el promedio es de 7 a 8. Un negocio con competencia cerca suele perder más.
size-counts-too = Aquí también cuenta el cambio de tamaño, no solo el precio.

what-to-keep = Tarjetas e inventario
stock-of-menu = Los envases, las tapas y el inventario cuentan todo su menú: otras bebidas también los usan.
cards-now-then = { $then ->
    [one] { $now } → 1 tarjeta
   *[other] { $now } → { $then } tarjetas
}
one-time-figure = { $cost }, { $payback }
payback-in = { $weeks ->
    [one] se recupera en 1 semana
   *[other] se recupera en { $weeks } semanas
}
payback-none = no se recupera
payback-now = nada que recuperar
leftover-of = { $name }: quedan { $cost } en inventario.
drinks-counted = { $drinks ->
    [one] 1 bebida
   *[other] { $drinks } bebidas
}
buyers-now = Clientes por semana
buyers-expected = Esperados por semana
turns-to = Pasan a
comes-from = Vienen de
profit-then = Ganancia después
profit-there = Ganancia ahí
profit-here = Ganancia aquí
profit-all-stay = Ganancia si todos se quedan
breaks-even = Iguala con
even-always = siempre
they-leave = Se van
rows-rounded = El dinero se redondea en cada renglón; los totales no.
now-of-sizes = La ganancia semanal de hoy cuenta a todos los clientes de los tamaños de donde vienen.
some-sales-expected = Los tamaños sin semanas todavía cuentan el número escrito en la bebida.
sales-from-weeks = { $weeks ->
    [one] Las ventas semanales son de 1 semana que anotó.
   *[other] Las ventas semanales son el promedio de { $weeks } semanas que anotó.
}
sales-as-typed = Las ventas semanales son las escritas en cada bebida.
show-the-math = Ver el cálculo
math-drop = ({ $now } hoy − { $kept } sin ningún cliente) ÷ { $all } que dejan los clientes si todos se quedan = { $share }.
math-add = ({ $all } si todos son nuevos − { $now } hoy) ÷ { $taken } que se pierden si todos vienen de otro tamaño = { $share }.
math-size = El tamaño pesa la cuarta parte de lo que pesa el precio. Fuente: un estudio de envases más chicos (Çakir y Balagtas, 2014).
math-elasticity = En el punto de cambio, con 1% más de precio se va cerca del { $lost } de los clientes (elasticidad { $elasticity }).
profit-by-buyers = Ganancia por clientes
new-plan = Tamaños cambiados

what-changes = Qué cambia
expected-of = { $drink }, ventas por semana
new-price-for = { $drink }, precio nuevo
buyers-turn-to = Los clientes pasan a
nearest-size = El tamaño más cercano
count-labor = Contar mano de obra
weeks-swing = { $weeks ->
    [one] En 1 semana, la ganancia varía cerca de { $swing }.
   *[other] En { $weeks } semanas, la ganancia varía cerca de { $swing } de una semana a otra.
}
hidden-in-swing = Una diferencia de { $gain } no se nota en una semana.
swing-needs-weeks = Anote al menos dos semanas de ventas para ver cuánto varían.
keep-as-scenario = Guardar como escenario
print-decision = Imprimir hoja de decisión
use-this = Usar esto
use-this-list = Esto cambia su menú
change-menu = Cambiar el menú
not-yet = Todavía no
use-adds = { $offer }: se agrega a { $price }, { $sold } por semana.
use-adds-unsold = { $offer }: se agrega a { $price }.
use-removes = { $offer }: ya no se vende.
use-sells = { $offer }: { $then } por semana en lugar de { $now }.
use-assumes = Estas ventas semanales suponen que se quedan { $buyers } de 100 clientes. Aún no son ventas reales.
use-assumes-taken = Estas ventas semanales son las que usted espera, con { $buyers } de 100 de otros tamaños. Aún no son ventas reales.
use-assumes-per-100 = Estas ventas semanales suponen { $buyers } clientes por cada 100 de hoy. Aún no son ventas reales.
named-staying = { $name }, se quedan { $buyers } de 100
named-taken = { $name }, { $buyers } de 100 de otros tamaños
named-per-100 = { $name }, { $buyers } clientes por 100
use-price = { $offer }: { $then } en lugar de { $now }.
use-keeps = Las ventas pasadas se conservan. Deshacer recupera el menú de hoy.
use-cannot = Qué queda como está
menu-changed = Su menú cambió. Deshacer lo deja como estaba.

no-answer-sales = Faltan ventas semanales. Escriba cuántas vende o espera vender.
no-answer-one-size = Solo vende { $size }. Elija un tamaño para agregar.
no-answer-not-sold = Ninguna de estas bebidas se vende en { $size }. Elija un tamaño que venda.
no-answer-same = Los dos tamaños son { $size }. Elija uno distinto.
no-answer-nothing-left = { $drink } no gana nada a su precio. Escriba un precio más alto.
no-answer-nobody = Ninguna de estas bebidas se vende en otro tamaño, así que nadie puede quedarse. Perdería { $profit } por semana.
no-answer-price = { $drink } no tiene precio. Escriba el precio que pondría.
not-counted = { $offer }: { $reason }
not-counted-price = aún sin precio
not-counted-sales = sin ventas semanales
weekly-sales = Ventas semanales
price-range = de { $low } a { $high }
before-tax = Precio antes de impuesto
after-tax = Paga el cliente
tightest-spare = La más justa es { $drink }: sobran { $before } antes de impuesto, { $after } con impuesto.
tightest-lacks = La más lejos es { $drink }: faltan { $before } antes de impuesto, { $after } con impuesto.
spare = sobran { $price }
lacks = faltan { $price }
no-price-is-enough = { $drink }: ningún precio llega a su meta.
open-drink = Abrir esta bebida
of-ten-stay = De 10, se quedan
of-ten-stay-about = Su propio cálculo: de 10 clientes, ¿cuántos se quedan si un precio sube 10%?
of-ten-moves-down = Los tamaños chicos cuestan menos y ganan clientes: cuanto más importa el precio, más ganan.
of-ten-above-zero = Algunos clientes siempre se quedan. Escriba un número mayor que 0, hasta 10.
no-plan-pays = Ningún otro grupo de tamaños conviene
plan-pays-if = { $stay ->
    [one] { $plan } conviene si se queda 1 de 100 de los demás
   *[other] { $plan } conviene si se quedan { $stay } de 100 de los demás
}
plan-pays-always = { $plan } conviene aunque se vayan los demás
plan-today = Hoy, con { $sizes }, gana { $profit } por semana antes de renta y luz.
one-size-most-tried = Un tamaño: { $plan }, hoy lo elige el { $share }. { $needs }
two-sizes-most-tried = Dos tamaños: { $plan }, hoy los elige el { $share }. { $needs }
three-sizes-most-tried = Tres tamaños: { $plan }, hoy los elige el { $share }. { $needs }
needs-stay = { $stay ->
    [one] Conviene si se queda 1 de 100 de los demás.
   *[other] Conviene si se quedan { $stay } de 100 de los demás.
}
needs-none = Conviene aunque se vayan los demás.
needs-more = No conviene nunca.
plan-chosen = { $cards ->
    [one] Hoy los elige el { $share }. 1 tarjeta.
   *[other] Hoy los elige el { $share }. { $cards } tarjetas.
}
stay-short = { $stay } de 100
stay-none = 0 de 100
stay-over = más de 100
plans-tried = Planes más probados
plans-tried-about = Primero van los tamaños que más clientes eligen hoy. El número dice cuántos deben quedarse de los que pueden.
plans-by-guess = Planes según usted
plans-counted = { $plans ->
    [one] 1 plan
   *[other] { $plans } planes
}
more-plans = Más planes
hardly-tried = Casi sin probar
hardly-tried-about = Menos de 1 de 10 clientes elige hoy estos tamaños, así que se sabe poco de ellos.
plans-cannot-pay = No convienen
plans-cannot-pay-about = Ganan menos que hoy aunque se queden todos los clientes.
stay-of-100 = Ganancia con { $buyers } de 100
order-of-plans = Orden de los planes
by-evidence = Más probados
by-profit = Por ganancia
by-profit-about = Estas ganancias son de su propio cálculo, no de ventas.
about-profit = cerca de { $profit } por semana
guess-stays-more = { $buyers ->
    [one] Según usted, se queda 1 de 100: cerca de { $profit } más por semana.
   *[other] Según usted, se quedan { $buyers } de 100: cerca de { $profit } más por semana.
}
guess-stays-less = { $buyers ->
    [one] Según usted, se queda 1 de 100: cerca de { $profit } menos por semana.
   *[other] Según usted, se quedan { $buyers } de 100: cerca de { $profit } menos por semana.
}
guess-becomes-more = { $buyers ->
    [one] Según usted, de 1 cliente pasa a { $then }: cerca de { $profit } más por semana.
   *[other] Según usted, de { $buyers } clientes pasa a { $then }: cerca de { $profit } más por semana.
}
guess-becomes-less = { $buyers ->
    [one] Según usted, de 1 cliente pasa a { $then }: cerca de { $profit } menos por semana.
   *[other] Según usted, de { $buyers } clientes pasa a { $then }: cerca de { $profit } menos por semana.
}
plan-pays-guess = Según usted, { $plan } gana cerca de { $profit } más por semana
no-plan-guess = Según usted, ningún otro grupo de tamaños gana más
plans-earn-less = Ganan menos
plans-earn-less-about = Según usted, estos ganan menos que hoy.
decide-on-plan = Decidir sobre esto
size-to-try = Tamaño por probar
what-to-ask = Lo que usted dice
