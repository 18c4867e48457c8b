# Ingredients and packaging: packs and their prices, yields, kits, and what a container holds.

## The sides of Buying

quick-price = Precios
price-watch = Seguimiento de precios
buying-list = Lista de compras

## An ingredient

ingredient = Ingrediente
add-ingredient = Agregar ingrediente
new-ingredient = Ingrediente nuevo
remove-ingredient = Quitar ingrediente
ingredient-name = Nombre del ingrediente
ingredient-example = Kale
yields = Rendimiento
yields-about = Pese su propio rendimiento. Los publicados son solo un punto de partida.
trim-is = limpio { $share }
juice-is = jugo { $share }
soaked-is = tras remojo { $share }
name-and-label = Nombre y etiqueta
name-and-type = Nombre y tipo
used-in-drinks = { $drinks ->
    [one] 1 bebida
   *[other] { $drinks } bebidas
}
used-in-sizes = { $sizes ->
    [one] 1 tamaño
   *[other] { $sizes } tamaños
}
used-in-places = { $places ->
    [one] 1 lugar
   *[other] { $places } lugares
}
prices-known = { $prices ->
    [one] 1 precio
   *[other] { $prices } precios
}
pack-bought-now = { $pack }: { $price }
trim-yield = Rendimiento limpio
trim-yield-example = sin limpiar
juice-yield = Rendimiento de jugo
juice-yield-example = sin prensar
soaked-weight = Peso tras remojo o infusión
soaked-weight-example = sin remojar
soaked-weight-note = Muchas veces pasa de { $whole }.
yield-log = Registro de rendimiento
start-yield-log = Empezar registro
yield-log-of = Registro de rendimiento: { $weighings ->
    [one] 1 pesada
   *[other] { $weighings } pesadas
}
weight-and-volume = Peso y volumen
weight-and-volume-about = Hace falta si compra en peso y usa en volumen, o al revés.
juice-density = Densidad del jugo
juice-density-note = Casi todos los jugos: { $low } a { $high }.
drink-density = Densidad en bebidas
juice-cup-weight = Peso del jugo por taza
juice-cup-weight-note = Una taza de casi cualquier jugo pesa de { $low } a { $high } oz. También puede escribir g/mL.
drink-cup-weight = Peso por taza
drink-cup-weight-note = Como líquido o puré, no en trozos. Una taza de casi cualquier fruta pesa de { $low } a { $high } oz.
# Of one US cup: “8.75 oz per cup”.
weight-per-cup = { $weight } por taza
drink-density-note = Como líquido o puré, no en trozos. Casi toda la fruta: { $low } a { $high }.
piece-weight = Peso por pieza
piece-weight-note = Como se compra, antes de limpiar.

## What a label says of an ingredient

on-labels-about = Los envases con jugo, puré, fruta o verdura crudos necesitan advertencia. Lo congelado cuenta como crudo.
on-labels-about-european = El jugo, puré, fruta o verdura crudos de una bebida llevan precauciones. Lo congelado cuenta como crudo.
kind-of-ingredient = Tipo de ingrediente
name-on-labels = Nombre en la etiqueta
name-on-labels-example = apple
name-on-labels-note = Use el nombre común en inglés. La manzana prensada sale como “apple juice”.

## Packaging

add-packaging = Agregar empaque
new-packaging = Empaque nuevo
remove-packaging = Quitar empaque
packaging-name = Nombre del empaque
packaging-example = Popote de papel
packaging-type = Tipo de empaque
choose-packaging = Elegir empaque
name-of-new-packaging = Nombre del empaque nuevo
per-drink = { $name } por bebida
new-packaging-per-drink = Empaque nuevo por bebida
amount-per-drink = Cantidad por bebida

## Packaging kits

packaging-kits = Juegos de empaque
kits-of-container = Una tapa, un popote y una funda para cada vaso: agréguelos una sola vez, como juego.
all-kits = Cambie un juego una sola vez. Cambia también en cada envase que lo usa.
choose-kit = Elegir juego
new-kit = Juego nuevo
add-kit = Agregar juego
remove-kit = Quitar juego
kit-name = Nombre del juego
kit-example = Todos los vasos
in-this-kit = En este juego
in-this-kit-about = Las cantidades son para una bebida.
cost-per-drink = Costo por bebida
items-and-cost = { $items ->
    [one] 1 artículo, { $cost }
   *[other] { $items } artículos, { $cost }
}
no-pack-yet = aún sin paquete

## Packs

packs = Paquetes
add-pack = Agregar paquete
add-case-price = Agregar precio del paquete
add-case-price-of = Agregar precio del paquete de { $name }
remove-pack = Quitar paquete
new-pack = Paquete nuevo
pack-size = Contenido del paquete
case-price = Precio del paquete
delivery-or-deposit = Entrega o depósito
supplier = Proveedor
counts-as-free = Con este precio, el paquete cuenta como gratis.
own-ice = Hielo propio: sin costo
own-water = Agua de la llave: sin costo
current-pack = Paquete actual
buy-this-pack = Comprar este paquete
switch-packs = Cambiar de paquete
if-you-switch = Si cambia a este
volume-price = Precio por mayoreo
add-volume-price = Agregar precio por mayoreo
remove-volume-price = Quitar precio por mayoreo
packs-per-order = Paquetes por pedido
price-per-order = Con { $packs ->
    [one] 1 paquete por pedido, paga { $price } por paquete.
   *[other] { $packs } paquetes por pedido, paga { $price } por paquete.
}
minimum-packs = Mínimo de paquetes
minimum-packs-of = Precio por mayoreo { $number }: mínimo de paquetes
case-price-of = Precio por mayoreo { $number }: precio del paquete
price-per-pack = Precio del paquete
volume-price-of = precio por mayoreo { $number }

## What a usable amount costs

per-as-purchased = Por { $amount } como se compra
per-trimmed = Por { $amount } en limpio
per-of-juice = Por { $amount } de jugo
per-soaked = Por { $amount } tras remojo o infusión
per-piece = Por pieza
cost-as-purchased = por { $amount } como se compra
cost-trimmed = por { $amount } en limpio
cost-of-juice = por { $amount } de jugo
cost-soaked = por { $amount } tras remojo o infusión
cost-of-piece = por pieza

## Packs side by side

packs-compared = Paquetes comparados
above-lowest = Más que el más bajo
quote-date = Cotizado el
current-pack-tag = paquete actual
packs-compared-about = El costo es el precio del paquete más entrega o depósito, entre la cantidad que se aprovecha.
pack-of-supplier = { $supplier }, { $size }
cannot-compare = Estos paquetes todavía no se pueden comparar.
current-costs-least = Ningún otro paquete cuesta menos que su paquete actual.
current-cannot-compare = Su paquete actual no se puede comparar con los otros.
other-costs-less = { $pack } cuesta { $less } menos que su paquete actual: { $lowest } en vez de { $cost }.
other-is-lower = { $pack } cuesta menos que su paquete actual: { $lowest } en vez de { $cost }.
lowest = más bajo
more-by = +{ $share }
free = gratis
not-free = no es gratis

## What a price moves

below-target-now = Ahora bajo la meta: { $names }.
below-target-now-and = Ahora bajo la meta: { $names } y { $more ->
    [one] 1 más.
   *[other] { $more } más.
}
lowest-margin = El más bajo de estos: { $name }, con { $margin }.
lowest-drink = Más bajo: { $name }.
change-price = Cambie el precio de { $price } a { $suggested } para llegar a la meta.
no-price-reaches = Ningún precio de menú llega solo a la meta.
another-way = Otra opción: { $way }
drinks-affected = { $sizes ->
    [one] Cambiaría 1 tamaño.
   *[other] Cambiarían { $sizes } tamaños.
}
none-would-drop = Ninguno bajaría de la meta.
would-drop = Con este cambio, bajo la meta: { $names }.
would-drop-and = Con este cambio, bajo la meta: { $names } y { $more ->
    [one] 1 más.
   *[other] { $more } más.
}
would-come-back = Con este cambio, de vuelta en la meta: { $names }.
would-come-back-and = Con este cambio, de vuelta en la meta: { $names } y { $more ->
    [one] 1 más.
   *[other] { $more } más.
}

## When a price was quoted

checked-today = revisado hoy
quoted-on = cotizado el { $day }
needs-new-price = falta precio nuevo: cotizado el { $day }
no-date = sin fecha
day-taken = Ya tiene un precio del { $day }. Elija otra fecha, o quite primero ese precio.
day-too-early = Su precio anterior es del { $day }. Elija una fecha posterior, o quite primero ese precio.
day-too-late = Su precio actual es del { $day }. Elija una fecha anterior.
quoted-once = Cotizado una vez: { $price } el { $day }.
always-quoted = Siempre { $price }, cotizado por primera vez el { $first } y por última el { $last }.
price-moved = De { $first } el { $from } a { $last } el { $on }.
price-moved-by = De { $first } el { $from } a { $last } el { $on }, { $change }.
price-range = Más bajo: { $low } el { $lowday }; más alto: { $high } el { $highday }.
days-of-year = Día, { $year }
days-of-years = Día, { $from } a { $last }

## What a container holds, and how that is known

capacity = Capacidad
how-measured = Cómo se midió
weigh-water = Llene el envase de agua hasta el borde y pese el agua. Un gramo es un mililitro.
measure-cup = Para un vaso redondo de lados rectos. Mida por dentro: la base, el borde y la altura.
measure-bottle = Para una botella con hombros. Agregue agua en cantidades conocidas y mida cada altura desde la base por dentro. Termine en el borde.
brimful-capacity = Capacidad al ras
base-width = Base por dentro
rim-width = Borde por dentro
inside-height = Altura por dentro
readings-about = La altura desde la base por dentro, y el volumen hasta esa altura.
new-height = Altura nueva
new-volume = Volumen nuevo
add-reading = Agregar lectura
remove-reading = Quitar lectura
reading-incomplete = Escriba los dos: la altura y el volumen.
reading-height = Altura de lectura
reading-volume = Volumen de lectura
height-of-reading = Altura { $number }
volume-of-reading = Volumen { $number }
reading = lectura { $number }
height-and-volume = Altura y volumen
height-and-volume-about = Pruebe números aquí. El envase queda igual.
volume = Volumen
height = Altura
height-of-volume = Llega a { $height } de altura.
above-rim = Eso pasa del borde. La capacidad al ras es { $volume }.
volume-of-height = El volumen es { $volume }.

## The yield log

weigh-your-own = Pese su rendimiento
weigh-your-own-about = Pese la fruta o verdura como se compra, luego ya limpia, luego el jugo. Repita en varios días. Así ve su propio rendimiento y qué tan parejo es.
new-weighing = Pesada nueva
correct-weighing = Corregir pesada
save-weighing = Guardar pesada
add-weighing = Agregar pesada
remove-weighing = Quitar pesada
weight-as-purchased = Peso como se compra
trimmed-weight = Peso en limpio
juice-weight = Jugo
weighed-on = Pesado el
leave-blank = Deje en blanco lo que no pesó. Escriba el jugo en peso o en volumen.
weight-needed = Escriba el peso como se compra, por ejemplo { $example }.
day-needed = Elija el día en que pesó.
measured-yields = Rendimiento medido
no-yield-yet = Aún no hay rendimiento. Pese el producto limpio o el jugo.
average = Promedio
likely-range = Rango probable
use-measured-yields = Usar rendimiento medido
use-yields-about = El rendimiento se redondea a una décima de por ciento. Nada cambia hasta que toque el botón.
yields-to-choose = Elegir rendimiento
choose-yields = Elija qué rendimiento quiere usar.
use-yields = Usar este rendimiento
yields-in-book = Su libro ya tiene este rendimiento.
use-trim-yield = Rendimiento limpio: { $new }, antes { $old }
use-first-trim-yield = Rendimiento limpio: { $new }, antes no había
use-juice-yield = Rendimiento de jugo: { $new }, antes { $old }
use-first-juice-yield = Rendimiento de jugo: { $new }, antes no había
all-weighings = Todas las pesadas
weighings-newest-first = Pesadas, nuevas primero
unusual = inusual
unusual-ones = Inusuales
correct = Corregir
correct-day = Corregir { $day }
days-since = Días desde el { $day }
percent = Porcentaje
yields-drawn = Cada punto es una pesada. La escala puede no empezar en cero.
juice-density-needed = Escriba el jugo en peso, o anote primero su densidad en la página del ingrediente.
juice-cup-weight-needed = Escriba el jugo en peso, o anote primero su peso por taza en la página del ingrediente.
juice-is-no-piece = Escriba el jugo en peso o en volumen, como 5 lb o 2 L.
average-of = { $average } de { $weighings ->
    [one] 1 pesada
   *[other] { $weighings } pesadas
}
range-unknown = no se sabe hasta que pese otra vez
range-none = no hay: todas dan igual
range = { $low } a { $high }
single-weighing = Una sola pesada no da dispersión. Pese otra vez.
average-math = Promedio: { $shares }, entre { $count }, da { $average }.
average-math-and = Promedio: { $shares } y { $more } más, entre { $count }, da { $average }.
as-one-batch = Como una sola tanda, donde las tandas grandes cuentan más, el rendimiento es { $together }.
spread-math = Las pesadas quedan a cerca de { $spread } del promedio (desviación estándar).
range-math = La t de Student con { $degrees ->
    [one] 1 grado de libertad, por esa desviación entre la raíz cuadrada de { $count }, da { $reach }.
   *[other] { $degrees } grados de libertad, por esa desviación entre la raíz cuadrada de { $count }, da { $reach }.
}
range-means = El rango probable llega hasta ahí a cada lado. En 95 de 100 casos, un rango así incluye el promedio verdadero.
range-ends = Ningún rendimiento baja de { $none } ni pasa de { $whole }, así que el rango termina ahí. Pese más seguido.
unusual-weighing = La pesada del { $day } se ve rara. Su rendimiento de { $share } está a { $distance } desviaciones estándar del promedio.
unusual-limit = Para { $count } pesadas, el límite es { $limit } en 95 de 100 casos (prueba de Grubbs).
unusual-advice = Revise si hubo un error al escribir, otra prensa u otra fruta. Pese otra vez y corrija el dato si hace falta. Cuenta hasta que lo cambie.
weighed-bought = { $bought } como se compra
weighed-trimmed = { $bought } como se compra, { $trimmed } en limpio
weighed-juice = { $bought } como se compra, { $juice } de jugo
weighed-all = { $bought } como se compra, { $trimmed } en limpio, { $juice } de jugo
only-purchased = solo se pesó como se compra
trimmed-not-weighed = falta peso en limpio
counts-as-weight = Cuenta como { $weight } de jugo, por densidad.

## Deposits, seasons and starting figures
deposit = Depósito
season-trim-yield = Rendimiento limpio de temporada
season-juice-yield = Rendimiento de jugo de temporada
starting-figure = Dato inicial
deposit-about = Se cobra aparte del precio y se devuelve con el envase vacío.
season = Temporada
season-starts = Inicio de temporada
season-ends = Fin de temporada
no-season = sin temporada
season-about = ¿El rendimiento cambia parte del año? Anote esos meses y sus rendimientos.
blank-uses-year = Déjelo en blanco para usar { $share }, como en otros meses.
season-in-force = En { $month } está en temporada. Rendimientos vigentes: { $yields }.
season-not-in-force = En { $month } está fuera de temporada. Rendimientos vigentes: { $yields }.
season-months = { $from } a { $to }
