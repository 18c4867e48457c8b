# The first minutes of a new book: questions about the shop, then the way to the first price.

## Questions about the shop

your-shop = Su local
shop-about = Lo que no sepa, después en Libro.
country = País
common-figure = Cifra común. Revise la suya.
not-sure = No sé
not-sure-of = No sé: { $field }
counts-as-zero = Aún no se sabe. Su ganancia dirá qué falta contar.
field-skipped = Si sigue, se omite “{ $fields }”: Brimwright no puede leer lo que escribió.
skip-questions = Saltar por ahora

## The way to the first price

step-of = Paso { $step } de { $steps }
finish-later = Terminar después
drink-so-far = Su bebida hasta ahora
no-ingredient-yet = Aún no hay ingredientes.

what-goes-in = ¿Qué lleva?
what-goes-in-about = Escriba unas letras. Elija de la lista o agregue el suyo.
add-as-typed = Agregar “{ $name }”
already-in-list = { $name } ya está en su lista.
usual-case = Caja común en EE. UU. Revise la suya.
case-price-missing = Escriba el precio del paquete ahora o después.
next-size = Sigue: botella o vaso

which-size = ¿Qué botella o vaso?
which-size-about = Las capacidades son datos iniciales. Cuando pueda, pese el suyo lleno de agua.
your-containers = Sus envases
common-sizes = Tamaños comunes
brimful = Al ras { $volume }
other-size = Otro tamaño
chosen = Elegido
packaging-cost = Costo de empaque
packaging-cost-about = Botella, tapa y etiqueta de una bebida. Déjelo en blanco si no sabe.
next-amounts = Sigue: cantidades

how-much = ¿Cuánto de cada uno?
how-much-about = Cantidades para un envase de { $size }. También sirve un porcentaje, como { $share }.
how-much-juice = Lo que exprime se mide como jugo.
choose-size-first = Primero elija una botella o un vaso.
filled-of = { $filled } de { $size }
left-to-fill = Faltan { $left } por llenar.
left-scales-up = Si sigue así, Brimwright aumenta la receta hasta llenarlo.
all-filled = Lleno.
over-filled = Se pasa por { $over }. Brimwright reduce la receta para que quepa.
use-rest = Usar lo que falta: { $left }
share-needs-size = Un porcentaje necesita un tamaño. Primero elija una botella o un vaso.
share-too-large = Un porcentaje es como máximo { $whole }. Escriba menos, como { $example }.
next-price = Sigue: precio

what-to-charge = Cuánto cobrar
suggested-for-target = Da un margen de { $margin }. Su meta es { $target }.
not-in-price = Aún no está en este precio: { $costs }.
for-customers = Lo que leen los clientes en su menú.
what-next = ¿Qué sigue?
add-second-size = Agregar otro tamaño
check-figures = { $figures ->
    [one] Revisar 1 dato inicial
   *[other] Revisar { $figures } datos iniciales
}
add-next-drink = Agregar otra bebida
open-drink = Abrir esta bebida
another-size = Otro tamaño
