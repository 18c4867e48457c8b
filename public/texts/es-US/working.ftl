# The math behind a number: what each step is, and how its figure follows from those before.

## Around the math

the-math = Las cuentas
back = Regresar
print = Imprimir
this-size = Este tamaño
about = Vea el cálculo de cada número, paso por paso. Los pasos con cálculo aparte siguen más abajo.
no-number-yet = Este número aún no está listo.

## Where a figure is from

entered-in-book = Anotado en Libro.
entered-in = Anotado en { $name }.
starting-figure-of = Dato inicial de { $name }.
own-math = Tiene sus cuentas aparte.
whole-amount = El total es 100%.
minutes-in-an-hour = Una hora tiene 60 minutos.
seconds-in-a-minute = Un minuto tiene 60 segundos.
milliliters-in-a-liter = Un litro tiene 1000 mililitros.
ounces-in-a-gallon = Un galón tiene 128 fl oz.
weeks-in-a-year = Un año tiene 52 semanas.
ice-by-source = El hielo a 0 °C pesa { $density } (IAPWS R10-06).
melted-by-source = El agua a 20 °C pesa { $density } (IAPWS R6-95).
shown-per-this = El costo o precio se muestra por esta cantidad.
typed-here = Escrito solo aquí. Su libro no guarda este precio.
tolerable-error = El error tolerable de menos para este tamaño (76/211/EEC, Annex I, 2.4).
least-spreads = Al menos tres dispersiones. Cerca de 1 de cada 740 envases quedaría más abajo.
water-by-source = Agua a esa temperatura (Tanaka y otros, Metrologia 38, 2001).
quantile = En una distribución normal, { $share } queda más abajo del promedio que este número de dispersiones.
up-to-fullest = En una distribución normal, cerca de 1 de cada 740 envases queda más lleno.

## Sums

named-figure = { $name } { $figure }
equation = { $terms } = { $result }.
equation-rounded = { $terms } = { $result }. Cada dato va redondeado.
only = { $name }, nada más: { $result }.
nothing-entered = Nada anotado: { $result }.

## What is bought

stage-of = { $name }, { $stage }
in-the-recipe = { $goods }, en la receta
in-the-drink = { $goods }, en la bebida
amount-needed = { $goods }, cantidad necesaria
piece-size = { $goods }, tamaño de pieza
weight = { $goods }, peso
volume = { $goods }, volumen
volume-with-air = { $goods }, volumen con aire
cost-of = { $goods }, costo
per-drink = { $goods }, por bebida
whole-pieces = { $goods }, piezas enteras
pieces-before-rounding = { $goods }, piezas sin redondear
as-purchased = { $goods }, como se compra
as-purchased-by-weight = { $goods }, como se compra, en peso
trim-yield = { $goods }, rendimiento limpio
juice-yield = { $goods }, rendimiento de jugo
season-trim-yield = { $goods }, rendimiento limpio de esta temporada
season-juice-yield = { $goods }, rendimiento de jugo de esta temporada
frozen-share = { $goods }, aún congelado
melted-share = { $goods }, derretido
frozen-volume = { $goods }, volumen aún congelado
melted-volume = { $goods }, volumen derretido
soaked-or-brewed-weight = { $goods }, peso tras remojo o infusión
density = { $goods }, densidad
juice-density = { $goods }, densidad del jugo
cup-weight = { $goods }, peso por taza
juice-cup-weight = { $goods }, peso del jugo por taza
piece-weight = { $goods }, peso por pieza
solid-ice-per-scoop = { $goods }, hielo sólido por cucharón
pack-size = { $goods }, contenido del paquete
case-price = { $goods }, precio del paquete
case-price-from = { $goods }, precio del paquete desde { $packs } a la vez
packs-per-order = { $goods }, paquetes por pedido
delivery-or-deposit = { $goods }, entrega o depósito
paid-per-pack = { $goods }, pagado por paquete
piece-cost = { $goods }, costo por pieza

## A container and its fill

brimful-capacity = Capacidad al ras
headspace = Espacio libre
headspace-share = Parte de espacio libre
headspace-height = Altura de espacio libre
base-diameter = Base por dentro
rim-diameter = Borde por dentro
inside-height = Altura por dentro
reading-height = Altura de lectura
reading-volume = Volumen de lectura
recipe-multiple = Veces la receta
multiple-before-whole = Veces la receta antes de piezas enteras
fixed-amounts = Cantidades fijas
left-to-fill = Falta por llenar
recipe-volume = Volumen de receta
air = Aire al licuar
with-air = Volumen con aire
liquid-density = Densidad del líquido
liquid-cup-weight = Peso del líquido por taza
liquid-weight = Peso del líquido
liquid-volume = Volumen del líquido
press-or-pour-loss = Pérdida al prensar o servir
kept-after-loss = Queda tras la pérdida

## Labor

total-labor = Mano de obra total
labor-per-drink = Mano de obra por bebida
labor-per-liter = Mano de obra por litro
labor-per-gallon = Mano de obra por galón
labor-for-fill = Mano de obra por llenado
labor-per-batch = Mano de obra por tanda
drinks-per-batch = Bebidas por tanda
fill-without-ice = Llenado sin hielo
batch-labor-share = Parte de la tanda
hourly-wage = Sueldo por hora

## Costs

waste-share = % de merma
sold-share = % vendido
cost-before-waste = Costo antes de merma
waste = Merma
given-away-share = Parte regalada
paid-share = Parte pagada
cost-before-free = Costo antes de gratis
overhead-per-week = Gastos generales por semana
ingredients-and-packaging = Ingredientes y empaque
ingredients-packaging-labor = Ingredientes, empaque y mano de obra
card-fee-share = Cargo por tarjeta, %
card-fee-with-tax = Cargo por tarjeta con impuesto
transaction-fee-per-drink = Parte del cargo por transacción
drinks-per-payment = Bebidas por pago
deposit-card-fee = Cargo por el depósito
commission-with-tax = Comisión con impuesto
card-fee = Cargo por tarjeta
commission-share = Comisión, %
commission = Comisión de la app de entregas
fees = Cargos
costs-to-cover = Costos por cubrir
share-for-costs = % para costos

## Prices

price-and-tax = Precio más impuesto
target-before-tax = Meta antes de impuesto
exact-target-price = Precio meta exacto
menu-price = Precio de menú
price-before-tax = Precio antes de impuesto
customer-pays = Paga el cliente
deposit-with-tax = Depósito con impuesto
average-payment = Pago promedio
average-with-tax = Promedio con impuesto
average-price = Promedio antes de impuesto
paid-on-average = Se paga en promedio
after-discounts = Tras descuentos
after-markdowns = Tras rebajas
lost-to-markdowns = Se pierde en rebajas
markdown = Rebaja
margin-amount = Margen en dinero
price-per-volume = Precio por medida
cost-per-volume = Costo por medida
profit-per-volume = Ganancia por medida
profit-per-labor-minute = Ganancia por minuto de trabajo
versus-smallest-size = Contra el más chico
extra-price = Precio extra
extra-cost = Costo extra
extra-profit = Ganancia extra
extra-before-tax = Extra antes de impuesto
share-of-extra-kept = Parte extra que queda
highest-drink-cost = Tope de costo
before-fee-per-transaction = Antes del cargo por transacción
highest-cost-made = Tope antes de merma
highest-cost-before-overhead = Tope antes de gastos generales
highest-ingredient-cost = Tope de ingredientes

## Packages

labeled-size = Tamaño en etiqueta
labeled-size-measured = Tamaño en etiqueta ajustado
allowed-variation = Variación permitida
tolerance-measured = Variación permitida ajustada
water-by-law = Agua según la ley
water-measured = Agua, medida
packages-per-batch = Envases por tanda
root-of-packages = Raíz cuadrada
added-for-average = Extra por promedio
average-for-batch = Promedio para la tanda
lowest-allowed = Mínimo permitido
added-for-spread = Extra por dispersión
average-for-packages = Promedio para envases
fill-to = Llenar hasta
giveaway = Excedente por envase
giveaway-cost = Costo del excedente
giveaway-cost-per-year = Costo del excedente al año
packages-per-year = Envases por año
fill-variation = Variación de llenado
fullest-package = Envase más lleno
room-for-closure = Espacio para tapa
room-in-container = Espacio en envase
net-contents = Contenido neto
net-volume = Volumen neto
average-weighed = Promedio pesado
standard-deviation = Desviación estándar
drink-weight = Peso de bebida
drink-density = Densidad de bebida
drink-cup-weight = Peso de bebida por taza

## What is the same everywhere

whole = El total
hour = Una hora
minute = Un minuto
liter = Un litro
gallon = Un galón
ice-density = Densidad del hielo
melted-density = Densidad del hielo derretido
shown-for = Se muestra por
spreads = Número de dispersiones
year = Semanas por año

## How a cost of what is bought follows

cost-from-pack = { $bought } de un paquete de { $pack } a { $price } = { $result }.
paid-by-piece = { $paid } ÷ { $pack } = { $result } por pieza.
price-by-order = Al comprar { $packs } a la vez, cada paquete cuesta { $result }.
by-juice-yield = { $juice } de jugo ÷ { $share } de rendimiento de jugo = { $result } como se compra.
by-juice-and-trim-yield = { $juice } de jugo ÷ { $share } de rendimiento de jugo ÷ { $trim } de rendimiento limpio = { $result } como se compra.
by-soaked-weight = { $weight } ÷ { $share } de peso tras remojo o infusión = { $result } como se compra.
by-soaked-weight-and-trim-yield = { $weight } ÷ { $share } de peso tras remojo o infusión ÷ { $trim } de rendimiento limpio = { $result } como se compra.
by-trim-yield = { $trimmed } ÷ { $trim } de rendimiento limpio = { $result } como se compra.
purchased-by-piece = { $amount } a { $piece } por pieza = { $result } como se compra.
purchased-by-density = { $amount } a { $density } = { $result } como se compra.

## How an amount of a recipe follows

juice-at-density = { $juice } de jugo a { $density } = { $result }.
pieces-by-weight = { $pieces } a { $piece } por pieza = { $result }.
pieces-by-weight-and-yield = { $pieces } a { $piece } por pieza × { $share } de rendimiento = { $result }.
pieces-by-weight-and-yields = { $pieces } a { $piece } por pieza × { $trim } de rendimiento limpio × { $share } de rendimiento = { $result }.
scoop-of-ice = { $scoop } de cubos × { $solid } de hielo sólido × { $density } = { $result }.
at-density = { $amount } a { $density } = { $result }.
share-at-density = { $weight } × { $share } a { $density } = { $result }.
with-air-blended-in = { $volume } × { $air } con aire = { $result }.
whole-pieces-that-fill = Piezas enteras que llenan la bebida con todo lo demás: { $result }.
fills-the-rest = En la receta, { $recipe } llena { $fills }. Con { $left } por llenar, lleva { $result }.
before-loss = { $drink } en la bebida ÷ { $kept } que queda tras la pérdida = { $result }.
pieces-times-size = { $pieces } × { $size } = { $result }.
recipe-times = { $recipe } en la receta × { $times } = { $result }.
nearest-whole = { $pieces } al número entero más cercano = { $result }.
pieces-in-size = { $recipe } en la receta × { $times } ÷ { $size } por pieza = { $result }.

## How a fill follows

brimful-less-headspace = { $brimful } al ras − { $headspace } de espacio libre = { $result }.
cup-by-measures = Un vaso de { $base } de base, { $rim } de borde y { $height } de alto = { $result }.
last-pour = Con lo último que se vierte, llega al borde: { $result }.
share-of-brimful = { $brimful } al ras × { $share } = { $result }.
top-of-container = La franja de { $height } bajo el borde = { $result }.
fill-by-recipe = { $left } por llenar ÷ { $recipe } en la receta = { $result }.
recipe-that-fills = La receta × { $result } llena { $fill }.
whole-and-air = { $whole } + { $air } de aire = { $result }.
weight-by-volume = { $weight } ÷ { $volume } = { $result }.

## How a cost follows

time-at-wage = { $time } a { $wage } por hora = { $result }.
time-for-fill-by-gallon = { $time } por galón × { $fill } = { $result }.
time-for-fill = { $time } por litro × { $fill } = { $result }.
time-of-batch = { $time } ÷ { $drinks } por tanda = { $result } por bebida.
time-of-batch-by-volume = { $time } × { $fill } ÷ { $batch } por tanda = { $result } por bebida.
overhead-of-week = { $overhead } por semana ÷ { $drinks } bebidas vendidas = { $result } por bebida.
sold-in-week = Ventas usuales por semana de todos los tamaños, sumadas: { $result }.
waste-per-drink = { $cost } por bebida hecha × { $waste } de merma ÷ { $sold } vendido = { $result }.
free-per-drink = { $cost } por bebida × { $free } regalado ÷ { $paid } pagado = { $result }.
fee-on-price-and-tax = { $fee } de cargo por tarjeta × { $taxed } de precio más impuesto = { $result } del precio.
commission-on-price-and-tax = { $share } de comisión × { $taxed } de precio más impuesto = { $result } del precio.
fee-of-drink = { $fee } por pago ÷ { $drinks } bebidas = { $result } por bebida.
fee-on-deposit = { $share } de los { $deposit } de depósito = { $result }.
share-of-customer-pays = { $share } de los { $pays } que paga el cliente = { $result }.
share-of-price = { $share } de los { $price } de precio antes de impuesto = { $result }.

## How a price follows

price-plus-tax = { $whole } + { $tax } de impuesto = { $result }.
costs-by-share = { $costs } por cubrir ÷ { $share } del precio = { $result }.
costs-by-share-and-paid = { $costs } por cubrir ÷ { $share } del precio ÷ { $paid } pagado en promedio = { $result }.
target-times-tax = { $price } antes de impuesto × { $taxed } = { $result }.
no-tax-inside = El precio de menú no lleva impuesto incluido: { $result }.
rounded-up = { $price } redondeado hacia arriba a sus terminaciones de precio = { $result }.
menu-price-without-tax = { $price } con impuesto ÷ { $taxed } = { $result } antes de impuesto.
menu-price-times-tax = { $price } de precio de menú × { $taxed } = { $result }.
deposit-times-tax = { $deposit } de depósito × { $taxed } = { $result }.
average-times-tax = { $price } antes de impuesto × { $taxed } = { $result } en promedio.
price-times-paid = { $price } antes de impuesto × { $paid } pagado en promedio = { $result }.
discounts-and-markdowns = { $discounts } tras descuentos × { $markdowns } tras rebajas = { $result }.
markdowns-of-drinks = { $drinks } de las bebidas × { $cut } menos = { $result }.
nothing-added = Al precio de menú no se le agrega nada: { $result }.
margin-by-price = { $margin } de margen ÷ { $price } antes de impuesto = { $result }.
per-volume = { $money } por { $fill } = { $result } por { $unit }.
per-labor-minute = { $profit } por { $time } de mano de obra = { $result } por minuto.
against-smallest = { $price } ÷ { $smallest } del tamaño más chico = { $result }.
more-than-smaller = { $large } − { $small } del siguiente tamaño más chico = { $result }.
share-of-price-for-costs = { $price } antes de impuesto × { $share } para costos = { $result }.
cost-per-drink-made = { $cost } por bebida vendida × { $sold } vendido = { $result } por bebida hecha.
cost-per-drink-paid = { $cost } por bebida vendida × { $paid } pagado = { $result } por bebida hecha.
cost-per-drink-made-and-paid = { $cost } por bebida vendida × { $paid } pagado × { $sold } vendido = { $result } por bebida hecha.
extra-kept = { $profit } más de ganancia ÷ { $price } más antes de impuesto = { $result }.

## How a fill target follows

larger-of-averages = La tanda necesita { $average } en promedio, y cada envase necesita { $single }. El mayor es { $result }.
larger-of-size = El tamaño en etiqueta es { $size }, y cada envase necesita { $single } en promedio. El mayor es { $result }.
size-plus-average = { $size } de tamaño en etiqueta + { $more } por el promedio = { $result }.
labeled-size-only = No anotó envases por tanda, así que llene al tamaño en etiqueta: { $result }.
by-water = { $size } × { $law } según la ley ÷ { $measured } como se midió = { $result }.
single-by-root = { $single } para un solo envase ÷ { $root } = { $result }.
root-of = La raíz cuadrada de { $packages } = { $result }.
size-less-tolerance = { $size } de tamaño en etiqueta − { $tolerance } permitido = { $result }.
least-plus-spread = { $least } de mínimo permitido + { $more } por la dispersión = { $result }.
spreads-times = { $times } × { $spread } de dispersión = { $result }.
giveaway-in-ingredients = { $cost } de ingredientes ÷ { $fill } × { $giveaway } de excedente = { $result }.
giveaway-in-a-year = { $cost } por envase × { $packages } por año = { $result }.
weeks-times = { $drinks } por semana × { $weeks } semanas = { $result }.
average-of = { $weighings ->
    [one] El promedio de 1 pesada es { $result }.
   *[other] El promedio de { $weighings } pesadas es { $result }.
}
spread-of = { $weighings ->
    [one] La desviación estándar de 1 pesada es { $result }.
   *[other] La desviación estándar de { $weighings } pesadas es { $result }.
}
