# Buying day by day: quick prices, today’s changes, price watch, the buying list. Also what is
# said beside a number that looks wrong, and which drinks a change affects.

## Numbers that look wrong

was-now = Antes { $was }, ahora { $now }.
now-only = Ahora { $now }.
rare-tax = Un impuesto de más de 50% es raro.
rare-density = Casi todo alimento o bebida pesa de { $low } a { $high } g por mL.
rare-cup-weight = Una taza de casi todo alimento o bebida pesa de { $low } a { $high } oz.
rare-stock = Más de { $most } de un artículo es raro.
rare-trim-yield = Un rendimiento limpio de menos de 5% es raro.
rare-wage = Una hora rara vez cuesta tanto. Revise los dígitos.
rare-labor = Más de { $most } es raro. Escriba minutos:segundos.
rare-sold = Más de { $most } por semana es raro.
rare-sold-in-week = Una semana suele tener bebidas enteras, hasta { $most } de un tamaño.
check-one = Revise “{ $name }”. ¿Es lo que quería escribir?
check-several = { $more ->
    [one] Revise “{ $name }” y 1 dato más. ¿Es lo que quería escribir?
   *[other] Revise “{ $name }” y { $more } datos más. ¿Es lo que quería escribir?
}
check-now = Revisar ahora

## What a change affects

step-no-drinks = { $step }: no cambia ningún tamaño.
step-none-dropped = { $sizes ->
    [one] { $step }: cambió 1 tamaño y no bajó de la meta.
   *[other] { $step }: cambiaron { $sizes } tamaños, ninguno bajó de la meta.
}
step-some-dropped = { $sizes ->
    [one] { $step }: cambió 1 tamaño y quedó bajo la meta.
   *[other] { $step }: cambiaron { $sizes } tamaños, { $dropped } ahora bajo la meta.
}
no-drinks = No cambia ningún tamaño.
none-dropped = { $sizes ->
    [one] Cambió 1 tamaño y no bajó de la meta.
   *[other] Cambiaron { $sizes } tamaños, ninguno bajó de la meta.
}
some-dropped = { $sizes ->
    [one] Cambió 1 tamaño y quedó bajo la meta.
   *[other] Cambiaron { $sizes } tamaños, { $dropped } ahora bajo la meta.
}
back-on-target = { $sizes ->
    [one] 1 tamaño está de vuelta en la meta.
   *[other] { $sizes } tamaños están de vuelta en la meta.
}
# The same before the change is made.
no-drinks-yet = No cambiaría ningún tamaño.
none-would-drop = { $sizes ->
    [one] Cambiaría 1 tamaño y no bajaría de la meta.
   *[other] Cambiarían { $sizes } tamaños, ninguno bajaría de la meta.
}
some-would-drop = { $sizes ->
    [one] Cambiaría 1 tamaño y quedaría bajo la meta.
   *[other] Cambiarían { $sizes } tamaños, con { $dropped } bajo la meta.
}
would-be-back = { $sizes ->
    [one] 1 tamaño volvería a la meta.
   *[other] { $sizes } tamaños volverían a la meta.
}
drinks-affected = Tamaños que cambian
show-more = { $count ->
    [one] Ver 1 más
   *[other] Ver { $count } más
}
# A figure before the change and after, as it is read aloud.
figure-before = antes { $figure }
figure-now = ahora { $figure }
state-before = Antes: { $state }

## Quick prices

price-of = Precio de { $name }
price-checked = Precio revisado de { $name }
needs-new-price = Falta precio nuevo
no-date = Sin fecha
group-prices = Agrupar precios
by-supplier = Por proveedor
recently-checked = Revisados
other-packs-of = Otros paquetes: { $supplier }
items-listed = { $items ->
    [one] 1 artículo
   *[other] { $items } artículos
}
items-and-old = { $old ->
    [one] { $items }, a 1 le falta precio nuevo
   *[other] { $items }, a { $old } les falta precio nuevo
}
needs-new-price-since = falta precio nuevo: { $day }
find-item = Buscar artículo
more-items = { $count ->
    [one] 1 artículo más. Escriba su nombre o proveedor para encontrarlo.
   *[other] { $count } artículos más. Escriba un nombre o proveedor para encontrarlos.
}
no-matches = Sin resultados. Escriba menos letras o agregue el artículo abajo.
first-ingredient = Su primer ingrediente
first-ingredient-how = Anote el contenido y el precio del paquete, y el rendimiento. Verá cuánto cuesta lo que se aprovecha.
packs-per-order = { $packs } paquetes por pedido
cost-per = { $cost } { $per }
no-change = Sin cambio
no-change-of = Sin cambio: { $name }

## Today’s changes

todays-changes = Cambios de hoy
changes-counted = { $prices ->
    [one] 1 precio cambió
   *[other] { $prices } precios cambiaron
}
changes-cost-more = { $prices ->
    [one] 1 precio: cuesta { $money } más por semana
   *[other] { $prices } precios: cuestan { $money } más por semana
}
changes-save = { $prices ->
    [one] 1 precio: ahorra { $money } por semana
   *[other] { $prices } precios: ahorran { $money } por semana
}
changes-cost-the-same = { $prices ->
    [one] 1 precio: cuesta lo mismo por semana
   *[other] { $prices } precios: cuestan lo mismo por semana
}
dropped-today = { $sizes ->
    [one] 1 tamaño quedó bajo la meta
   *[other] { $sizes } tamaños quedaron bajo la meta
}
see-them = Verlos
margin-and-price = Margen { $margin }, precio sugerido { $price }
margin-alone = Margen { $margin }
adding-up = Sumando…
price-changed = Antes { $was }, ahora { $now }, { $change }
price-back = De vuelta en { $was }
price-no-longer-free = Antes gratis, ahora { $now }
was-free = antes gratis
costs-more = Cuesta { $money } más por semana.
saves = Ahorra { $money } por semana.
costs-the-same = Cuesta lo mismo por semana.
needs-sales = Faltan: ventas por semana.
needs-costs = Faltan: costos de bebidas.
needs-sales-and-costs = Faltan: ventas por semana y costos de bebidas.
sizes-without-sales = { $sizes ->
    [one] 1 tamaño aún no tiene ventas por semana.
   *[other] { $sizes } tamaños aún no tienen ventas por semana.
}
sizes-without-cost = { $sizes ->
    [one] 1 tamaño aún no tiene costo.
   *[other] { $sizes } tamaños aún no tienen costo.
}
new-today = { $prices ->
    [one] 1 precio más es nuevo hoy. No se conoce su precio anterior.
   *[other] { $prices } precios más son nuevos hoy. No se conocen sus precios anteriores.
}

## Price history

price-history = Historial de precios
price-on = el precio del { $day }
change-date = Cambiar fecha
change-date-of = Cambiar fecha: { $price }
last-quoted = Última vez
history-how = Quite un precio mal escrito, o cambie su fecha. Cambie arriba el precio actual.
remove-past-price = Quitar precio anterior
quoted-on = Cotizado el
quoted-price = Precio: { $price }
set-date = Poner fecha
change-quote-date = Cambiar fecha del precio
choose-quote-date = Aún sin fecha. Elija el día en que se lo cotizaron, como el lunes pasado.
quoted-prices = Precios cotizados

## Price watch

choose-view = Elegir vista
price-changes = Cambios de precio
what-if = ¿Y si…?
cost-drivers = Lo que más pesa
no-prices-yet = Aún no hay precios
no-prices-how = Agregue un ingrediente con contenido y precio del paquete. Luego verá qué bebidas cambian con cada precio.
weeks-back = { $weeks ->
    [one] 1 semana
   *[other] { $weeks } semanas
}
choose-period = Elegir período
since = Desde
choose-past-day = Aún sin fecha. Elija un día pasado, como el lunes pasado.
day-ahead = El { $day } aún no llega. Elija hoy o un día anterior.
no-price-changed = Ningún precio ha cambiado desde el { $day }.
prices-changed = { $prices ->
    [one] Cambió 1 precio desde el { $day }.
   *[other] Cambiaron { $prices } precios desde el { $day }.
}
none-dropped-since = Ningún tamaño quedó bajo la meta desde el { $day }.
some-dropped-since = { $sizes ->
    [one] 1 tamaño quedó bajo la meta desde el { $day }.
   *[other] { $sizes } tamaños quedaron bajo la meta desde el { $day }.
}
dropped-with = { $sizes ->
    [one] Ingredientes o empaques que subieron: { $names }.
   *[other] Ingredientes o empaques que subieron: { $names }.
}
no-size-would-drop = Ningún tamaño quedaría bajo la meta.
sizes-would-drop = { $sizes ->
    [one] 1 tamaño quedaría bajo la meta.
   *[other] { $sizes } tamaños quedarían bajo la meta.
}
no-price-from = No hay precio del { $day } para { $names }. Se usa el precio de hoy.
names-and-more = { $more ->
    [one] { $names } y 1 más
   *[other] { $names } y { $more } más
}
current-packs-only = Compara los precios de sus paquetes actuales.
before = Antes
now = Ahora
change = Cambio
new-price = Precio nuevo
changed-prices = Precios que cambiaron
after = Después
profit-sum = { $sizes ->
    [one] Ventas por semana × ganancia por bebida, para 1 tamaño.
   *[other] Ventas por semana × ganancia por bebida, sumado para { $sizes } tamaños.
}
no-weekly-sales = Ningún tamaño tiene todavía precio y ventas por semana.
enter-prices-and-sales = Primero ponga los precios. Luego anote las ventas por semana en Tamaños, en Ventas.
just-a-test = Es solo una prueba: su libro queda como está. La entrega y el depósito no cambian.
add-item = Agregar artículo
all-from = Todo lo de { $supplier }
percent-change = Cambio en %
items-to-test = Artículos por probar
remove-all = Quitar todos
choose-item-to-test = Elija un artículo para probar.
beyond-tested = Escriba un número de { $least } a { $most }. Para 20% más, escriba 20. Para 10% menos, escriba -10.
profit-change = Cambio de ganancia
driver-figures = Todas las cifras
cost-per-week = Costo por semana
share-of-cost = Parte del costo
ten-percent-up = Precio sube 10%
weekly-cost-is = Ingredientes y empaque le cuestan { $cost } por semana.
biggest-driver = Lo que más pesa en su costo es { $name }, con el { $share }.
driver-up = Si el precio de { $name } sube 10%, su ganancia baja { $less } por semana.
driver-surcharge-only = Si el precio de { $name } sube 10%, nada cambia. Usted paga solo entrega o depósito.
all-free = Todo lo que usa es gratis.
driver-cost = { $name }: ventas por semana × su costo en cada bebida, más merma y bebidas gratis, da { $cost }.
driver-share = { $cost } ÷ { $all } da { $share }.
driver-ten-percent = 10% de { $cost } da { $less }.
driver-price-part = El precio es { $price } de los { $paid } que paga por paquete.
driver-ten-percent-of-price = 10% de { $cost } × { $price } ÷ { $paid } da { $less }.
other-items = { $count ->
    [one] 1 artículo más
   *[other] { $count } artículos más
}
not-in-counted-drinks = No se usa en ninguna bebida contada: { $names }.

## The buying list

no-list-yet = Aún no hay lista
no-list-how = Elija lo que piensa hacer. Le damos la lista de lo que hay que comprar, por proveedor. O agregue artículos a mano.
replace-list = Reemplazar esta lista
made-stays = Hecha el { $day }. Los planes y precios nuevos no cambian esta lista.
share-or-print = Compartir o imprimir
include-prices = Incluir precios
share-as-text = Compartir como texto
add-by-hand = Agregar a mano
add-to-list = Agregar a la lista
item-in-pack = { $name }, { $pack }
item-in-pack-from = { $name }, { $pack } de { $supplier }
packs-no-longer-in-book = { $packs ->
    [one] 1 paquete que ya no está en su libro
   *[other] { $packs } paquetes que ya no están en su libro
}
drinks-to-make-about = Tandas planeadas, más semanas de sus ventas normales.
batches-from = Tandas desde
choose-day = Aún sin fecha. Elija un día, como hoy.
planned-batches = Tandas planeadas
no-batches-planned = No hay tandas desde este día. Planee una en Mostrador, elija un día anterior o escriba semanas.
weeks-of-sales = Semanas de ventas
too-many-weeks = Una lista cubre cuando mucho { $weeks } semanas. Escriba un número menor, como 2.
sizes-not-on-list = { $sizes ->
    [one] 1 tamaño no tiene ventas por semana, así que la lista no lo incluye.
   *[other] { $sizes } tamaños no tienen ventas por semana, así que la lista no los incluye.
}
what-to-buy = Qué comprar
what-to-buy-about = Lo que necesita, menos lo que hay en existencia. El costo incluye precio por mayoreo, entrega y depósito.
total-cost = Costo de la lista
items = Artículos
current-packs = Paquetes actuales
cheapest-packs = Paquetes más baratos
cheapest-would-save = Con los paquetes más baratos ahorraría { $money }.
no-cheaper-packs = Ningún otro paquete cuesta menos.
counts-are-old = { $counts ->
    [one] 1 conteo es del { $day }. Lo que usó desde entonces no se descuenta.
   *[other] { $counts } conteos no son de hoy; el más viejo es del { $day }. Lo que usó desde entonces no se descuenta.
}
count-again = Contar otra vez
nothing-to-buy = Ya tiene en existencia todo lo que necesita.
enough-on-hand = Alcanza lo que hay
free-items = Gratis, así que no van en la lista: { $names }.
make-list = Hacer la lista
make-buying-list = Hacer lista de compras
replaces-list = Esto reemplaza su lista actual. Con Deshacer la recupera.
use-these-packs = Usar estos paquetes
more-for-less = Compre { $more } en vez de { $packs }: { $money } menos en total.
buy-packs-instead = Comprar { $packs }
buy-packs-instead-for = Comprar { $packs } de { $name }
use-these-packs-for = Usar estos paquetes para { $name }
left-out = Fuera de la lista:
left-out-because = { $name }. { $why }
size-not-on-menu = Este tamaño ya no está en el menú.
amount-needed = Cantidad necesaria: { $amount }.
on-hand-today = En existencia: { $amount }, contado hoy.
on-hand-since = En existencia: { $amount }, contado el { $day }.
on-hand-not-counted = En existencia: sin contar.
count-of-today-unused = El conteo de hoy no se usa.
count-unused = El conteo del { $day } no se usa.
buy-packs = Compre { $packs }.
buy-packs-from = Compre { $packs } de { $supplier }.
order-at-least = Al menos { $packs } paquetes por pedido.
left-over = Sobra: { $amount }.
enough = Alcanza lo que hay.
packs-would-save = Con { $packs } ahorraría { $money }.
packs-would-save-from = Con { $packs } de { $supplier } ahorraría { $money }.
to-buy = Por comprar
bought = Comprado
total = Total
list-is-empty = La lista está vacía.
items-bought = { $items ->
    [one] { $bought } de 1 artículo comprado
   *[other] { $bought } de { $items } artículos comprados
}
no-supplier = Sin proveedor
supplier-totals = Total { $total }: { $bought } comprado, { $left } por comprar.
items-without-price = { $items ->
    [one] 1 artículo no tiene precio.
   *[other] { $items } artículos no tienen precio.
}
list-step = Cambiar { $name } en la lista de compras
change-item = Cambiar { $name }
packs-of = Paquetes de { $name }
paid-per-pack = Pagado por paquete de { $name }
on-hand-of = hay { $amount }
packs-for-need = { $packs }, necesita { $amount }
rows-rounded-up = Cada renglón se redondea a paquetes enteros.
paid-per-pack-head = Pagado por paquete
no-price-paid = Aún no hay precio. Escriba cuánto paga por paquete.
quoted-one = Cotizado: { $price }
quoted-each = Cotizado: { $price } cada uno, { $total } en total
paid-one = Pagado: { $price }
paid-each = Pagado: { $price } cada uno, { $total } en total
prices-paid = Precios pagados
prices-paid-about = Guárdelos para sacar el costo de sus bebidas con los precios nuevos.
paid-instead-of = { $item }: { $paid } en vez de { $quoted }
show-drinks-affected = Ver tamaños que cambian
save-prices-paid = Guardar precios pagados
prices-as-quoted = Pagó los precios cotizados. Quedan con fecha de hoy.
prices-change = { $prices ->
    [one] Cambia 1 precio.
   *[other] Cambian { $prices } precios.
}
price-not-saved = { $name }: este paquete ya no está en su libro. Agréguelo otra vez y luego anote su precio.
after-shopping = Después de comprar
finish-list = Terminar esta lista
finish-buying-list = Terminar lista de compras
nothing-bought = No marcó ningún artículo, así que su inventario queda igual.
bought-added = { $items ->
    [one] 1 artículo que compró entra a su inventario.
   *[other] { $items } artículos que compró entran a su inventario.
}
prices-saved = { $prices ->
    [one] Se guarda 1 precio que pagó.
   *[other] Se guardan { $prices } precios que pagó.
}
list-deleted = Luego se borra la lista.
list-deleted-with = { $items ->
    [one] Luego se borra la lista, con 1 artículo que no compró.
   *[other] Luego se borra la lista, con { $items } artículos que no compró.
}
undo-brings-back = Con Deshacer recupera todo.
count-starts-anew = { $name }: el conteo viejo no sirve. Empieza un conteo nuevo con lo que compró.
pack-not-added = { $name }: este paquete ya no está en su libro, así que su inventario queda igual.
list-of = Lista de compras, { $day }
supplier-total = { $supplier }: { $total }
list-total = Total: { $total }
list-line = { $name }, { $packs }
list-line-cost = { $name }, { $packs }: { $cost }
no-list-to-print = Aún no hay lista. Haga una en Compras.
made-on = Hecha el { $day }
quoted = Cotizado
paid = Pagado
