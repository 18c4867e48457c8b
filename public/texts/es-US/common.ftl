# Words that many screens share, and the first one does not need.

name = Nombre
cost = Costo
margin = Margen
done = Listo
none = no hay
none-yet = aún no hay
price = Precio
size = Tamaño
fill = Llenado
packaging = Empaque
sales-tax = Impuesto de venta
tax-european = IVA o impuesto
recipe-cards = Tarjetas de receta
target-margin = Margen meta
suggested-price = Precio sugerido
full-cost = Costo total
profit-per-drink = Ganancia por bebida
profit-per-week = Ganancia semanal
drinks-sold-per-week = Ventas por semana
fee-per-transaction = Cargo por transacción
today = Hoy
choose = Elija
show-the-math = Ver el cálculo
yesterday-at = Ayer, { $time }
book-holds-drinks = { $drinks ->
    [one] 1 bebida
   *[other] { $drinks } bebidas
}
book-last-changed = Último cambio: { $when }
present = Presentar
stop-presenting = Dejar de presentar
no-page-here = No hay nada en esta dirección. Aquí están sus bebidas.

## Units, where a language has its own sign for one

unit-piece = pza
unit-inch = pulg
