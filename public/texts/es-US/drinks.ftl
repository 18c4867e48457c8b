# Drinks: a drink, its recipe, its sizes, what a size costs and what to charge.

## A drink

new-drink = Bebida nueva
example-drink = Orchard Green
drink-name = Nombre de bebida
drink-type = Tipo de bebida
name-and-type = Nombre y tipo
remove-drink = Quitar bebida
sizes-you-sell = Tamaños que vende
add-size = Agregar tamaño
choose-container = Elija un envase
no-containers = Aún no tiene envases. Para vender un tamaño, primero hay que { $link }.
add-container = agregar un envase
allergens-about = Salen de los ingredientes. Cámbielos en Compras.
compare-sizes = Comparar tamaños
own-target = Meta de esta bebida: { $own }. Meta de su libro: { $book }.

## Making a drink

making = Cómo se hace
making-about = La mano de obra se calcula con el sueldo de Libro. Deje en blanco lo que no use.
blank-uses = En blanco, se usa { $share } de Libro.
press-or-pour-loss = Pérdida al prensar o servir
air = Aire al licuar
air-about = Mida el volumen antes y después de licuar. Anote cuánto subió.
labor-per-drink = Mano de obra por bebida
labor-per-liter = Mano de obra por litro
labor-per-gallon = Mano de obra por galón
minutes-and-seconds = min:seg
time-example = como { $time }
labor-per-batch = Mano de obra por tanda
drinks-per-batch = Bebidas por tanda
processing-fee = Cargo por proceso
processing-fee-about = Por bebida, para HPP o pasteurización.
waste = Merma

## A recipe

recipe = Receta
recipe-about = Escriba la receta una vez, para un tamaño. Los demás tamaños salen de ahí. Use volumen, peso o piezas.
recipe-makes = La receta rinde
recipe-size = Tamaño de receta
ingredients-make = Estos ingredientes rinden { $volume }.
sizes-follow = Los tamaños se calculan a partir de estos { $volume }: para { $makes }, 1 pasa a ser { $factor }.
set-recipe-size = Poner receta en { $volume }
choose-ingredient = Elija un ingrediente
new-ingredient = Ingrediente nuevo
add-ingredient = Agregar ingrediente
add-to-recipe = Agregar a receta
remove-from-recipe = Quitar de receta
ingredient-name = Nombre del ingrediente
name-of-new = Nombre del ingrediente nuevo
example-ingredient = Kale
recipe-amount = Cantidad en receta
amount-of = Cantidad de { $name }
amount-of-new = Cantidad del ingrediente nuevo
prep = Preparación
prep-of = Preparación de { $name }
prep-of-new = Preparación del ingrediente nuevo
scaling = Ajuste por tamaño
scaling-of = { $name } en otros tamaños
scaling-of-new = Ingrediente nuevo en otros tamaños
piece-size = Tamaño de pieza
piece-size-of = Tamaño de pieza de { $name }
ice-packing = Hielo sólido por cucharón
ice-packing-of = Hielo sólido por cucharón de { $name }
ice-packing-about = Los cubos sueltos dejan huecos. Del 54 al 67% de un cucharón es sólido (Baker y Kudrolli 2010, cubos de plástico). Use esto solo como guía.
ice-melted = Hielo derretido
ice-melted-of = Parte derretida de { $name }
ice-melted-about = El hielo derretido ocupa menos. Con { $share } derretido, este hielo ocupa { $volume } menos.
in-glass = Directo al vaso
in-glass-about = Se agrega en el vaso, como agua mineral o adorno: sin pérdida de proceso.
peel-asked = ¿Pesó { $name } con cáscara? La cáscara no es bebida.
peel-asked-piece = { $name }: esto cuenta la cáscara como bebida.
weighed-with-peel = Pesado con cáscara
weighed-trimmed = Pesado en limpio
count-trimmed = Contar en limpio
density-of = Densidad de { $name } en bebidas
cup-weight-of = Peso por taza de { $name }
juice-density-of = Densidad del jugo de { $name }
juice-cup-weight-of = Peso por taza del jugo de { $name }
piece-weight-of = Peso por pieza de { $name }
use-starting-figure = Usar { $figure } por ahora
use-as-water = Usar por ahora el de agua: { $figure }
starting-figure-assumed = { $figure } es un valor supuesto, sin pesar. Pese el suyo cuando pueda.
counts-as-puree = Un volumen cuenta como puré, { $figure }. Pese el suyo cuando pueda.
takes-up-rest = { $names } ocupa lo que dejan las piezas enteras.
take-up-rest = { $names } ocupan lo que dejan las piezas enteras.
all-take-up-rest = Los ingredientes que siguen el tamaño ocupan lo que dejan las piezas enteras.
fill-in = Anotar el dato

## What an amount in a recipe means

as-purchased = como se compra
trimmed = en limpio
pressed = en jugo
soaked-or-brewed = tras remojo o infusión
ice-blended-in = licuado
ice-under-line = bajo la línea
ice-floating = flotando
use-ice-blended-in = hielo, licuado
use-ice-under-line = hielo, bajo la línea
use-ice-floating = hielo, flotando

## How an amount follows the size

scale-with-size = según el tamaño
fixed-amount = cantidad fija
by-the-piece = por pieza
fill-to-the-line = hasta la línea

## Amounts at a size

ingredient = Ingrediente
in-the-drink = En la bebida
amount-needed = Cantidad necesaria
same-amount = igual
air-row = Aire
air-row-about = al licuar
try-a-size = Probar otro tamaño
size-too-small = El tamaño debe ser mayor que cero. Escriba un tamaño, como { $example }.
glass = Envase a escala, con su línea de llenado

## A size

back-to-drink = Bebida
recipe-card = Tarjeta de receta
label-and-fill = Etiqueta y llenado
remove-size = Quitar tamaño
menu-price = Precio de menú
not-known = no se sabe
suggested = Precio sugerido: { $price }, con margen de { $margin }. Precio meta exacto: { $exact }.
lowest-on-target = Precio mínimo en la meta: { $price }, con margen de { $margin }. Precio meta exacto: { $exact }.
set-price = Poner precio en { $price }
target-and-suggested = Meta de { $target }. Con { $price } queda { $margin }.
target-is = Meta de { $target }.
loses-money = Pierde dinero después de todos los costos.
margin-after-discounts = El margen es sobre { $price }, tras descuentos.
margin-after-tax = El margen es sobre { $price }, tras descuentos e impuesto.
recipe-lines = { $lines ->
    [one] 1 renglón
   *[other] { $lines } renglones
}
edit-recipe = Editar receta
label = Etiqueta
fill-from = Llenado de { $fill }: capacidad al ras de { $brimful } menos { $headspace } de espacio libre.
under-labeled-size = Son { $short } menos que el tamaño en etiqueta.
edit-fill = Editar llenado
part = Concepto
share = %

## Where a price goes, from the top down

price-goes = A dónde va el precio
at-suggested-price = Con el precio sugerido, { $price }.
card-fee = Cargo por tarjeta
fees = Cargos
discounts-and-markdowns = Descuentos y rebajas
app-commission = Comisión de la app de entregas
labor-waste = Merma de mano de obra
overhead-waste = Merma de gastos generales
labor-given-away = Mano de obra regalada
overhead-given-away = Gastos generales regalados
profit-that-changes = Ganancia antes de gastos generales
rows-rounded = Cada renglón va redondeado; los totales son exactos.
customer-pays-with-tax = El cliente paga { $price } con impuesto.
customer-pays-with-tax-european = El cliente paga { $price } con IVA o impuesto.
no-wage-yet = Aún no se cuenta la mano de obra: falta el sueldo.
no-time-yet = La mano de obra cuenta cuando anote el tiempo por bebida.
no-packaging-yet = Aún no se cuenta el empaque: no hay ninguno.
no-waste-yet = Aún no se cuenta la merma: no hay dato.
no-weekly-yet = Aún no se cuentan los gastos generales: faltan las ventas por semana.
no-card-fee-yet = Aún no se cuenta el cargo por tarjeta: no se anotó.
no-tax-yet = Aún no se cuenta el impuesto en el precio: falta la tasa.

## Work back from a price

work-back = Tope de precio
work-back-about = Parta de un precio. Vea cuánto puede costar la bebida. Su menú queda igual.
sell-for-no-more-than = Vender a no más de
retailers-cut = Parte de la tienda (%)
retailers-cut-too-high = La parte de la tienda es menor que 100%. Escriba 30 para 30%.
retailer-charges = Una tienda que le paga a usted { $price } cobraría { $shelf }.
highest-cost = Tope de costo
highest-ingredient-cost = Tope de ingredientes
ingredients-per = Tope por { $unit }
largest-fill = Llenado máximo
full-fill = { $fill } (lleno)

## Ways to the target

reach-target = Formas de llegar a su meta
other-ways = Otras formas
see-quotes = Ver precios
see-yield-log = Ver registro
not-enough-alone = (con eso no alcanza)
not-in-margin = no cuenta en este margen
case-price-of = Precio del paquete de { $name }
trim-yield-of = Rendimiento limpio de { $name }
juice-yield-of = Rendimiento de jugo de { $name }
soaked-or-brewed-weight-of = Peso tras remojo o infusión de { $name }
charge-instead = Cobre { $price } en vez de { $now }.
fill-instead = Llene hasta { $fill } en vez de { $now }.
pay-instead = Compre { $name } a { $price } la caja en vez de { $now }.
trim-instead = Al limpiar { $name }, aproveche { $share } en vez de { $now }.
press-instead = Saque { $share } de jugo de { $name } en vez de { $now }.
soak-instead = Remoje o infusione { $name } hasta { $share } de su peso seco en vez de { $now }.
packaging-instead = Pague { $price } por el empaque en vez de { $now }.
waste-instead = Baje la merma de { $now } a { $share }.
labor-instead = Baje la mano de obra por bebida de { $now } a { $time }.
changes-drinks = { $drinks ->
    [one] También cambia otra bebida en este envase.
   *[other] También cambian otras { $drinks } bebidas en este envase.
}
changes-sizes = { $sizes ->
    [one] También cambia otro tamaño de esta bebida.
   *[other] También cambian otros { $sizes } tamaños de esta bebida.
}
label-first = Es menos que el tamaño en etiqueta, { $declared }. Cambie primero el menú o la etiqueta.
set-waste = Poner merma en { $share }
set-labor = Poner mano de obra en { $time }

## Parts of a cost

ingredients = Ingredientes
labor = Mano de obra
overhead = Gastos generales

## What a margin is figured on

on-goods = Ingredientes y empaque
on-labor = Ingredientes, empaque y mano de obra
on-all-costs = Todos los costos
target-margin-about = El margen que debe dejar cada bebida. Una bebida puede tener el suyo. “Ingredientes y empaque” incluye el cargo por proceso (HPP o pasteurización). “Todos los costos” suma mano de obra, gastos generales, cargo por tarjeta y comisión de la app de entregas.

## Choices

rule-average = Solo promedio
rule-europe = Unión Europea o Reino Unido (76/211/EEC)
rule-united-states = Estados Unidos (NIST Handbook 133)
not-answered = Sin respuesta aún
produce-raw = Fruta, verdura, jugo o puré crudo
produce-treated = Con tratamiento (5-log), como jugo pasteurizado
produce-treated-european = Con tratamiento, como jugo pasteurizado
produce-neither = No es fruta ni verdura
treated = Con tratamiento (5-log, como HPP)
treated-european = Con tratamiento, como HPP
not-treated = Sin tratar
not-entered = Sin anotar
packaged-ahead = Envasado por adelantado
by-the-glass = Por vaso
piece-vessel = Botella, vaso o frasco
piece-closure = Tapa o tapón
piece-label = Etiqueta
piece-seal = Sello
piece-straw = Popote
piece-sleeve = Funda
by-water-weight = pesado lleno de agua
by-measures = por medidas interiores
by-pouring = por vertido
tax-included = Incluido en el precio
tax-added = Se suma en la caja
us-customary = Medidas de EE. UU.
metric = Métrico
imperial = Imperial

## What a size needs

size-lost-drink = La bebida de este tamaño ya no está. Quite el tamaño y agréguelo otra vez.
size-lost-container = El envase de este tamaño ya no está. Quite el tamaño y agréguelo otra vez.
size-gone = Este tamaño ya no está. Regrese y agréguelo otra vez.
no-price-reaches = Ningún precio da un margen de { $target }. Los cargos y la comisión dejan menos de { $highest } de cualquier precio. Baje la meta o los cargos.
size-not-a-volume = El tamaño de { $container } no es un volumen. Escriba fl oz o mL.
headspace-too-large = El espacio libre de { $container } no deja lugar para la bebida. Redúzcalo.
headspace-needs-heights = Falta: alturas de { $container }. Anote las medidas interiores o las lecturas por vertido.
over-the-brim = Son { $over } más que la capacidad al ras de { $container }. Revise el volumen.
recipe-empty = La receta está vacía. Agregue un ingrediente.
fixed-too-much = Las cantidades fijas se pasan por { $over } en este tamaño. Bájelas o póngalas según el tamaño.
nothing-scales = Todas las cantidades son fijas y a este tamaño le faltan { $short }. Ponga un ingrediente según el tamaño.
between-pieces = Ningún número de piezas queda en este tamaño: faltan { $short }, o sobran { $over } con una más. Ponga un ingrediente hasta la línea.
nothing-to-float-in = El hielo no tiene en qué flotar. Agregue un líquido.
recipe-lost-ingredient = La receta usa un ingrediente que ya no está. Quite ese renglón.
cost-lost-ingredient = El costo usa un ingrediente que ya no está. Quítelo donde lo use.
cost-lost-packaging = El costo usa un empaque que ya no está. Quítelo donde lo use.
needs-case-price = Falta: precio del paquete de { $name }. Anote el contenido y el precio del paquete en Compras.
needs-juice-yield = Falta: rendimiento de jugo de { $name }. Pese lo que prensa y el jugo que sale. Anote el porcentaje.
needs-soaked-weight = Falta: peso tras remojo o infusión de { $name }. Anote el peso final como porcentaje del peso inicial.
needs-density = Falta: densidad de { $name } en bebidas. En un lado usa peso y en otro, volumen. Anote los gramos por mL.
needs-cup-weight = Falta: peso por taza de { $name } en bebidas. En un lado usa peso y en otro, volumen. Anote cuánto pesa una taza.
needs-juice-cup-weight = Falta: peso por taza del jugo de { $name }. En un lado usa peso y en otro, volumen. Anote cuánto pesa una taza.
needs-juice-density = Falta: densidad del jugo de { $name }. En un lado usa peso y en otro, volumen. Anote los gramos por mL.
needs-piece-weight = Falta: peso por pieza de { $name }. Pese una como se compra.

## Batches and ice
batch-volume = Volumen del lote
tax-rate-of-kind = Déjelo en blanco para usar { $rate } del Libro ({ $kind }).
split-batch = Repartir lote
by-volume = por volumen
by-drinks = por bebidas
batch-volume-about = Cada tamaño toma su parte de este volumen.
drinks-per-batch-about = Cada bebida toma la misma parte.
labor-by-size = Mano de obra por tamaño
labor-of-size = { $size }: { $time }, { $money }
labor-without-wage = { $size }: { $time }
plus-deposit = + { $deposit } de depósito
deposit-beside = El cliente paga además un depósito de { $deposit }. No es parte del precio ni del margen.
no-overhead-yet = Aún no se cuentan los gastos generales: no hay.
