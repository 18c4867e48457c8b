# Deciding on sizes: the front page of Sizes, how many sizes, switching sizes, a price limit, local prices.

## The front page

sizes-question = ¿Qué tamaños conviene vender?
choose-sizes = Elegir tamaños
your-data = Sus datos
nothing-sold-yet = Aún no vende tamaños
nothing-sold-yet-about = Dé a una bebida dos o más tamaños con precio. Luego compárelos aquí.
open-drinks = Abrir Bebidas
side-by-side = Lado a lado
side-by-side-about = Costo, precio y ganancia de cada tamaño.
switch-sizes-about = Cuántas vender para ganar lo mismo.
how-many-sizes-about = Lo que se gana con uno, dos o tres tamaños.
price-limit-about = Qué alcanza con un precio ya fijo.
sales-about = Ventas por semana de cada tamaño.
local-prices-about = Cuánto cobran los demás y dónde queda usted.
trials-about = ¿Funcionó el cambio?
scenarios-about = Otro menú junto al de hoy.

## What several questions ask

which-drinks = Qué bebidas
sizes-to-compare = Tamaños por comparar
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
how-many-sizes-explained = Un plan es un grupo de tamaños. Vea cuánto gana y qué necesita cada uno.
rule-of-thumb-sizes = Regla general (sin fuente publicada): uno es lo más sencillo, dos funcionan bien, tres son muchos. Sus propios números van primero.
no-containers-yet = Aún no hay envases. Un plan necesita un envase y una bebida con precio.
add-a-container = Agregar envase
what-to-compare = Qué comparar
most-sizes-chosen = { $most ->
    [one] Se puede comparar 1 tamaño a la vez. Quite uno para agregar otro.
   *[other] Se pueden comparar { $most } tamaños a la vez. Quite uno para agregar otro.
}
weeks-to-stock = Semanas por surtir
upkeep-per-size = Gasto semanal por tamaño
assumed-sales = Ventas semanales supuestas
assumed-sales-for = Sin ventas semanales: { $drinks }.
assumed-sales-zero = Estas bebidas cuentan como 0 hasta que escriba un número aquí o en la bebida.
size-mix = Reparto por tamaño
size-mix-about = ¿Qué parte de las ventas calcula para cada tamaño? Déjelo en blanco para seguir como hoy.
size-share = { $size }, % (hoy { $share })
shares-not-whole = Las partes suman { $sum }, no 100%. Cada plan ajusta las suyas a 100%.

plans-by-profit = Planes por ganancia
best-plan = { $plan } es el plan que más gana: { $profit } por semana.
best-plan-today = Estos tamaños ya los vende hoy.
best-plan-beside = Los tamaños de hoy ganan { $profit }, con cada bebida en cada tamaño.
plan-bars-explained = Las barras muestran la ganancia por semana. Cada bebida se vende en cada tamaño, a su precio o al sugerido.
same-number-of-drinks = Cada plan cuenta las mismas bebidas que vende hoy. Si cree que perderá clientes, baje “Clientes que se quedan” más abajo.
plan = Plan
container-types = Tipos de envase
lid-types = Tipos de tapa
opening-stock = Inventario inicial
weeks-of-stock = Inventario dura
show-all-plans = { $plans ->
    [one] Ver 1 plan
   *[other] Ver los { $plans } planes
}
best-of-one-size = el mejor de un tamaño
best-of-two-sizes = el mejor de dos tamaños
best-of-three-sizes = el mejor de tres tamaños
todays-sizes = los tamaños de hoy
your-plan = su plan
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
no-sales-yet = aún sin ventas

two-plans = Dos planes
first-plan = Primer plan
second-plan = Segundo plan
stay-with-first = Clientes que se quedan, primer plan, %
stay-with-second = Clientes que se quedan, segundo plan, %
choose-two-plans = Elija dos planes distintos para ver qué cambia.
save-first-plan = Guardar primer plan como escenario
save-second-plan = Guardar segundo plan como escenario
save-plan = Guardar como escenario
scenario-name = { $sizes }: { $plan }
two-plans-explained = Un tamaño se paga cuando sus ventas extra cubren lo que pierden los demás. Recuperación: inventario inicial extra entre ganancia extra por semana.
own-plan = Su propio plan
own-plan-about = Elija los tamaños que quiera. Su plan entra en la lista como segundo plan.
own-plan-sizes = Tamaños de su plan

plan-earns-more = { $plan } gana { $profit } más por semana que { $other }.
plan-earns-less = { $plan } gana { $profit } menos por semana que { $other }.
plan-earns-same = { $plan } gana lo mismo por semana que { $other }.
upkeep-then-more = Después de { $upkeep } por semana por tener más tamaños, gana { $profit } más.
upkeep-then-less = Después de { $upkeep } por semana por tener más tamaños, gana { $profit } menos.
upkeep-saved-then-more = Con menos tamaños también ahorra { $upkeep } por semana, y en total gana { $profit } más.
upkeep-saved-then-less = Con menos tamaños también ahorra { $upkeep } por semana, pero en total gana { $profit } menos.
stock-more = Necesita { $cash } más de inventario inicial.
stock-less = Necesita { $cash } menos de inventario inicial.
stock-same = El inventario inicial queda igual.
stock-pays-back = El inventario extra se recupera en { $weeks }.
stock-never-pays-back = No hay ganancia extra que lo recupere.
size-without-price = Ninguna bebida tiene precio en { $size }, así que ahí no se vende nada.
size-pays-already = { $size } se paga sin ventas extra.
size-pays-from = { $drinks ->
    [one] { $size } se paga con 1 bebida extra vendida por semana.
   *[other] { $size } se paga con { $drinks } bebidas extra vendidas por semana.
}
size-pays-why = Agregar el tamaño cuesta { $lost } por semana, y la ganancia por bebida es { $profit }.
size-never-pays = Ni vendiendo más se paga { $size }. La ganancia por bebida es { $profit }.

plan-math = Ver las cuentas: { $plan }
not-included = Queda fuera
plan-leaves-out = { $sizes ->
    [one] { $plan }: 1 tamaño de bebida queda fuera. Vea las cuentas para saber por qué.
   *[other] { $plan }: { $sizes } tamaños de bebida quedan fuera. Vea las cuentas para saber por qué.
}
plan-note = { $plan }: { $note }
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
week-math = { $drink }: { $sold } por semana × { $each } de ganancia por bebida = { $profit }, a { $price }.
week-math-suggested = { $drink }: { $sold } por semana × { $each } de ganancia por bebida = { $profit }, a { $price } (precio sugerido).
week-without-sales = { $drink }: sin ventas semanales. La ganancia por bebida es { $each } a { $price }.
week-without-sales-suggested = { $drink }: sin ventas semanales. La ganancia por bebida es { $each } a { $price } (precio sugerido).
week-without-price = { $drink }: sin precio.
stock-math = { $packs ->
    [one] { $name }: 1 paquete ({ $pieces } piezas) por { $cost }. Si usa { $used } por semana, dura { $weeks }.
   *[other] { $name }: { $packs } paquetes ({ $pieces } piezas) por { $cost }. Si usa { $used } por semana, duran { $weeks }.
}
stock-math-unused = { $packs ->
    [one] { $name }: 1 paquete ({ $pieces } piezas) por { $cost }. Aún no hay ventas que lo usen.
   *[other] { $name }: { $packs } paquetes ({ $pieces } piezas) por { $cost }. Aún no hay ventas que los usen.
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

switch-sizes = Cambiar de tamaño
switch-sizes-explained = Un tamaño sale y otro entra. Vea cuántas vender para ganar lo mismo.
switch-teach = ¿Ganaría lo mismo con otro tamaño?
switch-teach-about = Primero venda una bebida en un tamaño, con precio. Luego vea qué pide y qué cuesta el cambio.
sizes-to-switch = Tamaños que cambian
current-size = Tamaño actual
new-size = Tamaño nuevo
both-sizes-same = Los dos tamaños son { $size }. Elija otro tamaño nuevo.
none-sold-in-size = Ninguna de estas bebidas se vende en { $size }. Elija un tamaño que venda.
switch-to = Cambiar a { $size }
now-sold-in = Ahora se vende en { $size }. Deshacer lo deja como estaba.
switch-explained = El tamaño nuevo toma el lugar del anterior, con los precios y ventas de arriba. Las ventas pasadas quedan anotadas.

new-prices = Precios nuevos
new-prices-about = Pruebe otros precios. Nada se guarda hasta que haga el cambio.
new-price-of = Precio nuevo de { $drink }
price-now = Hoy { $price }.
price-typed-here = Escrito aquí.
price-on-menu = Su precio en este tamaño.
price-suggested = El sugerido para su meta.

break-even-sales = Ventas de equilibrio
no-break-even = Sin punto de equilibrio
no-drink-in-both = Ninguna bebida tiene aún números en los dos tamaños.
sell-instead = Venda { $then } en vez de { $now } por semana ({ $change })
sell-per-hundred = Venda { $then } por cada { $now } que vende hoy ({ $change })
sell-math = { $sold } vendidas hoy × { $now } de ganancia por bebida ÷ { $then } de ganancia en el tamaño nuevo = { $drinks }. Redondee hacia arriba a bebidas enteras.
break-even-same-price = El precio queda igual. El tamaño por sí solo debe conservar a sus clientes.
break-even-cheaper = Punto de equilibrio: un precio { $price } más bajo debe traer { $customers } más de clientes.
break-even-cheaper-rate = Es cerca de { $each } más por cada 1% que baje.
break-even-higher = Punto de equilibrio: con un precio { $price } más alto puede perder { $customers } de sus clientes.
break-even-higher-rate = Es cerca de { $each } de ellos por cada 1% que suba.
break-even-cheaper-earns-more = Cada bebida gana más, aun con un precio { $price } más bajo. Queda en equilibrio con { $customers } menos de clientes.
break-even-higher-earns-less = El precio es { $price } más alto, pero cada bebida gana menos. Solo queda en equilibrio con { $customers } más de clientes.
higher-price-seldom-helps = Un precio más alto rara vez trae clientes.
break-even-equal = Cada bebida gana lo mismo. Queda en equilibrio con los mismos clientes de hoy.
elasticity = Elasticidad del precio en el punto de equilibrio: { $elasticity }.
drinks-without-sales = { $drinks ->
    [one] 1 bebida no tiene ventas semanales y queda fuera.
   *[other] { $drinks } bebidas no tienen ventas semanales y quedan fuera.
}
no-sales-entered = No hay ventas semanales anotadas. Las cuentas usan 100 de cada bebida.
sales-all-zero = Sus ventas semanales están todas en cero. Las cuentas usan 100 de cada bebida.
all-drinks = Todas las bebidas
loss-in-size = { $what }, { $size }: pierde { $loss } con un precio de { $price }.
no-profit-in-size = { $what }, { $size }: no gana nada con un precio de { $price }.
losing-now = Cada una que no vende le ahorra dinero. Corrija primero el precio o el costo de este tamaño.
losing-then = Por más que venda, no gana lo de hoy. Suba el precio nuevo o baje el costo.
losing-both = Por más que venda, no hay ganancia. Corrija precio o costo en los dos tamaños, o quite la bebida del menú.
drink-in-size = { $drink } en { $size }: { $reason }
no-price-to-switch = Aún sin precio. Póngalo en la página de la bebida.
or-type-a-price = O escriba un precio aquí.
by-drink = Por bebida
profit-now = Ganancia hoy
new-size-profit = Ganancia tamaño nuevo
must-sell = Debe vender
sell-for = { $then } en vez de { $now }

if-sales-change = Si cambian las ventas
if-sales-change-about = Lo que usted calcula para el tamaño nuevo, como porcentaje de los clientes de hoy.
customers-who-stay = Clientes que se quedan
customers-who-stay-whole = 100% quiere decir los mismos de hoy.
stay-below-zero = “Clientes que se quedan” no puede ser menos de cero. Escriba 90 para 90%.
stay-earns-per-week = Con { $share } de los clientes de hoy, gana { $profit } por semana.
stay-earns-per-hundred = Con { $share } de los clientes de hoy, 100 de cada bebida ganan { $profit }.
stay-more = Son { $profit } más que los { $today } de hoy.
stay-less = Son { $profit } menos que los { $today } de hoy.
stay-same = Es lo mismo que hoy.
curve-crosses = El tamaño nuevo iguala los { $today } de hoy con { $share } de los clientes. De ahí para arriba, gana más.
curve-all-above = La ganancia de hoy es { $today }. El tamaño nuevo gana más en todos los puntos.
curve-no-profit = El tamaño nuevo no deja ganancia, así que vender más no ayuda. La ganancia de hoy es { $today }.
profit-per-hundred = Ganancia por 100 de cada bebida
profit-by-customers = Ganancia según clientes que se quedan
share-stays = se queda { $share }
sold = Vendidas
profit = Ganancia
versus-today = Contra hoy

one-time-costs = Costos únicos
one-time-costs-about = Los primeros pedidos de empaque, más lo que usted anote.
labels-and-printing = Etiquetas e impresión
leftover-stock = Inventario sobrante
one-time-total = Total de costos únicos
payback = Recuperación
no-new-packaging = El tamaño nuevo no necesita empaque nuevo.
first-order = { $packs ->
    [one] { $name }: 1 paquete para empezar, { $cost }.
   *[other] { $name }: { $packs } paquetes para empezar, { $cost }.
}
first-order-in-use = { $name }: ya lo usa otro tamaño de su menú, así que aquí no cuesta.
first-order-no-price = { $name }: aún sin precio por caja, así que no cuenta. Anótelo en Compras.
payback-weeks = { $weeks } semanas
payback-math = { $cost } de costo único ÷ { $gain } más por semana = { $weeks } semanas.
payback-unknown = aún no se sabe
payback-unknown-about = Gana { $gain } más con 100 de cada bebida. Anote ventas semanales para ver cuándo recupera { $cost }.
payback-at-once = de inmediato
payback-at-once-about = No hay costo único, y usted gana más.
payback-never = no se recupera
payback-never-about = Con { $share } de los clientes de hoy, el tamaño nuevo no gana más que hoy.
payback-never-cost = Por eso los { $cost } no se recuperan.

## A price limit

price-limit = Tope de precio
price-limit-explained = Parta del precio: qué alcanza y cuánto pueden costar los ingredientes. Su libro queda como está.
price-limit-teach = ¿Qué alcanza con su precio?
price-limit-teach-about = Primero venda una bebida en un tamaño. Luego escriba aquí un precio para ver qué alcanza.
your-limit = Su tope
sell-for-no-more-than = Vender a no más de
sizes-shown = Tamaños mostrados
type-a-price = Escriba un precio para ver qué alcanza.
choose-a-size = Elija un tamaño para ver si alcanza.
all-sizes-fit = { $sizes ->
    [one] { $price } sí alcanza para este tamaño.
   *[other] { $price } alcanza para los { $sizes } tamaños.
}
sizes-do-not-fit = { $over ->
    [one] { $price } no alcanza para 1 de { $sizes } tamaños.
   *[other] { $price } no alcanza para { $over } de { $sizes } tamaños. El peor va primero.
}
by-size = Por tamaño
what-to-change = Qué cambiar
no-figures-for-sizes = A estos tamaños les faltan datos. Vea abajo qué falta.
cost-limit = Tope de costo
ingredient-limit = Tope de ingredientes
limit-per-unit = Tope por { $unit }
ingredients-now = Ingredientes hoy
largest-fill = Llenado máximo
at-this-price = Con este precio
limits-explained = El tope por { $unit } es el tope de ingredientes entre el llenado. El llenado máximo es lo más que paga este precio.
whole-fill = { $fill } (lleno)
nothing-fits = no alcanza
not-sold-yet = (aún no se vende)
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
their-price = Precio de ellos
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
farthest-standing = Lo más lejos de la curva es su { $size }: { $standing }.
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
local-curve = Curva local
your-position = Su lugar
none-of-yours-priced = Ninguno de sus tamaños de este tipo tiene precio aún.
your-sizes = Sus tamaños
size-in-unit = Tamaño, { $unit }
